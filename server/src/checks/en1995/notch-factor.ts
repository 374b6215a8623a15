/** Notches at supports, EN 1995-1-1 6.5.2. Lengths mm. */

export interface NotchShape {
    /** Depth of the whole section, and what the notch leaves of it. */
    readonly h: number;
    readonly hef: number;
    /** From the line of the reaction to the corner of the notch. */
    readonly x: number;
    /** Length of the taper over the depth of the notch: 0 for a square one. */
    readonly i: number;
}

/** k_v of a notch on the side of the support, (6.62). @param kn (6.63): 5 solid, 6.5 glulam, 4.5 LVL */
export function notchFactor({ h, hef, x, i }: NotchShape, kn: number): number {
    const alpha = hef / h;
    const opening = Math.sqrt(h) * (Math.sqrt(alpha * (1 - alpha)) + 0.8 * x / h * Math.sqrt(1 / alpha - alpha ** 2));
    return Math.min(1, kn * (1 + 1.1 * i ** 1.5 / Math.sqrt(h)) / opening);
}
