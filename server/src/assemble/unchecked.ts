import type { Member, Model } from '../../../language/src/model.js';
import type { RequirementResult, Unchecked } from '../results.js';

/** What lies beyond every calculation of this version, said on each sheet. */
const beyond = [
    'fire resistance',
    'the joints of the existing timbers and the rest of the building that carries these members',
    'earthquake and accidental actions',
    'the foundations and the walls away from the bearings'
];

/** Everything that was not checked, the entries that forbid a pass first. */
export function unchecked(
    model: Model, lacking: readonly { readonly member: Member; readonly text: string }[], requirements: readonly RequirementResult[]
): Unchecked[] {
    return [
        ...model.notComputed.map(item => ({ text: `${item.what}: ${item.why}`, blocking: true, members: item.members, source: item.source })),
        ...lacking.map(({ member, text }) => ({ text: `${member.name}: ${text}`, blocking: true, members: [member.name], source: member.nameSource })),
        ...requirements.filter(requirement => requirement.holds === undefined)
            .map(requirement => ({ text: `require ${requirement.text}`, blocking: true, source: requirement.source })),
        ...beyond.map(text => ({ text, blocking: false }))
    ];
}
