import { betaC } from '../../catalog/tables/member-factors.js';
import type { Segment, Station } from '../../analysis/actions.js';
import type { Step } from '../../results.js';
import type { MemberCheck, MemberContext } from '../check.js';
import { whereOf, worstPlace, type Place } from '../governing.js';
import { amount, step, term } from '../steps.js';
import { axialStresses, axialStressSteps, bendingSums, governingAxis, sidewaysSizeFactor, sumStep, type AxialStresses, type Sums } from './axial.js';
import { bendingFactorTerms, bendingStrength } from './bending.js';
import { bucklingOf, type Buckling } from './buckling.js';
import { designStrengthStep, durationFactors, strengthTerm } from './design-strength.js';
import { heldByBolts, lateralBucklingLength, negligibleForce, onceBySpan, segmentsIn, spanBucklingLength, spansAt } from './free-length.js';

export interface CompressionStrengths { readonly fc0: number; readonly fmy: number; readonly fmz: number }

/** Buckling in the plane of bending (y) and out of it (z). */
export interface BucklingPair { readonly y: Buckling; readonly z: Buckling }

/**
 * Compression with bending about both axes: (6.19) and (6.20) where neither slenderness exceeds 0.3,
 * (6.23) and (6.24) else.
 */
export function compressionSums(stress: AxialStresses, { fc0, fmy, fmz }: CompressionStrengths, kcy: number, kcz: number, buckles: boolean): Sums {
    const { y, z } = bendingSums(stress.my / fmy, stress.mz / fmz);
    const axial = stress.axial / fc0;
    return buckles ? { y: axial / kcy + y, z: axial / kcz + z } : { y: axial ** 2 + y, z: axial ** 2 + z };
}

/** The least favourable buckling of the lengths around a station, with the weakest section along each. */
export function bucklingAt(context: MemberContext, station: Station): BucklingPair {
    const { actions, member, strength } = context;
    const straightness = betaC[strength.product];
    const held = heldByBolts(context);
    const pairs = spansAt(actions, station.x, member.length.value).flatMap(span => segmentsIn(actions, span).map((segment: Segment): BucklingPair => ({
        y: bucklingOf(held ?? spanBucklingLength(span), segment.h, strength, straightness),
        z: bucklingOf(Math.min(held ?? Infinity, lateralBucklingLength(span, member)), segment.b, strength, straightness)
    })));
    const slenderer = (a: Buckling, b: Buckling): Buckling => b.lambda <= a.lambda ? a : b;
    return pairs.reduce((most, pair) => ({ y: slenderer(most.y, pair.y), z: slenderer(most.z, pair.z) }));
}

const buckles = ({ y, z }: BucklingPair): boolean => !(y.lambdaRel <= 0.3 && z.lambdaRel <= 0.3);

export const compression: MemberCheck = {
    name: 'compression',
    clause: 'EN 1995-1-1 6.2.4, 6.3.2',
    outcomes: context => {
        const factorOf = durationFactors(context);
        const { strength, actions } = context;
        const along = strength.fc0_k;
        const fmy = bendingStrength(context);
        const fmz = sidewaysSizeFactor(context) * strength.fm_k;
        const pairAt = onceBySpan(actions, station => bucklingAt(context, station));
        const place = worstPlace(actions, (state, segment, station) => {
            if (state.N >= -negligibleForce) {
                return undefined;
            }
            const factor = factorOf(state.combination.duration);
            const pair = pairAt(station);
            const { y, z } = compressionSums(
                axialStresses(state, segment), { fc0: along * factor, fmy: fmy * factor, fmz: fmz * factor }, pair.y.kc, pair.z.kc, buckles(pair));
            return Math.max(y, z);
        });
        return place ? [{
            utilisation: place.utilisation,
            demand: amount(place.utilisation, ''),
            capacity: amount(1, ''),
            ...whereOf(place),
            explain: () => explain(context, place, pairAt(place.station))
        }] : [];
    }
};

function explain(context: MemberContext, place: Place, pair: BucklingPair): readonly Step[] {
    const { duration } = place.state.combination;
    const stresses = axialStresses(place.state, place.segment);
    const fc0 = designStrengthStep(context, duration, 'f_{c,0,d}', strengthTerm(context, 'f_{c,0,k}', 'fc0_k'));
    const fmy = designStrengthStep(context, duration, 'f_{m,y,d}', strengthTerm(context, 'f_{m,k}', 'fm_k'), bendingFactorTerms(context));
    const fmz = designStrengthStep(context, duration, 'f_{m,z,d}', strengthTerm(context, 'f_{m,k}', 'fm_k'),
        [term('k_h', sidewaysSizeFactor(context), '', 'bending sideways')]);
    const bends = [...stresses.my > 0 ? [fmy] : [], ...stresses.mz > 0 ? [fmz] : []];
    const strengths = { fc0: fc0.result.value, fmy: fmy.result.value, fmz: fmz.result.value };
    const slender = buckles(pair);
    const sums = compressionSums(stresses, strengths, pair.y.kc, pair.z.kc, slender);
    const axis = governingAxis(sums);
    const kc = term(`k_{c,${axis}}`, pair[axis].kc);
    return [
        ...axialStressSteps(context, place, '\\sigma_{c,0,d}'), fc0, ...bends,
        ...slender ? [...bucklingSteps(context, pair.y, 'y'), ...bucklingSteps(context, pair.z, 'z')] : [],
        sumStep(
            slender ? `\\frac{\\sigma_{c,0,d}}{${kc.symbol} f_{c,0,d}}` : '(\\frac{\\sigma_{c,0,d}}{f_{c,0,d}})^2',
            [term('\\sigma_{c,0,d}', stresses.axial, 'MPa'), ...slender ? [kc] : [], term('f_{c,0,d}', fc0.result.value, 'MPa')],
            stresses, strengths, sums, slender ? { y: '(6.23)', z: '(6.24)' } : { y: '(6.19)', z: '(6.20)' })
    ];
}

export function bucklingSteps({ strength }: MemberContext, buckling: Buckling, axis: 'y' | 'z'): readonly Step[] {
    const { length, radius, lambda, lambdaRel, k, kc } = buckling;
    const [slender, relative] = [`\\lambda_${axis}`, `\\lambda_{rel,${axis}}`];
    const straightness = term('\\beta_c', betaC[strength.product], '', 'straightness, (6.29)');
    return [
        step(slender, '\\frac{l_0}{i}', [
            term('l_0', length, 'mm', axis === 'y' ? 'in the plane of bending; twice the length where an end is free' : 'out of the plane, between what holds it sideways'),
            term('i', radius, 'mm', 'least radius of gyration along that length')
        ], amount(lambda, '')),
        step(relative, `\\frac{${slender}}{\\pi} \\sqrt{\\frac{f_{c,0,k}}{E_{0,05}}}`, [
            term(slender, lambda), term('f_{c,0,k}', strength.fc0_k, 'MPa'), term('E_{0,05}', strength.E0_05, 'MPa')
        ], amount(lambdaRel, ''), { clause: `EN 1995-1-1 (6.2${axis === 'y' ? 1 : 2})` }),
        ...lambdaRel > 0.3 ? [
            step(`k_${axis}`, `0.5 (1 + \\beta_c (${relative} - 0.3) + ${relative}^2)`, [straightness, term(relative, lambdaRel)], amount(k, ''),
                { clause: `EN 1995-1-1 (6.2${axis === 'y' ? 7 : 8})` }),
            step(`k_{c,${axis}}`, `\\frac{1}{k_${axis} + \\sqrt{k_${axis}^2 - ${relative}^2}}`, [term(`k_${axis}`, k), term(relative, lambdaRel)],
                amount(kc, ''), { clause: `EN 1995-1-1 (6.2${axis === 'y' ? 5 : 6})` })
        ] : []
    ];
}
