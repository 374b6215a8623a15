/** Compression across the grain at a patch of contact, EN 1995-1-1 6.1.5 as amended by A1:2008. Lengths mm, stresses MPa. */
import type { TimberStrength } from '../../catalog/timber.js';
import { kc90Discrete } from '../../catalog/tables/member-factors.js';

/** What lies past one edge of a contact, along the grain. */
export interface ContactSide {
    /** From the edge of the contact to the end of the member. */
    readonly toEnd: number;
    /** From the edge of the contact to the next contact; Infinity where there is none. */
    readonly toNext: number;
}

/** 6.1.5(1): the contact grows at either side by 30 mm, but by no more than a, l or l1/2. */
export function effectiveContactLength(length: number, sides: readonly ContactSide[]): number {
    return sides.reduce((sum, { toEnd, toNext }) => sum + Math.max(0, Math.min(30, toEnd, length, toNext / 2)), length);
}

/**
 * k_c,90 at a discrete support, 6.1.5(4): above 1 for softwood alone, where the next contact is
 * 2h away or more, and for glulam where the contact is no longer than 400 mm.
 */
export function kc90At({ product, softwood }: Pick<TimberStrength, 'product' | 'softwood'>, length: number, toNext: number, h: number): number {
    const allowed = softwood && toNext >= 2 * h && (product === 'solid' || length <= 400);
    return allowed ? kc90Discrete[product] : 1;
}

/**
 * Strength under compression at an angle to the grain, 6.2.2 (6.16).
 * @param angle between force and grain, rad: π/2 gives k_c,90 f_c,90,d, and 0 f_c,0,d
 */
export function compressionStrengthAtAngle(fc0: number, fc90: number, kc90: number, angle: number): number {
    const sin2 = Math.sin(angle) ** 2;
    return fc0 / (fc0 / (kc90 * fc90) * sin2 + 1 - sin2);
}
