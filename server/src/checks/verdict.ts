/** What a clause says of one design situation: a verdict, or a sentence that says why there is none. */
import type { Amount, Step } from '../results.js';
import { plain, quotient, step } from './steps.js';

export { isProblem, problem, unsound, type InputKind, type Problem } from '../analysis/problem.js';

export interface Verdict {
    /** Demand over capacity; Infinity where there is no capacity. */
    readonly utilisation: number;
    readonly demand: Amount;
    readonly capacity: Amount;
    readonly clause: string;
    /** Called for the governing verdict alone. */
    readonly explain: () => readonly Step[];
}

/** One of several verdicts on the same thing, e.g. `bolts in shear` of a splice. */
export interface NamedVerdict extends Verdict { readonly name: string }

/** A demand against a capacity, both in N or N mm as `as` prints them; the step that compares them comes after those of `explain`. */
export function against(demand: number, capacity: number, as: (value: number) => Amount, clause: string, explain: () => readonly Step[]): Verdict {
    const utilisation = quotient(demand, capacity);
    return {
        utilisation, demand: as(demand), capacity: as(capacity), clause,
        explain: () => [...explain(), step('\\eta', '\\frac{E_d}{R_d}', [
            { symbol: 'E_d', amount: as(demand), meaning: 'demand' }, { symbol: 'R_d', amount: as(capacity), meaning: 'capacity' }
        ], plain(utilisation), { clause })]
    };
}

/** A sum of shares against 1. */
export const againstOne = (sum: number, clause: string, explain: () => readonly Step[]): Verdict =>
    ({ utilisation: sum, demand: plain(sum), capacity: plain(1), clause, explain });

export function worst<T extends Verdict>(first: T, ...others: readonly T[]): T {
    return others.reduce((most, one) => one.utilisation > most.utilisation ? one : most, first);
}
