/**
 * Nodes, elements and holds of a connected group of members.
 *
 * Assumptions, all on the side of inventing no strength that is not there:
 * - each member lies in its own vertical plane; members that meet share their vertical movement alone;
 * - a beam is held along the horizontal at its first support only, so that no arching arises (`pinned` and `fixed` say otherwise);
 * - a post stands on its lowest support, is held sideways at every support, and at its head by the member that rests there.
 */
import type { Load, Member, RectangularSection, Support } from '../../../language/src/model.js';
import type { Segment } from './actions.js';
import type { ElasticProperties } from './elastic.js';
import { rectangleStiffness, stiffnessMatrix, type Stiffness } from './element.js';
import { springBlock, type Block } from './solver/system.js';
import { tolerance } from './spans.js';

/** A sound member with all that the analysis needs of it. */
export interface Piece {
    readonly member: Member;
    readonly section: RectangularSection;
    readonly elastic: ElasticProperties;
    readonly segments: readonly Segment[];
    readonly loads: readonly Load[];
    /** Stations where loads begin and end or stand. */
    readonly places: readonly number[];
    /** Members that rest on this one: index in the group and station here. */
    readonly bearers: readonly { readonly piece: number; readonly support: Support; readonly at: number }[];
}

export interface Node { readonly x: number; readonly u: number; readonly v: number; readonly r: number }

export interface Element extends Stiffness {
    /** Index of the node it starts from; it ends at the next one. */
    readonly node: number;
    readonly segment: number;
    readonly x: number;
    readonly dofs: readonly number[];
}

export interface PieceMesh {
    readonly piece: Piece;
    readonly nodes: readonly Node[];
    readonly elements: readonly Element[];
    /** Nodes of the member's supports and of its bearers, in their order. */
    readonly supportNodes: readonly number[];
    readonly bearerNodes: readonly number[];
}

export interface Mesh {
    readonly pieces: readonly PieceMesh[];
    /** Number of degrees of freedom. */
    readonly size: number;
    readonly held: Uint8Array;
    readonly blocks: readonly Block[];
    /** Pairs of pieces that carry each other at one and the same place, directly or through others. */
    readonly circles: readonly (readonly [carrier: number, bearer: number])[];
}

export function direction(member: Member): { readonly cos: number; readonly sin: number } {
    return member.kind === 'post' ? { cos: 0, sin: 1 } : { cos: Math.cos(member.slope), sin: Math.sin(member.slope) };
}

/** The nearest node. */
export function nodeAt(nodes: readonly { readonly x: number }[], x: number): number {
    let [low, high] = [0, nodes.length - 1];
    while (high - low > 1) {
        const middle = (low + high) >> 1;
        if (nodes[middle]!.x <= x) low = middle; else high = middle;
    }
    return Math.abs(nodes[high]!.x - x) < Math.abs(nodes[low]!.x - x) ? high : low;
}

export function meshOf(pieces: readonly Piece[]): Mesh {
    const places = pieces.map(nodePlaces);
    const offsets = [0];
    for (const list of places) offsets.push(offsets.at(-1)! + 3 * list.length);
    const size = offsets.at(-1)!;

    const lead = Int32Array.from({ length: size }, (_, i) => i);
    const root = (dof: number): number => (lead[dof] === dof ? dof : (lead[dof] = root(lead[dof]!)));
    const dofAt = (piece: number, x: number, component: number): number => {
        return offsets[piece]! + 3 * nodeAt(places[piece]!, x) + component;
    };
    const circles: [number, number][] = [];
    pieces.forEach(({ bearers }, carrier) => {
        for (const { piece, support, at } of bearers) {
            const [upper, lower] = [root(dofAt(piece, support.at.value, 1)), root(dofAt(carrier, at, 1))];
            if (upper === lower) circles.push([carrier, piece]);
            lead[upper] = lower;
        }
    });

    const meshes = pieces.map((piece, i): PieceMesh => {
        const nodes = places[i]!.map(({ x }, n): Node => {
            const dof = offsets[i]! + 3 * n;
            return { x, u: root(dof), v: root(dof + 1), r: root(dof + 2) };
        });
        return {
            piece, nodes,
            elements: elementsOf(piece, nodes),
            supportNodes: piece.member.supports.map((support) => nodeAt(nodes, support.at.value)),
            bearerNodes: piece.bearers.map(({ at }) => nodeAt(nodes, at))
        };
    });
    const held = new Uint8Array(size);
    for (let dof = 0; dof < size; dof++) if (root(dof) !== dof) held[dof] = 1;
    const blocks = meshes.flatMap(({ elements }) =>
        elements.map((element): Block => ({ dofs: element.dofs, matrix: stiffnessMatrix(element) })));
    for (const mesh of meshes) blocks.push(...hold(mesh, held));
    return { pieces: meshes, size, held, blocks, circles };
}

function nodePlaces({ member, segments, places: loaded, bearers }: Piece): { readonly x: number }[] {
    const length = member.length.value;
    const all = [
        ...member.supports.map((support) => support.at.value),
        ...bearers.map(({ at }) => at),
        ...segments.map((segment) => segment.from),
        ...loaded
    ].sort((a, b) => a - b);
    const gap = tolerance(member);
    const places = [0];
    for (const x of all) if (x > places.at(-1)! + gap && x < length - gap) places.push(x);
    return [...places, length].map((x) => ({ x }));
}

function elementsOf({ member, segments, elastic }: Piece, nodes: readonly Node[]): Element[] {
    const axis = direction(member);
    return nodes.slice(0, -1).map((node, i): Element => {
        const next = nodes[i + 1]!;
        const middle = (node.x + next.x) / 2;
        const index = Math.max(0, segments.findIndex(({ from, to }) => from <= middle && middle <= to));
        const { b, h, shiftUp } = segments[index]!;
        return {
            ...rectangleStiffness(elastic.E, elastic.G, b, h),
            ...axis,
            length: next.x - node.x,
            offset: shiftUp,
            node: i,
            segment: index,
            x: node.x,
            dofs: [node.u, node.v, node.r, next.u, next.v, next.r]
        };
    });
}

/** Marks what the supports hold; returns the springs. */
function hold({ piece: { member }, nodes, supportNodes, bearerNodes }: PieceMesh, held: Uint8Array): Block[] {
    const springs: Block[] = [];
    const post = member.kind === 'post';
    const pinned = member.supports.some((support) => !isBearing(support));
    const first = Math.min(...supportNodes);
    member.supports.forEach((support, i) => {
        const { kind, stiffness } = support;
        const { u, v, r } = nodes[supportNodes[i]!]!;
        const whole = !isBearing(support);
        if (whole || post || (supportNodes[i] === first && !pinned)) held[u] = 1;
        if (kind === 'fixed') held[r] = 1;
        if (!carries(member, support)) return;
        // A pin where something else bears holds along the member; what bears there bears as before.
        const bears = whole && member.supports.some((other, j) => supportNodes[j] === supportNodes[i] && isBearing(other));
        if (kind === 'wall' || (whole && !bears)) held[v] = 1;
        if (kind === 'spring') springs.push(springBlock(stiffness?.value ?? 0, v));
    });
    if (post) for (const node of bearerNodes) held[nodes[node]!.u] = 1;
    return springs;
}

export function isBearing({ kind }: Support): boolean {
    return kind !== 'pinned' && kind !== 'fixed';
}

/** Whether a support takes vertical load: all of a beam's, the lowest of a post's, and what is pinned or fixed. */
export function carries(member: Member, support: Support): boolean {
    if (member.kind === 'beam' || !isBearing(support)) return true;
    return member.supports.every(({ at }) => support.at.value <= at.value);
}
