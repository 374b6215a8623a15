import { Option, type Command } from 'commander';
import { shownAs, type Display } from '../sheet/index.js';
import { calculateFile } from './calculate-file.js';
import { addDisplay } from './display.js';
import { exitCodeHelp, exitCodeOf } from './exit-code.js';
import { formats } from './format/index.js';
import type { Page } from './format/page.js';

interface Options extends Display {
    readonly format: string;
}

export function addCheck(program: Command, page: Page): void {
    addDisplay(program.command('check'))
        .description('Compute files and print every member, check, hazard and verdict.')
        .argument('<file...>', 'calculations, usually ending in .padstone')
        .addOption(new Option('-f, --format <format>', 'how to print').choices(Object.keys(formats)).default('text'))
        .addHelpText('after', exitCodeHelp)
        .action((files: string[], { format, units, decimal }: Options) => {
            const results = files.map(file => calculateFile(file).results);
            const print = (): string => formats[format]!(results, page);
            process.stdout.write(format === 'text' ? shownAs({ units, decimal }, print) : print());
            process.exitCode = Math.max(...results.map(exitCodeOf));
        });
}
