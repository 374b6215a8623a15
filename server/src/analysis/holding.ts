/**
 * What a member's supports hold.
 *
 * - A level beam is held along the horizontal at its first support only, so that no arching arises (`pinned` and `fixed`
 *   say otherwise), one of leaves there by one leaf: the others hang on their bolts. A sloping one by every leaf that bears.
 * - What only hangs is held along the horizontal where it first hangs.
 * - A run of a leaf without bolts is held along the grain at one point, so that it cannot drift.
 * - A post stands on its lowest support, is held sideways at every support, and at its head by the member that rests there.
 */
import type { Member, Support } from '../../../language/src/model.js';
import type { Link } from './links.js';
import { nodesAt, type Node, type PieceMesh } from './mesh.js';
import { direction } from './strand-mesh.js';

/** Degrees of freedom that a piece's supports hold; the heads of a post by the piece that rests there. */
export interface Holding {
    readonly dofs: readonly number[];
    readonly heads: readonly { readonly dof: number; readonly by: number }[];
}

export function holdingOf(mesh: PieceMesh, links: readonly Link[]): Holding {
    const { piece: { member, bearers }, supportPlaces, bearerPlaces, levelPlaces } = mesh;
    const held = new Set<number>();
    const post = member.kind === 'post';
    const pinned = member.supports.some((support) => !isBearing(support));
    const first = Math.min(...supportPlaces);
    const sloping = Math.abs(direction(member).sin) > 1e-9;
    member.supports.forEach((support, i) => {
        const { kind, leaves } = support;
        const place = supportPlaces[i]!;
        const nodes = nodesAt(mesh, place, leaves);
        const whole = !isBearing(support);
        if (whole || post || (place === first && !pinned)) for (const { u } of whole || post || sloping ? nodes : nodes.slice(0, 1)) held.add(u);
        if (kind === 'fixed') for (const { r } of nodes) held.add(r);
        if (!carries(member, support)) return;
        // A pin where something else bears holds along the member; what bears there bears as before.
        const bears = whole && member.supports.some((other, j) => supportPlaces[j] === place && isBearing(other));
        if (kind === 'wall' || (whole && !bears)) for (const { v } of nodes) held.add(v);
    });
    if (supportPlaces.length === 0 && levelPlaces.length > 0) for (const { u } of nodesAt(mesh, Math.min(...levelPlaces)).slice(0, 1)) held.add(u);
    for (const dof of drifting(mesh, links, held)) held.add(dof);
    const heads = post ? bearers.flatMap(({ piece }, i) => nodesAt(mesh, bearerPlaces[i]!).map(({ u }) => ({ dof: u, by: piece }))) : [];
    return { dofs: [...held], heads };
}

/** One point of each part of a member of leaves that neither a support nor a bolt holds along the grain. */
function drifting({ strands }: PieceMesh, links: readonly Link[], held: ReadonlySet<number>): number[] {
    if (strands.length === 1 || held.size === 0) return [];
    const nodes = new Map(strands.flatMap((strand) => strand.nodes.filter(({ loose }) => !loose).map((node): [number, Node] => [node.id, node])));
    const lead = new Map([...nodes.keys()].map((id) => [id, id]));
    const root = (id: number): number => (lead.get(id) === id ? id : root(lead.get(id)!));
    for (const { elements, nodes: own } of strands) {
        for (const { node, next, loose } of elements) if (!loose) lead.set(root(own[next]!.id), root(own[node]!.id));
    }
    for (const { pulls } of links) {
        const [a, b] = pulls;
        if (a && b && nodes.has(a.node) && nodes.has(b.node)) lead.set(root(a.node), root(b.node));
    }
    const firm = new Set([...nodes.values()].filter(({ u }) => held.has(u)).map(({ id }) => root(id)));
    return [...nodes.values()].flatMap(({ id, u }) => {
        if (firm.has(root(id))) return [];
        firm.add(root(id));
        return [u];
    });
}

export function isBearing({ kind }: Support): boolean {
    return kind !== 'pinned' && kind !== 'fixed';
}

/** Whether a support takes vertical load: all of a beam's, the lowest of a post's, and what is pinned or fixed. */
export function carries(member: Member, support: Support): boolean {
    if (member.kind === 'beam' || !isBearing(support)) return true;
    return member.supports.every(({ at }) => support.at.value <= at.value);
}
