import { problem, type Problem } from '../../verdict.js';
import type { ModeRule, PlaneNumbers } from './mode-rule.js';
import { centralPlate, thickOuterPlates, thickPlate, thinOuterPlates, thinPlate } from './steel-modes.js';
import { doubleShear, innerShear, singleShear } from './timber-modes.js';

/** What one side of a shear plane is. Lengths mm, strengths MPa. */
export type Side = TimberSide | SteelSide;

export interface TimberSide {
    readonly kind: 'timber';
    /** The whole thickness that the bolt bears on. */
    readonly thickness: number;
    readonly fh_k: number;
    /** The bolt goes on through a further plane beyond, loaded alike: it cannot turn here, and half the thickness is this plane's. */
    readonly held: boolean;
}

export interface SteelSide {
    readonly kind: 'steel';
    readonly thickness: number;
    /** Diameter of the hole less that of the bolt. */
    readonly clearance: number;
    /** Timber lies on its other face too, loaded alike. */
    readonly held: boolean;
}

export interface Dowel {
    readonly d: number;
    readonly My_Rk: number;
    readonly Fax_Rk: number;
}

/** The modes that rule, and how far a plate is from thin (0) to thick (1). */
export interface PlaneReading {
    readonly numbers: PlaneNumbers;
    readonly rules: readonly ModeRule[];
    readonly thick?: { readonly rules: readonly ModeRule[]; readonly weight: number; readonly plate: SteelSide };
}

export const twoPlates = problem('two steel plates lie on one another: EN 1995-1-1 8.2 is for timber on timber or on steel');

/** Which modes rule between two sides. EN 1995-1-1 8.2.2 and 8.2.3. */
export function readingOf(dowel: Dowel, near: Side, far: Side): PlaneReading | Problem {
    if (near.kind === 'steel' && far.kind === 'steel') {
        return twoPlates;
    }
    if (near.kind === 'timber' && far.kind === 'timber') {
        return near.held && !far.held ? timberReading(dowel, far, near) : timberReading(dowel, near, far);
    }
    return near.kind === 'steel' ? plateReading(dowel, near, far as TimberSide) : plateReading(dowel, far as SteelSide, near);
}

function timberReading(dowel: Dowel, first: TimberSide, second: TimberSide): PlaneReading {
    return {
        numbers: numbersOf(dowel, first, second),
        rules: !second.held ? singleShear : first.held ? innerShear : doubleShear
    };
}

function numbersOf({ d, My_Rk, Fax_Rk }: Dowel, first: TimberSide, second: TimberSide): PlaneNumbers {
    return { d, My_Rk, Fax_Rk, fh1_k: first.fh_k, t1: first.thickness, fh2_k: second.fh_k, t2: second.thickness };
}

function plateReading(dowel: Dowel, plate: SteelSide, timber: TimberSide): PlaneReading {
    const numbers = numbersOf(dowel, timber, timber);
    if (plate.held) {
        return { numbers, rules: timber.held ? thickOuterPlates : centralPlate };
    }
    const [thin, thick] = timber.held ? [thinOuterPlates, thickOuterPlates] : [thinPlate, thickPlate];
    const weight = thickness(plate, dowel.d);
    return weight === 0 ? { numbers, rules: thin }
        : weight === 1 ? { numbers, rules: thick }
        : { numbers, rules: thin, thick: { rules: thick, weight, plate } };
}

/** mm: 13.2 less 12 is a tenth of 12. */
const roundOff = 1e-9;

/**
 * EN 1995-1-1 8.2.3(1): thin (0) up to 0.5 d, thick (1) from d on where the hole is less than 0.1 d wider
 * than the bolt, linear between. A plate with a wider hole holds the bolt too loosely and counts as thin.
 */
function thickness({ thickness, clearance }: SteelSide, d: number): number {
    return clearance > 0.1 * d - roundOff ? 0 : Math.min(1, Math.max(0, (thickness - 0.5 * d) / (0.5 * d)));
}
