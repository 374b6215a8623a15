import type { ActionState } from '../../analysis/actions.js';
import type { Step } from '../../results.js';
import type { MemberCheck, MemberContext } from '../check.js';
import { whereOf, worstPlace, type Place } from '../governing.js';
import { amount, quotient, step, term, utilisationStep } from '../steps.js';
import { designStrengthStep, durationFactors, strengthTerm } from './design-strength.js';
import { residualNote, sectionTerms } from './section.js';

/** Greatest shear stress of a rectangle with cracks, EN 1995-1-1 6.1.7(2), MPa. V in N; b, h in mm. */
export function shearStress(V: number, b: number, h: number, kcr: number): number {
    return 1.5 * Math.abs(V) / (kcr * b * h);
}

export const shear: MemberCheck = {
    name: 'shear',
    clause: 'EN 1995-1-1 6.1.7',
    outcomes: context => {
        const { strength, parameters, actions } = context;
        const { kcr } = parameters;
        const factorOf = durationFactors(context);
        const strengthFor = ({ combination }: ActionState): number => strength.fv_k * factorOf(combination.duration);
        const place = worstPlace(actions, (state, segment) =>
            quotient(shearStress(state.V, segment.b, segment.h, kcr), strengthFor(state)));
        return place ? [{
            utilisation: place.utilisation,
            demand: amount(shearStress(place.state.V, place.segment.b, place.segment.h, kcr), 'MPa'),
            capacity: amount(strengthFor(place.state), 'MPa'),
            ...whereOf(place),
            explain: () => explain(context, place)
        }] : [];
    }
};

function explain(context: MemberContext, { segment, state }: Place): readonly Step[] {
    const { kcr } = context.parameters;
    const { b, h } = sectionTerms(context.member, segment);
    const strength = designStrengthStep(context, state.combination.duration, 'f_{v,d}', strengthTerm(context, 'f_{v,k}', 'fv_k'));
    const stress = step('\\tau_d', '\\frac{3 V_d}{2 k_{cr} b h}', [
        term('V_d', Math.abs(state.V) / 1000, 'kN'), term('k_{cr}', kcr, '', 'cracks, 6.1.7(2)'), b, h
    ], amount(shearStress(state.V, segment.b, segment.h, kcr), 'MPa'), { clause: 'EN 1995-1-1 6.1.7(2)', note: shearNote(residualNote(segment)) });
    return [stress, strength, utilisationStep(
        term('\\tau_d', stress.result.value, 'MPa'), term('f_{v,d}', strength.result.value, 'MPa'), 'EN 1995-1-1 (6.13)')];
}

function shearNote(residual: string | undefined): string {
    return [residual, 'loads near the support are counted in full: 6.1.7(3) is not made use of'].filter(Boolean).join('; ');
}
