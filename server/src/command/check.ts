import { Option, type Command } from 'commander';
import { calculateFile } from './calculate-file.js';
import { exitCodeHelp, exitCodeOf } from './exit-code.js';
import { formats } from './format/index.js';
import type { Page } from './format/page.js';

export function addCheck(program: Command, page: Page): void {
    program.command('check')
        .description('Compute files and print every member, check, hazard and verdict.')
        .argument('<file...>', 'calculations, usually ending in .padstone')
        .addOption(new Option('-f, --format <format>', 'how to print').choices(Object.keys(formats)).default('text'))
        .addHelpText('after', exitCodeHelp)
        .action((files: string[], options: { format: string }) => {
            const results = files.map(file => calculateFile(file).results);
            process.stdout.write(formats[options.format]!(results, page));
            process.exitCode = Math.max(...results.map(exitCodeOf));
        });
}
