/** The links of a mesh: bolts between leaves, springs under supports, splices, hangers. */
import { carries } from './holding.js';
import type { Link } from './links.js';
import { nodesAt, placeIndex, type Node, type PieceMesh } from './mesh.js';
import type { Bolt, Frame } from './piece.js';
import { boltStiffness, hangerStiffness, type StiffnessSet } from './stiffness-sets.js';
import { direction } from './strand-mesh.js';

/** A bolt in the plane between two leaves, with its two links. */
export interface BoltLink {
    readonly piece: number;
    readonly bolt: Bolt;
    /** 1 between the first leaf and the second. */
    readonly plane: number;
    readonly along: number;
    readonly across: number;
}

/**
 * Two springs a plane: along the grain at the bolt's height z, where a leaf moves by u − z θ, and across it. A bolt at a
 * butt itself holds neither end of that leaf, and one in a loose run nothing.
 */
export function boltLinks(mesh: PieceMesh, piece: number, set: StiffnessSet, links: Link[]): BoltLink[] {
    const { member, elastic, bolts } = mesh.piece;
    const { cos, sin } = direction(member);
    return bolts.flatMap((bolt) => {
        const place = placeIndex(mesh.places, bolt.x);
        const stiffness = boltStiffness(set, bolt.slip, elastic.kdef);
        return mesh.strands.slice(1).flatMap((right, i): BoltLink[] => {
            const ends = [mesh.strands[i]!, right].map(({ at, nodes }) => at[place]!.map((node) => nodes[node]!));
            const [a, b] = ends.map((nodes) => (nodes.length === 1 && !nodes[0]!.loose ? nodes[0] : undefined));
            if (!a || !b) return [];
            const first = links.length;
            links.push(
                between(a, b, [cos, sin, -bolt.height], stiffness, piece),
                between(a, b, [-sin, cos, 0], stiffness, piece)
            );
            return [{ piece, bolt, plane: i + 1, along: first, across: first + 1 }];
        });
    });
}

/** `row` is what a node's right, up and turn move its end of the spring; positive is b's less a's. */
function between(a: Node, b: Node, row: readonly [number, number, number], stiffness: number, piece: number): Link {
    const [right, up] = row;
    return {
        dofs: [a.u, a.v, a.r, b.u, b.v, b.r],
        row: [...row.map((value) => -value), ...row],
        stiffness, piece,
        pulls: [{ node: a.id, right, up }, { node: b.id, right: -right, up: -up }]
    };
}

export function springLinks(mesh: PieceMesh, piece: number): Link[] {
    return mesh.piece.member.supports.flatMap(({ kind, stiffness, leaves }, i): Link[] => {
        const node = kind === 'spring' && carries(mesh.piece.member, mesh.piece.member.supports[i]!) ? nodesAt(mesh, mesh.supportPlaces[i]!, leaves)[0] : undefined;
        return node ? [{ dofs: [node.v], row: [1], stiffness: stiffness?.value ?? 0, pulls: [], piece }] : [];
    });
}

export function spliceLinks(mesh: PieceMesh, piece: number): Link[] {
    return mesh.strands.flatMap(({ strand, at, nodes }) => strand.splices.flatMap((splice): Link[] => {
        const [left, right] = at[placeIndex(mesh.places, splice.at)]!.map((node) => nodes[node]!);
        return left && right ? [{ dofs: [left.r, right.r], row: [-1, 1], stiffness: splice.stiffness, pulls: [], piece }] : [];
    }));
}

/** Tension is positive: the upper member rises from the lower one. */
export function hangerLinks({ hangers }: Frame, meshes: readonly PieceMesh[], set: StiffnessSet, links: Link[]): number[] {
    return hangers.map(({ hanger, lower, upper, elastic }, index) => {
        const node = (piece: number, x: number): Node | undefined => nodesAt(meshes[piece]!, placeIndex(meshes[piece]!.places, x))[0];
        const [low, high] = [node(lower, hanger.carriesAt.value), node(upper, hanger.fromAt.value)];
        if (!low || !high) return -1;
        return links.push({
            dofs: [low.v, high.v], row: [-1, 1], stiffness: hangerStiffness(set, elastic), hanger: index,
            pulls: [{ node: low.id, right: 0, up: 1 }, { node: high.id, right: 0, up: -1 }]
        }) - 1;
    });
}
