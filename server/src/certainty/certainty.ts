/** How sure the whole is: every break-even that is asked for or that a reader needs, and what guessed grades are worth. */
import type { Model } from '../../../language/src/model.js';
import type { BreakEven } from './break-even.js';
import { breakEvens, type Progress } from './break-evens.js';
import { guessedPaths, ledger, type LedgerEntry } from './ledger.js';
import { sensitivitySteps, type Sensitivity } from './sensitivity.js';
import { worstFunction, type Compute } from './worst.js';

export interface Certainty {
    /** Of `breakeven` lines, in the order of the file. */
    readonly asked: readonly BreakEven[];
    readonly ledger: readonly LedgerEntry[];
    readonly sensitivities: readonly Sensitivity[];
}

/** Yields before each evaluation of the model. */
export function* certaintySteps(model: Model, compute: Compute): Generator<Progress, Certainty> {
    const worst = worstFunction(model, compute);
    const found = yield* breakEvens(model, pathsOf(model), { worst });
    const lower = sensitivitySteps(model, compute, worst);
    let step = lower.next();
    for (const of = found.length; !step.done; step = lower.next()) yield { path: step.value, done: of, of, found };
    return {
        asked: model.breakEvens.flatMap(({ path }) => found.find(one => one.path === path) ?? []),
        ledger: ledger(model, found),
        sensitivities: step.value
    };
}

/** What is asked for, what was only guessed, and how deep a loss was found to be: no awl reaches all of it. */
function pathsOf(model: Model): readonly string[] {
    const depths = model.members.flatMap(({ losses }) => losses.flatMap(({ faces }) => Object.values(faces).map(({ path }) => path)));
    return [...new Set([...model.breakEvens.map(({ path }) => path), ...guessedPaths(model), ...depths])];
}

/** Each once: those that were asked for, then as the ledger has them. */
export function allBreakEvens({ asked, ledger: entries }: Certainty): readonly BreakEven[] {
    return [...new Set([...asked, ...entries.flatMap(entry => entry.breakEvens)])];
}
