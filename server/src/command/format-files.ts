import { readFileSync, writeFileSync } from 'node:fs';
import type { Command } from 'commander';
import { formatText } from '../../../language/src/index.js';
import { describe } from './calculate-file.js';
import { exitCode } from './exit-code.js';
import { expandFiles } from './files.js';
import { findingLine } from './format/text-lists.js';
import type { Page } from './format/page.js';
import { tell } from './tell.js';

export function addFormat(program: Command, page: Page): void {
    program.command('format')
        .description('Set the white space of files right. A file that does not parse is left as it is.')
        .argument('<file...>', 'calculations, or patterns of their names')
        .option('--check', 'write nothing; exit with 1 where a file is not as it would be written')
        .action((patterns: string[], { check }: { check?: true }) => {
            const { files, unmatched } = expandFiles(patterns);
            unmatched.forEach(pattern => tell(`no file is called ${pattern}`));
            const codes = files.map(file => formatFile(file, check === true, page));
            process.exitCode = Math.max(...codes, unmatched.length > 0 ? exitCode.notUnderstood : exitCode.pass);
        });
}

function formatFile(file: string, check: boolean, page: Page): number {
    try {
        const before = readFileSync(file, 'utf8');
        const { text, findings } = formatText(before, file);
        if (findings.length > 0) {
            process.stderr.write(`padstone: ${file} is left as it is\n${findings.map(finding => `${findingLine(finding, page)}\n`).join('')}`);
            return exitCode.notUnderstood;
        }
        if (text === before) {
            return exitCode.pass;
        }
        if (!check) {
            writeFileSync(file, text);
        }
        process.stdout.write(check ? `${file} would be formatted\n` : `formatted ${file}\n`);
        return check ? exitCode.fails : exitCode.pass;
    } catch (error) {
        process.stderr.write(`padstone: ${file}: ${describe(error)}\n`);
        return exitCode.notUnderstood;
    }
}
