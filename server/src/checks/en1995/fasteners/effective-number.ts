import type { Step } from '../../../results.js';
import { newton, plain, step, type TermRow } from '../../steps.js';
import { isProblem, unsound, type Problem, type Verdict } from '../../verdict.js';
import { verifyForce } from './verify.js';

export interface RowInput {
    /** Bolts in one row along the grain. */
    readonly n: number;
    /** Their spacing along the grain, mm; the least one where it varies. */
    readonly a1: number;
    readonly d: number;
    /** Force to grain, rad, 0 to π/2. */
    readonly angle: number;
}

export interface EffectiveNumber {
    readonly nef: number;
    readonly explain: () => readonly Step[];
}

/** How many bolts of a row count. EN 1995-1-1 (8.34) along the grain, all of them across, linear between: 8.5.1.1(4). */
export function effectiveNumber(row: RowInput): EffectiveNumber | Problem {
    const wrong = unsound('positive', { 'the number of bolts': row.n, 'the bolt diameter': row.d })
        ?? unsound('not negative', { 'the angle to the grain': row.angle })
        ?? (row.n > 1 ? unsound('positive', { 'the bolt spacing': row.a1 }) : undefined);
    return wrong ?? { nef: nefAt(row), explain: () => nefSteps(row) };
}

function nefAlong({ n, a1, d }: RowInput): number {
    return n === 1 ? 1 : Math.min(n, n ** 0.9 * (a1 / (13 * d)) ** 0.25);
}

function nefAt(row: RowInput): number {
    const along = nefAlong(row);
    return along + (row.n - along) * Math.min(1, row.angle / (Math.PI / 2));
}

/**
 * Force along a row against what its bolts bear along the grain together, N: for a force at an angle the part
 * along the row is verified by itself. EN 1995-1-1 8.1.2(4) and (5), (8.1).
 * @param forceAlong design force of the row along the grain; @param capacity of one bolt along the grain, design value.
 */
export function rowAlongGrain(row: Omit<RowInput, 'angle'>, forceAlong: number, capacity: number): Verdict | Problem {
    const along = effectiveNumber({ ...row, angle: 0 });
    const wrong = unsound('positive', { 'the bolt capacity': capacity }) ?? unsound('not negative', { 'the force along the row': forceAlong });
    if (wrong || isProblem(along)) {
        return wrong ?? along as Problem;
    }
    return verifyForce({
        demand: forceAlong, demandSymbol: 'F_{v,Ed,0}', capacity: along.nef * capacity, capacitySymbol: 'F_{v,ef,Rd}',
        clause: 'EN 1995-1-1 8.1.2(5)'
    }, () => [
        ...along.explain(),
        step('F_{v,ef,Rd}', 'n_{ef,0}\\,F_{v,Rd}', [['n_{ef,0}', along.nef, ''], ['F_{v,Rd}', capacity, 'N', 'one bolt along the grain']],
            newton(along.nef * capacity), { clause: 'EN 1995-1-1 (8.1)' })
    ]);
}

function nefSteps(row: RowInput): readonly Step[] {
    const along = nefAlong(row);
    const n: TermRow = ['n', row.n, '', 'bolts in the row'];
    const first = step('n_{ef,0}', '\\min\\left(n,\\;n^{0.9}\\,\\sqrt[4]{\\frac{a_1}{13\\,d}}\\right)',
        [n, ['a_1', row.a1, 'mm', 'spacing along the grain'], ['d', row.d, 'mm']], plain(along), { clause: 'EN 1995-1-1 (8.34)' });
    return row.n === 1 ? [] : row.angle === 0 ? [first] : [first,
        step('n_{ef}', 'n_{ef,0} + \\left(n - n_{ef,0}\\right)\\frac{\\alpha}{90^{\\circ}}',
            [['n_{ef,0}', along, ''], n, ['\\alpha', row.angle * 180 / Math.PI, '°']], plain(nefAt(row)), { clause: 'EN 1995-1-1 8.5.1.1(4)' })];
}
