/** Deflections against a share of the span, EN 1995-1-1 7.2. Lengths mm. */
import type { Member } from '../../../../language/src/model.js';
import type { Deflection, Span } from '../../analysis/actions.js';
import type { Step } from '../../results.js';
import type { Outcome } from '../check.js';
import { amount, quotient, step, term, utilisationStep } from '../steps.js';

/** Length that a limit is a fraction of: an overhang counts as half of a span of twice its length, as in Table 7.2. */
export function referenceLength({ from, to, overhang }: Span): number {
    return (overhang ? 2 : 1) * (to - from);
}

export interface DeflectionLimit {
    /** TeX, `w_{inst}`. */
    readonly symbol: string;
    /** Span over the limit. */
    readonly divisor: number;
    readonly note: string;
}

const table = 'EN 1995-1-1 Table 7.2';

/** One outcome a span or overhang. */
export function deflectionOutcomes(deflections: readonly Deflection[], limit: DeflectionLimit): readonly Outcome[] {
    return deflections.map(({ value, at, span, combination }) => {
        const demand = Math.abs(value);
        const capacity = referenceLength(span) / limit.divisor;
        return {
            utilisation: quotient(demand, capacity),
            demand: amount(demand, 'mm'),
            capacity: amount(capacity, 'mm'),
            combination,
            at,
            explain: () => [
                limitStep(span, limit, capacity),
                utilisationStep(
                    term(limit.symbol, demand, 'mm', `from the analysis, bending and shear, ${value < 0 ? 'upwards' : 'downwards'}; ${limit.note}`),
                    term('w_{lim}', capacity, 'mm'), table)
            ]
        };
    });
}

/** A beam always deflects: without a number for it that is said. */
export function deflectionLacking(check: string, { kind }: Member, deflections: readonly Deflection[]): readonly string[] {
    return kind === 'beam' && deflections.length === 0 ? [`${check}: no deflection was computed`] : [];
}

function limitStep(span: Span, { divisor }: DeflectionLimit, capacity: number): Step {
    const [formula, meaning] = span.overhang ? ['\\frac{2 l}{n}', 'overhang, measured against twice its length'] : ['\\frac{l}{n}', 'span'];
    return step('w_{lim}', formula, [term('l', span.to - span.from, 'mm', meaning), term('n', divisor, '', 'limit of the basis')],
        amount(capacity, 'mm'), { clause: table });
}
