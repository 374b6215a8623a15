/** Strength of structural steel and, by own values alone, of old iron. MPa, kg/mm³. */

export interface SteelStrength {
    readonly name: string;
    readonly fy: number;
    /** Undefined where own values do not give it: nothing that needs it is then checked. */
    readonly fu: number | undefined;
    readonly E: number;
    readonly G: number;
    /** kg/mm³. */
    readonly density: number;
    /** May yield and share (EN 1993-1-1 3.2.2); old iron is held to its elastic limit. */
    readonly ductile: boolean;
    readonly origin: string;
}

interface Row { readonly upTo: number; readonly fy: number; readonly fu: number }

/**
 * EN 1993-1-1:2005 Table 3.1, EN 10025-2 grades by nominal thickness.
 * Up to 40 mm fy and fu seen in TU Delft "Structural Design Essentials" (S355: fu 510 in the 2005 edition;
 * 490 here, amendment A1:2014, from memory, the lower). 40 to 80 mm from memory.
 * Nations may ask for the steps of the product standard at 16 mm instead (3.2.1(1) note): say so by own values.
 */
const rows: ReadonlyMap<string, readonly Row[]> = new Map([
    ['S235', [{ upTo: 40, fy: 235, fu: 360 }, { upTo: 80, fy: 215, fu: 360 }]],
    ['S275', [{ upTo: 40, fy: 275, fu: 430 }, { upTo: 80, fy: 255, fu: 410 }]],
    ['S355', [{ upTo: 40, fy: 355, fu: 490 }, { upTo: 80, fy: 335, fu: 470 }]]
]);

export const steelGrades: readonly string[] = [...rows.keys()];

const E = 210_000;
/** EN 1993-1-1 3.2.6. */
const G = 81_000;
const density = 7.85e-6;

/**
 * The grade's strength for the thickest part, mm.
 * Undefined for a grade not in the table and for a thickness that is not above 0 or is above 80 mm.
 */
export function steelStrength(grade: string, thickness: number): SteelStrength | undefined {
    const row = thickness > 0 ? rows.get(grade)?.find(({ upTo }) => thickness <= upTo) : undefined;
    return row && { name: grade, fy: row.fy, fu: row.fu, E, G, density, ductile: true, origin: `EN 1993-1-1 Table 3.1, t <= ${row.upTo} mm` };
}

export interface OwnSteel {
    readonly fy: number;
    readonly E: number;
    readonly fu?: number;
    /** E / 2.6 unless given (ν = 0.3). */
    readonly G?: number;
    /** kg/mm³; 7850 kg/m³ unless given. */
    readonly density?: number;
}

/**
 * Old iron or steel by values that the file gives, held to its elastic limit: nothing is known of its ductility.
 * Cast iron in tension is brittle and outside EN 1993; give fy as the stress it may bear there.
 * Undefined where a value is not above 0, or fu is below fy.
 */
export function ownSteel(name: string, own: OwnSteel): SteelStrength | undefined {
    const { fy, fu, E, G = E / 2.6, density = 7.85e-6 } = own;
    const sound = [fy, E, G, density, fu ?? fy].every(value => Number.isFinite(value) && value > 0) && (fu ?? fy) >= fy;
    return sound ? { name, fy, fu, E, G, density, ductile: false, origin: 'own values of this file' } : undefined;
}
