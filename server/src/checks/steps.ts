import type { SourceRef } from '../../../language/src/model.js';
import type { Amount, Step, Term, Unit } from '../results.js';

/** Units of a calculation: a floor's and a fastener's too. */
type StepUnit = Unit | 'kg/m2' | 'Nm2/m' | 'N·mm' | '°' | 'kg/m³' | 'N/mm' | 'kN/mm' | 'mm/N' | 'mm6';

export const amount = (value: number, unit: StepUnit = ''): Amount => ({ value, unit });

/** Amounts of what is in N and N·mm, as they are printed; and of mm, MPa and plain numbers. */
export const kN = (newton: number): Amount => amount(newton / 1e3, 'kN');
export const kNm = (newtonMillimetre: number): Amount => amount(newtonMillimetre / 1e6, 'kNm');
export const newton = (value: number): Amount => amount(value, 'N');
export const mm = (value: number): Amount => amount(value, 'mm');
export const MPa = (value: number): Amount => amount(value, 'MPa');
export const plain = (value: number): Amount => amount(value);

export function term(symbol: string, value: number, unit: StepUnit = '', meaning?: string, source?: SourceRef): Term {
    return { symbol, amount: { value, unit }, meaning, source };
}

/** A term before it is one: what `term` takes. */
export type TermRow = Readonly<Parameters<typeof term>>;

/** A line of the calculation, its terms as such or as rows. */
export function step(
    symbol: string, formula: string, terms: readonly (Term | TermRow)[], result: Amount, more: Pick<Step, 'clause' | 'note'> = {}
): Step {
    return { symbol, formula, terms: terms.map(one => 'symbol' in one ? one : term(...one)), result, ...more };
}

/** The last line of most checks: demand over capacity. */
export function utilisationStep(demand: Term, capacity: Term, clause: string): Step {
    return step('\\eta', `\\frac{${demand.symbol}}{${capacity.symbol}}`, [demand, capacity],
        amount(quotient(demand.amount.value, capacity.amount.value)), { clause, note: 'has to be \\le 1' });
}

/** Demand over capacity: Infinity where there is no capacity, also for no demand. */
export function quotient(demand: number, capacity: number): number {
    return capacity > 0 ? demand / capacity : capacity <= 0 ? Infinity : NaN;
}
