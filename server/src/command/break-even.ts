import type { Command } from 'commander';
import { breakEven, guessedPaths, ledger, sensitivities, worstFunction, type BreakEven, type Variant } from '../certainty/index.js';
import { compute, findAll } from '../compute.js';
import { percentUp } from '../sheet/numbers.js';
import { varying } from '../varying.js';
import { calculateFile } from './calculate-file.js';
import { exitCode, exitCodeOf } from './exit-code.js';
import { findingLines } from './format/text-lists.js';
import type { Page } from './format/page.js';

export function addBreakEven(program: Command, page: Page): void {
    program.command('breakeven')
        .description('Find the value of an input at which the first check fails: of every judged or assumed one, or of those named.')
        .argument('<file>', 'a calculation, usually ending in .padstone')
        .argument('[inputs...]', 'names of inputs, such as T2.loss.top')
        .action((file: string, inputs: readonly string[]) => { process.exitCode = print(file, inputs, page); });
}

/** Guesses first, by how near they sit to their break-even; then each guessed grade taken one class lower. */
function print(file: string, inputs: readonly string[], page: Page): number {
    const { results, model } = calculateFile(file, compute);
    if (!results.understood || !model) {
        process.stderr.write(`${findingLines(results, page)}\n`);
        return exitCodeOf(results);
    }
    const computed = varying(findAll({ model, findings: [], broken: [] }));
    const worst = worstFunction(model, computed);
    const paths = inputs.length > 0 ? inputs : guessedPaths(model);
    const found = paths.flatMap(path => breakEven(model, path, { worst }) ?? []);
    const order = ledger(model, found).flatMap(({ breakEvens }) => breakEvens);
    for (const one of [...order, ...found.filter(other => !order.includes(other))]) {
        process.stdout.write(line(one));
    }
    const unknown = paths.filter(path => !found.some(one => one.path === path));
    for (const path of unknown) {
        process.stderr.write(`padstone: ${path} is no input of ${file} that can be varied\n`);
    }
    if (inputs.length === 0) {
        for (const { member, path, grade, lowerClass, lowModulus } of sensitivities(model, computed)) {
            for (const variant of [lowerClass, lowModulus]) {
                process.stdout.write(variant ? `${path}, ${member}: ${grade} was guessed; ${variantInWords(variant)}\n` : '');
            }
        }
    }
    return unknown.length > 0 ? exitCode.notUnderstood : exitCode.pass;
}

const line = ({ path, sentence }: BreakEven): string => `${path}: ${sentence}\n`;

function variantInWords({ with: instead, worst: { check, utilisation }, changesVerdict }: Variant): string {
    return `with ${instead} ${check} is ${percentUp(utilisation)}${changesVerdict ? ', which changes the verdict' : ''}`;
}
