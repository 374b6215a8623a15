/** What loads put on the strands of a member: on its leaves by breadth, or on the one that is told. */
import type { Load, Member } from '../../../language/src/model.js';
import type { LineLoad } from './element.js';
import { placeIndex, type PieceMesh, type StrandMesh } from './mesh.js';
import type { Stretch } from './spans.js';
import { direction } from './strand-mesh.js';
import type { Part } from './unit-cases.js';

/** What a load puts on elements and nodes. */
export type Loading = Pick<Part, 'lines' | 'points'>;

export const nothing: Loading = { lines: [], points: [] };

/** The part of a load that lies on one stretch of its member. */
export function partOn(mesh: PieceMesh, load: Load, stretch: Stretch): Loading {
    const { member } = mesh.piece;
    if (load.line) {
        const from = Math.max(load.line.from, stretch.from);
        const to = Math.min(load.line.to, stretch.to);
        return lineOn(mesh, from, to, lineLoadOf(load, member), load.leaf);
    }
    if (!load.point || !holds(member, stretch, load.point.at)) return nothing;
    const { cos, sin } = direction(member);
    const { force, at } = load.point;
    const wind = load.action.kind === 'wind';
    return pointOn(mesh, placeIndex(mesh.places, at), { right: wind ? force * sin : 0, up: wind ? -force * cos : -force }, load.leaf);
}

/** A point where two stretches meet is the left one's. */
function holds(member: Member, { from, to }: Stretch, at: number): boolean {
    return (from <= 0 || at > from) && (to >= member.length.value || at <= to);
}

/** From place to place, the whole of it kept; one too short for that stands on its place. */
export function lineOn(mesh: PieceMesh, from: number, to: number, { along, down }: LineLoad, leaf?: number): Loading {
    if (!(to > from)) return nothing;
    const { places, piece: { member } } = mesh;
    const [first, last] = [placeIndex(places, from), placeIndex(places, to)];
    if (first === last) {
        const { cos, sin } = direction(member);
        const length = to - from;
        return pointOn(mesh, first, { right: (along * cos + down * sin) * length, up: (along * sin - down * cos) * length }, leaf);
    }
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
