/** Comparing diagrams with printed figures. */
import { expect } from 'vitest';
import type { DiagramPoint, MemberActions } from '../../server/src/analysis/actions.js';
import { input, type Figure, type ReferenceCase } from './cases.js';
import { bendingOnly, elastic, recommended, single, type LoadSketch, type SupportSketch } from './fixture.js';

/** The cases are stored with seven digits. */
const storedDigits = 1e-7;

/** Within the tolerance that covers the source's rounding; `scale` turns a coefficient into a figure. */
export function close(actual: number, figure: Pick<Figure, 'value' | 'tolerance_rel'> | undefined, scale = 1): void {
    if (!figure) throw new Error('no such figure in the case');
    const wanted = figure.value * scale;
    expect(Math.abs(actual - wanted), `${actual} where the source has ${wanted}`).toBeLessThanOrEqual((figure.tolerance_rel + storedDigits) * Math.abs(wanted) + 1e-9 * Math.abs(scale));
}

export function greatest(points: readonly DiagramPoint[], from = -Infinity, to = Infinity): DiagramPoint {
    return points.filter(({ x }) => x >= from && x <= to).reduce((best, point) => (point.max > best.max ? point : best));
}

export function least(points: readonly DiagramPoint[], from = -Infinity, to = Infinity): DiagramPoint {
    return points.filter(({ x }) => x >= from && x <= to).reduce((best, point) => (point.min < best.min ? point : best));
}

/** At a station that is there. */
export function valueAt(points: readonly DiagramPoint[], x: number): number {
    const found = points.find((point) => Math.abs(point.x - x) < 1e-6);
    if (!found) throw new Error(`no station at ${x}`);
    return found.max;
}

/** With b = 12 and h = 100 the second moment is 10⁶ mm⁴, so that EI = 10⁶ E. */
export const unitSection = { b: 12, h: 100 };
export const unitSecondMoment = 1e6;

/** Factors of 1, so that the figures of one permanent load are those of the load itself. */
export const unfactored = { ...recommended, gammaG: 1, gammaGfavourable: 1 };

/** A slender beam of stiffness EI (N·mm²) without shear deformation; permanent loads have factors of 1 unless said otherwise. */
export function slender(
    EI: number, length: number, supports: readonly SupportSketch[], loads: readonly LoadSketch[], parameters = unfactored
): MemberActions {
    return single({ ...unitSection, length, supports }, loads, elastic(EI / unitSecondMoment, { G: bendingOnly }), parameters);
}

/** The beams that are stored as lists of loads, supports and springs. */
export function storedBeam(of: ReferenceCase): MemberActions {
    const list = (name: string): number[][] => of.inputs[name]!.value as number[][];
    const supports = of.inputs['supports']!.value as [number, 'p' | 'f'][];
    return slender(
        input(of, 'EI'), input(of, 'L'),
        [
            ...supports.map(([at, kind]): SupportSketch => ({ at, kind: kind === 'f' ? 'fixed' : 'wall' })),
            ...list('springs').map(([at, k]): SupportSketch => ({ at: at!, kind: 'spring', k }))
        ],
        [...list('udl').map(([from, to, q]) => ({ from, to, q })), ...list('points').map(([at, F]) => ({ at, F }))]
    );
}
