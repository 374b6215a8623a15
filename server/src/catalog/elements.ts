/** What a section is to the elements of the analysis: stiffness at first and in the end, and mass. */
import type { FlitchSection, PliesSection, RectangularSection } from '../../../language/src/model.js';
import { flitchShares } from '../analysis/flitch.js';
import { modulusAfter } from '../analysis/layered.js';
import { isProblem, type Problem } from '../analysis/problem.js';
import type { SteelSection } from './section-geometry.js';
import type { SteelStrength } from './steel.js';

/** N, mm; of one leaf where the section is of leaves. */
export interface ElementStiffness {
    /** Along, N. */
    readonly EA: number;
    /** Bending about the strong axis, N mm². */
    readonly EI: number;
    /** Shear, N, on the shear area. */
    readonly GA: number;
}

export interface MemberElement {
    readonly instant: ElementStiffness;
    /** After creep: E and G of timber over 1 + k_def, EN 1995-1-1 2.3.2.2. */
    readonly final: ElementStiffness;
    /** kg/mm, of one leaf where the section is of leaves. */
    readonly mass: number;
}

/** Mean values, MPa and kg/m³. */
export interface TimberModuli {
    readonly E: number;
    readonly G: number;
    readonly density: number;
    readonly kdef: number;
}

/** Shear area of a rectangle over its area: Timoshenko, from memory. */
export const rectangleShear = 5 / 6;
const cubicMillimetres = 1e-9;

/** One rectangle of timber: a whole section, or one leaf of `plies`. */
export function timberElement({ breadth, depth }: RectangularSection | PliesSection, timber: TimberModuli): MemberElement {
    const [b, h] = [breadth.value, depth.value];
    const at = (E: number, G: number): ElementStiffness => ({ EA: E * b * h, EI: E * b * h ** 3 / 12, GA: G * rectangleShear * b * h });
    return bothStates(timber, at, timber.density * cubicMillimetres * b * h);
}

export function rolledElement(section: SteelSection, { E, G }: SteelStrength): MemberElement {
    const stiffness = { EA: E * section.A, EI: E * section.Iy, GA: G * section.Avz };
    return { instant: stiffness, final: stiffness, mass: section.mass };
}

/** Leaves and plates that bend alike: their bolts are taken as rigid. The bolts that it takes are checked. */
export function flitchElement(section: FlitchSection, timber: TimberModuli, steel: SteelStrength): MemberElement | Problem {
    const sharesAt = (E: number) => flitchShares(flitchParts(section, E, steel.E));
    const bad = sharesAt(timber.E);
    if (isProblem(bad)) {
        return bad;
    }
    const areas = { timber: section.leaves * section.breadth.value * section.depth.value, steel: section.plates * section.thickness.value * section.plateDepth.value };
    const at = (E: number, G: number): ElementStiffness => {
        const shares = sharesAt(E);
        return {
            EA: E * areas.timber + steel.E * areas.steel,
            EI: isProblem(shares) ? NaN : shares.EI,
            GA: rectangleShear * (G * areas.timber + steel.G * areas.steel)
        };
    };
    return bothStates(timber, at, timber.density * cubicMillimetres * areas.timber + steel.density * areas.steel);
}

/** The leaves and the plates of a flitch beam, plates on edge at mid depth. */
export function flitchParts({ leaves, breadth, depth, plates, thickness, plateDepth }: FlitchSection, timberE: number, steelE: number) {
    return {
        timber: { count: leaves, b: breadth.value, h: depth.value, E: timberE },
        steel: { count: plates, b: thickness.value, h: plateDepth.value, E: steelE }
    };
}

function bothStates({ E, G, kdef }: TimberModuli, at: (E: number, G: number) => ElementStiffness, mass: number): MemberElement {
    return { instant: at(E, G), final: at(modulusAfter(E, kdef), modulusAfter(G, kdef)), mass };
}
