/** Whether the numbers came out: between supports, what the elements pull at must be what the loads give. */
import type { Mesh, PieceMesh } from './mesh.js';
import { problem, type Problem } from './problems.js';
import type { UnitSolution } from './unit-solutions.js';

/** Share of the greatest force of a case. Rounding stays far below; where it does not, no result is better than a wrong one. */
const allowed = 1e-6;
/** N: a force that is none. */
const least = 1e-9;

export function balanceProblems(mesh: Mesh, solutions: readonly UnitSolution[]): Problem[] {
    const loose = mesh.pieces.map((piece) => freeNodes(piece, mesh.held));
    const limits = solutions.map(({ holds }) => {
        let scale = 0;
        for (const list of holds) for (const { up, right } of list) scale = Math.max(scale, Math.abs(up), Math.abs(right));
        return allowed * scale + least;
    });
    const sound = (index: number): boolean => solutions.every(({ holds, states }, c) => {
        if (!states[index]!.every(({ N, V, M, v }) => Number.isFinite(N + V + M + v))) return false;
        return loose[index]!.every(({ node, right }) => {
            const hold = holds[index]![node]!;
            return Math.abs(hold.up) <= limits[c]! && (!right || Math.abs(hold.right) <= limits[c]!);
        });
    });
    return mesh.pieces.flatMap(({ piece: { member } }, index) => (sound(index) ? [] : [problem(member, 'too-far-apart',
        `${member.name} has no results: its sizes or loads lie too far apart to be computed together`, member.nameSource)]));
}

/** Nodes that nothing holds up, and whether they may move sideways as well. */
function freeNodes({ nodes, supportNodes, bearerNodes }: PieceMesh, held: Uint8Array): { readonly node: number; readonly right: boolean }[] {
    const met = new Set([...supportNodes, ...bearerNodes]);
    return nodes.flatMap(({ u }, node) => (met.has(node) ? [] : [{ node, right: held[u] === 0 }]));
}
