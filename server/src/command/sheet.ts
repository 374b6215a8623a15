import { realpath, writeFile } from 'node:fs/promises';
import { extname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Option, type Command } from 'commander';
import type { Results } from '../results.js';
import type { Paper, PdfOptions } from '../sheet/pdf/index.js';
import { sheetMeta, undated, type Meta } from '../sheet-meta.js';
import { renderSheet, type Display } from '../sheet/index.js';
import { renderMarkdown } from '../sheet/markdown/index.js';
import { calculateFile, describe } from './calculate-file.js';
import { addDisplay } from './display.js';
import { exitCode, exitCodeHelp, exitCodeOf } from './exit-code.js';
import { findingLines } from './format/text-lists.js';
import { verdictLine } from './format/text.js';
import type { Page } from './format/page.js';

type Write = (results: Results, meta: Meta, display: Display, options: PdfOptions) => string | Promise<Uint8Array>;

/** How the sheet is written, by the ending of its file. */
const writers: Readonly<Record<string, Write>> = {
    '.html': renderSheet,
    '.htm': renderSheet,
    '.md': renderMarkdown,
    // Loaded when it is wanted: it is larger than all the rest.
    '.pdf': async (...given) => (await import('../sheet/pdf/index.js')).renderPdf(...given)
};

/** The build puts them beside the command. */
const fonts = fileURLToPath(new URL('fonts', import.meta.url));
const papers: readonly Paper[] = ['A4', 'Letter'];

interface Options extends Display {
    readonly output: string;
    readonly date: boolean;
    readonly paper: Paper;
}

export function addSheet(program: Command, page: Page): void {
    addDisplay(program.command('sheet'))
        .description('Compute a file and write its calc sheet: one HTML file that stands alone, a PDF, or Markdown for a pull request.')
        .argument('<file>', 'a calculation, usually ending in .padstone')
        .requiredOption('-o, --output <file>', `the sheet to write: ${Object.keys(writers).join(', ')}`)
        .addOption(new Option('--paper <size>', 'of a PDF').choices(papers).default(papers[0]))
        .option('--no-date', 'leave out when it was calculated and by which version, so that the same text makes the same sheet')
        .addHelpText('after', exitCodeHelp)
        .action(async (file: string, options: Options) => {
            process.exitCode = await writeSheet(file, options, page);
        });
}

async function writeSheet(file: string, { output, date, paper, units, decimal }: Options, page: Page): Promise<number> {
    const write = writers[extname(output).toLowerCase()];
    if (await isSource(output, file)) {
        process.stderr.write(`padstone: ${output} is a calculation: the sheet is not written over it\n`);
        return exitCode.notUnderstood;
    }
    if (!write) {
        process.stderr.write(`padstone: what kind of sheet is ${output}? It may end in ${Object.keys(writers).join(', ')}\n`);
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
    const meta = await sheetMeta(sources, new Date());
    try {
        await writeFile(output, await write(results, date ? meta : undated(meta), { units, decimal }, { paper, fonts }));
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
