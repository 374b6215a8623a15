import type { Step } from '../../../results.js';
import { step, type TermRow } from '../../steps.js';
import { unsound, type Problem } from '../../verdict.js';
import { plateMoment, unsoundPlate, type CrossPlate } from './cross-plate.js';

export interface HangerParts {
    readonly rods: { readonly count: number; readonly As: number; /** Between the nuts, mm. */ readonly length: number; /** MPa. */ readonly E: number };
    /** Head and foot plate, with their steel's E, MPa. */
    readonly plates: readonly (CrossPlate & { readonly name: string; readonly E: number })[];
    /** The two timbers under the plates. */
    readonly timbers: readonly TimberUnderPlate[];
}

export interface TimberUnderPlate {
    readonly name: string;
    /** Contact with the plate, mm², less holes. */
    readonly area: number;
    /** mm. */
    readonly depth: number;
    /** MPa across the grain; divided by 1 + k_def for the final state. */
    readonly E90: number;
}

export interface HangerStiffness {
    /** N/mm, of all rods together. */
    readonly stiffness: number;
    /** mm/N, in series. */
    readonly parts: readonly { readonly name: string; readonly flexibility: number }[];
    readonly explain: () => readonly Step[];
}

/**
 * Stiffness of a hanger: rods, plates and the timber under them in series. Rods L / (n E A_s) with thread over
 * their whole length; plates by their bending energy under an even pressure of the timber (standard theory). The
 * timber is taken to hand its pressure on evenly over its depth, so that half the depth is pressed at full stress
 * over the contact, with no spread along the grain: common practice, no source.
 */
export function hangerStiffness({ rods, plates, timbers }: HangerParts): HangerStiffness | Problem {
    const bad = unsound('positive', { 'the number of rods': rods.count, 'the stress area': rods.As, 'the length of the rods': rods.length, 'E of the rods': rods.E })
        ?? plates.map(plate => unsoundPlate(plate) ?? unsound('positive', { [`E of the ${plate.name}`]: plate.E })).find(found => found !== undefined)
        ?? timbers.map(({ name, area, depth, E90 }) => unsound('positive', { [`the contact with ${name}`]: area, [`the depth of ${name}`]: depth, [`E across the grain of ${name}`]: E90 })).find(found => found !== undefined);
    if (bad) {
        return bad;
    }
    const parts = [
        { name: 'rods', flexibility: rods.length / (rods.count * rods.E * rods.As) },
        ...plates.map(plate => ({ name: plate.name, flexibility: plateFlexibility(plate, plate.E) })),
        ...timbers.map(({ name, area, depth, E90 }) => ({ name, flexibility: depth / 2 / (E90 * area) }))
    ];
    const stiffness = 1 / parts.reduce((sum, { flexibility }) => sum + flexibility, 0);
    return { stiffness, parts, explain: () => stiffnessSteps(parts, stiffness) };
}

/** Give of the rods against the timber, mm for 1 N of all rods: twice the bending energy of the plate. */
export function plateFlexibility(plate: CrossPlate, E: number): number {
    const I = plate.width * plate.thickness ** 3 / 12;
    const [inner, outer] = [plate.rodSpacing / 2, plate.contact / 2].sort((a, b) => a - b) as [number, number];
    const squared = (x: number): number => plateMoment(plate, 1, x) ** 2;
    return 2 / (E * I) * (gauss(squared, 0, inner) + gauss(squared, inner, outer));
}

/** Three-point Gauss integral: exact here, M² being of the fourth degree on either stretch. */
function gauss(f: (x: number) => number, from: number, to: number): number {
    const [middle, half] = [(from + to) / 2, (to - from) / 2];
    const off = half * Math.sqrt(0.6);
    return half / 9 * (5 * f(middle - off) + 8 * f(middle) + 5 * f(middle + off));
}

function stiffnessSteps(parts: HangerStiffness['parts'], stiffness: number): readonly Step[] {
    const terms = parts.map(({ name, flexibility }, i): TermRow => [`\\delta_{${i + 1}}`, flexibility * 1e3, 'mm/kN', name]);
    return [step('K', `\\frac{1}{${terms.map(([symbol]) => symbol).join(' + ')}}`, terms, { value: stiffness / 1e3, unit: 'kN/mm' }, {
        note: 'parts in series; the timber pressed over half its depth: common practice, no source'
    })];
}
