/**
 * Runs of leaves, from butt to butt, that too few bolts and supports hold: they would swing free and carry nothing. They
 * are left out, and what lies on the member goes to the leaves that are held.
 */
import { meshOf, type PieceMesh } from './mesh.js';
import type { Piece, Strand } from './piece.js';
import { metres, problem, type Problem } from './problems.js';
import { kitOf, structureOf } from './structure.js';
import type { Support } from '../../../language/src/model.js';

export interface Held { readonly piece: Piece; readonly problems: readonly Problem[] }

/** The member by itself, all that carries it or holds it level being firm. */
export function withoutLoose(piece: Piece): Held {
    const whole = piece.strands.every(({ butts }) => butts.length === 0) && piece.member.supports.every(({ leaves }) => leaves === undefined);
    if (piece.strands.length === 1 || whole) return { piece, problems: [] };
    let held = piece;
    // Each turn lets go at least one run.
    for (;;) {
        const { mesh, motions } = motionsOf(held);
        const strands = mesh.strands.map(({ strand }, i): Strand => ({ ...strand, loose: [...strand.loose, ...movingRuns(mesh, i, motions)] }));
        if (strands.every(({ loose }, i) => loose.length === held.strands[i]!.loose.length)) return { piece: held, problems: [] };
        const fallen = fallenApart(piece, mesh.places, strands);
        // With too few supports the whole of it moves: that is told of the member in its group.
        if (fallen) return { piece, problems: stationsOf(piece) > 1 ? [fallen] : [] };
        held = { ...held, strands };
    }
}

/** As if all stations that hold it were bearings. */
export function onWalls(piece: Piece): Piece {
    const { member, levels, bearers } = piece;
    const stations = [...levels, ...bearers.map(({ at }) => at)].filter((x) => !member.supports.some(({ at }) => at.value === x));
    const [first] = member.supports;
    if (!first) return piece;
    const walls = stations.map((x): Support => ({ ...first, kind: 'wall', leaves: undefined, at: { ...first.at, value: x } }));
    const own = member.supports.map((support): Support => (support.kind === 'member' || support.kind === 'spring' ? { ...support, kind: 'wall' } : support));
    return { ...piece, member: { ...member, supports: [...own, ...walls] }, bearers: [], levels: [] };
}

function stationsOf(piece: Piece): number {
    return new Set(onWalls(piece).member.supports.map(({ at }) => at.value)).size;
}

function motionsOf(piece: Piece): { readonly mesh: PieceMesh; readonly motions: readonly Float64Array[] } {
    const mesh = meshOf({ pieces: [onWalls(piece)], hangers: [], props: [] }, 'instant');
    const standing = { pieces: Uint8Array.of(1), hangers: new Uint8Array(), props: new Uint8Array() };
    return { mesh: mesh.pieces[0]!, motions: structureOf(kitOf(mesh), standing).system.mechanisms };
}

function movingRuns({ strands, places }: PieceMesh, index: number, motions: readonly Float64Array[]): Strand['loose'] {
    const { strand, elements, nodes } = strands[index]!;
    const ends = [places[0]!, ...[...strand.butts].sort((a, b) => a - b), places.at(-1)!];
    return ends.slice(1).flatMap((to, i) => {
        const from = ends[i]!;
        const inside = elements.filter((element) => !element.loose && element.x + element.length / 2 > from && element.x + element.length / 2 < to);
        const dofs = inside.flatMap((element) => [nodes[element.node]!, nodes[element.next]!]).flatMap(({ u, v, r }) => [u, v, r]);
        const moves = motions.some((motion) => {
            const greatest = motion.reduce((max, value) => Math.max(max, Math.abs(value)), 0);
            return dofs.some((dof) => Math.abs(motion[dof]!) > 1e-6 * greatest);
        });
        return moves ? [{ from, to }] : [];
    });
}

/** Where no leaf is left, as what can move there. */
function fallenApart({ member }: Piece, places: readonly number[], strands: readonly Strand[]): Problem | undefined {
    for (let i = 0; i + 1 < places.length; i++) {
        const middle = (places[i]! + places[i + 1]!) / 2;
        if (!strands.every(({ loose }) => loose.some(({ from, to }) => from < middle && middle < to))) continue;
        const butts = strands.flatMap((strand) => strand.butts);
        const shared = butts.find((x) => strands.every((strand) => strand.butts.some((other) => Math.abs(other - x) < 1)));
        const message = shared === undefined
            ? `${member.name} comes apart: at ${metres(middle)} too few bolts hold any of its leaves`
            : `${member.name} folds at ${metres(shared)}: every leaf is broken there and nothing joins the ends`;
        return problem(member, 'mechanism', message, member.section.shape === 'plies' ? member.section.source : member.source);
    }
    return undefined;
}
