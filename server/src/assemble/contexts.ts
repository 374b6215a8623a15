/** What the checks may read of each member and hanger in each stage. */
import type { Member, Model } from '../../../language/src/model.js';
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

/** Undefined where the analysis has nothing of it in that stage. */
export function memberContext(basis: Basis, member: Member, actions: MemberActions | undefined): SubjectContext | undefined {
    const subject = basis.subjects.get(member.name);
    if (!subject || !actions) {
        return undefined;
    }
    const { model, all, parameters } = basis;
    const common: AnyMember = {
        member, job: model.job, actions, all, parameters,
        loads: model.loads.filter(load => load.member === member.name),
        members: model.members,
        hangers: hangersAt(model, actions.stage),
        materials: model.materials,
        masonryOf: wall => masonryBearing(model, wall)
    };
    return subject.kind === 'timber' ? { ...common, strength: subject.strength } : { ...common, steel: subject.steel };
}

export function hangerContext(basis: Basis, actions: HangerActions): HangerContext | undefined {
    const { model, parameters } = basis;
    const hanger = model.hangers.find(({ name }) => name === actions.hanger);
    const end = (name: string): SubjectContext | undefined => {
        const member = model.members.find(candidate => candidate.name === name);
        return member && memberContext(basis, member, basis.all.members.find(one => one.member === name && one.stage === actions.stage));
    };
    const carried = hanger && end(hanger.carries);
    const carrier = hanger && end(hanger.from);
    if (!hanger || !carried || !carrier) {
        return undefined;
    }
    return {
        hanger, actions, carried, carrier, parameters, job: model.job, materials: model.materials,
        tightening: tighteningOf(model, hanger.name)
    };
}

/** The last force that a stage sets, N. */
function tighteningOf(model: Model, hanger: string): number | undefined {
    return model.stages.flatMap(({ steps }) => steps.flatMap(step => (step.kind === 'tighten' && step.hangers.includes(hanger) ? [step.force.value] : []))).at(-1);
}
