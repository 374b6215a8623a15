/**
 * Elastic critical moment of a length between two points that are held sideways and against twist
 * (free to turn in plan and to warp: k = kw = 1), doubly symmetric I, channel loaded through its shear centre, or flat:
 * the three-factor formula without its C3 term (ENV 1993-1-1 Annex F, NCCI SN003; from memory, as case SB-topload of
 * the reference cases; an independent Ritz solution agrees, tests/steel/oracle/critical_moment.py).
 */
import type { SteelSection } from '../../catalog/section-geometry.js';
import type { SteelStrength } from '../../catalog/steel.js';
import type { Step } from '../../results.js';
import { kNm, step } from '../steps.js';

/** Shape of the moment diagram (C1) and weight of the height of the load (C2). */
export interface MomentShape {
    readonly C1: number;
    readonly C2: number;
    readonly source: string;
}

const listed = 'three-factor tables, from memory; "Steel Buildings in Europe", multi-storey part 10, Table 5.1 prints';
/** The same moment all along: the least favourable shape. */
export const uniformMoment: MomentShape = { C1: 1, C2: 0, source: 'closed form' };
export const uniformLoad: MomentShape = { C1: 1.127, C2: 0.454, source: `${listed} 1.13 and 0.45` };
/** One load at the middle of the length. C2 0.63 is on the safe side for a load above the shear centre. */
export const middleLoad: MomentShape = { C1: 1.348, C2: 0.63, source: `${listed} 1.35 and 0.59` };

export interface MomentPoint {
    /** Along the beam, mm. */
    readonly x: number;
    /** Sagging positive, N mm. */
    readonly M: number;
}

/**
 * C1 and C2 of any diagram, given by its values from one held point to the next (straight between them), by energy with
 * one sine wave of twist: C1 = 1/√a, C2 = C1 b L²/2π², where a = 2/L ∫ (M/M_max)² sin²(πx/L) dx, b = 2/L Σ P sin²(πx/L) / M_max,
 * P the loads, which are the kinks of the diagram. One wave lies up to 4 % above the full solution (8 % where the moment
 * changes sign), so C1 is taken 5 % lower and 2.3 at most, C2 15 % higher. Standard theory; never above the Ritz solution of
 * tests/steel/oracle/critical_moment.py. A diagram that is nothing, or of fewer than two points, counts as uniform.
 */
export function shapeOfDiagram(points: readonly MomentPoint[]): MomentShape {
    const start = points[0]?.x ?? 0;
    const L = (points.at(-1)?.x ?? 0) - start;
    const most = Math.max(0, ...points.map(({ M }) => Math.abs(M)));
    if (!(L > 0) || !(most > 0) || !Number.isFinite(most)) {
        return uniformMoment;
    }
    const sine = (x: number): number => Math.sin(Math.PI * (x - start) / L) ** 2;
    const pieces = points.slice(1).map((right, i) => ({ left: points[i]!, right })).filter(({ left, right }) => right.x > left.x);
    const a = 2 / L * pieces.reduce((sum, { left, right }) => sum + simpson(left.x, right.x, x =>
        ((left.M + (right.M - left.M) * (x - left.x) / (right.x - left.x)) / most) ** 2 * sine(x)), 0);
    const slope = ({ left, right }: { left: MomentPoint; right: MomentPoint }): number => (right.M - left.M) / (right.x - left.x);
    const b = 2 / L * pieces.slice(1).reduce((sum, piece, i) => sum + (slope(pieces[i]!) - slope(piece)) * sine(piece.left.x), 0) / most;
    const wave = 1 / Math.sqrt(a);
    const C1 = Math.min(Math.max(wave / 1.05, 1), 2.3);
    return { C1, C2: 1.15 * wave * Math.max(b, 0) * L ** 2 / (2 * Math.PI ** 2), source: 'energy with one sine wave, C1 less 5 %, C2 more by 15 %' };
}

function simpson(from: number, to: number, f: (x: number) => number, halves = 8): number {
    const h = (to - from) / (2 * halves);
    const inner = Array.from({ length: 2 * halves - 1 }, (_, i) => (i % 2 === 0 ? 4 : 2) * f(from + (i + 1) * h));
    return h / 3 * (f(from) + inner.reduce((sum, one) => sum + one, 0) + f(to));
}

export interface LateralLength {
    /** Between points held sideways and against twist, mm; 0 where the compression edge is held all along. An overhang whose tip is free is not such a length. */
    readonly length: number;
    readonly shape: MomentShape;
    /** Height of the load above the shear centre, mm. A load below it counts as in it, on the safe side. */
    readonly loadHeight: number;
}

/** M_cr, N mm; Infinity for a length of less than 1 mm. */
export function criticalMoment(section: SteelSection, steel: SteelStrength, { length, shape, loadHeight }: LateralLength): number {
    if (length < 1) {
        return Infinity;
    }
    const euler = Math.PI ** 2 * steel.E * section.Iz / length ** 2;
    const offset = shape.C2 * Math.max(loadHeight, 0);
    const stiff = section.Iw / section.Iz + steel.G * section.It / euler;
    // sqrt(stiff + offset²) - offset, in the form that keeps its digits where the load is high above.
    return shape.C1 * euler * stiff / (Math.hypot(Math.sqrt(stiff), offset) + offset);
}

export function explainCriticalMoment(section: SteelSection, steel: SteelStrength, lateral: LateralLength): Step {
    const { shape: { C1, C2, source }, length, loadHeight } = lateral;
    return step('M_{cr}',
        'C_1 \\frac{\\pi^2 E I_z}{L^2} \\left( \\sqrt{\\frac{I_w}{I_z} + \\frac{L^2 G I_t}{\\pi^2 E I_z} + (C_2 z_g)^2} - C_2 z_g \\right)', [
            ['C_1', C1, '', source], ['C_2', C2, ''], ['z_g', Math.max(loadHeight, 0), 'mm', 'height of the load above the shear centre'],
            ['L', length, 'mm', 'between points held sideways'], ['E', steel.E, 'MPa'], ['G', steel.G, 'MPa'],
            ['I_z', section.Iz, 'mm4'], ['I_t', section.It, 'mm4'], ['I_w', section.Iw, 'mm6']
        ], kNm(criticalMoment(section, steel, lateral)), { clause: 'three-factor formula, k = k_w = 1' });
}
