/** What sections of steel, or of timber and steel, are to the analysis: stiffness at first and in the end, and mass. N, mm. */
import type { FlitchSection } from '../../../language/src/model.js';
import type { SectionStiffness, WholeSection } from '../analysis/elastic.js';
import { flitchShares } from '../analysis/flitch.js';
import { modulusAfter } from '../analysis/layered.js';
import { isProblem, type Problem } from '../analysis/problem.js';
import type { SteelSection } from './section-geometry.js';
import type { SteelStrength } from './steel.js';

/** A section without its outer sizes. */
export type MemberElement = Omit<WholeSection, 'breadth' | 'depth'>;

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
    const at = (E: number, G: number): SectionStiffness => {
        const shares = sharesAt(E);
        return {
            EA: E * areas.timber + steel.E * areas.steel,
            EI: isProblem(shares) ? NaN : shares.EI,
            GA: rectangleShear * (G * areas.timber + steel.G * areas.steel)
        };
    };
    return {
        instant: at(timber.E, timber.G),
        final: at(modulusAfter(timber.E, timber.kdef), modulusAfter(timber.G, timber.kdef)),
        mass: timber.density * cubicMillimetres * areas.timber + steel.density * areas.steel
    };
}

/** The leaves and the plates of a flitch beam, plates on edge at mid depth. */
export function flitchParts({ leaves, breadth, depth, plates, thickness, plateDepth }: FlitchSection, timberE: number, steelE: number) {
    return {
        timber: { count: leaves, b: breadth.value, h: depth.value, E: timberE },
        steel: { count: plates, b: thickness.value, h: plateDepth.value, E: steelE }
    };
}
