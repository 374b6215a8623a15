import { notchKn } from '../../catalog/tables/member-factors.js';
import type { Step } from '../../results.js';
import type { ActionState } from '../../analysis/actions.js';
import type { MemberCheck, MemberContext, Outcome } from '../check.js';
import { isWorse } from '../worse.js';
import { amount, quotient, step, term, utilisationStep } from '../steps.js';
import { designStrengthStep, durationFactors, strengthTerm } from './design-strength.js';
import { notchFactor } from './notch-factor.js';
import { notchCorners, openedFieldNotches, type NotchCorner } from './notches.js';
import { shearStress } from './shear.js';

export const notch: MemberCheck = {
    name: 'notch',
    clause: 'EN 1995-1-1 6.5.2',
    outcomes: context => {
        const factorOf = durationFactors(context);
        return notchCorners(context).flatMap(corner => worstAt(context, corner, factorOf) ?? []);
    },
    lacking: context => openedFieldNotches(context).map(({ face, from, to }) =>
        `notch: no rule of EN 1995-1-1 covers the one in the ${face} from ${metres(from.value)} to ${metres(to.value)} m, on the tension side away from a support`)
};

/** The worst shear between the reaction and the corner. */
function worstAt(context: MemberContext, corner: NotchCorner, factorOf: ReturnType<typeof durationFactors>): Outcome | undefined {
    const { strength, parameters, actions } = context;
    const { b, shape, on, at } = corner;
    const kv = corner.facesSupport ? notchFactor(shape, notchKn[strength.product]) : 1;
    const [from, to] = [Math.min(at, on.at), Math.max(at, on.at)];
    let worst: { readonly state: ActionState; readonly x: number; readonly utilisation: number } | undefined;
    const stressOf = ({ V }: ActionState): number => shearStress(V, b, shape.hef, parameters.kcr);
    const capacityOf = ({ combination }: ActionState): number => kv * strength.fv_k * factorOf(combination.duration);
    for (const { x, states } of actions.stations) {
        for (const state of x >= from && x <= to ? states : []) {
            const utilisation = quotient(stressOf(state), capacityOf(state));
            if (isWorse(utilisation, worst?.utilisation)) {
                worst = { state, x, utilisation };
            }
        }
    }
    if (!worst) {
        return undefined;
    }
    const { state, utilisation } = worst;
    return {
        utilisation,
        demand: amount(stressOf(state), 'MPa'),
        capacity: amount(capacityOf(state), 'MPa'),
        combination: state.combination,
        at: worst.x,
        explain: () => explain(context, corner, state, kv)
    };
}

function explain(context: MemberContext, corner: NotchCorner, state: ActionState, kv: number): readonly Step[] {
    const { kcr } = context.parameters;
    const { shape, b } = corner;
    const strength = designStrengthStep(context, state.combination.duration, 'f_{v,d}', strengthTerm(context, 'f_{v,k}', 'fv_k'));
    const stress = shearStress(state.V, b, shape.hef, kcr);
    const capacity = kv * strength.result.value;
    return [
        ...corner.facesSupport ? factorSteps(context, corner, kv) : [
            step('k_v', '1', [], amount(1, ''), { clause: 'EN 1995-1-1 6.5.2(2)', note: `the notch is on the side away from the support on ${corner.on.support}` })
        ],
        step('\\tau_d', '\\frac{3 V_d}{2 k_{cr} b h_{ef}}', [
            term('V_d', Math.abs(state.V) / 1000, 'kN'), term('k_{cr}', kcr, '', 'cracks, 6.1.7(2)'),
            term('b', b, 'mm', 'breadth'), term('h_{ef}', shape.hef, 'mm', 'depth that the notch leaves', corner.notch.depth.source)
        ], amount(stress, 'MPa'), { clause: 'EN 1995-1-1 (6.60)' }),
        strength,
        step('R_{v,d}', 'k_v f_{v,d}', [term('k_v', kv), term('f_{v,d}', strength.result.value, 'MPa')], amount(capacity, 'MPa')),
        utilisationStep(term('\\tau_d', stress, 'MPa'), term('R_{v,d}', capacity, 'MPa'), 'EN 1995-1-1 (6.60)')
    ];
}

function factorSteps({ strength }: MemberContext, { shape, on }: NotchCorner, kv: number): readonly Step[] {
    const { h, hef, x, i } = shape;
    const alpha = term('\\alpha', hef / h);
    return [
        step('\\alpha', '\\frac{h_{ef}}{h}', [term('h_{ef}', hef, 'mm'), term('h', h, 'mm')], amount(hef / h, '')),
        step('k_v', '\\min(1, \\frac{k_n (1 + \\frac{1.1 i^{1.5}}{\\sqrt{h}})}{\\sqrt{h} (\\sqrt{\\alpha (1 - \\alpha)} + 0.8 \\frac{x}{h} \\sqrt{\\frac{1}{\\alpha} - \\alpha^2})})', [
            term('k_n', notchKn[strength.product], '', '(6.63)'), term('i', i, '', 'taper of the notch'), term('h', h, 'mm'), alpha,
            term('x', x, 'mm', `from the reaction on ${on.support} to the corner`)
        ], amount(kv, ''), { clause: 'EN 1995-1-1 (6.62)', note: 'h in mm' })
    ];
}

const metres = (mm: number): string => (mm / 1000).toFixed(2);
