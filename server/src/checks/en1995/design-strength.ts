/** Design values of strength, EN 1995-1-1 2.4.1(1): X_d = k_mod X_k / γ_M. */
import type { Duration } from '../../../../language/src/model.js';
import type { Step, Term } from '../../results.js';
import type { MemberContext } from '../check.js';
import { amount, step, term } from '../steps.js';

/** @param factors such as k_h and k_sys */
export function designStrength(fk: number, kmod: number, gammaM: number, ...factors: readonly number[]): number {
    return factors.reduce((product, factor) => product * factor, kmod * fk) / gammaM;
}

/** k_mod / γ_M of this member's timber by load duration, each looked up once. */
export function durationFactors({ strength, job, parameters }: MemberContext): (duration: Duration) => number {
    const known: Partial<Record<Duration, number>> = {};
    const gammaM = parameters.gammaM(strength.product);
    return duration => known[duration] ??= parameters.kmod(strength.product, job.serviceClass, duration) / gammaM;
}

/** The line of a calculation for one design strength. */
export function designStrengthStep(
    context: MemberContext, duration: Duration, symbol: string, characteristic: Term, factors: readonly Term[] = []
): Step {
    const { strength, job, parameters } = context;
    const kmod = parameters.kmod(strength.product, job.serviceClass, duration);
    const gammaM = parameters.gammaM(strength.product);
    const terms = [
        term('k_{mod}', kmod, '', `${duration}, service class ${job.serviceClass}, Table 3.1`),
        ...factors,
        characteristic,
        term('\\gamma_M', gammaM, '', 'Table 2.3')
    ];
    const numerator = terms.slice(0, -1).map(({ symbol: name }) => name).join(' ');
    const value = designStrength(characteristic.amount.value, kmod, gammaM, ...factors.map(factor => factor.amount.value));
    return step(symbol, `\\frac{${numerator}}{\\gamma_M}`, terms, amount(value, 'MPa'), { clause: 'EN 1995-1-1 2.4.1' });
}

/** Characteristic strength as a term, with where the table comes from. */
export function strengthTerm({ strength }: MemberContext, symbol: string, property: 'fm_k' | 'fv_k' | 'ft0_k' | 'fc0_k' | 'fc90_k'): Term {
    return term(symbol, strength[property], 'MPa', `${strength.name}: ${strength.origin}`);
}
