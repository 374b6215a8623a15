/** What each member is made of, looked up once: what the analysis and the checks both need of it. */
import type { Finding, Member, Model, SourceRef } from '../../../language/src/model.js';
import type { Parameters } from '../catalog/parameters.js';
import { rolledSection } from '../catalog/rolled-sections.js';
import { steelNamed } from '../catalog/steel-material.js';
import { timberStrength, type TimberStrength } from '../catalog/timber.js';
import type { SteelMember } from '../checks/en1993/steel-member.js';

export type Subject =
    | { readonly kind: 'timber'; readonly strength: TimberStrength }
    | { readonly kind: 'steel'; readonly steel: SteelMember };

export interface Subjects {
    readonly of: ReadonlyMap<string, Subject>;
    readonly findings: readonly Finding[];
}

/** Members whose material or section is not known are left out, and a finding says why, once for each material. */
export function subjectsOf(model: Model, parameters: Parameters): Subjects {
    const of = new Map<string, Subject>();
    const problems = new Map<string, Finding>();
    for (const member of model.members) {
        const found = subjectOf(member, model, parameters);
        if ('problem' in found) {
            problems.set(`${found.source.file} ${found.source.start} ${found.problem}`, { severity: 'error', code: 'unknown-strength', message: found.problem, source: found.source });
        } else {
            of.set(member.name, found);
        }
    }
    return { of, findings: [...problems.values()] };
}

function subjectOf(member: Member, model: Model, parameters: Parameters): Subject | { readonly problem: string; readonly source: SourceRef } {
    const { section } = member;
    if (section.shape === 'rolled') {
        const rolled = rolledSection(section.designation);
        if (!rolled) {
            return { problem: `${section.designation} is no rolled section of the tables: IPE, HEA, HEB, UPN, or a flat such as 12 x 200 mm`, source: section.source };
        }
        const steel = steelNamed(member.material, Math.max(rolled.tf, rolled.tw), model.materials);
        return 'steel' in steel ? { kind: 'steel', steel: { section: rolled, steel: steel.steel, parameters: parameters.steel } } : { problem: steel.problem, source: member.source };
    }
    const declared = model.materials.find(material => material.name === member.material);
    if (declared && declared.kind !== 'timber') {
        return { problem: `${member.name} has a section of timber, but ${member.material} is ${declared.kind}`, source: member.nameSource };
    }
    const found = timberStrength(declared ?? member.material);
    return 'strength' in found ? { kind: 'timber', strength: found.strength } : { problem: found.problem, source: declared?.grade?.source ?? declared?.source ?? member.source };
}
