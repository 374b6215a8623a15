/**
 * A bolted end-plate splice of a rolled I or H beam: which rows pull, their T-stubs, and how stiff it turns.
 * EN 1993-1-8 6.2.4, 6.2.6.5 and 6.3 (from memory, Tables 6.2 and 6.5 seen quoted in public texts). N, mm, MPa, rad.
 */
import type { SteelSection } from '../catalog/section-geometry.js';

export interface EndPlateSplice {
    readonly beam: SteelSection;
    /** One on each beam end, alike. */
    readonly plate: {
        readonly width: number;
        readonly thickness: number;
        /** Beyond the outer face of the top and bottom flange; 0 for a flush plate. */
        readonly above: number;
        readonly below: number;
    };
    /** Heights of the bolt rows above the beam's axis; two bolts a row. */
    readonly rows: readonly number[];
    /** Between the two bolts of a row. */
    readonly gauge: number;
    readonly bolt: { readonly d: number; readonly As: number };
    /** Throat of the fillet welds between plate and beam, 0 where it is not known (on the safe side). */
    readonly weldThroat: number;
}

export interface TensionRow {
    /** Above the beam's axis. */
    readonly height: number;
    /** From the middle of the compression flange. */
    readonly lever: number;
    /** Outside the flange of an extended plate, or between the flanges. */
    readonly place: 'inner' | 'outer';
    /** From the bolt to the yield line at the web or flange, and to the free edge of the plate. */
    readonly m: number;
    readonly e: number;
    /** Effective lengths of the T-stub for mode 1 and mode 2. */
    readonly leff1: number;
    readonly leff2: number;
}

/** Sagging pulls the bottom. */
export type Bend = 'sagging' | 'hogging';

/** Every row between or beyond the flanges, with a lever above 0, farthest first. Rows in a flange are left out: see `misplacedRows`. */
export function tensionRows(splice: EndPlateSplice, bend: Bend): readonly TensionRow[] {
    const up = bend === 'sagging' ? 1 : -1;
    const { h, tf } = splice.beam;
    return splice.rows
        .filter(height => !inFlange(splice, height))
        .map(height => ({ height, lever: (h - tf) / 2 - up * height }))
        .filter(({ lever }) => lever > 0)
        .sort((a, b) => b.lever - a.lever)
        .map(row => ({ ...row, ...(Math.abs(row.height) > h / 2 ? outerStub(splice, row.height) : innerStub(splice, row.height)) }));
}

/** Rows whose bolts would sit in a flange or its weld, or off the plate. */
export function misplacedRows(splice: EndPlateSplice): readonly number[] {
    const { beam: { h }, plate } = splice;
    return splice.rows.filter(height => inFlange(splice, height) || height >= h / 2 + plate.above || height <= -h / 2 - plate.below);
}

function inFlange({ beam: { h, tf }, bolt }: EndPlateSplice, height: number): boolean {
    const y = Math.abs(height);
    return y > h / 2 - tf - bolt.d / 2 && y < h / 2 + bolt.d / 2;
}

type Stub = Pick<TensionRow, 'place' | 'm' | 'e' | 'leff1' | 'leff2'>;

/**
 * Table 6.6, inner row, side by side: each side reaches as far as a lone row's pattern would, but no farther than
 * half way to the next row (Table 6.4's group patterns). What the flange adds (α of Figure 6.11) is not counted.
 */
function innerStub({ beam, plate, gauge, rows, weldThroat }: EndPlateSplice, height: number): Stub {
    const m = (gauge - beam.tw) / 2 - 0.8 * Math.SQRT2 * weldThroat;
    const e = (plate.width - gauge) / 2;
    const inner = rows.filter(y => Math.abs(y) < beam.h / 2);
    const pitches = [above(inner, height), above(inner.map(y => -y), -height)];
    const straight = pitches.reduce((sum, p) => sum + Math.min(2 * m + 0.625 * e, p / 2), 0);
    const round = pitches.reduce((sum, p) => sum + Math.min(Math.PI * m, p), 0);
    return { place: 'inner', m, e, leff1: Math.min(straight, round), leff2: straight };
}

/** Distance to the next row upwards; Infinity where there is none. */
const above = (rows: readonly number[], height: number): number =>
    rows.reduce((least, y) => y > height ? Math.min(least, y - height) : least, Infinity);

/** Table 6.6, row outside the tension flange. */
function outerStub({ beam, plate, gauge: w, weldThroat }: EndPlateSplice, height: number): Stub {
    const y = Math.abs(height);
    const mx = y - beam.h / 2 - 0.8 * Math.SQRT2 * weldThroat;
    const ex = beam.h / 2 + (height > 0 ? plate.above : plate.below) - y;
    const e = (plate.width - w) / 2;
    const straight = Math.min(4 * mx + 1.25 * ex, e + 2 * mx + 0.625 * ex, 0.5 * plate.width, 0.5 * w + 2 * mx + 0.625 * ex);
    const round = Math.min(2 * Math.PI * mx, Math.PI * mx + w, Math.PI * mx + 2 * e);
    return { place: 'outer', m: mx, e: ex, leff1: Math.min(straight, round), leff2: straight };
}

/** Length over which a bolt stretches: two plates, two washers of 0.2 d, half the head and nut (ISO 4014, 4032, 7089, from memory). */
export const boltLength = ({ plate, bolt }: EndPlateSplice): number => 2 * plate.thickness + 1.15 * bolt.d;

export interface SpliceStiffness {
    /** For the elastic analysis, N mm/rad. */
    readonly rotational: number;
    /** Turn that takes no moment, rad: holes larger than their bolts. */
    readonly play: number;
    readonly source: string;
}

const youngsModulus = 210_000;

/**
 * Rotational stiffness, the lesser of sagging and hogging; 0 where no row pulls.
 * S_j,ini = E Σ k_r h_r² with 1/k_r = 2/k_5 + 1/k_10 (6.3.3, Table 6.11), divided by η = 3 of Table 5.2 so that it holds
 * up to the splice's full moment resistance (5.1.2(4)).
 */
export function endPlateStiffness(splice: EndPlateSplice): SpliceStiffness {
    const k10 = 1.6 * splice.bolt.As / boltLength(splice);
    const initial = (['sagging', 'hogging'] as const).map(bend => tensionRows(splice, bend).reduce((sum, row) => {
        const k5 = 0.9 * Math.min(row.leff1, row.leff2) * splice.plate.thickness ** 3 / row.m ** 3;
        return row.m > 0 ? sum + row.lever ** 2 / (2 / k5 + 1 / k10) : sum;
    }, 0));
    return {
        rotational: youngsModulus * Math.min(...initial) / 3, play: 0,
        source: 'EN 1993-1-8 6.3, Table 6.11 (k5, k10), S_j,ini / 3 by 5.1.2(4) and Table 5.2, from memory'
    };
}
