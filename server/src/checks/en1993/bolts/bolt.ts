/** EN 1993-1-8 Table 3.4: resistance of one bolt, non-preloaded, in normal round holes. N, mm, MPa. */
import { normalHole } from '../../../analysis/splice-layout.js';
import type { BoltGrade, Thread } from '../../../catalog/bolts.js';

export interface Bolt {
    /** `M16 8.8`. */
    readonly name: string;
    readonly d: number;
    /** Hole. */
    readonly d0: number;
    /** Tensile stress area of the thread. */
    readonly As: number;
    readonly fub: number;
    /** 0.6 for classes 4.6, 5.6 and 8.8, 0.5 for 4.8, 5.8, 6.8 and 10.9: threads in the shear plane. */
    readonly alphaV: number;
    /** Width of head or nut across its flats. */
    readonly across: number;
}

/** F_v,Rd of one shear plane through the thread. */
export const shearResistance = ({ alphaV, fub, As }: Bolt, gammaM2: number): number => alphaV * fub * As / gammaM2;

/** F_t,Rd; no countersunk bolts. */
export const tensionResistance = ({ fub, As }: Bolt, gammaM2: number): number => 0.9 * fub * As / gammaM2;

/** B_p,Rd, punching of a plate of thickness t; d_m is taken as the width across flats, which is on the safe side. */
export const punchingResistance = ({ across }: Bolt, plate: { readonly t: number; readonly fu: number }, gammaM2: number): number =>
    0.6 * Math.PI * across * plate.t * plate.fu / gammaM2;

/** Distances of a bolt in a plate, seen along the force (1) and across it (2); undefined where there is no neighbour or edge. */
export interface Distances {
    readonly e1?: number;
    readonly p1?: number;
    readonly e2?: number;
    readonly p2?: number;
}

/** F_b,Rd: the least of an end and an inner, an edge and an inner bolt that the distances name. */
export function bearingResistance(bolt: Bolt, plate: { readonly t: number; readonly fu: number }, distances: Distances, gammaM2: number): number {
    const { k1, alphaB } = bearingFactors(bolt, plate.fu, distances);
    return Math.max(k1, 0) * Math.max(alphaB, 0) * plate.fu * bolt.d * plate.t / gammaM2;
}

export function bearingFactors({ d0, fub }: Bolt, fu: number, { e1, p1, e2, p2 }: Distances): { k1: number; alphaB: number } {
    const inf = Infinity;
    return {
        k1: Math.min(e2 === undefined ? inf : 2.8 * e2 / d0 - 1.7, p2 === undefined ? inf : 1.4 * p2 / d0 - 1.7, 2.5),
        alphaB: Math.min(e1 === undefined ? inf : e1 / (3 * d0), p1 === undefined ? inf : p1 / (3 * d0) - 0.25, fub / fu, 1)
    };
}

/** Shear and tension together: F_v / F_v,Rd + F_t / 1.4 F_t,Rd, and tension by itself. */
export const combined = (shear: number, shearRd: number, tension: number, tensionRd: number): number =>
    Math.max(shear / shearRd + tension / (1.4 * tensionRd), tension / tensionRd);

/** β_Lf of 3.8: what a joint longer than 15 d leaves of its bolts' shear resistance. */
export const longJoint = ({ d }: Bolt, length: number): number => Math.min(Math.max(1 - (length - 15 * d) / (200 * d), 0.75), 1);

/** Distances below the least of Table 3.3 (1.2 d0 to ends and edges, 2.2 d0 along and 2.4 d0 across the force), in words. */
export function tooClose({ d0 }: Bolt, { e1, p1, e2, p2 }: Distances): readonly string[] {
    const rules: readonly [string, number | undefined, number][] = [
        ['end distance e1', e1, 1.2], ['edge distance e2', e2, 1.2], ['pitch p1', p1, 2.2], ['gauge p2', p2, 2.4]
    ];
    return rules.flatMap(([what, given, least]) => given !== undefined && given < least * d0 - 1e-9
        ? [`${what} ${round(given)} mm is less than ${least} d0 = ${round(least * d0)} mm (EN 1993-1-8 Table 3.3)`] : []);
}

const round = (value: number): number => Math.round(value * 10) / 10;

/**
 * The bolt of a thread and a class in its normal round hole: 1 mm over to M14, 2 mm to M24, 3 mm beyond
 * (EN 1993-1-8 with EN 1090-2; "Steel Buildings in Europe", multi-storey part 5, 2.1 prints 2 and 3 mm).
 */
export function boltOf(thread: Thread, grade: BoltGrade, d0 = normalHole(thread.d)): Bolt {
    return { name: `${thread.name} ${grade.name}`, d: thread.d, d0, As: thread.As, fub: grade.fub, alphaV: grade.alphaV, across: thread.acrossFlats };
}
