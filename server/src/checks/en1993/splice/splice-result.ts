/** What a splice's checks say together. */
import { isProblem, type NamedVerdict, type Problem } from '../../verdict.js';

export interface SpliceResult {
    /** Each part of the load path by name; the worst governs the check `splice`. */
    readonly verdicts: readonly NamedVerdict[];
    /** Distances of bolts that are too small, in words: each makes the splice fail. */
    readonly misplaced: readonly string[];
    readonly notChecked: readonly string[];
}

export interface SpliceForces {
    /** N, tension positive. */
    readonly N: number;
    readonly V: number;
    /** N mm, sagging positive. */
    readonly M: number;
}

/** Utilisation of the whole: Infinity where bolts are misplaced. */
export const spliceUtilisation = (result: SpliceResult | Problem): number =>
    isProblem(result) || result.misplaced.length > 0 ? Infinity : Math.max(0, ...result.verdicts.map(({ utilisation }) => utilisation));
