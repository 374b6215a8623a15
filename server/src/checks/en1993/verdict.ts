/** What a clause says of one design situation: a verdict, or a sentence that says why there is none. */
import type { Amount, Step, Term } from '../../results.js';

export { isProblem, problem, unsound, type InputKind, type Problem } from '../../analysis/problem.js';

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

/** Infinity over nothing, 0 of nothing over nothing; never NaN for finite input. */
export const ratio = (demand: number, capacity: number): number =>
    demand <= 0 ? 0 : capacity > 0 ? demand / capacity : Infinity;

/** A demand against a capacity, both in N or N mm as `as` prints them. */
export function against(demand: number, capacity: number, as: (value: number) => Amount, clause: string, explain: () => readonly Step[]): Verdict {
    return { utilisation: ratio(demand, capacity), demand: as(demand), capacity: as(capacity), clause, explain };
}

/** A sum of shares against 1. */
export const againstOne = (sum: number, clause: string, explain: () => readonly Step[]): Verdict =>
    ({ utilisation: sum, demand: plain(sum), capacity: plain(1), clause, explain });

export function worst<T extends Verdict>(first: T, ...others: readonly T[]): T {
    return others.reduce((most, one) => one.utilisation > most.utilisation ? one : most, first);
}

export type TermRow = readonly [symbol: string, value: number, unit: string, meaning?: string];

/** A line of the calculation with its terms written as rows. */
export function step(symbol: string, formula: string, terms: readonly TermRow[], result: Amount, extra: Pick<Step, 'clause' | 'note'> = {}): Step {
    const written: readonly Term[] = terms.map(([name, value, unit, meaning]) =>
        ({ symbol: name, amount: { value, unit }, ...(meaning === undefined ? {} : { meaning }) }));
    return { symbol, formula, terms: written, result, ...extra };
}

export const kN = (newton: number): Amount => ({ value: newton / 1e3, unit: 'kN' });
export const kNm = (newtonMillimetre: number): Amount => ({ value: newtonMillimetre / 1e6, unit: 'kNm' });
export const plain = (value: number): Amount => ({ value, unit: '' });
export const mm = (value: number): Amount => ({ value, unit: 'mm' });
export const mm2 = (value: number): Amount => ({ value, unit: 'mm2' });
export const MPa = (value: number): Amount => ({ value, unit: 'MPa' });
