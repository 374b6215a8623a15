import type { Step, Term } from '../../../results.js';
import { kN, plain, quotient, step, type TermRow } from '../../steps.js';
import type { Verdict } from '../../verdict.js';

/** Force and resistance under the names they have in the clause. */
export interface Comparison {
    /** N. */
    readonly demand: number;
    readonly demandSymbol: string;
    /** N, design value. */
    readonly capacity: number;
    readonly capacitySymbol: string;
    readonly clause: string;
}

/** A force against what resists it; the step that compares them comes after those of `explain`. */
export function verifyForce(
    { demand, demandSymbol, capacity, capacitySymbol, clause }: Comparison, explain: () => readonly Step[]
): Verdict {
    const utilisation = quotient(demand, capacity);
    return {
        utilisation, demand: kN(demand), capacity: kN(capacity), clause,
        explain: () => [...explain(), step('\\eta', `\\frac{${demandSymbol}}{${capacitySymbol}}`,
            [[demandSymbol, demand, 'N'], [capacitySymbol, capacity, 'N']], plain(utilisation), { clause })]
    };
}

/** Those of the terms whose symbol stands in the formula. */
export function termsIn(formula: string, terms: readonly TermRow[]): readonly TermRow[] {
    return terms.filter(([symbol]) => formula.includes(symbol));
}

export const newton = (value: number): Term['amount'] => ({ value, unit: 'N' });
