/** Lateral torsional buckling of a rectangle, EN 1995-1-1 6.3.3. Lengths mm, stresses MPa. */
import type { TimberStrength } from '../../catalog/timber.js';

/** Critical stress of softwood of solid rectangular section, (6.32). */
export function criticalStressSoftwood(b: number, h: number, lef: number, E0_05: number): number {
    return 0.78 * b * b * E0_05 / (h * lef);
}

/** Critical stress in general, (6.31). */
export function criticalStressGeneral(b: number, h: number, lef: number, E0_05: number, G0_05: number): number {
    const Iz = h * b ** 3 / 12;
    return Math.PI * Math.sqrt(E0_05 * Iz * G0_05 * torsionConstant(b, h)) / (lef * b * h * h / 6);
}

/** St Venant's constant of a rectangle, Roark's series (from memory; within 0.5 % of the exact one), mm⁴. */
export function torsionConstant(b: number, h: number): number {
    const [thin, wide] = b <= h ? [b, h] : [h, b];
    const t = thin / wide;
    return wide * thin ** 3 * (1 / 3 - 0.21 * t * (1 - t ** 4 / 12));
}

/** G_0,05 keeps the ratio of the 5 % and the mean modulus, as EN 14080:2013 has it and EN 384 for solid timber. */
export function shearModulus05({ G_mean, E0_mean, E0_05 }: Pick<TimberStrength, 'G_mean' | 'E0_mean' | 'E0_05'>): number {
    return G_mean * E0_05 / E0_mean;
}

/** (6.32) for solid softwood, (6.31) for hardwood and for glulam, whose shear modulus is lower than (6.32) supposes. */
export function criticalStress(strength: TimberStrength, b: number, h: number, lef: number): number {
    return strength.softwood && strength.product === 'solid'
        ? criticalStressSoftwood(b, h, lef, strength.E0_05)
        : criticalStressGeneral(b, h, lef, strength.E0_05, shearModulus05(strength));
}

/** (6.30). */
export function relativeSlendernessInBending(fm_k: number, critical: number): number {
    return Math.sqrt(fm_k / critical);
}

/** k_crit, (6.34). */
export function kcrit(lambdaRelM: number): number {
    if (lambdaRelM <= 0.75) {
        return 1;
    }
    return lambdaRelM <= 1.4 ? 1.56 - 0.75 * lambdaRelM : 1 / lambdaRelM ** 2;
}
