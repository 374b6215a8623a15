/** Members and loads in plain numbers (mm, N, MPa), for comparing the analysis with outside figures. */
import type { KeptStates } from '../../server/src/analysis/solve-group.js';
import type { Action, Duration, Face, Given, Job, Load, Loss, Member, Model, Notch, PliesSection, SourceRef, Support, SupportKind } from '../../language/src/model.js';
import type { Actions, MemberActions } from '../../server/src/analysis/actions.js';
import { analyse, type ElasticProperties } from '../../server/src/analysis/index.js';
import { createParameters } from '../../server/src/catalog/parameters.js';

export const source: SourceRef = { file: 'fixture.padstone', start: 0, end: 1, line: 1, column: 1 };

export function given<T extends number | string>(value: T): Given<T> {
    return { value, evidence: { word: 'assumed', stated: false }, source, path: 'fixture' } as Given<T>;
}

export interface SupportSketch {
    readonly at: number;
    readonly kind?: SupportKind;
    readonly on?: string;
    readonly k?: number;
    readonly bearing?: number;
    readonly onCarrierAt?: number;
    readonly leaves?: readonly number[];
}

export interface MemberSketch {
    readonly name?: string;
    readonly kind?: 'beam' | 'post';
    readonly length: number;
    readonly b?: number;
    readonly h?: number;
    readonly slope?: number;
    readonly supports: readonly SupportSketch[];
    readonly losses?: readonly (Partial<Record<Face, number>> & { readonly from: number; readonly to: number })[];
    readonly notches?: readonly { readonly face: 'top' | 'bottom'; readonly from: number; readonly to: number; readonly depth: number }[];
    readonly selfWeight?: boolean;
    readonly precamber?: number;
    /** Of b × h each. */
    readonly plies?: PliesSketch;
}

export interface PliesSketch {
    readonly count: number;
    readonly butts?: readonly (readonly [leaf: number, at: number])[];
    readonly bolts?: readonly (readonly [x: number, height: number])[];
}

function plies({ count, butts = [], bolts = [] }: PliesSketch, b: number, h: number): PliesSection {
    const row = { size: 'M12', diameter: 12, grade: given('8.8'), places: bolts.map(([x, height]) => ({ x, height, source })), source };
    return {
        shape: 'plies', count, breadth: given(b), depth: given(h), source,
        butts: butts.map(([leaf, at]) => ({ leaf, at: given(at), source })),
        bolts: bolts.length > 0 ? [row] : []
    };
}

export function member(sketch: MemberSketch): Member {
    const { length, supports, b = 100, h = 200, name = 'B1', kind = 'beam' } = sketch;
    return {
        name, kind, slope: sketch.slope ?? (kind === 'post' ? Math.PI / 2 : 0),
        material: 'C24',
        section: sketch.plies ? plies(sketch.plies, b, h) : { shape: 'rectangle', breadth: given(b), depth: given(h) },
        length: given(length),
        supports: supports.map(support),
        losses: (sketch.losses ?? []).map(({ from, to, ...faces }): Loss => ({
            from: given(from), to: given(to), source,
            faces: Object.fromEntries(Object.entries(faces).map(([face, value]) => [face, given(value)])),
            evidence: { word: 'probed', stated: true }
        })),
        notches: (sketch.notches ?? []).map(({ face, from, to, depth }): Notch => ({
            face, from: given(from), to: given(to), depth: given(depth), taper: given(0), source
        })),
        holes: [], splices: [],
        precamber: sketch.precamber === undefined ? undefined : given(sketch.precamber),
        selfWeight: sketch.selfWeight ?? false,
        systemStrength: false,
        source,
        nameSource: source
    };
}

function support({ at, kind = 'wall', on, k, bearing, onCarrierAt, leaves }: SupportSketch, index: number): Support {
    const names: Partial<Record<SupportKind, string>> = { spring: 'spring', pinned: 'pin', fixed: 'fixed' };
    return {
        kind, on: on ?? names[kind] ?? `wall ${index + 1}`, at: given(at), tied: false, source, leaves,
        bearing: bearing === undefined ? undefined : given(bearing),
        stiffness: k === undefined ? undefined : given(k),
        stationOnCarrier: onCarrierAt === undefined ? undefined : given(onCarrierAt)
    };
}

export interface LoadSketch {
    readonly name?: string;
    readonly on?: string;
    readonly action?: Action;
    readonly lasting?: Duration;
    /** N/mm over [from, to]. */
    readonly q?: number;
    readonly from?: number;
    readonly to?: number;
    /** N at a station. */
    readonly F?: number;
    readonly at?: number;
    readonly leaf?: number;
}

export function load(sketch: LoadSketch, of: Member): Load {
    const { q, F, at = 0, from = 0, to = of.length.value } = sketch;
    return {
        name: sketch.name ?? 'load',
        action: sketch.action ?? { kind: 'permanent' },
        member: of.name,
        amount: given(q ?? F ?? 0),
        ...(F === undefined ? { line: { perLength: q ?? 0, from, to } } : { point: { force: F, at } }),
        fromMass: false,
        lasting: sketch.lasting,
        leaf: sketch.leaf,
        source
    };
}

export function model(members: readonly Member[], loads: readonly LoadSketch[], equation: Job['combinations'] = '6.10'): Model {
    const byName = new Map(members.map((one) => [one.name, one]));
    return {
        file: 'fixture.padstone', files: ['fixture.padstone'],
        job: { title: 'fixture', basis: 'EN1995', serviceClass: 2, serviceClassStated: true, combinations: equation, source },
        values: [], materials: [], walls: [], members,
        loads: loads.map((sketch) => load(sketch, byName.get(sketch.on ?? members[0]!.name)!)),
        hangers: [], stages: [], requirements: [], breakEvens: [], loadTests: [], options: [], answers: [], notComputed: [], inputs: []
    };
}

/** So stiff in shear that only bending is left, as in the closed forms of slender beams. */
export const bendingOnly = 1e12;

export function elastic(E: number, over: Partial<ElasticProperties> = {}): ElasticProperties {
    return { E, G: E / 16, density: 420, kdef: 0.8, ...over };
}

export const recommended = createParameters([]).parameters;

/** With every state that was looked at, so that any combination can be compared; `worst` as the checks get them. */
export function solve(of: Model, properties: ElasticProperties, parameters = recommended, states: KeptStates = 'every'): Actions {
    return analyse(of, { member: () => properties, hanger: () => undefined }, parameters, { states });
}

/** The only member's actions. */
export function single(sketch: MemberSketch, loads: readonly LoadSketch[], properties: ElasticProperties, parameters = recommended, states: KeptStates = 'every'): MemberActions {
    const actions = solve(model([member(sketch)], loads), properties, parameters, states);
    const [only] = actions.members;
    if (!only) throw new Error(`no actions: ${actions.findings.map(({ message }) => message).join('; ')}`);
    return only;
}
