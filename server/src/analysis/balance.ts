/** Whether the numbers came out: between supports, what the elements pull at must be what the loads give. */
import type { Mesh, PieceMesh } from './mesh.js';
import { problem, type Problem } from './problems.js';
import type { UnitSolution } from './unit-solutions.js';

/** Share of the greatest force of a case. Rounding stays far below; where it does not, no result is better than a wrong one. */
const allowed = 1e-6;
/** N: a force that is none. */
const least = 1e-9;

export function balanceProblems(mesh: Mesh, solutions: readonly UnitSolution[], held: Uint8Array): Problem[] {
    const limits = solutions.map(({ holds, links }) => {
        let scale = 0;
        for (const list of [holds, links]) for (const force of list) scale = Math.max(scale, Math.abs(force));
        return allowed * scale + least;
    });
    return mesh.pieces.flatMap((piece) => {
        const free = freeNodes(piece, held);
        const ids = piece.strands.flatMap(({ elements }) => elements.map(({ id }) => id));
        const sound = solutions.every(({ holds, states }, c) => ids.every((id) => states.subarray(7 * id, 7 * id + 7).every(Number.isFinite))
            && free.every(({ id, right }) => Math.abs(holds[2 * id + 1]!) <= limits[c]! && (!right || Math.abs(holds[2 * id]!) <= limits[c]!)));
        const { member } = piece.piece;
        return sound ? [] : [problem(member, 'too-far-apart', `${member.name} has no results: its sizes or loads lie too far apart to be computed together`, member.nameSource)];
    });
}

/** Nodes that nothing holds up or joins, and whether they may move sideways as well. */
function freeNodes({ strands, supportPlaces, bearerPlaces, levelPlaces }: PieceMesh, held: Uint8Array): { readonly id: number; readonly right: boolean }[] {
    const met = new Set([...supportPlaces, ...bearerPlaces, ...levelPlaces]);
    return strands.flatMap(({ at, nodes, strand }) => at.flatMap((here, place) => {
        const joined = met.has(place) || (strand.splices.length > 0 && here.length > 1);
        return joined ? [] : here.map((node) => ({ id: nodes[node]!.id, right: held[nodes[node]!.u] === 0 }));
    }));
}
