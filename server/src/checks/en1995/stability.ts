import type { ActionState, Segment } from '../../analysis/actions.js';
import type { Step } from '../../results.js';
import type { MemberCheck, MemberContext } from '../check.js';
import { whereOf, worstPlace, type Place } from '../governing.js';
import { amount, quotient, step, term, utilisationStep } from '../steps.js';
import { axialStressSteps } from './axial.js';
import { bendingFactorTerms, bendingStrength, bendingStress, bendingStressSteps } from './bending.js';
import type { Buckling } from './buckling.js';
import { bucklingAt, bucklingSteps } from './compression.js';
import { compressionEdgeAt, type CompressionEdge } from './compression-edge.js';
import { designStrengthStep, durationFactors, strengthTerm } from './design-strength.js';
import { shearModulus05, torsionConstant } from './lateral-buckling.js';
import { negligibleForce, onceBySpan } from './free-length.js';

/**
 * Bending with compression, (6.35), and bending by itself, (6.33): the larger.
 * @param bending σ_m,d / (k_crit f_m,d)
 * @param axial σ_c,d / (k_c,z f_c,0,d)
 */
export function stabilitySum(bending: number, axial: number): number {
    return axial > 0 ? Math.max(bending, bending ** 2 + axial) : bending;
}

/** What holds the member sideways at one station. */
interface Lateral { readonly sagging: CompressionEdge; readonly hogging: CompressionEdge; readonly buckling: Buckling }

export const stability: MemberCheck = {
    name: 'stability',
    clause: 'EN 1995-1-1 6.3.3',
    outcomes: context => {
        const factorOf = durationFactors(context);
        const fm = bendingStrength(context);
        const fc0 = context.strength.fc0_k;
        const lateralAt = onceBySpan(context.actions, (station): Lateral => ({
            sagging: compressionEdgeAt(context, station.x, false),
            hogging: compressionEdgeAt(context, station.x, true),
            buckling: bucklingAt(context, station).z
        }));
        const partsOf = (state: ActionState, { b, h }: Segment, lateral: Lateral): { readonly bending: number; readonly axial: number } => {
            const factor = factorOf(state.combination.duration);
            return {
                bending: quotient(bendingStress(state.M, b, h), edgeOf(state, lateral).kcrit * fm * factor),
                axial: state.N < -negligibleForce ? quotient(-state.N / (b * h), lateral.buckling.kc * fc0 * factor) : 0
            };
        };
        const place = worstPlace(context.actions, (state, segment, station) => {
            const { bending, axial } = partsOf(state, segment, lateralAt(station));
            return stabilitySum(bending, axial);
        });
        if (!place) {
            return [];
        }
        const { state, segment, station } = place;
        const lateral = lateralAt(station);
        const { bending, axial } = partsOf(state, segment, lateral);
        const interacts = stabilitySum(bending, axial) > bending;
        return [{
            utilisation: place.utilisation,
            demand: interacts ? amount(place.utilisation, '') : amount(bendingStress(state.M, segment.b, segment.h), 'MPa'),
            capacity: interacts ? amount(1, '') : amount(edgeOf(state, lateral).kcrit * fm * factorOf(state.combination.duration), 'MPa'),
            ...whereOf(place),
            explain: () => explain(context, place, lateral, interacts)
        }];
    }
};

function edgeOf({ M }: ActionState, { sagging, hogging }: Lateral): CompressionEdge {
    return M < 0 ? hogging : sagging;
}

function explain(context: MemberContext, place: Place, lateral: Lateral, interacts: boolean): readonly Step[] {
    const edge = edgeOf(place.state, lateral);
    const { duration } = place.state.combination;
    const fm = designStrengthStep(context, duration, 'f_{m,d}', strengthTerm(context, 'f_{m,k}', 'fm_k'), bendingFactorTerms(context));
    const stress = term('\\sigma_{m,y,d}', bendingStress(place.state.M, place.segment.b, place.segment.h), 'MPa');
    const before = [...edgeSteps(context, edge), fm];
    if (!interacts) {
        const capacity = edge.kcrit * fm.result.value;
        return [
            ...bendingStressSteps(context, place), ...before,
            step('R_{m,d}', 'k_{crit} f_{m,d}', [term('k_{crit}', edge.kcrit), term('f_{m,d}', fm.result.value, 'MPa')], amount(capacity, 'MPa')),
            utilisationStep(stress, term('R_{m,d}', capacity, 'MPa'), 'EN 1995-1-1 (6.33)')
        ];
    }
    const fc0 = designStrengthStep(context, duration, 'f_{c,0,d}', strengthTerm(context, 'f_{c,0,k}', 'fc0_k'));
    return [
        ...axialStressSteps(context, place, '\\sigma_{c,0,d}'), ...before, ...bucklingSteps(context, lateral.buckling, 'z'), fc0,
        step('\\eta', '(\\frac{\\sigma_{m,y,d}}{k_{crit} f_{m,d}})^2 + \\frac{\\sigma_{c,0,d}}{k_{c,z} f_{c,0,d}}', [
            stress, term('k_{crit}', edge.kcrit), term('f_{m,d}', fm.result.value, 'MPa'),
            term('\\sigma_{c,0,d}', -place.state.N / (place.segment.b * place.segment.h), 'MPa'),
            term('k_{c,z}', lateral.buckling.kc), term('f_{c,0,d}', fc0.result.value, 'MPa')
        ], amount(place.utilisation, ''), { clause: 'EN 1995-1-1 (6.35)', note: 'has to be \\le 1' })
    ];
}

function edgeSteps(context: MemberContext, edge: CompressionEdge): readonly Step[] {
    const { strength } = context;
    const { length, ratio, lef, critical, lambdaRel, note } = edge;
    const depth = (lef - ratio * length) / 2;
    return [
        step('l_{ef}', 'r l + 2 h', [term('r', ratio, '', 'Table 6.1'), term('l', length, 'mm'), term('h', depth, 'mm', 'load at the compressed edge')],
            amount(lef, 'mm'), { clause: 'EN 1995-1-1 Table 6.1', note: `${note}; the supports keep the member upright` }),
        criticalStressStep(context, edge),
        step('\\lambda_{rel,m}', '\\sqrt{\\frac{f_{m,k}}{\\sigma_{m,crit}}}', [term('f_{m,k}', strength.fm_k, 'MPa'), term('\\sigma_{m,crit}', critical, 'MPa')],
            amount(lambdaRel, ''), { clause: 'EN 1995-1-1 (6.30)' }),
        kcritStep(edge)
    ];
}

function criticalStressStep({ strength }: MemberContext, { b, h, lef, critical }: CompressionEdge): Step {
    const size = [term('b', b, 'mm', 'weakest section along that length'), term('h', h, 'mm'), term('l_{ef}', lef, 'mm')];
    const E = term('E_{0,05}', strength.E0_05, 'MPa', `${strength.name}: ${strength.origin}`);
    if (strength.softwood && strength.product === 'solid') {
        return step('\\sigma_{m,crit}', '\\frac{0.78 b^2 E_{0,05}}{h l_{ef}}', [...size, E], amount(critical, 'MPa'), { clause: 'EN 1995-1-1 (6.32)' });
    }
    return step('\\sigma_{m,crit}', '\\frac{\\pi \\sqrt{E_{0,05} I_z G_{0,05} I_{tor}}}{l_{ef} W_y}', [
        E, term('I_z', h * b ** 3 / 12, 'mm4'), term('G_{0,05}', shearModulus05(strength), 'MPa'), term('I_{tor}', torsionConstant(b, h), 'mm4'),
        term('l_{ef}', lef, 'mm'), term('W_y', b * h * h / 6, 'mm3')
    ], amount(critical, 'MPa'), { clause: 'EN 1995-1-1 (6.31)' });
}

function kcritStep({ lambdaRel, kcrit }: CompressionEdge): Step {
    const slender = term('\\lambda_{rel,m}', lambdaRel);
    const [formula, terms] = lambdaRel <= 0.75 ? ['1', []]
        : lambdaRel <= 1.4 ? ['1.56 - 0.75 \\lambda_{rel,m}', [slender]]
            : ['\\frac{1}{\\lambda_{rel,m}^2}', [slender]];
    return step('k_{crit}', formula, terms, amount(kcrit, ''), { clause: 'EN 1995-1-1 (6.34)' });
}
