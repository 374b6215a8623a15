/**
 * Places the variable loads of a rule where they are unfavourable.
 *
 * Every effect is a sum over the cases, so the greatest of it has exactly the cases with a positive share, and the
 * least those with a negative one. That finds the worst of all 2ⁿ patterns without trying them; a test compares
 * with trying them. `present` tells, for each of a rule's variable cases, whether it counts.
 */
import type { Rule } from './combinations.js';

export interface Extremes { readonly most: Uint8Array; readonly least: Uint8Array }

export function roomFor({ variable }: Rule): Extremes {
    return { most: new Uint8Array(variable.length), least: new Uint8Array(variable.length) };
}

/** For the greatest and the least of one effect; the value of case c is `values[offset + c]`. Written to `room`. */
export function extremes(rule: Rule, values: Float64Array, offset: number, room = roomFor(rule)): Extremes {
    const { variable, factors } = rule;
    const { most, least } = room;
    for (let i = 0; i < variable.length; i++) {
        const helps = factors[i]! * values[offset + variable[i]!]! >= 0 ? 1 : 0;
        most[i] = helps;
        least[i] = 1 - helps;
    }
    return room;
}

/** One placement a row, `size` cases each. */
export interface Placements {
    readonly size: number;
    rows: Uint8Array;
    count: number;
    /** Room to sort the cases in: their numbers, and their effects turned upwards. */
    readonly order: Int32Array;
    readonly across: Float64Array;
    readonly up: Float64Array;
}

export function placementsFor({ variable }: Rule): Placements {
    const size = variable.length;
    return { size, rows: new Uint8Array(8 * size), count: 0, order: new Int32Array(size), across: new Float64Array(size), up: new Float64Array(size) };
}

/** Room for one row more; gives where it starts. */
function addRow(placements: Placements): number {
    const { size, count } = placements;
    if ((count + 1) * size > placements.rows.length) {
        const wider = new Uint8Array(2 * placements.rows.length);
        wider.set(placements.rows);
        placements.rows = wider;
    }
    placements.count += 1;
    return count * size;
}

export function rowOf({ size, rows }: Placements, index: number): Uint8Array {
    return rows.slice(index * size, (index + 1) * size);
}

/** Adds the placements that make one effect greatest and least. */
export function addExtremes(placements: Placements, { variable, factors }: Rule, values: Float64Array, offset: number): void {
    const [most, least] = [addRow(placements), addRow(placements)];
    const { rows, size } = placements;
    for (let i = 0; i < size; i++) {
        const helps = factors[i]! * values[offset + variable[i]!]! >= 0 ? 1 : 0;
        rows[most + i] = helps;
        rows[least + i] = 1 - helps;
    }
}

/**
 * Adds every corner of the polygon that all patterns fill in the plane of two effects, so that any check that is convex
 * in both (a sum of stresses, of their squares) has its worst among them. The polygon is a zonogon: from its lowest
 * corner the cases join, or leave, in the order of their direction; the other side mirrors it.
 */
export function addCorners(placements: Placements, { variable, factors }: Rule, xs: Float64Array, ys: Float64Array, offset: number): void {
    const { size, order, across, up } = placements;
    const first = placements.count;
    const lowest = addRow(placements);
    let sorted = 0;
    for (let i = 0; i < size; i++) {
        const x = factors[i]! * xs[offset + variable[i]!]!;
        const y = factors[i]! * ys[offset + variable[i]!]!;
        const down = y < 0 || (y === 0 && x < 0);
        placements.rows[lowest + i] = down ? 1 : 0;
        if (x === 0 && y === 0) continue;
        across[i] = down ? -x : x;
        up[i] = down ? -y : y;
        let at = sorted++;
        for (; at > 0 && across[order[at - 1]!]! * up[i]! - across[i]! * up[order[at - 1]!]! < 0; at--) order[at] = order[at - 1]!;
        order[at] = i;
    }
    let corner = lowest;
    for (let n = 0; n < sorted; n++) {
        const i = order[n]!;
        const before = order[n - 1]!;
        const along = n > 0 && Math.abs(across[before]! * up[i]! - across[i]! * up[before]!)
            <= 1e-9 * Math.sqrt((across[before]! ** 2 + up[before]! ** 2) * (across[i]! ** 2 + up[i]! ** 2));
        if (!along) {
            const next = addRow(placements);
            placements.rows.copyWithin(next, corner, corner + size);
            corner = next;
        }
        placements.rows[corner + i]! ^= 1;
    }
    const last = placements.count - 1;
    for (let mirrored = first + 1; mirrored < last; mirrored++) {
        const other = addRow(placements);
        placements.rows.copyWithin(other, mirrored * size, (mirrored + 1) * size);
        for (let n = 0; n < sorted; n++) placements.rows[other + order[n]!]! ^= 1;
    }
}

/** The effect of a rule with its loads so placed, by the row that starts there; `steady` is what is always there, its factors applied. */
export function combined(rule: Rule, present: Uint8Array, steady: number, values: Float64Array, offset: number, row = 0): number {
    const { variable, factors } = rule;
    let sum = steady;
    for (let i = 0; i < variable.length; i++) if (present[row + i]) sum += factors[i]! * values[offset + variable[i]!]!;
    return sum;
}

/** Equal for equal placements. */
export function placementKey(present: Uint8Array): number | string {
    if (present.length > 52) return String.fromCharCode(...present);
    let key = 0;
    for (let i = 0; i < present.length; i++) if (present[i]) key += 2 ** i;
    return key;
}
