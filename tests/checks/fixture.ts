/** A horizontal beam for the checks to look at, with forces as a test says. Units N, mm. */
import type { Given, Job, Load, Member, SourceRef, Support } from '../../language/src/model.js';
import type { ActionState, Combination, Deflection, MemberActions, Segment, SupportActions } from '../../server/src/analysis/actions.js';
import { createParameters } from '../../server/src/catalog/parameters.js';
import { timberStrength, type TimberStrength } from '../../server/src/catalog/timber.js';
import type { MemberContext } from '../../server/src/checks/check.js';

export const source: SourceRef = { file: 'test', start: 0, end: 0, line: 1, column: 1 };

export function given<T = number>(value: T): Given<T> {
    return { value, evidence: { word: 'measured', stated: true }, source, path: 'test' };
}

const combinations = new Map<string, Combination>();

/** One object a combination, as the analysis has it. */
export function combination(duration: Combination['duration'] = 'medium-term', label = '1.35 G + 1.5 Q'): Combination {
    const key = `${duration} ${label}`;
    const found = combinations.get(key) ?? { kind: 'ultimate', factors: [1.35, 1.5], duration, label };
    combinations.set(key, found);
    return found;
}

export function strengthOf(name: string): TimberStrength {
    const found = timberStrength(name);
    if ('problem' in found) {
        throw new Error(found.problem);
    }
    return found.strength;
}

export function segment(from: number, to: number, b: number, h: number, more: Partial<Segment> = {}): Segment {
    return { from, to, b, h, shiftUp: 0, shiftRight: 0, weakened: false, ...more };
}

export function state(forces: Partial<Pick<ActionState, 'N' | 'V' | 'M'>>, duration: Combination['duration'] = 'medium-term'): ActionState {
    return { combination: combination(duration), N: 0, V: 0, M: 0, ...forces };
}

export function support(on: string, at: number, bearing: number | undefined, reactions: readonly number[] = [], more: Partial<SupportActions> = {}): SupportActions {
    return {
        support: on, kind: 'wall', at, bearing, tied: false, source,
        design: { min: Math.min(0, ...reactions), max: Math.max(0, ...reactions) },
        states: reactions.map(R => ({ combination: combination(), R })),
        equilibriumMin: Math.min(0, ...reactions), ...more
    };
}

export function deflection(value: number, from: number, to: number, overhang = false): Deflection {
    return { value, at: (from + to) / 2, span: { from, to, overhang }, combination: { ...combination(), kind: 'quasi-permanent' } };
}

export function load(more: Partial<Load>): Load {
    return { name: 'load', action: { kind: 'permanent' }, member: 'J1', amount: given(1000), fromMass: false, source, ...more };
}

export function pointLoad(at: number): Load {
    return load({ point: { force: 1000, at } });
}

export function lineLoad(from: number, to: number): Load {
    return load({ line: { perLength: 1, from, to } });
}

export interface Beam {
    readonly b: number;
    readonly h: number;
    readonly length: number;
    readonly strength?: TimberStrength;
    readonly member?: Partial<Member>;
    readonly job?: Partial<Job>;
    readonly actions?: Partial<MemberActions>;
    /** States by station, all in one segment unless `actions.segments` says else. */
    readonly states?: readonly (readonly [x: number, ...states: ActionState[]])[];
    readonly context?: Partial<MemberContext>;
}

export function beam({ b, h, length, strength = strengthOf('C24'), member, job, actions, states = [], context }: Beam): MemberContext {
    const segments = actions?.segments ?? [segment(0, length, b, h)];
    const memberActions: MemberActions = {
        member: 'J1', stage: null, cases: [], segments,
        stations: states.map(([x, ...all]) => ({ x, segment: segments.findIndex(({ from, to }) => x >= from && x <= to), states: all })),
        spans: [{ from: 0, to: length, overhang: false }],
        supports: [], crossings: [],
        diagrams: { N: [], V: [], M: [], instant: [], final: [] },
        instant: [], final: [], total: [], weight: 0, ...actions
    };
    return {
        member: {
            name: 'J1', kind: 'beam', slope: 0, material: strength.name,
            section: { shape: 'rectangle', breadth: given(b), depth: given(h) },
            length: given(length), supports: memberActions.supports.map(asModelSupport), losses: [], notches: [], holes: [], splices: [],
            selfWeight: true, systemStrength: false, source, nameSource: source, ...member
        },
        job: { title: 'test', basis: 'EN1995', serviceClass: 1, serviceClassStated: true, combinations: '6.10', source, ...job },
        strength,
        actions: memberActions,
        all: { cases: [], members: [memberActions], findings: [] },
        loads: [],
        members: [],
        hangers: [],
        materials: [],
        parameters: createParameters([]).parameters,
        masonryOf: () => ({ fk: 5, thickness: 215, source }),
        ...context
    };
}

function asModelSupport(actions: SupportActions): Support {
    return {
        kind: 'wall', on: actions.support, at: given(actions.at),
        bearing: actions.bearing === undefined ? undefined : given(actions.bearing), tied: actions.tied, source
    };
}
