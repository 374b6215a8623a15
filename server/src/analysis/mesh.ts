/**
 * Nodes, elements and links of a connected group of members.
 *
 * Assumptions, all on the side of inventing no strength that is not there:
 * - each member lies in its own vertical plane; members that meet share their vertical movement alone;
 * - the strands of a member have nodes at the same stations; a butt parts a strand there, a splice lets it turn;
 * - what bears, hangs or rests at a station holds the member's leaves level there.
 */
import { boltLinks, hangerLinks, spliceLinks, springLinks, type BoltLink } from './joints.js';
import type { Link } from './links.js';
import { placesOf, restiffened, strandMesh, type Element, type Node, type StrandMesh } from './strand-mesh.js';
import type { Frame, Piece } from './piece.js';
import { boltStiffness, hangerStiffness, type StiffnessSet } from './stiffness-sets.js';

export type { Element, Node, StrandMesh } from './strand-mesh.js';

export interface PieceMesh {
    readonly piece: Piece;
    /** Stations of the nodes: element i of every strand runs from place i to the next. */
    readonly places: readonly number[];
    readonly strands: readonly StrandMesh[];
    /** Places of the member's supports and of its bearers, in their order; of what holds its leaves level. */
    readonly supportPlaces: readonly number[];
    readonly bearerPlaces: readonly number[];
    readonly levelPlaces: readonly number[];
}

export interface Mesh {
    readonly frame: Frame;
    readonly set: StiffnessSet;
    readonly pieces: readonly PieceMesh[];
    /** Of all strands, by their id, with the index of their piece. */
    readonly elements: readonly Element[];
    readonly owner: Int32Array;
    readonly links: readonly Link[];
    readonly bolts: readonly BoltLink[];
    /** By hanger, its link. */
    readonly hangers: readonly number[];
    /** By prop, the degree of freedom that it holds. */
    readonly props: readonly number[];
    readonly nodeCount: number;
    /** Number of degrees of freedom. */
    readonly size: number;
    /** Pairs of pieces that carry each other at one and the same place, directly or through others. */
    readonly circles: readonly (readonly [carrier: number, bearer: number])[];
}

/** The nearest place. */
export function placeIndex(places: readonly number[], x: number): number {
    let [low, high] = [0, places.length - 1];
    while (high - low > 1) {
        const middle = (low + high) >> 1;
        if (places[middle]! <= x) low = middle; else high = middle;
    }
    return Math.abs(places[high]! - x) < Math.abs(places[low]! - x) ? high : low;
}

/** Nodes of the strands (all, or these leaves) at a place, of the runs that something holds. */
export function nodesAt({ strands }: PieceMesh, place: number, leaves?: readonly number[]): Node[] {
    return strands.flatMap(({ strand, at, nodes }) =>
        (leaves && strand.leaf !== undefined && !leaves.includes(strand.leaf) ? [] : at[place]!.map((node) => nodes[node]!).filter(({ loose }) => !loose)));
}

export function meshOf(frame: Frame, set: StiffnessSet): Mesh {
    const { pieces } = frame;
    const numbers = { nodes: 0, elements: 0 };
    const rough = pieces.map((piece): PieceMesh => {
        const places = placesOf(piece);
        return {
            piece, places,
            strands: piece.strands.map((strand) => strandMesh(piece, strand, places, set, numbers)),
            supportPlaces: piece.member.supports.map(({ at }) => placeIndex(places, at.value)),
            bearerPlaces: piece.bearers.map(({ at }) => placeIndex(places, at)),
            levelPlaces: piece.levels.map((at) => placeIndex(places, at))
        };
    });
    const { root, circles } = joined(rough, 3 * numbers.nodes);
    const meshes = rough.map((piece): PieceMesh => ({ ...piece, strands: piece.strands.map((strand) => rooted(strand, root)) }));
    const elements: Element[] = [];
    const owner = new Int32Array(numbers.elements);
    meshes.forEach(({ strands }, p) => strands.forEach((strand) => strand.elements.forEach((element) => {
        elements.push(element);
        owner[element.id] = p;
    })));
    const bolts: BoltLink[] = [];
    const links: Link[] = [];
    meshes.forEach((mesh, p) => {
        bolts.push(...boltLinks(mesh, p, set, links));
        links.push(...springLinks(mesh, p), ...spliceLinks(mesh, p));
    });
    const hangers = hangerLinks(frame, meshes, set, links);
    const props = frame.props.map(({ piece, at }) => nodesAt(meshes[piece]!, placeIndex(meshes[piece]!.places, at))[0]?.v ?? -1);
    return { frame, set, pieces: meshes, elements, owner, links, bolts, hangers, props, nodeCount: numbers.nodes, size: 3 * numbers.nodes, circles };
}

/** The same of another stiffness. */
export function stiffened(mesh: Mesh, set: StiffnessSet): Mesh {
    const { frame } = mesh;
    const pieces = mesh.pieces.map((piece): PieceMesh => ({ ...piece, strands: piece.strands.map((strand) => restiffened(piece.piece, strand, set)) }));
    const links = mesh.links.slice();
    for (const { piece, bolt, along, across } of mesh.bolts) {
        const stiffness = boltStiffness(set, bolt.slip, frame.pieces[piece]!.elastic.kdef);
        for (const index of [along, across]) links[index] = { ...links[index]!, stiffness };
    }
    mesh.hangers.forEach((index, i) => { if (index >= 0) links[index] = { ...links[index]!, stiffness: hangerStiffness(set, frame.hangers[i]!.elastic) }; });
    return { ...mesh, set, pieces, links, elements: pieces.flatMap(({ strands }) => strands.flatMap(({ elements }) => elements)) };
}

/** Degrees of freedom that are one. */
function joined(meshes: readonly PieceMesh[], size: number): { readonly root: (dof: number) => number; readonly circles: Mesh['circles'] } {
    const lead = Int32Array.from({ length: size }, (_, i) => i);
    const root = (dof: number): number => {
        while (lead[dof] !== dof) dof = lead[dof] = lead[lead[dof]!]!;
        return dof;
    };
    const join = (a: number, b: number): void => { lead[root(a)] = root(b); };
    const level = (mesh: PieceMesh, place: number, leaves?: readonly number[]): number | undefined => {
        const [first, ...others] = nodesAt(mesh, place, leaves);
        for (const other of others) if (first) join(other.v, first.v);
        return first?.v;
    };
    for (const mesh of meshes) {
        for (const { strand, at, nodes } of mesh.strands) {
            for (const splice of strand.splices) {
                const [left, right] = at[placeIndex(mesh.places, splice.at)]!.map((node) => nodes[node]!);
                if (left && right) {
                    join(right.u, left.u);
                    join(right.v, left.v);
                }
            }
        }
        for (const place of [...mesh.levelPlaces, ...mesh.bearerPlaces]) level(mesh, place);
        mesh.piece.member.supports.forEach(({ kind, leaves }, i) => {
            if (kind === 'member' || kind === 'spring') level(mesh, mesh.supportPlaces[i]!, leaves);
        });
    }
    const circles: [number, number][] = [];
    meshes.forEach(({ piece: { bearers } }, carrier) => bearers.forEach(({ piece, support }, i) => {
        const bearer = meshes[piece]!;
        const place = bearer.supportPlaces[bearer.piece.member.supports.indexOf(support)]!;
        const upper = level(bearer, place, support.leaves);
        const lower = level(meshes[carrier]!, meshes[carrier]!.bearerPlaces[i]!);
        if (upper === undefined || lower === undefined) return;
        if (root(upper) === root(lower)) circles.push([carrier, piece]);
        join(upper, lower);
    }));
    return { root, circles };
}

function rooted(strand: StrandMesh, root: (dof: number) => number): StrandMesh {
    return {
        ...strand,
        nodes: strand.nodes.map((node) => ({ ...node, u: root(node.u), v: root(node.v), r: root(node.r) })),
        elements: strand.elements.map((element) => ({ ...element, dofs: element.dofs.map(root) }))
    };
}
