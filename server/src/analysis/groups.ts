/** Which members are solved together: those that rest on each other or hang from each other. */
import type { Member, Model } from '../../../language/src/model.js';

/** In the order of the file, groups and members alike. */
export function connectedGroups({ members, hangers }: Pick<Model, 'members' | 'hangers'>, byName: ReadonlyMap<string, Member>): Member[][] {
    const lead = new Map<Member, Member>();
    const rootOf = (member: Member): Member => {
        let root = member;
        for (let next = lead.get(root); next; next = lead.get(root)) root = next;
        return root;
    };
    const join = (one: Member | undefined, other: Member | undefined): void => {
        if (!one || !other) return;
        const [a, b] = [rootOf(one), rootOf(other)];
        if (a !== b) lead.set(a, b);
    };
    for (const member of members) {
        for (const support of member.supports) join(member, support.kind === 'member' ? byName.get(support.on) : undefined);
    }
    for (const { carries, from } of hangers) join(byName.get(carries), byName.get(from));
    const groups = new Map<Member, Member[]>();
    for (const member of members) {
        const root = rootOf(member);
        const group = groups.get(root);
        if (group) group.push(member); else groups.set(root, [member]);
    }
    return [...groups.values()];
}
