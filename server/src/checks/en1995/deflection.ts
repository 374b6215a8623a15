/** Deflections against a share of the span, EN 1995-1-1 7.2. Lengths mm. */
import type { Deflection, Span } from '../../analysis/actions.js';
import type { Step } from '../../results.js';
import type { Outcome } from '../check.js';
import { amount, quotient, step, term, utilisationStep } from '../steps.js';

/** Length that a limit is a fraction of: an overhang counts as half of a span of twice its length, as in Table 7.2. */
export function referenceLength({ from, to, overhang }: Span): number {
    return (overhang ? 2 : 1) * (to - from);
}

/** Net deflection of a span that was cambered by `camber`, EN 1995-1-1 (7.2). */
export function netDeflection(value: number, camber: number): number {
    return value - camber;
}

export interface DeflectionLimit {
    /** TeX, `w_{inst}`. */
    readonly symbol: string;
    /** Span over the limit. */
    readonly divisor: number;
    readonly clause: string;
    readonly note?: string;
    /** mm, taken off each deflection. */
    readonly camber: number;
}

/** One outcome a span or overhang. */
export function deflectionOutcomes(deflections: readonly Deflection[], limit: DeflectionLimit): readonly Outcome[] {
    return deflections.map(deflection => {
        const camber = deflection.span.overhang ? 0 : limit.camber;
        const demand = Math.abs(netDeflection(deflection.value, camber));
        const capacity = referenceLength(deflection.span) / limit.divisor;
        return {
            utilisation: quotient(demand, capacity),
            demand: amount(demand, 'mm'),
            capacity: amount(capacity, 'mm'),
            combination: deflection.combination,
            at: deflection.at,
            explain: () => {
                const net = camber === 0 ? term(limit.symbol, demand, 'mm', direction(deflection)) : term('w_{net}', demand, 'mm');
                return [
                    ...camber === 0 ? [] : [camberStep(deflection, limit, camber, demand)],
                    limitStep(deflection.span, limit, capacity),
                    utilisationStep(net, term('w_{lim}', capacity, 'mm'), limit.clause)
                ];
            }
        };
    });
}

function camberStep(deflection: Deflection, { symbol }: DeflectionLimit, camber: number, demand: number): Step {
    return step('w_{net}', `|${symbol} - w_c|`, [
        term(symbol, deflection.value, 'mm', direction(deflection)), term('w_c', camber, 'mm', 'precamber')
    ], amount(demand, 'mm'), { clause: 'EN 1995-1-1 (7.2)' });
}

function limitStep(span: Span, { divisor, clause, note }: DeflectionLimit, capacity: number): Step {
    const [formula, meaning] = span.overhang ? ['\\frac{2 l}{n}', 'overhang, measured against twice its length'] : ['\\frac{l}{n}', 'span'];
    return step('w_{lim}', formula, [term('l', span.to - span.from, 'mm', meaning), term('n', divisor, '', 'limit of the basis')],
        amount(capacity, 'mm'), { clause, note });
}

function direction({ value }: Deflection): string {
    return `from the analysis, bending and shear, ${value < 0 ? 'upwards' : 'downwards'}`;
}
