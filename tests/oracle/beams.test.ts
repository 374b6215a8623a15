import { describe, expect, test } from 'vitest';
import type { MemberActions } from '../../server/src/analysis/actions.js';
import { bendingOnly, elastic, recommended, single, type LoadSketch, type SupportSketch } from './fixture.js';
import { input, referenceCase, type ReferenceCase } from './cases.js';

/** A section of unit stiffness per MPa: with b = 12, h = 100 the second moment is 10⁶ mm⁴. */
const section = { b: 12, h: 100 };
const I = 1e6;

/** Factors 1: figures of one load are those of the load itself. */
const plain = { gammaG: 1, gammaGfavourable: 1 };

function close(actual: number, figure: { readonly value: number; readonly tolerance_rel: number }, scale = 1): void {
    const wanted = figure.value * scale;
    expect(Math.abs(actual - wanted), `${actual} for ${wanted}`).toBeLessThanOrEqual(figure.tolerance_rel * Math.abs(wanted) + 1e-9);
}

function greatest(points: readonly { readonly x: number; readonly max: number }[]) {
    return points.reduce((best, point) => (point.max > best.max ? point : best));
}

function least(points: readonly { readonly x: number; readonly min: number }[]) {
    return points.reduce((best, point) => (point.min < best.min ? point : best));
}

function valueAt(points: readonly { readonly x: number; readonly max: number }[], x: number): number {
    return points.find((point) => Math.abs(point.x - x) < 1e-6)!.max;
}


/** The stored single beams: length, EI, loads, supports and springs as lists. */
function stored(of: ReferenceCase): MemberActions {
    const udl = of.inputs['udl']!.value as [number, number, number][];
    const points = of.inputs['points']!.value as [number, number][];
    const supports = of.inputs['supports']!.value as [number, 'p' | 'f'][];
    const springs = of.inputs['springs']!.value as [number, number][];
    const loads: LoadSketch[] = [
        ...udl.map(([from, to, q]) => ({ from, to, q })),
        ...points.map(([at, F]) => ({ at, F }))
    ];
    const holds: SupportSketch[] = [
        ...supports.map(([at, kind]): SupportSketch => ({ at, kind: kind === 'f' ? 'fixed' : 'wall' })),
        ...springs.map(([at, k]): SupportSketch => ({ at, kind: 'spring', k }))
    ];
    return single({ ...section, length: input(of, 'L'), supports: holds }, loads, elastic(input(of, 'EI') / I, { G: bendingOnly }), { ...recommended, ...plain });
}

describe('reference-cases.json: single beams against standard beam theory', () => {
    test('SS-01 simply supported, uniform load', () => {
        const of = referenceCase('SS-01');
        const actions = stored(of);
        close(greatest(actions.diagrams.M).max, of.results['M']!);
        close(actions.instant[0]!.value, of.results['d']!);
        close(actions.supports[0]!.design.max, of.results['R']!);
    });
    test('SS-02 central point load', () => {
        const of = referenceCase('SS-02');
        const actions = stored(of);
        close(greatest(actions.diagrams.M).max, of.results['M']!);
        close(actions.instant[0]!.value, of.results['d']!);
    });
    test('SS-03 point load off the middle: peak of the deflection between nodes', () => {
        const of = referenceCase('SS-03');
        const actions = stored(of);
        close(greatest(actions.diagrams.M).max, of.results['M']!);
        close(valueAt(actions.diagrams.instant, 1200), of.results['d_load']!);
        close(actions.instant[0]!.value, of.results['d_max']!);
        close(actions.instant[0]!.at, of.results['x_max']!);
        close(actions.supports[0]!.design.max, of.results['R1']!);
    });
    test('SS-04 two equal loads', () => {
        const of = referenceCase('SS-04');
        const actions = stored(of);
        close(greatest(actions.diagrams.M).max, of.results['M']!);
        close(actions.instant[0]!.value, of.results['d']!);
    });
    test('SS-05 partial uniform load: peak moment where the shear is zero', () => {
        const of = referenceCase('SS-05');
        const actions = stored(of);
        close(actions.supports[0]!.design.max, of.results['R1']!);
        close(actions.supports[1]!.design.max, of.results['R2']!);
        close(greatest(actions.diagrams.M).max, of.results['M_max']!);
    });
    test('CA-01 cantilever', () => {
        const of = referenceCase('CA-01');
        const actions = stored(of);
        close(least(actions.diagrams.M).min, of.results['M']!);
        close(actions.instant[0]!.value, of.results['d']!);
    });
    test('PR-01 propped cantilever', () => {
        const of = referenceCase('PR-01');
        const actions = stored(of);
        close(least(actions.diagrams.M).min, of.results['M_fix']!);
        close(greatest(actions.diagrams.M).max, of.results['M_span']!);
        close(actions.supports[1]!.design.max, of.results['R_prop']!);
        close(actions.instant[0]!.value, of.results['d_max']!);
    });
    test('CB-U1 two unequal spans', () => {
        const of = referenceCase('CB-U1');
        const actions = stored(of);
        close(least(actions.diagrams.M).min, of.results['M_B']!);
        for (const [i, name] of ['R_A', 'R_B', 'R_C'].entries()) close(actions.supports[i]!.design.max, of.results[name]!);
    });
    test('SPR-01 elastic prop at the middle', () => {
        const of = referenceCase('SPR-01');
        const actions = stored(of);
        close(actions.supports.find(({ kind }) => kind === 'spring')!.design.max, of.results['R_spring']!);
        close(valueAt(actions.diagrams.instant, 2000), of.results['d_mid']!);
        close(valueAt(actions.diagrams.M, 2000), of.results['M_mid']!);
    });
    test('WF-01 long beam on an elastic foundation of springs', () => {
        const of = referenceCase('WF-01');
        const actions = stored(of);
        // The chord runs between the ends, which 9 m and more from the load do not move.
        close(valueAt(actions.diagrams.instant, 6000), of.results['w0']!);
        close(valueAt(actions.diagrams.M, 6000), of.results['M0']!);
    });
});
