import type { Command } from 'commander';
import { percentUp } from '../sheet/numbers.js';
import type { Results } from '../results.js';
import { computeVerdict } from '../whole.js';
import { calculateFile, evaluateFile, readFromDisk } from './calculate-file.js';
import { exitCode } from './exit-code.js';
import { GitProblem, openRepository, whereBlobStands } from './git.js';
import { tell } from './tell.js';

export function addTextconv(program: Command): void {
    program.command('textconv')
        .description('Print a file with its results behind it, for git: git config diff.padstone.textconv "padstone textconv".')
        .argument('<file>', 'as git hands it over')
        .action((file: string) => { process.exitCode = print(file); });
}

function print(file: string): number {
    const text = readFromDisk(file);
    if (typeof text !== 'string') {
        tell(`${file}: ${text.message}`);
        return exitCode.notUnderstood;
    }
    process.stdout.write(`${text.replace(/\n*$/, '\n')}\n${resultLines(calculated(file, text)).map(line => `// ${line}\n`).join('')}`);
    return exitCode.pass;
}

/** Git hands over a copy without its neighbours: what it includes is read where that very text stands, in a revision or the working tree. */
function calculated(file: string, text: string): Results {
    try {
        const place = /^\s*include\b/m.test(text) ? whereBlobStands(openRepository(), text) : undefined;
        return place === undefined ? calculateFile(file, computeVerdict).results : evaluateFile(place.file, place.tree.read).calculated(computeVerdict).results;
    } catch (error) {
        if (error instanceof GitProblem) {
            return calculateFile(file, computeVerdict).results;
        }
        throw error;
    }
}

/** One a line, in an order that does not depend on the results, so that a diff shows what has changed and no more. */
function resultLines({ checks, hazards, unchecked, verdict, verdictReason, understood }: Results): string[] {
    const shown = understood ? checks : [];
    return [
        `${verdict.toUpperCase()}, ${verdictReason}`,
        ...shown.map(({ id, stage, option, utilisation, pass }) => `${id}${stage === null ? '' : ` in ${stage}`}${option === null ? '' : `, option ${option}`}: ${percentUp(utilisation)}${pass ? '' : ' FAILS'}`).sort(),
        ...hazards.map(({ severity, subject, message }) => `${severity} ${subject}: ${message}`).sort(),
        ...unchecked.map(({ text }) => `not checked: ${text}`).sort()
    ].map(line => line.replace(/\s+/g, ' '));
}
