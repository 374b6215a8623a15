import { realpath, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import type { Command } from 'commander';
import { sheetMeta } from '../sheet-meta.js';
import { renderSheet } from '../sheet/index.js';
import { calculateFile, describe } from './calculate-file.js';
import { exitCode, exitCodeHelp, exitCodeOf } from './exit-code.js';
import { findingLines } from './format/text-lists.js';
import { verdictLine } from './format/text.js';
import type { Page } from './format/page.js';

export function addSheet(program: Command, page: Page): void {
    program.command('sheet')
        .description('Compute a file and write its calc sheet: one HTML file that stands alone.')
        .argument('<file>', 'a calculation, usually ending in .padstone')
        .requiredOption('-o, --output <file>', 'the sheet to write')
        .addHelpText('after', exitCodeHelp)
        .action(async (file: string, { output }: { output: string }) => {
            process.exitCode = await writeSheet(file, output, page);
        });
}

async function writeSheet(file: string, output: string, page: Page): Promise<number> {
    if (await isSource(output, file)) {
        process.stderr.write(`padstone: ${output} is a calculation: the sheet is not written over it\n`);
        return exitCode.notUnderstood;
    }
    const { results, sources } = calculateFile(file);
    if (!results.understood) {
        process.stderr.write(`${findingLines(results, page)}\n`);
    }
    if (sources.length === 0) {
        process.stderr.write(`padstone: there is no sheet of ${file}\n`);
        return exitCodeOf(results);
    }
    try {
        await writeFile(output, renderSheet(results, await sheetMeta(sources, new Date())));
    } catch (error) {
        process.stderr.write(`padstone: ${output} could not be written: ${describe(error)}\n`);
        return exitCode.programFailed;
    }
    process.stdout.write(`${verdictLine(results, page)}\nWrote ${output}\n`);
    return exitCodeOf(results);
}

/** Whether the output would fall on a calculation, also by another name of the same file. */
async function isSource(output: string, file: string): Promise<boolean> {
    const [target, source] = await Promise.all([output, file].map(path => realpath(path).catch(() => resolve(path))));
    return target === source || /\.padstone$/i.test(output) || /\.padstone$/i.test(target!);
}
