import type { FloorVibration } from '../../../../language/src/model.js';
import type { Combination, Span } from '../../analysis/actions.js';
import { flitchShares } from '../../analysis/flitch.js';
import { flitchParts } from '../../catalog/elements.js';
import { steelNamed } from '../../catalog/steel-material.js';
import type { Step } from '../../results.js';
import type { MemberCheck, MemberContext, Outcome } from '../check.js';
import { amount, quotient, step, term, utilisationStep } from '../steps.js';
import { fundamentalFrequency, impulseVelocity, impulseVelocityLimit, modesBelow40Hz, pointLoadDeflection, pointLoadFactor } from './floor-vibration.js';
import { isProblem } from '../verdict.js';
import { segmentsIn } from './free-length.js';

/** A floor's numbers in SI: m, kg, N. */
interface Floor {
    readonly span: number;
    readonly width: number;
    readonly spacing: number;
    readonly m: number;
    readonly EI_l: number;
    readonly EI_b: number;
    readonly zeta: number;
    readonly source: FloorVibration;
}

export const vibration: MemberCheck = {
    name: 'vibration',
    clause: 'EN 1995-1-1 7.3.3',
    outcomes: context => {
        const { floor } = context.member;
        return floor ? context.actions.spans.filter(span => !span.overhang).flatMap(span => outcomesOf(context, span, floor)) : [];
    },
    lacking: ({ member, loads }) => !member.floor && loads.some(({ action }) => action.kind === 'imposed' && action.category === 'A')
        ? ['vibration: a dwelling floor (imposed A) whose `floor { … }` is not given']
        : []
};

/** No load combination: the floor's own mass and a person's step. */
const unloaded: Combination = { kind: 'quasi-permanent', factors: [], duration: 'instantaneous', label: 'floor mass, 1 kN, unit impulse' };

function outcomesOf(context: MemberContext, span: Span, source: FloorVibration): readonly Outcome[] {
    const floor = floorOf(context, span, source);
    const f1 = fundamentalFrequency(floor.span, floor.EI_l, floor.m);
    const common = { combination: unloaded, at: (span.from + span.to) / 2 };
    return [frequency(floor, f1), stiffness(context, floor, f1), velocity(context, floor, f1)].map(outcome => ({ ...common, ...outcome }));
}

function floorOf(context: MemberContext, span: Span, source: FloorVibration): Floor {
    return {
        span: (span.to - span.from) / 1000,
        width: source.width.value / 1000,
        spacing: source.spacing.value / 1000,
        m: source.massPerArea.value * 1e6,
        EI_l: joistStiffness(context, span) / source.spacing.value / 1000,
        EI_b: source.transverseStiffness.value / 1000,
        zeta: source.damping.value,
        source
    };
}

/** N mm² of one joist: its weakest section; leaves by what the analysis finds them worth; a flitch beam's transformed. */
function joistStiffness({ strength, actions, member, materials }: MemberContext, span: Span): number {
    const { section } = member;
    if (section.shape === 'flitch') {
        const steel = steelNamed(section.steel.value, section.thickness.value, materials);
        const shares = 'steel' in steel ? flitchShares(flitchParts(section, strength.E0_mean, steel.steel.E)) : steel;
        return isProblem(shares) ? NaN : shares.EI;
    }
    const weakest = segmentsIn(actions, span).reduce((least, { b, h }) => Math.min(least, b * h ** 3 / 12), Infinity);
    return strength.E0_mean * weakest * (section.shape === 'plies' ? actions.stiffnessRatio ?? NaN : 1);
}

type Criterion = Omit<Outcome, 'combination' | 'at'>;

/** 7.3.3(1): a floor of 8 Hz or less needs an investigation of its own, so it never passes here. */
function frequency(floor: Floor, f1: number): Criterion {
    const utilisation = f1 > 8 ? 8 / f1 : Math.max(quotient(8, f1), 1 + Number.EPSILON);
    return {
        utilisation, demand: amount(8, 'Hz'), capacity: amount(f1, 'Hz'),
        explain: () => [
            ...frequencySteps(floor, f1),
            step('\\eta', '\\frac{8}{f_1}', [term('f_1', f1, 'Hz')], amount(utilisation, ''),
                { clause: 'EN 1995-1-1 7.3.3(1)', note: f1 > 8 ? 'f_1 has to be above 8 Hz' : 'at 8 Hz or less a special investigation is required' })
        ]
    };
}

function stiffness({ parameters }: MemberContext, floor: Floor, f1: number): Criterion {
    const { span, EI_l, EI_b, spacing } = floor;
    const w = pointLoadDeflection(span, EI_l, EI_b, spacing);
    const a = parameters.vibrationA;
    return {
        utilisation: quotient(w, a), demand: amount(w, 'mm/kN'), capacity: amount(a, 'mm/kN'),
        explain: () => [
            ...frequencySteps(floor, f1),
            step('k_\\delta', '\\min(1, (\\frac{(EI)_b}{(EI)_l})^{0.25})', [
                term('(EI)_b', EI_b, 'Nm2/m', 'deck across the joists', floor.source.transverseStiffness.source), term('(EI)_l', EI_l, 'Nm2/m')
            ], amount(pointLoadFactor(EI_l, EI_b), '')),
            step('w', '\\min(\\frac{F l^2}{42 k_\\delta (EI)_l}, \\frac{F l^3}{48 s (EI)_l})', [
                term('F', 1, 'kN'), term('l', span, 'm'), term('k_\\delta', pointLoadFactor(EI_l, EI_b)), term('(EI)_l', EI_l, 'Nm2/m'),
                term('s', spacing, 'm', 'spacing of the joists', floor.source.spacing.source)
            ], amount(w, 'mm/kN'), { clause: 'LVL Handbook Europe 2025, 9.1', note: 'shared by the deck, and no more than of one joist alone' }),
            utilisationStep(term('w', w, 'mm/kN'), term('a', a, 'mm/kN', 'limit of the basis'), 'EN 1995-1-1 (7.3)')
        ]
    };
}

function velocity({ parameters }: MemberContext, floor: Floor, f1: number): Criterion {
    const { span, width, m, EI_l, EI_b, zeta } = floor;
    const n40 = modesBelow40Hz(f1, width, span, EI_l, EI_b);
    const v = impulseVelocity(n40, m, width, span);
    const limit = impulseVelocityLimit(parameters.vibrationB, f1, zeta);
    const modes = f1 >= 40
        ? step('n_{40}', '0', [], amount(0, ''), { clause: 'EN 1995-1-1 7.3.3(5)', note: 'the first mode is above 40 Hz' })
        : step('n_{40}', '(((\\frac{40}{f_1})^2 - 1) (\\frac{B}{l})^4 \\frac{(EI)_l}{(EI)_b})^{0.25}', [
            term('f_1', f1, 'Hz'), term('B', width, 'm', 'width of the floor', floor.source.width.source), term('l', span, 'm'),
            term('(EI)_l', EI_l, 'Nm2/m'), term('(EI)_b', EI_b, 'Nm2/m', 'deck across the joists', floor.source.transverseStiffness.source)
        ], amount(n40, ''), { clause: 'EN 1995-1-1 (7.7)' });
    return {
        utilisation: quotient(v, limit), demand: amount(v, 'm/(Ns2)'), capacity: amount(limit, 'm/(Ns2)'),
        explain: () => [
            ...frequencySteps(floor, f1),
            modes,
            step('v', '\\frac{4 (0.4 + 0.6 n_{40})}{m B l + 200}', [
                term('n_{40}', n40), term('m', m, 'kg/m2'), term('B', width, 'm'), term('l', span, 'm')
            ], amount(v, 'm/(Ns2)'), { clause: 'EN 1995-1-1 (7.6)' }),
            step('v_{lim}', 'b^{f_1 \\zeta - 1}', [term('b', parameters.vibrationB, '', 'limit of the basis'), term('f_1', f1, 'Hz'), term('\\zeta', zeta, '', 'damping')],
                amount(limit, 'm/(Ns2)'), { clause: 'EN 1995-1-1 (7.4)' }),
            utilisationStep(term('v', v, 'm/(Ns2)'), term('v_{lim}', limit, 'm/(Ns2)'), 'EN 1995-1-1 (7.4)')
        ]
    };
}

function frequencySteps({ span, EI_l, m, source }: Floor, f1: number): readonly Step[] {
    return [step('f_1', '\\frac{\\pi}{2 l^2} \\sqrt{\\frac{(EI)_l}{m}}', [
        term('l', span, 'm', 'span'), term('(EI)_l', EI_l, 'Nm2/m', 'joists, weakest section of the span over their spacing', source.spacing.source),
        term('m', m, 'kg/m2', 'permanent mass', source.massPerArea.source)
    ], amount(f1, 'Hz'), { clause: 'EN 1995-1-1 (7.5)' })];
}
