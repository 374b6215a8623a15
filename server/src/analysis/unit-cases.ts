/** The loads of a group, each solved by itself: which cases there are, and what each puts on every element and node. */
import { standardGravity } from '../../../language/src/quantity.js';
import type { Load } from '../../../language/src/model.js';
import type { Parameters } from '../catalog/parameters.js';
import type { UnitCase } from './actions.js';
import { actionName, durationOf, isFree } from './durations.js';
import type { LineLoad } from './element.js';
import { gravityOn, lineOn, nothing, partOn, together } from './loading.js';
import type { Mesh, Node } from './mesh.js';
import type { Piece } from './piece.js';
import type { StagePlan } from './stages.js';
import { stretchesOf } from './spans.js';

/** Part of a load on one span of one member. Permanent parts sum to one case; free ones are each their own. */
export interface Part {
    /** `tightening` of hangers and `lift` of props load nothing: the stages bring them in. */
    readonly kind: 'load' | 'tightening' | 'lift';
    /** Index of its case. */
    readonly unit: number;
    readonly piece: number;
    /** Indices of the stages it acts in; a lasting one acts on from the stage in which its member is built in. */
    readonly stages: 'on' | readonly number[];
    readonly lines: readonly { readonly element: number; readonly load: LineLoad }[];
    /** Global forces on nodes. */
    readonly points: readonly { readonly node: number; readonly dofs: Node; readonly right: number; readonly up: number }[];
}

export interface UnitCases {
    readonly cases: readonly UnitCase[];
    readonly parts: readonly Part[];
}

/** Weight per length of the whole section, N/mm: losses are not taken off. */
export function weightPerLength({ member: { section }, elastic }: Piece): number {
    if (elastic.section) return elastic.section.mass * standardGravity;
    if (section.shape !== 'rectangle' && section.shape !== 'plies') return 0;
    const leaves = section.shape === 'plies' ? section.count : 1;
    return elastic.density * 1e-9 * leaves * section.breadth.value * section.depth.value * standardGravity;
}

export function unitCases(mesh: Mesh, stages: readonly StagePlan[], parameters: Parameters): UnitCases {
    const stretches = mesh.pieces.map(({ piece }) => stretchesOf(piece.member));
    const cases: UnitCase[] = [];
    const parts: Part[] = [];
    const add = (unit: Omit<UnitCase, 'id'>): number => cases.push({ id: cases.length, ...unit }) - 1;
    const lasting = { permanent: true, duration: 'permanent', psi: [1, 1, 1] } as const;

    const heavy = mesh.pieces.flatMap(({ piece }, i) => (piece.member.selfWeight ? [i] : []));
    if (heavy.length > 0) {
        const unit = add({ name: 'self weight', load: 'self weight', action: 'G', ...lasting });
        for (const i of heavy) {
            const weight = weightPerLength(mesh.pieces[i]!.piece);
            const line = gravityOn(mesh.pieces[i]!.piece.member, weight);
            for (const { from, to, ends } of stretches[i]!) {
                const runs = [{ from, to }, ...ends].map((run) => lineOn(mesh.pieces[i]!, run.from, run.to, line));
                parts.push({ kind: 'load', unit, piece: i, stages: 'on', ...together(runs) });
            }
        }
    }
    for (const kind of ['tightening', 'lift'] as const) {
        if (stages.some(({ steps }) => steps.some(({ tightened, lifted }) => (kind === 'lift' ? lifted : tightened).size > 0))) {
            parts.push({ kind, unit: add({ name: kind, load: kind, action: kind, ...lasting }), piece: -1, stages: 'on', ...nothing });
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
        const acting = permanent ? 'on' as const : stagesOf(load, stages);
        for (const { name, ...part } of laid) {
            parts.push({ kind: 'load', unit: apart ? add({ ...about, name: `${load.name} (${name})` }) : whole, piece: i, stages: acting, ...part });
        }
    }));
    return { cases, parts };
}

/** Construction loads act while there is building, all others when it is done; where no stages are told all act at once. */
function stagesOf({ action }: Load, stages: readonly StagePlan[]): number[] {
    return stages.flatMap(({ name, last }, s) => (name === null || (action.kind === 'construction') !== last ? [s] : []));
}
