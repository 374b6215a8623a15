/** What the checks may read of each member and hanger in each stage. */
import type { Model } from '../../../language/src/model.js';
import type { Actions, HangerActions, MemberActions } from '../analysis/actions.js';
import type { Parameters } from '../catalog/parameters.js';
import type { AnyMember, HangerContext, MemberContext, SteelMemberContext } from '../checks/check.js';
import { masonryBearing } from './masonry.js';
import { hangersAt } from './stages.js';
import type { Subject } from './subjects.js';

export type SubjectContext = MemberContext | SteelMemberContext;

export interface Basis {
    readonly model: Model;
    readonly all: Actions;
    readonly parameters: Parameters;
    readonly subjects: ReadonlyMap<string, Subject>;
}

/** Each is made once; undefined where the analysis has nothing of it in that stage. */
export interface Contexts {
    readonly ofMember: (actions: MemberActions) => SubjectContext | undefined;
    readonly ofHanger: (actions: HangerActions) => HangerContext | undefined;
}

export function contextsOf({ model, all, parameters, subjects }: Basis): Contexts {
    const members = firstByName(model.members);
    const hangers = firstByName(model.hangers);
    const loads = groupedBy(model.loads, ({ member }) => [member]);
    const actionsOf = new Map(all.members.map((actions) => [keyOf(actions.member, actions.stage), actions]));
    const hangersOf = once((stage: string | null) => groupedBy(hangersAt(model, stage), ({ carries, from }) => [...new Set([carries, from])]));
    const ofMember = once((actions: MemberActions): SubjectContext | undefined => {
        const member = members.get(actions.member);
        const subject = subjects.get(actions.member);
        if (!member || !subject) {
            return undefined;
        }
        const common: AnyMember = {
            member, job: model.job, actions, all, parameters,
            loads: loads.get(member.name) ?? [],
            members: model.members,
            hangers: hangersOf(actions.stage).get(member.name) ?? [],
            materials: model.materials,
            masonryOf: wall => masonryBearing(model, wall)
        };
        return subject.kind === 'timber' ? { ...common, strength: subject.strength } : { ...common, steel: subject.steel };
    });
    const ofHanger = (actions: HangerActions): HangerContext | undefined => {
        const hanger = hangers.get(actions.hanger);
        const end = (name: string): SubjectContext | undefined => {
            const found = actionsOf.get(keyOf(name, actions.stage));
            return found && ofMember(found);
        };
        const carried = hanger && end(hanger.carries);
        const carrier = hanger && end(hanger.from);
        return hanger && carried && carrier && {
            hanger, actions, carried, carrier, parameters, job: model.job, materials: model.materials,
            tightening: tighteningOf(model, hanger.name)
        };
    };
    return { ofMember, ofHanger };
}

const keyOf = (name: string, stage: string | null): string => `${name}\n${stage}`;

function firstByName<T extends { readonly name: string }>(all: readonly T[]): ReadonlyMap<string, T> {
    const found = new Map<string, T>();
    for (const one of all) if (!found.has(one.name)) found.set(one.name, one);
    return found;
}

function groupedBy<T>(all: readonly T[], keysOf: (one: T) => readonly string[]): ReadonlyMap<string, readonly T[]> {
    const groups = new Map<string, T[]>();
    for (const one of all) {
        for (const key of keysOf(one)) {
            const group = groups.get(key);
            if (group) group.push(one); else groups.set(key, [one]);
        }
    }
    return groups;
}

function once<K, V>(make: (key: K) => V): (key: K) => V {
    const known = new Map<K, V>();
    return key => {
        if (!known.has(key)) known.set(key, make(key));
        return known.get(key)!;
    };
}

/** The last force that a stage sets, N. */
function tighteningOf(model: Model, hanger: string): number | undefined {
    return model.stages.flatMap(({ steps }) => steps.flatMap(step => (step.kind === 'tighten' && step.hangers.includes(hanger) ? [step.force.value] : []))).at(-1);
}
