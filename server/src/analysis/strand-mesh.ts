/** Nodes and elements of one strand. */
import type { Member } from '../../../language/src/model.js';
import { rectangleStiffness, type Stiffness } from './element.js';
import { placeIndex } from './mesh.js';
import type { Piece, Strand } from './piece.js';
import { tolerance } from './spans.js';
import { creeps, softening, type StiffnessSet } from './stiffness-sets.js';

export interface Node {
    readonly id: number;
    readonly x: number;
    readonly u: number;
    readonly v: number;
    readonly r: number;
    /** Of a run that too little holds. */
    readonly loose: boolean;
}

export interface Element extends Stiffness {
    readonly id: number;
    /** Nodes of its strand. */
    readonly node: number;
    readonly next: number;
    /** Ids of these nodes. */
    readonly from: number;
    readonly to: number;
    /** Index among its strand's segments. */
    readonly segment: number;
    readonly x: number;
    readonly dofs: readonly number[];
    readonly loose: boolean;
}

export interface StrandMesh {
    readonly strand: Strand;
    readonly nodes: readonly Node[];
    readonly elements: readonly Element[];
    /** By place: its node, or the two where it is parted. */
    readonly at: readonly (readonly number[])[];
}

export function direction(member: Member): { readonly cos: number; readonly sin: number } {
    return member.kind === 'post' ? { cos: 0, sin: 1 } : { cos: Math.cos(member.slope), sin: Math.sin(member.slope) };
}

export function placesOf({ member, strands, bolts, places: further, bearers }: Piece): number[] {
    const length = member.length.value;
    const all = [
        ...member.supports.map((support) => support.at.value),
        ...bearers.map(({ at }) => at),
        ...strands.flatMap(({ segments, butts, splices }) => [...segments.map(({ from }) => from), ...butts, ...splices.map(({ at }) => at)]),
        ...bolts.map(({ x }) => x),
        ...further
    ].sort((a, b) => a - b);
    const gap = tolerance(member);
    const places = [0];
    for (const x of all) if (x > places.at(-1)! + gap && x < length - gap) places.push(x);
    return [...places, length];
}

/** `numbers` counts the nodes and elements of the whole group. */
export function strandMesh(piece: Piece, strand: Strand, places: readonly number[], set: StiffnessSet, numbers: { nodes: number; elements: number }): StrandMesh {
    const parted = new Set([...strand.butts, ...strand.splices.map(({ at }) => at)].map((x) => placeIndex(places, x)));
    const looseAt = (x: number): boolean => strand.loose.some(({ from, to }) => from <= x && x <= to);
    const last = places.length - 1;
    const nodes: Node[] = [];
    const add = (place: number, towards: number): number => {
        const id = numbers.nodes++;
        return nodes.push({ id, x: places[place]!, u: 3 * id, v: 3 * id + 1, r: 3 * id + 2, loose: looseAt((places[place]! + places[towards]!) / 2) }) - 1;
    };
    const at = places.map((_, place) => (parted.has(place) && place > 0 && place < last
        ? [add(place, place - 1), add(place, place + 1)]
        : [add(place, place < last ? place + 1 : place - 1)]));
    const { cos, sin } = direction(piece.member);
    const stiffness = strand.segments.map((_, segment) => stiffnessOf(piece, strand, segment, set));
    const elements = places.slice(0, -1).map((x, i): Element => {
        const node = at[i]!.at(-1)!;
        const next = at[i + 1]![0]!;
        const middle = (x + places[i + 1]!) / 2;
        const segment = Math.max(0, strand.segments.findIndex(({ from, to }) => from <= middle && middle <= to));
        const { EA, EI, GAs } = stiffness[segment]!;
        const start = nodes[node]!;
        const end = nodes[next]!;
        return {
            EA, EI, GAs, cos, sin,
            id: numbers.elements++, node, next, from: start.id, to: end.id, segment, x,
            length: places[i + 1]! - x,
            offset: strand.segments[segment]!.shiftUp,
            dofs: [start.u, start.v, start.r, end.u, end.v, end.r],
            loose: looseAt(middle)
        };
    });
    return { strand, nodes, elements, at };
}

/** The same of another stiffness. */
export function restiffened(piece: Piece, mesh: StrandMesh, set: StiffnessSet): StrandMesh {
    const stiffness = mesh.strand.segments.map((_, segment) => stiffnessOf(piece, mesh.strand, segment, set));
    return { ...mesh, elements: mesh.elements.map((element) => ({ ...element, ...stiffness[element.segment]! })) };
}

function stiffnessOf({ elastic }: Piece, { segments }: Strand, segment: number, set: StiffnessSet): Pick<Stiffness, 'EA' | 'EI' | 'GAs'> {
    if (elastic.section) {
        const { EA, EI, GA } = creeps(set) ? elastic.section.final : elastic.section.instant;
        return { EA, EI, GAs: GA };
    }
    const { b, h } = segments[segment]!;
    const soft = softening(set, elastic.kdef);
    return rectangleStiffness(elastic.E / soft, elastic.G / soft, b, h);
}
