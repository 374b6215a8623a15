import { kmRectangle } from '../../catalog/tables/member-factors.js';
import type { Step } from '../../results.js';
import type { MemberCheck, MemberContext } from '../check.js';
import { worstPlace, type Place } from '../governing.js';
import { amount, step, term } from '../steps.js';
import { axialStresses, axialStressSteps, bendingSum, negligibleForce, sidewaysSizeFactor, type AxialStresses } from './axial.js';
import { bendingFactorTerms, bendingStrength } from './bending.js';
import { designStrengthStep, durationFactors, strengthTerm } from './design-strength.js';
import { wholeSection } from './section.js';
import { sizeFactor } from './size-factor.js';

export interface TensionStrengths { readonly ft0: number; readonly fmy: number; readonly fmz: number }

/** Tension with bending about both axes, (6.17) and (6.18): the larger of the two sums. */
export function tensionSum({ axial, my, mz }: AxialStresses, { ft0, fmy, fmz }: TensionStrengths): number {
    return axial / ft0 + bendingSum(my / fmy, mz / fmz);
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
                return -Infinity;
            }
            const factor = factorOf(state.combination.duration);
            return tensionSum(axialStresses(state, segment), { ft0: along * factor, fmy: fmy * factor, fmz: fmz * factor });
        });
        return place ? [{
            utilisation: place.utilisation,
            demand: amount(place.utilisation, ''),
            capacity: amount(1, ''),
            combination: place.state.combination,
            at: place.station.x,
            explain: () => explain(context, place)
        }] : [];
    }
};

function explain(context: MemberContext, place: Place): readonly Step[] {
    const { duration } = place.state.combination;
    const { axial, my, mz } = axialStresses(place.state, place.segment);
    const ft0 = designStrengthStep(context, duration, 'f_{t,0,d}', strengthTerm(context, 'f_{t,0,k}', 'ft0_k'),
        [term('k_h', tensionSizeFactor(context), '', 'larger side, 3.2(3)')]);
    const fmy = designStrengthStep(context, duration, 'f_{m,y,d}', strengthTerm(context, 'f_{m,k}', 'fm_k'), bendingFactorTerms(context));
    const fmz = designStrengthStep(context, duration, 'f_{m,z,d}', strengthTerm(context, 'f_{m,k}', 'fm_k'),
        [term('k_h', sidewaysSizeFactor(context), '', 'bending sideways')]);
    const yRules = my / fmy.result.value >= mz / fmz.result.value;
    const formula = [
        '\\frac{\\sigma_{t,0,d}}{f_{t,0,d}}',
        ...my > 0 ? [`${yRules ? '' : 'k_m '}\\frac{\\sigma_{m,y,d}}{f_{m,y,d}}`] : [],
        ...mz > 0 ? [`${yRules ? 'k_m ' : ''}\\frac{\\sigma_{m,z,d}}{f_{m,z,d}}`] : []
    ].join(' + ');
    const terms = [
        term('\\sigma_{t,0,d}', axial, 'MPa'), term('f_{t,0,d}', ft0.result.value, 'MPa'), term('k_m', kmRectangle),
        term('\\sigma_{m,y,d}', my, 'MPa'), term('f_{m,y,d}', fmy.result.value, 'MPa'),
        term('\\sigma_{m,z,d}', mz, 'MPa'), term('f_{m,z,d}', fmz.result.value, 'MPa')
    ].filter(({ symbol }) => formula.includes(symbol));
    return [
        ...axialStressSteps(context, place, '\\sigma_{t,0,d}'), ft0, ...my > 0 ? [fmy] : [], ...mz > 0 ? [fmz] : [],
        step('\\eta', formula, terms, amount(place.utilisation, ''), { clause: `EN 1995-1-1 ${yRules ? '(6.17)' : '(6.18)'}`, note: 'has to be \\le 1' })
    ];
}
