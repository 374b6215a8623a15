/** Timber at holes: bending, axial force and shear on what the holes leave, EN 1995-1-1 5.2. */
import type { ActionState, MemberActions, Segment, Station } from '../../analysis/actions.js';
import type { Step } from '../../results.js';
import type { MemberContext } from '../check.js';
import { worstOf } from '../governing.js';
import { judgedCheck, whereAt, type Answer } from '../judged.js';
import { amount, quotient, step, term, utilisationStep } from '../steps.js';
import { worst, type Verdict } from '../verdict.js';
import { bendingFactorTerms, bendingStrength } from './bending.js';
import { designStrengthStep, durationFactors, strengthTerm } from './design-strength.js';
import { greatestHole } from './fasteners/holes-and-washers.js';
import { rodHoles } from '../hanger/layout.js';
import { shearStress } from './shear.js';

/** Heights above the axis, mm. */
export interface DrilledHole {
    readonly x: number;
    readonly height: number;
    readonly diameter: number;
}

export interface NetSection {
    /** Breadth of holes deducted, mm. */
    readonly lost: number;
    /** Of the net section's middle above that of the gross one. */
    readonly shift: number;
    readonly A: number;
    readonly I: number;
    /** From the net middle to the farther edge. */
    readonly edge: number;
}

/** A larger hole has stresses of its own around it, which 5.2 does not cover (limit of a national annex, from memory). */
const largest = 50;

export const netSection = judgedCheck('net section', 'EN 1995-1-1 5.2, 6.1.6', (context: MemberContext) => {
    const holes = holesOf(context);
    const strengths = strengthsOf(context);
    return {
        answers: [
            ...clustersOf(holes).flatMap(cluster => answersAt(context, strengths, { x: cluster[0]!.x, cluster, slot: 0 })),
            ...rodSlots(context).map(({ x, breadth }) => ({ x, slot: breadth, cluster: holes.filter(hole => near(hole, x)) })).flatMap(place => answersAt(context, strengths, place))
        ],
        lacking: holes.filter(({ diameter }) => diameter > largest)
            .map(({ x, diameter }) => `no rule of EN 1995-1-1 covers a hole of ${Math.round(diameter)} mm, at ${(x / 1000).toFixed(2)} m: up to ${largest} mm the net section suffices`)
    };
});

function holesOf({ member: { section, holes } }: MemberContext): readonly DrilledHole[] {
    const bolts = section.shape === 'plies' || section.shape === 'flitch'
        ? section.bolts.flatMap(({ diameter, places }) => places.map(({ x, height }) => ({ x, height, diameter: greatestHole(diameter) }))) : [];
    return [...bolts, ...holes.map(({ at, height, diameter }) => ({ x: at.value, height: height.value, diameter: diameter.value }))];
}

/** What is drilled at one station: holes across, and upright rods that take of the breadth. */
interface Drilled {
    readonly x: number;
    readonly cluster: readonly DrilledHole[];
    /** mm of the breadth of each leaf, on the safe side. */
    readonly slot: number;
}

const near = ({ x, diameter }: DrilledHole, at: number): boolean => Math.abs(x - at) <= 2.5 * diameter;

function rodSlots({ hangers, members, member }: MemberContext): readonly { readonly x: number; readonly breadth: number }[] {
    return hangers.flatMap(hanger => rodHoles(hanger, members, member) ?? []);
}

/** Each hole with those less than half of the least spacing, 2.5 d, along the grain from it: 5.2(4), from memory. */
function clustersOf(holes: readonly DrilledHole[]): readonly (readonly DrilledHole[])[] {
    return holes.map(hole => [hole, ...holes.filter(other => other !== hole && Math.abs(other.x - hole.x) <= 2.5 * Math.max(hole.diameter, other.diameter))]);
}

/** What holes leave of a rectangle b × h whose middle lies `shiftUp` above the axis; holes over one another count twice. */
export function netOf({ b, h, shiftUp }: Pick<Segment, 'b' | 'h' | 'shiftUp'>, holes: readonly Pick<DrilledHole, 'height' | 'diameter'>[]): NetSection {
    const lost = holes.reduce((sum, { diameter }) => sum + diameter, 0);
    const at = (height: number): number => height - shiftUp;
    const A = b * (h - lost);
    const shift = -holes.reduce((sum, { height, diameter }) => sum + b * diameter * at(height), 0) / A;
    const I = b * h ** 3 / 12 + b * h * shift ** 2
        - holes.reduce((sum, { height, diameter }) => sum + b * diameter ** 3 / 12 + b * diameter * (at(height) - shift) ** 2, 0);
    return { lost, shift, A, I, edge: h / 2 + Math.abs(shift) };
}

/** The worst state of each leaf beside the holes: numbers for all, a verdict for that one. */
function answersAt(context: MemberContext, strengths: Strengths, { x, cluster, slot }: Drilled): readonly Answer[] {
    const { actions } = context;
    return byLeaf(actions).flatMap(stations => {
        const places = besides(stations, x).flatMap(station => {
            const whole = actions.segments[station.segment];
            const segment = whole && { ...whole, b: whole.b - slot };
            const net = segment && netOf(segment, cluster);
            return segment && net ? station.states.map(state => ({ station, segment, net, state, utilisation: Math.max(
                bendingUse(net, state, strengths), shearUse(context, segment, net, state, strengths)) })) : [];
        });
        const most = worstOf(places);
        return most ? [{ said: verdictOf(context, most.segment, most.net, cluster, most.state, strengths), where: whereAt(most.station, most.state) }] : [];
    });
}

/** Of each leaf, or of the whole, in order. */
function byLeaf(actions: MemberActions): readonly (readonly Station[])[] {
    const found = stationsOf.get(actions)
        ?? (actions.leaves ?? [{ leaf: undefined }]).map(({ leaf }) => actions.stations.filter(station => station.leaf === leaf));
    stationsOf.set(actions, found);
    return found;
}

/** Asked for at every hole. */
const stationsOf = new WeakMap<MemberActions, readonly (readonly Station[])[]>();

/** The stations next to a place on either side, or at it. */
function besides(stations: readonly Station[], x: number): readonly Station[] {
    let before = -Infinity;
    let after = Infinity;
    for (const station of stations) {
        if (station.x <= x) before = Math.max(before, station.x);
        if (station.x >= x) after = Math.min(after, station.x);
    }
    return stations.filter(station => station.x === before || station.x === after);
}

/** Design strengths by duration, each looked up once. */
interface Strengths {
    readonly fm: (state: ActionState) => number;
    /** Along the grain, for the side that N is on. */
    readonly fa: (state: ActionState) => number;
    readonly fv: (state: ActionState) => number;
}

function strengthsOf(context: MemberContext): Strengths {
    const { strength } = context;
    const factorOf = durationFactors(context);
    const fm = bendingStrength(context);
    const times = (fk: number, { combination }: ActionState): number => fk * factorOf(combination.duration);
    return {
        fm: state => times(fm, state), fv: state => times(strength.fv_k, state),
        fa: state => times(state.N < 0 ? strength.fc0_k : strength.ft0_k, state)
    };
}

function stressesOf(net: NetSection, { N, M }: ActionState): { readonly stress: number; readonly axial: number } {
    return {
        stress: quotient((Math.abs(M) + Math.abs(N * net.shift)) * net.edge, net.I),
        axial: N === 0 ? 0 : quotient(Math.abs(N), net.A)
    };
}

function bendingUse(net: NetSection, state: ActionState, { fm, fa }: Strengths): number {
    const { stress, axial } = stressesOf(net, state);
    return net.A > 0 && net.I > 0 ? quotient(stress, fm(state)) + (axial === 0 ? 0 : quotient(axial, fa(state))) : Infinity;
}

function shearUse({ parameters }: MemberContext, { b, h }: Segment, { lost }: NetSection, state: ActionState, { fv }: Strengths): number {
    return h > lost ? quotient(shearStress(state.V, b, h - lost, parameters.kcr), fv(state)) : Infinity;
}

function verdictOf(context: MemberContext, segment: Segment, net: NetSection, holes: readonly DrilledHole[], state: ActionState, strengths: Strengths): Verdict {
    return worst(inBending(context, net, holes, state, strengths), inShear(context, segment, net, state, strengths));
}

function inBending(context: MemberContext, net: NetSection, holes: readonly DrilledHole[], state: ActionState, strengths: Strengths): Verdict {
    const { stress, axial } = stressesOf(net, state);
    const [fm, fa] = [strengths.fm(state), strengths.fa(state)];
    const sum = bendingUse(net, state, strengths);
    const alone = state.N === 0;
    return {
        utilisation: sum, demand: amount(alone ? stress : sum, alone ? 'MPa' : ''), capacity: alone ? amount(fm, 'MPa') : amount(1),
        clause: 'EN 1995-1-1 5.2, 6.1.6', explain: () => bendingSteps(context, net, holes, state, { stress, axial, fa, sum })
    };
}

interface Stresses { readonly stress: number; readonly axial: number; readonly fa: number; readonly sum: number }

function bendingSteps(context: MemberContext, net: NetSection, holes: readonly DrilledHole[], { N, M, combination }: ActionState, { stress, axial, fa, sum }: Stresses): readonly Step[] {
    const strength = designStrengthStep(context, combination.duration, 'f_{m,y,d}', strengthTerm(context, 'f_{m,k}', 'fm_k'), bendingFactorTerms(context));
    const W = net.I / net.edge;
    const drilled = holes.length === 0 ? 'less the rods that pass down through it' : `less ${holes.map(({ diameter, height }) => `${Math.round(diameter)} mm at ${Math.round(height)} mm`).join(' and ')} from the axis`;
    const moment = [term('M_{y,d}', Math.abs(M) / 1e6, 'kNm'), ...N === 0 ? [] : [term('N_d', Math.abs(N) / 1e3, 'kN'), term('e_n', Math.abs(net.shift), 'mm', 'the holes move the axis')]];
    const bending = [
        step('W_n', '\\frac{I_n}{z_n}', [term('I_n', net.I, 'mm4', drilled), term('z_n', net.edge, 'mm')], amount(W, 'mm3'), { clause: 'EN 1995-1-1 5.2' }),
        step('\\sigma_{m,n,d}', N === 0 ? '\\frac{M_{y,d}}{W_n}' : '\\frac{M_{y,d} + N_d e_n}{W_n}', [...moment, term('W_n', W, 'mm3')], amount(stress, 'MPa')),
        strength
    ];
    if (N === 0) {
        return [...bending, utilisationStep(term('\\sigma_{m,n,d}', stress, 'MPa'), term('f_{m,y,d}', strength.result.value, 'MPa'), 'EN 1995-1-1 (6.11)')];
    }
    const [symbol, property] = N < 0 ? ['f_{c,0', 'fc0_k'] as const : ['f_{t,0', 'ft0_k'] as const;
    return [
        ...bending,
        step('\\sigma_{n,d}', '\\frac{N_d}{A_n}', [term('N_d', Math.abs(N) / 1e3, 'kN'), term('A_n', net.A, 'mm2')], amount(axial, 'MPa')),
        designStrengthStep(context, combination.duration, `${symbol},d}`, strengthTerm(context, `${symbol},k}`, property)),
        step('\\eta', `\\frac{\\sigma_{m,n,d}}{f_{m,y,d}} + \\frac{\\sigma_{n,d}}{${symbol},d}}`, [
            term('\\sigma_{m,n,d}', stress, 'MPa'), term('f_{m,y,d}', strength.result.value, 'MPa'), term('\\sigma_{n,d}', axial, 'MPa'), term(`${symbol},d}`, fa, 'MPa')
        ], amount(sum), { clause: 'EN 1995-1-1 (6.17)', note: 'linear for compression too, on the safe side' })
    ];
}

function inShear(context: MemberContext, segment: Segment, net: NetSection, state: ActionState, strengths: Strengths): Verdict {
    const { kcr } = context.parameters;
    const { b, h } = segment;
    const { lost } = net;
    const { V, combination } = state;
    const stress = shearStress(V, b, h - lost, kcr);
    const capacity = strengths.fv(state);
    const clause = 'EN 1995-1-1 5.2, 6.1.7';
    return {
        utilisation: shearUse(context, segment, net, state, strengths), demand: amount(stress, 'MPa'), capacity: amount(capacity, 'MPa'), clause,
        explain: () => [
            step('\\tau_d', '\\frac{3 V_d}{2 k_{cr} b h_n}', [
                term('V_d', Math.abs(V) / 1e3, 'kN'), term('k_{cr}', kcr, '', 'cracks, 6.1.7(2)'), term('b', b, 'mm'), term('h_n', h - lost, 'mm', 'depth less the holes')
            ], amount(stress, 'MPa'), { clause }),
            designStrengthStep(context, combination.duration, 'f_{v,d}', strengthTerm(context, 'f_{v,k}', 'fv_k')),
            utilisationStep(term('\\tau_d', stress, 'MPa'), term('f_{v,d}', capacity, 'MPa'), 'EN 1995-1-1 (6.13)')
        ]
    };
}
