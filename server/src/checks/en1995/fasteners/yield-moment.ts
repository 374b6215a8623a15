import type { Step } from '../../../results.js';
import { step } from '../../en1993/verdict.js';
import type { Fastener } from './fastener.js';

/** Characteristic yield moment of a round bolt, N·mm. EN 1995-1-1 (8.30); fu_k MPa, d mm, both above nought. */
export function bendingYieldMoment(fu_k: number, d: number): number {
    return 0.3 * fu_k * d ** 2.6;
}

export function yieldMomentStep({ fu_k, d_ef, My_Rk, diameterSource }: Fastener): Step {
    return step('M_{y,Rk}', '0.3\\,f_{u,k}\\,d^{2.6}',
        [['f_{u,k}', fu_k, 'MPa', 'tensile strength of the bolt'], ['d', d_ef, 'mm', diameterSource]],
        { value: My_Rk, unit: 'N·mm' }, { clause: 'EN 1995-1-1 (8.30)' });
}
