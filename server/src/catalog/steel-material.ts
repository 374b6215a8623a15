/** The steel of a member, plate or rod: a grade by its name, or a material of the file. */
import { closest } from 'fastest-levenshtein';
import type { Material } from '../../../language/src/model.js';
import { ownSteel, steelGrades, steelStrength, type SteelStrength } from './steel.js';

export type FoundSteel = { readonly steel: SteelStrength } | { readonly problem: string };

/**
 * @param name a grade, or a steel among the materials
 * @param thickness of the thickest part, mm
 */
export function steelNamed(name: string, thickness: number, materials: readonly Material[]): FoundSteel {
    const declared = materials.find(material => material.name === name);
    if (declared && declared.kind !== 'steel') {
        return { problem: `${name} is ${declared.kind === 'timber' ? 'a timber' : 'masonry'}, not steel` };
    }
    if (!declared || declared.grade) {
        return gradeNamed(declared?.grade?.value ?? name, thickness);
    }
    const { fy, fu, E, rho } = declared.properties;
    if (!fy || !E) {
        return { problem: `${name} has no grade, and lacks ${fy ? 'E' : E ? 'fy' : 'fy and E'}` };
    }
    const steel = ownSteel(name, { fy: fy.value, E: E.value, fu: fu?.value, density: rho?.value });
    return steel ? { steel } : { problem: `${name}: fy, E and rho have to be above nought, and fu no less than fy` };
}

function gradeNamed(name: string, thickness: number): FoundSteel {
    if (!steelGrades.includes(name)) {
        return { problem: `${name} is no steel grade; the nearest name is ${closest(name, [...steelGrades])}` };
    }
    const steel = steelStrength(name, thickness);
    return steel ? { steel } : { problem: `${name} has no strength for a part ${thickness} mm thick: EN 1993-1-1 Table 3.1 goes from 0 to 80 mm` };
}
