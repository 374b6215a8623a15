/**
 * LDLᵀ of a symmetric matrix in skyline storage, without pivoting.
 *
 * Storage: column j of the upper triangle from its first non-zero row `first[j]` to the diagonal,
 * at `values[start[j]] … values[start[j + 1] - 1]`. Factoring is in place and costs about n·b² / 2
 * multiplications for a mean column height b; a solution costs 2·n·b.
 * Source: K.-J. Bathe, Finite Element Procedures (1996), 8.2.2, the active column solution (from memory).
 */
export interface Skyline {
    readonly first: Int32Array;
    readonly start: Int32Array;
    readonly values: Float64Array;
}

/** A pivot this small beside its own diagonal is what rounding leaves of zero. */
const zeroPivot = 1e-12;

export function emptySkyline(first: Int32Array): Skyline {
    const n = first.length;
    const start = new Int32Array(n + 1);
    for (let j = 0; j < n; j++) start[j + 1] = start[j]! + j - first[j]! + 1;
    return { first, start, values: new Float64Array(start[n]!) };
}

/** Factors in place. Columns whose pivot vanished are returned and act as held from then on. */
export function factor({ first, start, values }: Skyline): number[] {
    const n = first.length;
    const singular: number[] = [];
    for (let j = 0; j < n; j++) {
        const top = first[j]!;
        const column = start[j]! - top;
        for (let i = top + 1; i < j; i++) {
            const other = start[i]! - first[i]!;
            let sum = 0;
            for (let k = Math.max(top, first[i]!); k < i; k++) sum += values[other + k]! * values[column + k]!;
            values[column + i]! -= sum;
        }
        const diagonal = values[column + j]!;
        let pivot = diagonal;
        for (let i = top; i < j; i++) {
            const l = values[column + i]! / values[start[i + 1]! - 1]!;
            pivot -= l * values[column + i]!;
            values[column + i] = l;
        }
        const vanished = !(pivot > zeroPivot * diagonal);
        if (vanished) singular.push(j);
        values[column + j] = vanished ? Infinity : pivot;
    }
    return singular;
}

/** Replaces the right-hand side by the solution. */
export function substitute({ first, start, values }: Skyline, x: Float64Array): void {
    const n = first.length;
    // Nothing comes of the rows above the first load.
    const loaded = x.findIndex((value) => value !== 0);
    if (loaded < 0) return;
    for (let j = loaded + 1; j < n; j++) {
        const column = start[j]! - first[j]!;
        let sum = 0;
        for (let i = Math.max(first[j]!, loaded); i < j; i++) sum += values[column + i]! * x[i]!;
        x[j]! -= sum;
    }
    for (let j = 0; j < n; j++) x[j]! /= values[start[j + 1]! - 1]!;
    backSubstitute({ first, start, values }, x, n);
}

/** The motion that a vanished pivot in column j leaves free: 1 there, the columns before it following. */
export function freeMotion(skyline: Skyline, j: number): Float64Array {
    const { first, start, values } = skyline;
    const motion = new Float64Array(first.length);
    for (let i = first[j]!; i < j; i++) motion[i] = -values[start[j]! + i - first[j]!]!;
    backSubstitute(skyline, motion, j);
    motion[j] = 1;
    return motion;
}

function backSubstitute({ first, start, values }: Skyline, x: Float64Array, columns: number): void {
    for (let j = columns - 1; j >= 0; j--) {
        const column = start[j]! - first[j]!;
        for (let i = first[j]!; i < j; i++) x[i]! -= values[column + i]! * x[j]!;
    }
}
