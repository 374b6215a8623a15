import type { Step } from '../../results.js';
import type { MemberCheck, MemberContext } from '../check.js';
import { whereOf, worstPlace, type Place } from '../governing.js';
import { amount, term } from '../steps.js';
import { axialStresses, axialStressSteps, bendingSums, sidewaysSizeFactor, sumStep, type AxialStresses, type Sums } from './axial.js';
import { bendingFactorTerms, bendingStrength } from './bending.js';
import { designStrengthStep, durationFactors, strengthTerm } from './design-strength.js';
import { wholeSection } from './section.js';
import { sizeFactor } from './size-factor.js';
import { negligibleForce } from './free-length.js';

export interface TensionStrengths { readonly ft0: number; readonly fmy: number; readonly fmz: number }

/** Tension with bending about both axes, (6.17) and (6.18). */
export function tensionSums({ axial, my, mz }: AxialStresses, { ft0, fmy, fmz }: TensionStrengths): Sums {
    const { y, z } = bendingSums(my / fmy, mz / fmz);
    return { y: axial / ft0 + y, z: axial / ft0 + z };
}

/** k_h for tension goes by the larger side, 3.2(3). */
function tensionSizeFactor({ member, strength }: MemberContext): number {
    const { b, h } = wholeSection(member);
    return sizeFactor(strength, Math.max(b, h));
}

export const tension: MemberCheck = {
    name: 'tension',
    clause: 'EN 1995-1-1 6.1.2, 6.2.3',
    outcomes: context => {
        const factorOf = durationFactors(context);
        const { strength, actions } = context;
        const along = tensionSizeFactor(context) * strength.ft0_k;
        const fmy = bendingStrength(context);
        const fmz = sidewaysSizeFactor(context) * strength.fm_k;
        const place = worstPlace(actions, (state, segment) => {
            if (state.N <= negligibleForce) {
                return undefined;
            }
            const factor = factorOf(state.combination.duration);
            const { y, z } = tensionSums(axialStresses(state, segment), { ft0: along * factor, fmy: fmy * factor, fmz: fmz * factor });
            return Math.max(y, z);
        });
        return place ? [{
            utilisation: place.utilisation,
            demand: amount(place.utilisation, ''),
            capacity: amount(1, ''),
            ...whereOf(place),
            explain: () => explain(context, place)
        }] : [];
    }
};

function explain(context: MemberContext, place: Place): readonly Step[] {
    const { duration } = place.state.combination;
    const stresses = axialStresses(place.state, place.segment);
    const ft0 = designStrengthStep(context, duration, 'f_{t,0,d}', strengthTerm(context, 'f_{t,0,k}', 'ft0_k'),
        [term('k_h', tensionSizeFactor(context), '', 'larger side, 3.2(3)')]);
    const fmy = designStrengthStep(context, duration, 'f_{m,y,d}', strengthTerm(context, 'f_{m,k}', 'fm_k'), bendingFactorTerms(context));
    const fmz = designStrengthStep(context, duration, 'f_{m,z,d}', strengthTerm(context, 'f_{m,k}', 'fm_k'),
        [term('k_h', sidewaysSizeFactor(context), '', 'bending sideways')]);
    const strengths = { ft0: ft0.result.value, fmy: fmy.result.value, fmz: fmz.result.value };
    return [
        ...axialStressSteps(context, place, '\\sigma_{t,0,d}'), ft0, ...stresses.my > 0 ? [fmy] : [], ...stresses.mz > 0 ? [fmz] : [],
        sumStep(
            '\\frac{\\sigma_{t,0,d}}{f_{t,0,d}}', [term('\\sigma_{t,0,d}', stresses.axial, 'MPa'), term('f_{t,0,d}', ft0.result.value, 'MPa')],
            stresses, strengths, tensionSums(stresses, strengths), { y: '(6.17)', z: '(6.18)' })
    ];
}
