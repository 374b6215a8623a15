import type { Step } from '../../../results.js';
import { step } from '../../steps.js';

export interface YieldMoment {
    readonly fu_k: number;
    /** Diameter that bears on the timber and bends: embedment, yield moment, slip. */
    readonly d_ef: number;
    /** What d_ef rests on. */
    readonly diameterSource: string;
    /** Characteristic yield moment, N·mm, EN 1995-1-1 (8.30). */
    readonly My_Rk: number;
}

/** Characteristic yield moment of a round bolt, N·mm. EN 1995-1-1 (8.30); fu_k MPa, d mm, both above nought. */
export function bendingYieldMoment(fu_k: number, d: number): number {
    return 0.3 * fu_k * d ** 2.6;
}

export function yieldMomentStep({ fu_k, d_ef, My_Rk, diameterSource }: YieldMoment): Step {
    return step('M_{y,Rk}', '0.3\\,f_{u,k}\\,d^{2.6}',
        [['f_{u,k}', fu_k, 'MPa', 'tensile strength of the bolt'], ['d', d_ef, 'mm', diameterSource]],
        { value: My_Rk, unit: 'N·mm' }, { clause: 'EN 1995-1-1 (8.30)' });
}
