/**
 * Places the variable loads of a rule where they are unfavourable.
 *
 * Every effect is a sum over the cases, so the greatest of it has exactly the cases with a positive share, and the
 * least those with a negative one. That finds the worst of all 2ⁿ patterns without trying them
 * (a test compares with trying them).
 */
import type { Rule } from './combinations.js';

/** Which of a rule's variable cases count. */
export interface Placement {
    readonly present: Uint8Array;
    /** Equal for equal placements of one rule. */
    readonly key: number | string;
}

/** Effects of all cases at one place: `values[offset + c]`. */
export function place(rule: Rule, values: Float64Array, offset: number): { readonly most: Placement; readonly least: Placement } {
    const { variable, factors } = rule;
    const most = new Uint8Array(variable.length);
    const least = new Uint8Array(variable.length);
    for (let i = 0; i < variable.length; i++) {
        const effect = factors[i]! * values[offset + variable[i]!]!;
        if (effect >= 0) most[i] = 1; else least[i] = 1;
    }
    return { most: { present: most, key: keyOf(most) }, least: { present: least, key: keyOf(least) } };
}

/** The effect of the rule with its loads so placed. */
export function combined(rule: Rule, { present }: Placement, permanent: number, values: Float64Array, offset: number): number {
    const { variable, factors } = rule;
    let sum = rule.permanent * permanent;
    for (let i = 0; i < variable.length; i++) if (present[i]) sum += factors[i]! * values[offset + variable[i]!]!;
    return sum;
}

function keyOf(present: Uint8Array): number | string {
    if (present.length > 52) return present.join('');
    let key = 0;
    for (let i = 0; i < present.length; i++) if (present[i]) key += 2 ** i;
    return key;
}
