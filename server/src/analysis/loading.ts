/** What loads put on the strands of a member: on its leaves by breadth, or on the one that is told. */
import type { Load, Member } from '../../../language/src/model.js';
import { isFree } from './durations.js';
import type { LineLoad } from './element.js';
import { placeIndex, type PieceMesh, type StrandMesh } from './mesh.js';
import type { Stretch } from './spans.js';
import { direction } from './strand-mesh.js';
import type { Part } from './unit-cases.js';

/** What a load puts on elements and nodes. */
export type Loading = Pick<Part, 'lines' | 'points'>;

export const nothing: Loading = { lines: [], points: [] };

export function together(all: readonly Loading[]): Loading {
    return { lines: all.flatMap(({ lines }) => lines), points: all.flatMap(({ points }) => points) };
}

/** The part of a load that lies on one stretch of its member; what a free one has on a short end goes straight into the support. */
export function partOn(mesh: PieceMesh, load: Load, stretch: Stretch): Loading {
    const { member } = mesh.piece;
    if (load.line) {
        const line = lineLoadOf(load, member);
        const within = (from: number, to: number) => [Math.max(load.line!.from, from), Math.min(load.line!.to, to)] as const;
        const all = [
            lineOn(mesh, ...within(stretch.from, stretch.to), line, load.leaf),
            ...stretch.ends.map(({ from, to, support }) => isFree(load.action)
                ? standing(mesh, placeIndex(mesh.places, support), within(from, to), line, load.leaf)
                : lineOn(mesh, ...within(from, to), line, load.leaf))
        ];
        return together(all);
    }
    if (!load.point || !holds(member, stretch, load.point.at)) return nothing;
    const { cos, sin } = direction(member);
    const { force, at } = load.point;
    const wind = load.action.kind === 'wind';
    return pointOn(mesh, placeIndex(mesh.places, at), { right: wind ? force * sin : 0, up: wind ? -force * cos : -force }, load.leaf);
}

/** A point where two stretches meet is the left one's. */
function holds(member: Member, { from, to, ends }: Stretch, at: number): boolean {
    const [start, end] = [Math.min(from, ...ends.map((one) => one.from)), Math.max(to, ...ends.map((one) => one.to))];
    return (start <= 0 || at > start) && (end >= member.length.value || at <= end);
}

/** From place to place, the whole of it kept; one too short for that stands on its place. */
export function lineOn(mesh: PieceMesh, from: number, to: number, { along, down }: LineLoad, leaf?: number): Loading {
    if (!(to > from)) return nothing;
    const { places } = mesh;
    const [first, last] = [placeIndex(places, from), placeIndex(places, to)];
    if (first === last) return standing(mesh, first, [from, to], { along, down }, leaf);
    const spread = (to - from) / (places[last]! - places[first]!);
    const lines: Part['lines'][number][] = [];
    for (let i = first; i < last; i++) {
        const taking = takers(mesh, leaf).filter(({ strand }) => !strand.elements[i]!.loose);
        const sum = taking.reduce((total, { share }) => total + share, 0);
        for (const { strand, share } of taking) {
            const factor = spread * share / sum;
            lines.push({ element: strand.elements[i]!.id, load: { along: along * factor, down: down * factor } });
        }
    }
    return { lines, points: [] };
}

/** What lies from place to place, all of it on one place. */
function standing(mesh: PieceMesh, place: number, [from, to]: readonly [number, number], { along, down }: LineLoad, leaf?: number): Loading {
    if (!(to > from)) return nothing;
    const { cos, sin } = direction(mesh.piece.member);
    const length = to - from;
    return pointOn(mesh, place, { right: (along * cos + down * sin) * length, up: (along * sin - down * cos) * length }, leaf);
}

/** On each leaf by its breadth; at a butt on both ends alike. */
function pointOn(mesh: PieceMesh, place: number, { right, up }: { readonly right: number; readonly up: number }, leaf?: number): Loading {
    const taking = takers(mesh, leaf).map(({ strand, share }) => ({ share, nodes: strand.at[place]!.map((node) => strand.nodes[node]!).filter(({ loose }) => !loose) }))
        .filter(({ nodes }) => nodes.length > 0);
    const sum = taking.reduce((total, { share }) => total + share, 0);
    return {
        lines: [],
        points: taking.flatMap(({ share, nodes }) => nodes.map((node) => {
            const factor = share / sum / nodes.length;
            return { node: node.id, dofs: node, right: right * factor, up: up * factor };
        }))
    };
}

/** Strands that a load is on: all, or the one leaf that is told. */
function takers({ strands }: PieceMesh, leaf?: number): { readonly strand: StrandMesh; readonly share: number }[] {
    return strands.filter(({ strand }) => leaf === undefined || strand.leaf === undefined || strand.leaf === leaf).map((strand) => ({ strand, share: strand.strand.share }));
}

/**
 * Per length of the member. Permanent loads lie along the slope; imposed loads and snow are by plan
 * (EN 1991-1-3 5.2(3): snow on the horizontal projection, from memory), so that a sloping member gets cos α of them;
 * wind acts normal to the axis. A post takes all but wind along its axis.
 */
function lineLoadOf(load: Load, member: Member): LineLoad {
    const amount = load.line!.perLength;
    if (load.action.kind === 'wind') return { along: 0, down: amount };
    const byPlan = load.action.kind !== 'permanent' && member.kind !== 'post';
    return gravityOn(member, byPlan ? amount * direction(member).cos : amount);
}

export function gravityOn(member: Member, amount: number): LineLoad {
    const { cos, sin } = direction(member);
    return { along: -amount * sin, down: amount * cos };
}
