/** The loads of a group, each solved by itself: which cases there are, and what each puts on every element and node. */
import { standardGravity } from '../../../language/src/quantity.js';
import type { Load, Member } from '../../../language/src/model.js';
import type { Parameters } from '../catalog/parameters.js';
import type { UnitCase } from './actions.js';
import { actionName, durationOf, isFree } from './durations.js';
import type { LineLoad } from './element.js';
import { direction, nodeAt, type Mesh, type Piece, type PieceMesh } from './mesh.js';
import { stretchesOf, type Stretch } from './spans.js';

/** Part of a load on one span of one member. Permanent parts sum to one case; free ones are each their own. */
export interface Part {
    /** Index of its case. */
    readonly unit: number;
    readonly piece: number;
    readonly lines: readonly { readonly element: number; readonly load: LineLoad }[];
    /** Global forces on nodes. */
    readonly points: readonly { readonly node: number; readonly right: number; readonly up: number }[];
}

export interface UnitCases {
    readonly cases: readonly UnitCase[];
    readonly parts: readonly Part[];
}

/** Weight per length of the whole section, N/mm: losses are not taken off. */
export function weightPerLength({ section, elastic }: Piece): number {
    return elastic.density * 1e-9 * section.breadth.value * section.depth.value * standardGravity;
}

export function unitCases(mesh: Mesh, parameters: Parameters): UnitCases {
    const stretches = mesh.pieces.map(({ piece }) => stretchesOf(piece.member));
    const cases: UnitCase[] = [];
    const parts: Part[] = [];
    const add = (unit: Omit<UnitCase, 'id'>): number => cases.push({ id: cases.length, ...unit }) - 1;

    const heavy = mesh.pieces.flatMap(({ piece }, i) => (piece.member.selfWeight ? [i] : []));
    if (heavy.length > 0) {
        const unit = add({ name: 'self weight', load: 'self weight', action: 'G', permanent: true, duration: 'permanent', psi: [1, 1, 1] });
        for (const i of heavy) {
            const weight = weightPerLength(mesh.pieces[i]!.piece);
            for (const { from, to } of stretches[i]!) {
                parts.push({ unit, piece: i, ...lineOn(mesh.pieces[i]!, from, to, gravityOn(mesh.pieces[i]!.piece.member, weight)) });
            }
        }
    }
    mesh.pieces.forEach((piece, i) => piece.piece.loads.forEach((load) => {
        const action = actionName(load.action);
        const permanent = load.action.kind === 'permanent';
        const about = {
            load: load.name, action, permanent,
            duration: durationOf(load),
            psi: permanent ? [1, 1, 1] as const : parameters.psi(action)
        };
        const laid = stretches[i]!.map((stretch) => ({ ...partOn(piece, load, stretch), name: stretch.name }))
            .filter(({ lines, points }) => lines.length + points.length > 0);
        const apart = isFree(load.action) && laid.length > 1;
        const whole = apart || laid.length === 0 ? -1 : add({ ...about, name: load.name });
        for (const { name, ...part } of laid) {
            parts.push({ unit: apart ? add({ ...about, name: `${load.name} (${name})` }) : whole, piece: i, ...part });
        }
    }));
    return { cases, parts };
}

type Loading = Pick<Part, 'lines' | 'points'>;

const nothing: Loading = { lines: [], points: [] };

function partOn(mesh: PieceMesh, load: Load, stretch: Stretch): Loading {
    const { member } = mesh.piece;
    if (load.line) {
        const from = Math.max(load.line.from, stretch.from);
        const to = Math.min(load.line.to, stretch.to);
        return lineOn(mesh, from, to, lineLoadOf(load, member));
    }
    if (!load.point || !holds(member, stretch, load.point.at)) return nothing;
    const { cos, sin } = direction(member);
    const { force, at } = load.point;
    const wind = load.action.kind === 'wind';
    return { lines: [], points: [{ node: nodeAt(mesh.nodes, at), right: wind ? force * sin : 0, up: wind ? -force * cos : -force }] };
}

/** A point where two stretches meet is the left one's. */
function holds(member: Member, { from, to }: Stretch, at: number): boolean {
    return (from <= 0 || at > from) && (to >= member.length.value || at <= to);
}

/** From node to node, the whole of it kept; one too short for that stands on its node. */
function lineOn({ nodes, piece: { member } }: PieceMesh, from: number, to: number, { along, down }: LineLoad): Loading {
    if (!(to > from)) return nothing;
    const [first, last] = [nodeAt(nodes, from), nodeAt(nodes, to)];
    if (first === last) {
        const { cos, sin } = direction(member);
        const force = { right: along * cos + down * sin, up: along * sin - down * cos };
        return { lines: [], points: [{ node: first, right: force.right * (to - from), up: force.up * (to - from) }] };
    }
    const share = (to - from) / (nodes[last]!.x - nodes[first]!.x);
    const load = { along: along * share, down: down * share };
    return { lines: Array.from({ length: last - first }, (_, i) => ({ element: first + i, load })), points: [] };
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

function gravityOn(member: Member, amount: number): LineLoad {
    const { cos, sin } = direction(member);
    return { along: -amount * sin, down: amount * cos };
}
