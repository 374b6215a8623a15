/**
 * A bolted splice of a rolled I or H beam with a cover on each flange and a pair on the web: geometry and stiffness.
 * EN 1993-1-8 6.3.2 Table 6.11 (k11, k12), from memory. N, mm, MPa, rad.
 */
import type { SteelSection } from '../catalog/section-geometry.js';
import type { SpliceStiffness } from './splice.js';

export interface CoverSplice {
    readonly beam: SteelSection;
    /** Clear between the two beam ends. */
    readonly gap: number;
    /** One cover on the outer face of each flange, two bolts abreast. */
    readonly flange: {
        readonly width: number;
        readonly thickness: number;
        /** Pairs of bolts along each side of the joint. */
        readonly pairs: number;
        readonly pitch: number;
        readonly gauge: number;
        /** From the end of the cover, and of the beam, to the nearest bolt. */
        readonly coverEnd: number;
        readonly beamEnd: number;
    };
    /** A cover on either face of the web. */
    readonly web: {
        readonly depth: number;
        /** Of each. */
        readonly thickness: number;
        /** Bolts one above another, and lines of them on each side of the joint. */
        readonly rows: number;
        readonly lines: number;
        /** Upright between rows, and along the beam between lines. */
        readonly rowPitch: number;
        readonly linePitch: number;
        readonly coverEnd: number;
        readonly beamEnd: number;
    };
}

export interface CoverBolt { readonly d: number; readonly d0: number; readonly fub: number }

const youngsModulus = 210_000;
/** d_M16 of Table 6.11. */
const referenceBolt = 16;

/**
 * Rotational stiffness by the flange covers alone; the web covers' share is not counted.
 * Each flange is four springs in a row: bolts in shear k11 and in bearing (k12, flange and cover) on either side, and
 * the bare cover between. `play` is the turn either way, bolts in the middle of their holes, before they bear:
 * fitted or preloaded bolts avoid it.
 * @param fu of flange and cover, the lesser
 */
export function coverStiffness(splice: CoverSplice, bolt: CoverBolt, fu: number): SpliceStiffness {
    const { flange, beam, gap } = splice;
    const rows = flange.pairs;
    const k11 = 16 * rows * bolt.d ** 2 * bolt.fub / (youngsModulus * referenceBolt);
    const k12 = (t: number, end: number): number => 24 * rows * bearingFactor(flange, bolt, end) * Math.min(1.5 * t / referenceBolt, 2.5) * bolt.d * fu / youngsModulus;
    const side = 1 / k11 + 1 / k12(beam.tf, flange.beamEnd) + 1 / k12(flange.thickness, flange.coverEnd);
    const bare = (gap + 2 * flange.beamEnd) / (flange.width * flange.thickness);
    const lever = beam.h + flange.thickness;
    const slip = 2 * Math.max(bolt.d0 - bolt.d, 0);
    return {
        rotational: youngsModulus * lever ** 2 / (2 * (2 * side + bare)),
        play: 2 * slip / lever,
        source: 'EN 1993-1-8 Table 6.11 (k11, k12), flange covers alone, from memory; play by geometry'
    };
}

/** k_b = min(k_b1, k_b2): end distance and pitch. */
function bearingFactor({ pairs, pitch }: CoverSplice['flange'], { d }: CoverBolt, end: number): number {
    return Math.min(0.25 * end / d + 0.5, pairs > 1 ? 0.25 * pitch / d + 0.375 : Infinity, 1.25);
}
