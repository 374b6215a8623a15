/** Which members are solved together: those that rest on each other. */
import type { Member } from '../../../language/src/model.js';

/** In the order of the file, groups and members alike. */
export function connectedGroups(members: readonly Member[], byName: ReadonlyMap<string, Member>): Member[][] {
    const lead = new Map<Member, Member>();
    const rootOf = (member: Member): Member => {
        let root = member;
        for (let next = lead.get(root); next; next = lead.get(root)) root = next;
        return root;
    };
    for (const member of members) {
        for (const support of member.supports) {
            const carrier = support.kind === 'member' ? byName.get(support.on) : undefined;
            if (!carrier) continue;
            const [a, b] = [rootOf(member), rootOf(carrier)];
            if (a !== b) lead.set(a, b);
        }
    }
    const groups = new Map<Member, Member[]>();
    for (const member of members) {
        const root = rootOf(member);
        const group = groups.get(root);
        if (group) group.push(member); else groups.set(root, [member]);
    }
    return [...groups.values()];
}
