import { unsound, type Problem } from '../../verdict.js';

/** Least spacings and distances of bolts, mm. EN 1995-1-1 Table 8.4 and Figure 8.7 (from memory; a3,t with its 80 mm). */
export interface LeastDistances {
    /** Between bolts of one row along the grain. */
    readonly a1: number;
    /** Between rows, across the grain. */
    readonly a2: number;
    /** To an end that the bolt presses towards, and to one that it does not. */
    readonly a3t: number;
    readonly a3c: number;
    /** To an edge that the bolt presses towards, and to one that it does not. */
    readonly a4t: number;
    readonly a4c: number;
}

/** `angle` between force and grain, rad; its quadrant does not matter here, see `endDistance` and `edgeDistance`. */
export function leastDistances(d: number, angle: number): LeastDistances | Problem {
    return unsound('positive', { 'the bolt diameter': d }) ?? unsound('finite', { 'the angle to the grain': angle })
        ?? {
            a1: spacingAlong(d, angle), a2: spacingAcross(d),
            a3t: loadedEnd(d), a3c: unloadedEnd(d, angle), a4t: loadedEdge(d, angle), a4c: unloadedEdge(d)
        };
}

/** a1 = (4 + |cos α|) d. */
export function spacingAlong(d: number, angle: number): number {
    return (4 + Math.abs(Math.cos(angle))) * d;
}

/** a2 = 4 d. */
export function spacingAcross(d: number): number {
    return 4 * d;
}

/** a3,t = max(7 d; 80 mm). */
export function loadedEnd(d: number): number {
    return Math.max(7 * d, 80);
}

/** a3,c = max((1 + 6 |sin α|) d; 4 d). */
export function unloadedEnd(d: number, angle: number): number {
    return Math.max((1 + 6 * Math.abs(Math.sin(angle))) * d, 4 * d);
}

/** a4,t = max((2 + 2 sin α) d; 3 d). */
export function loadedEdge(d: number, angle: number): number {
    return Math.max((2 + 2 * Math.abs(Math.sin(angle))) * d, 3 * d);
}

/** a4,c = 3 d. */
export function unloadedEdge(d: number): number {
    return 3 * d;
}
