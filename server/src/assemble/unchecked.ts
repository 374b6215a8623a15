import type { Model, SourceRef } from '../../../language/src/model.js';
import type { RequirementResult, Unchecked } from '../results.js';

/** What lies beyond every calculation of this version, said on each sheet. */
const beyond = [
    'fire resistance',
    'the joints of the existing timbers and the rest of the building that carries these members',
    'earthquake and accidental actions',
    'the foundations and the walls away from the bearings'
];

/** Something that a check could not do, and of what. */
export interface Lacking {
    readonly subject: string;
    readonly members: readonly string[];
    readonly text: string;
    readonly source: SourceRef;
    /** What the file says was done about it: it is still said, and forbids no pass. */
    readonly settled?: string;
}

/** Everything that was not checked, the entries that forbid a pass first. */
export function unchecked(
    model: Model, lacking: readonly Lacking[], requirements: readonly RequirementResult[], asked: readonly Unchecked[]
): Unchecked[] {
    return [
        ...model.notComputed.map(item => ({ text: `${item.what}: ${item.why}`, blocking: true, members: item.members, source: item.source })),
        ...lackingOnce(lacking.filter(({ settled }) => settled === undefined)),
        ...requirements.filter(requirement => requirement.holds === undefined)
            .map(requirement => ({ text: `require ${requirement.text}`, blocking: true, source: requirement.source })),
        ...asked.filter(({ blocking }) => blocking),
        ...lackingOnce(lacking.filter(({ settled }) => settled !== undefined)),
        ...asked.filter(({ blocking }) => !blocking),
        ...beyond.map(text => ({ text, blocking: false }))
    ];
}

/** What lacks in several stages is said once. */
function lackingOnce(lacking: readonly Lacking[]): Unchecked[] {
    const said = new Map(lacking.map(one => [`${one.subject}: ${one.text}`, one]));
    return [...said].map(([text, { members, source, settled }]) => settled === undefined ? { text, blocking: true, members, source }
        : { text: `${text}; answered: ${settled}`, blocking: false, members, source });
}
