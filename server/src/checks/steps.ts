import type { SourceRef } from '../../../language/src/model.js';
import type { Amount, Step, Term, Unit } from '../results.js';

/** Units of a calculation: a floor's too. */
type StepUnit = Unit | 'kg/m2' | 'Nm2/m';

export const amount = (value: number, unit: StepUnit): Amount => ({ value, unit });

export function term(symbol: string, value: number, unit: StepUnit = '', meaning?: string, source?: SourceRef): Term {
    return { symbol, amount: { value, unit }, meaning, source };
}

export function step(symbol: string, formula: string, terms: readonly Term[], result: Amount, more: Pick<Step, 'clause' | 'note'> = {}): Step {
    return { symbol, formula, terms, result, ...more };
}

/** The last line of most checks: demand over capacity. */
export function utilisationStep(demand: Term, capacity: Term, clause: string): Step {
    return step('\\eta', `\\frac{${demand.symbol}}{${capacity.symbol}}`, [demand, capacity],
        amount(quotient(demand.amount.value, capacity.amount.value), ''), { clause, note: 'has to be \\le 1' });
}

/** Demand over capacity: Infinity where there is no capacity, also for no demand. */
export function quotient(demand: number, capacity: number): number {
    return capacity > 0 ? demand / capacity : capacity <= 0 ? Infinity : NaN;
}
