/** Hangers and stages in plain numbers, for comparing the analysis with hand calculation and outside figures. */
import type { Hanger, Member, Model, Stage, StageStep } from '../../language/src/model.js';
import type { Actions, MemberActions } from '../../server/src/analysis/actions.js';
import { analyse, type ElasticProperties, type HangerElasticity } from '../../server/src/analysis/index.js';
import type { Parameters } from '../../server/src/catalog/parameters.js';
import { given, model, recommended, source, type LoadSketch } from './fixture.js';

const unfactored = { ...recommended, gammaG: 1, gammaGfavourable: 1 };

export interface HangerSketch { readonly name: string; readonly carries: string; readonly at: number; readonly from: string; readonly fromAt: number; readonly k: number; readonly final?: number }

export function hanger({ name, carries, at, from, fromAt }: HangerSketch): Hanger {
    return {
        name, carries, from, source, carriesAt: given(at), fromAt: given(fromAt), gap: given(0),
        rods: { count: 2, size: 'M12', diameter: 12, grade: given('4.6') }
    };
}

export const add = (...elements: string[]): StageStep => ({ kind: 'add', elements, source });
export const prop = (member: string, at: number, lift = 0): StageStep => ({ kind: 'prop', member, at: given(at), lift: given(lift), source });
export const tighten = (force: number, ...hangers: string[]): StageStep => ({ kind: 'tighten', hangers, force: given(force), source });
export const release: StageStep = { kind: 'release', members: 'all', source };
export const remove = (...elements: string[]): StageStep => ({ kind: 'remove', elements, source });
export const stage = (name: string, ...steps: StageStep[]): Stage => ({ name, steps, source });

export interface Retrofit {
    readonly members: readonly Member[];
    readonly loads: readonly LoadSketch[];
    readonly hangers?: readonly HangerSketch[];
    readonly stages?: readonly Stage[];
    readonly properties: (member: Member) => ElasticProperties | undefined;
    readonly parameters?: Parameters;
}

export function modelOf({ members, loads, hangers = [], stages = [] }: Retrofit): Model {
    return { ...model(members, loads), hangers: hangers.map(hanger), stages };
}

export function solveRetrofit(retrofit: Retrofit): Actions {
    const stiffness = new Map(retrofit.hangers?.map(({ name, k, final }): [string, HangerElasticity] => [name, { initial: k, final: final ?? k }]));
    return analyse(modelOf(retrofit), { member: retrofit.properties, hanger: ({ name }) => stiffness.get(name) }, retrofit.parameters ?? unfactored, { states: 'every' });
}

/** The force of a hanger in a stage, where there is but one combination; of the initial stiffness. */
export function tension({ hangers = [] }: Actions, name: string, of: string | null = null, label?: string): number {
    const found = hangers.find((one) => one.hanger === name && one.stage === of);
    const state = found?.states.find(({ combination }) => (label === undefined ? !combination.label.includes('after creep') : combination.label === label));
    if (!state) throw new Error(`no ${name} in ${of}: ${hangers.map((one) => `${one.hanger} ${one.stage} ${one.states.map(({ combination }) => combination.label).join('; ')}`).join(', ')}`);
    return state.N;
}

export function thrust({ props = [] }: Actions, of: string): number {
    return props.find((one) => one.stage === of)!.states[0]!.R;
}

export function inStage({ members }: Actions, name: string, of: string | null): MemberActions {
    const found = members.find(({ member, stage: own }) => member === name && own === of);
    if (!found) throw new Error(`no ${name} in ${of}`);
    return found;
}

/** A diagram's value by a parabola through three stations of one element: where an element ends its station stands twice. */
export function between(points: readonly { readonly x: number; readonly value: number }[], x: number): number {
    const after = points.findIndex((point) => point.x >= x - 1e-9);
    const [before, a, b, next] = [points[after - 2], points[after - 1], points[after], points[after + 1]];
    if (!a || !b) throw new Error(`no station at ${x}`);
    const third = before && before.x < a.x - 1e-6 ? before : next!;
    return [a, b, third].reduce((sum, one, i, all) =>
        sum + all.reduce((product, other, j) => (i === j ? product : product * (x - other.x) / (one.x - other.x)), one.value), 0);
}
