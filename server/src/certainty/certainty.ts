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
    /** Guesses and losses whose limit was not looked for, for there are too many; a `breakeven` line asks for one. */
    readonly left: readonly string[];
    readonly sensitivities: readonly Sensitivity[];
}

/** Members and hangers that are computed for what nobody asked for by name, counted each time; a few hundred do for a small job. */
const most = 2000;

/** Yields before each evaluation of the model. */
export function* certaintySteps(model: Model, compute: Compute): Generator<Progress, Certainty> {
    let computed = 0;
    const worst = worstFunction(model, part => {
        computed += part.members.length + part.hangers.length;
        return compute(part);
    });
    const asked = new Set(model.breakEvens.map(({ path }) => path));
    const left: string[] = [];
    const leave = (path: string): boolean => {
        const isTooMuch = computed > most && !asked.has(path);
        if (isTooMuch) left.push(path);
        return isTooMuch;
    };
    const found = yield* breakEvens(model, [...new Set([...asked, ...unasked(model)])], { worst, leave });
    const lower = sensitivitySteps(model, compute, worst);
    let step = lower.next();
    for (const of = found.length; !step.done; step = lower.next()) yield { path: step.value, done: of, of, found };
    return {
        asked: model.breakEvens.flatMap(({ path }) => found.find(one => one.path === path) ?? []),
        ledger: ledger(model, found),
        left,
        sensitivities: step.value
    };
}

/** What was guessed in so many words, how deep a loss was found to be (no awl reaches all of it), and what nothing is said of. */
function unasked(model: Model): readonly string[] {
    const guesses = guessedPaths(model);
    const stated = new Set(guessedPaths({ ...model, inputs: model.inputs.filter(({ evidence }) => evidence.stated) }));
    const depths = model.members.flatMap(({ losses }) => losses.flatMap(({ faces }) => Object.values(faces).map(({ path }) => path)));
    return [...guesses.filter(path => stated.has(path)), ...depths, ...guesses];
}

/** Each once: those that were asked for, then as the ledger has them. */
export function allBreakEvens({ asked, ledger: entries }: Certainty): readonly BreakEven[] {
    return [...new Set([...asked, ...entries.flatMap(entry => entry.breakEvens)])];
}
