import type { Step } from '../../../results.js';
import { newton, step } from '../../steps.js';
import { unsound, type Problem } from '../../verdict.js';

/** What turns a characteristic resistance of a connection into its design value. */
export interface DesignFactors {
    readonly kmod: number;
    readonly gammaM: number;
}

/** Design resistance, N. EN 1995-1-1 (2.17). */
export function designValue(characteristic: number, { kmod, gammaM }: DesignFactors): number {
    return kmod * characteristic / gammaM;
}

export function unsoundFactors({ kmod, gammaM }: DesignFactors): Problem | undefined {
    return unsound('positive', { k_mod: kmod, 'γ_M': gammaM });
}

export function designStep(designSymbol: string, characteristicSymbol: string, Rk: number, factors: DesignFactors): Step {
    return step(designSymbol, `\\frac{k_{mod}\\,${characteristicSymbol}}{\\gamma_M}`,
        [['k_{mod}', factors.kmod, ''], [characteristicSymbol, Rk, 'N'], ['\\gamma_M', factors.gammaM, '']],
        newton(designValue(Rk, factors)), { clause: 'EN 1995-1-1 2.4.3 (2.17)' });
}

/** k_mod of a connection between two timbers that age differently. EN 1995-1-1 (2.6), from memory. */
export function kmodOfTwo(kmod1: number, kmod2: number): number {
    return Math.sqrt(kmod1 * kmod2);
}
