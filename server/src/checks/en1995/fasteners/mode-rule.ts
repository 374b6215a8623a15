import type { Step } from '../../../results.js';
import { newton, step, type TermRow } from '../../steps.js';
import { termsIn } from './verify.js';

/** The numbers of one shear plane. MPa, mm, N·mm, N. */
export interface PlaneNumbers {
    readonly d: number;
    readonly My_Rk: number;
    /** Axial capacity of the bolt, N, for the rope effect; nought where it is not known. */
    readonly Fax_Rk: number;
    readonly fh1_k: number;
    readonly t1: number;
    readonly fh2_k: number;
    readonly t2: number;
}

/** One failure mode of EN 1995-1-1 8.2: how it fails and what it bears. */
export interface ModeRule {
    /** As in the standard, `a` to `m`. */
    readonly letter: string;
    readonly name: string;
    /** Whether the rope effect helps. */
    readonly roped: boolean;
    /** E.g. `EN 1995-1-1 (8.6)`. */
    readonly clause: string;
    /** TeX of the Johansen part. */
    readonly formula: string;
    /** N. */
    readonly johansen: (numbers: PlaneNumbers) => number;
}

export interface Mode {
    readonly letter: string;
    readonly name: string;
    readonly clause: string;
    /** N. */
    readonly johansen: number;
    /** N, already limited. */
    readonly rope: number;
    /** Their sum: characteristic capacity in this mode, N a shear plane. */
    readonly capacity: number;
}

/** EN 1995-1-1 8.2.2(2): of the Johansen part, for bolts. */
const ropeLimit = 0.25;

/** The rope effect of a bolt, N: a quarter of its axial capacity, at most 25 % of the Johansen part. EN 1995-1-1 8.2.2(2). */
export function ropeEffect(johansen: number, Fax_Rk: number): number {
    return Math.min(Fax_Rk / 4, ropeLimit * johansen);
}

export function modeOf(rule: ModeRule, numbers: PlaneNumbers): Mode {
    const johansen = rule.johansen(numbers);
    const rope = rule.roped ? ropeEffect(johansen, numbers.Fax_Rk) : 0;
    return { letter: rule.letter, name: rule.name, clause: rule.clause, johansen, rope, capacity: johansen + rope };
}

/** The least capacity of all modes, N. */
export function leastCapacity(rules: readonly ModeRule[], numbers: PlaneNumbers): number {
    let least = Infinity;
    for (const { johansen, roped } of rules) {
        const part = johansen(numbers);
        least = Math.min(least, roped ? part + ropeEffect(part, numbers.Fax_Rk) : part);
    }
    return least;
}

export function modeSteps(rule: ModeRule, numbers: PlaneNumbers): readonly Step[] {
    const { johansen, rope, capacity } = modeOf(rule, numbers);
    const symbol = `F_{v,Rk,${rule.letter}}`;
    const part = rope > 0 ? `F_{J,${rule.letter}}` : symbol;
    const first = step(part, rule.formula, termsIn(rule.formula, numberTerms(numbers)), newton(johansen),
        { clause: `${rule.clause} (${rule.letter})`, note: rule.name });
    return rope === 0 ? [first] : [first, step(symbol,
        `${part} + \\min\\left(\\frac{F_{ax,Rk}}{4},\\;${ropeLimit}\\,${part}\\right)`,
        [[part, johansen, 'N'], ['F_{ax,Rk}', numbers.Fax_Rk, 'N', 'axial capacity of the bolt']],
        newton(capacity), { clause: 'EN 1995-1-1 8.2.2(2)', note: 'rope effect' })];
}

function numberTerms({ d, My_Rk, fh1_k, t1, fh2_k, t2 }: PlaneNumbers): readonly TermRow[] {
    return [
        ['f_{h,1,k}', fh1_k, 'MPa'], ['f_{h,2,k}', fh2_k, 'MPa'], ['t_1', t1, 'mm'], ['t_2', t2, 'mm'], ['d', d, 'mm'],
        ['M_{y,Rk}', My_Rk, 'N·mm'], ['\\beta', fh2_k / fh1_k, '', 'ratio of the embedment strengths']
    ];
}
