/** Masonry under a concentrated load, EN 1996-1-1 6.1.3. Lengths mm. */

export interface ConcentratedLoad {
    /** Bearing: along the wall and across it. */
    readonly along: number;
    readonly across: number;
    readonly thickness: number;
    /** Height of the wall up to the load. */
    readonly hc: number;
    /** From the edge of the bearing to the nearest end of the wall. */
    readonly a1: number;
}

export interface LoadSpread {
    /** Length at half the height, spread at 60° and stopped by the end of the wall. */
    readonly lefm: number;
    /** A_b / A_ef, counted up to 0.45. */
    readonly share: number;
    /** By (6.11), and its limit. */
    readonly calculated: number;
    readonly limit: number;
    readonly beta: number;
}

/** β for units of Group 1 with a load within t/4 of the wall's axis, (6.11). */
export function loadSpread({ along, across, thickness, hc, a1 }: ConcentratedLoad): LoadSpread {
    const side = hc / 2 / Math.tan(Math.PI / 3);
    const lefm = along + side + Math.min(side, a1);
    const share = Math.min(0.45, along * across / (lefm * thickness));
    const calculated = (1 + 0.3 * a1 / hc) * (1.5 - 1.1 * share);
    const limit = Math.min(1.25 + a1 / (2 * hc), 1.5);
    return { lefm, share, calculated, limit, beta: Math.max(1, Math.min(calculated, limit)) };
}

/** N_Rdc in N, (6.10). @param area mm² @param fd MPa */
export function concentratedLoadResistance(beta: number, area: number, fd: number): number {
    return beta * area * fd;
}
