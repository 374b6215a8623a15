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

/**
 * Every corner of the polygon that all patterns fill in the plane of two effects, so that any check that is convex in
 * both (a sum of stresses, of their squares) has its worst among them. The polygon is a zonogon: from its lowest
 * corner the cases join, or leave, in the order of their direction; the other side mirrors it.
 */
export function corners(rule: Rule, xs: Float64Array, ys: Float64Array, offset: number): Uint8Array[] {
    const { variable, factors } = rule;
    const lowest = new Uint8Array(variable.length);
    const steps: { readonly i: number; readonly x: number; readonly y: number }[] = [];
    for (let i = 0; i < variable.length; i++) {
        const x = factors[i]! * xs[offset + variable[i]!]!;
        const y = factors[i]! * ys[offset + variable[i]!]!;
        if (x === 0 && y === 0) continue;
        const down = y < 0 || (y === 0 && x < 0);
        if (down) lowest[i] = 1;
        steps.push(down ? { i, x: -x, y: -y } : { i, x, y });
    }
    steps.sort((a, b) => b.x * a.y - a.x * b.y);
    const found = [lowest];
    steps.forEach((step, n) => {
        const before = steps[n - 1];
        const along = before && Math.abs(before.x * step.y - step.x * before.y) <= 1e-9 * Math.hypot(before.x, before.y) * Math.hypot(step.x, step.y);
        const corner = along ? found.at(-1)! : found.at(-1)!.slice();
        corner[step.i] = 1 - corner[step.i]!;
        if (!along) found.push(corner);
    });
    const mirrored = found.slice(1, -1).map((corner) => {
        const other = corner.slice();
        for (const { i } of steps) other[i] = 1 - other[i]!;
        return other;
    });
    return [...found, ...mirrored];
}

/** The effect of a rule with its loads so placed; `steady` is what is always there, its factors applied. */
export function combined(rule: Rule, present: Uint8Array, steady: number, values: Float64Array, offset: number): number {
    const { variable, factors } = rule;
    let sum = steady;
    for (let i = 0; i < variable.length; i++) if (present[i]) sum += factors[i]! * values[offset + variable[i]!]!;
    return sum;
}

/** Equal for equal placements. */
export function placementKey(present: Uint8Array): number | string {
    if (present.length > 52) return String.fromCharCode(...present);
    let key = 0;
    for (let i = 0; i < present.length; i++) if (present[i]) key += 2 ** i;
    return key;
}
