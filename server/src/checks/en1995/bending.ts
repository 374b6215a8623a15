import type { ActionState } from '../../analysis/actions.js';
import type { Step, Term } from '../../results.js';
import { ksysShared } from '../../catalog/tables/member-factors.js';
import type { MemberCheck, MemberContext } from '../check.js';
import { whereOf, worstPlace, type Place } from '../governing.js';
import { amount, quotient, step, term, utilisationStep } from '../steps.js';
import { designStrengthStep, durationFactors, strengthTerm } from './design-strength.js';
import { residualNote, sectionTerms, wholeSection } from './section.js';
import { sizeFactor } from './size-factor.js';

/** Stress at the edge of a rectangle, MPa. M in N·mm; b, h in mm. */
export function bendingStress(M: number, b: number, h: number): number {
    return Math.abs(M) / sectionModulus(b, h);
}

/** b h² / 6, mm³. */
export function sectionModulus(b: number, h: number): number {
    return b * h * h / 6;
}

/** k_h of the whole depth (a decayed beam was not graded at its residual one) and k_sys where it is said. */
export function bendingFactors({ member, strength }: MemberContext): { readonly kh: number; readonly ksys: number } {
    return { kh: sizeFactor(strength, wholeSection(member).h), ksys: member.systemStrength ? ksysShared : 1 };
}

/** f_m,k with its factors, before k_mod / γ_M. */
export function bendingStrength(context: MemberContext): number {
    const { kh, ksys } = bendingFactors(context);
    return kh * ksys * context.strength.fm_k;
}

/** Factors on f_m,k as terms; those of 1 are left out. */
export function bendingFactorTerms(context: MemberContext): readonly Term[] {
    const { kh, ksys } = bendingFactors(context);
    const clause = context.strength.product === 'glulam' ? '3.3(3)' : '3.2(3)';
    return [term('k_h', kh, '', `depth of the whole section, ${clause}`), term('k_{sys}', ksys, '', 'load sharing, 6.6')]
        .filter(factor => factor.amount.value !== 1);
}

/** σ_m,y,d as lines of a calculation: section modulus, then stress. */
export function bendingStressSteps(context: MemberContext, { segment, state }: Place): readonly Step[] {
    const { b, h } = sectionTerms(context.member, segment);
    const W = sectionModulus(segment.b, segment.h);
    return [
        step('W_y', '\\frac{b h^2}{6}', [b, h], amount(W, 'mm3'), { note: residualNote(segment) }),
        step('\\sigma_{m,y,d}', '\\frac{M_{y,d}}{W_y}', [
            term('M_{y,d}', Math.abs(state.M) / 1e6, 'kNm', state.M < 0 ? 'hogging' : 'sagging'), term('W_y', W, 'mm3')
        ], amount(Math.abs(state.M) / W, 'MPa'))
    ];
}

export const bending: MemberCheck = {
    name: 'bending',
    clause: 'EN 1995-1-1 6.1.6',
    outcomes: context => {
        const factorOf = durationFactors(context);
        const fk = bendingStrength(context);
        const strengthFor = ({ combination }: ActionState): number => fk * factorOf(combination.duration);
        const place = worstPlace(context.actions, (state, segment) =>
            quotient(bendingStress(state.M, segment.b, segment.h), strengthFor(state)));
        return place ? [{
            utilisation: place.utilisation,
            demand: amount(bendingStress(place.state.M, place.segment.b, place.segment.h), 'MPa'),
            capacity: amount(strengthFor(place.state), 'MPa'),
            ...whereOf(place),
            explain: () => explain(context, place)
        }] : [];
    }
};

function explain(context: MemberContext, place: Place): readonly Step[] {
    const stress = bendingStressSteps(context, place);
    const strength = designStrengthStep(
        context, place.state.combination.duration, 'f_{m,y,d}', strengthTerm(context, 'f_{m,k}', 'fm_k'), bendingFactorTerms(context));
    return [
        ...stress,
        strength,
        utilisationStep(
            term('\\sigma_{m,y,d}', bendingStress(place.state.M, place.segment.b, place.segment.h), 'MPa'),
            term('f_{m,y,d}', strength.result.value, 'MPa'), 'EN 1995-1-1 (6.11)')
    ];
}
