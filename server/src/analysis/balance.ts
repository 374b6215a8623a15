/** Whether the numbers came out: between supports, what the elements pull at must be what the loads give. */
import type { Mesh, PieceMesh } from './mesh.js';
import { problem, type Problem } from './problems.js';
import { stateSize, type UnitSolution } from './unit-solutions.js';

/** Share of the greatest force of a case. Rounding stays far below; where it does not, no result is better than a wrong one. */
const allowed = 1e-6;
/** N: a force that is none. */
const least = 1e-9;

export function balanceProblems(mesh: Mesh, solutions: readonly UnitSolution[], held: Uint8Array): Problem[] {
    const limits = solutions.map(({ holds, links }) => allowed * Math.max(greatest(holds), greatest(links)) + least);
    return mesh.pieces.flatMap((piece) => {
        const free = freeNodes(piece, held);
        const sound = solutions.every((solution, c) => isFinite(piece, solution) && isBalanced(free, solution, limits[c]!));
        const { member } = piece.piece;
        return sound ? [] : [problem(member, 'too-far-apart', `${member.name} has no results: its sizes or loads lie too far apart to be computed together`, member.nameSource)];
    });
}

function greatest(forces: Float64Array): number {
    let most = 0;
    for (let i = 0; i < forces.length; i++) most = Math.max(most, Math.abs(forces[i]!));
    return most;
}

function isFinite({ strands }: PieceMesh, { states }: UnitSolution): boolean {
    for (const { elements } of strands) {
        for (const { id } of elements) {
            for (let i = stateSize * id; i < stateSize * (id + 1); i++) if (!Number.isFinite(states[i])) return false;
        }
    }
    return true;
}

interface FreeNode { readonly id: number; readonly right: boolean }

function isBalanced(free: readonly FreeNode[], { holds }: UnitSolution, limit: number): boolean {
    for (const { id, right } of free) {
        if (!(Math.abs(holds[2 * id + 1]!) <= limit) || (right && !(Math.abs(holds[2 * id]!) <= limit))) return false;
    }
    return true;
}

/** Nodes that nothing holds up or joins, and whether they may move sideways as well. */
function freeNodes({ strands, supportPlaces, bearerPlaces, levelPlaces }: PieceMesh, held: Uint8Array): FreeNode[] {
    const met = new Set([...supportPlaces, ...bearerPlaces, ...levelPlaces]);
    return strands.flatMap(({ at, nodes, strand }) => at.flatMap((here, place) => {
        const joined = met.has(place) || (strand.splices.length > 0 && here.length > 1);
        return joined ? [] : here.map((node) => ({ id: nodes[node]!.id, right: held[nodes[node]!.u] === 0 }));
    }));
}
