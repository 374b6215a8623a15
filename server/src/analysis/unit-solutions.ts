/** Solves every part of every load and sums the parts to cases. */
import { elementState, nodalLoads, type ElementState } from './element.js';
import type { Mesh } from './mesh.js';
import { direction } from './mesh.js';
import type { System } from './solver/system.js';
import type { Part, UnitCases } from './unit-cases.js';

/** Force on a member from what holds it at a node, N. */
export interface Hold { readonly right: number; readonly up: number }

export interface UnitSolution {
    /** By piece and element. */
    readonly states: readonly (readonly ElementState[])[];
    /** By piece and node. */
    readonly holds: readonly (readonly Hold[])[];
}

export interface UnitSolutions { readonly ofParts: readonly UnitSolution[]; readonly ofCases: readonly UnitSolution[] }

export function solveUnitCases(mesh: Mesh, system: System, { cases, parts }: UnitCases): UnitSolutions {
    const ofParts = parts.map((part) => solvePart(mesh, system, part));
    const ofCases = cases.map(({ id }) => sum(ofParts.filter((_, i) => parts[i]!.unit === id)));
    return { ofParts, ofCases };
}

const unloaded = { along: 0, down: 0 };

function solvePart(mesh: Mesh, system: System, part: Part): UnitSolution {
    const load = new Float64Array(mesh.size);
    const { elements, nodes } = mesh.pieces[part.piece]!;
    const lines = elements.map(() => unloaded);
    for (const line of part.lines) {
        lines[line.element] = line.load;
        const element = elements[line.element]!;
        nodalLoads(element, line.load).forEach((force, i) => { load[element.dofs[i]!]! += force; });
    }
    for (const { node, right, up } of part.points) {
        load[nodes[node]!.u]! += right;
        load[nodes[node]!.v]! += up;
    }
    const moved = system.solve(load);
    const states = mesh.pieces.map((piece, p) => piece.elements.map((element, e) =>
        elementState(element, element.dofs.map((dof) => moved[dof]!), p === part.piece ? lines[e]! : unloaded)));
    return { states, holds: mesh.pieces.map((_, p) => holdsOf(mesh, p, states[p]!, part)) };
}

/** What the elements need at each node for equilibrium, less the load that stands there. */
function holdsOf(mesh: Mesh, index: number, states: readonly ElementState[], part: Part): Hold[] {
    const { piece, nodes, elements } = mesh.pieces[index]!;
    const { cos, sin } = direction(piece.member);
    const holds = nodes.map(() => ({ right: 0, up: 0 }));
    const push = (node: number, along: number, normal: number): void => {
        holds[node]!.right += cos * along - sin * normal;
        holds[node]!.up += sin * along + cos * normal;
    };
    elements.forEach(({ node, length }, e) => {
        const { N, V, along, down } = states[e]!;
        push(node, -N, V);
        push(node + 1, N - along * length, -(V - down * length));
    });
    if (part.piece === index) {
        for (const { node, right, up } of part.points) {
            holds[node]!.right -= right;
            holds[node]!.up -= up;
        }
    }
    return holds;
}

function sum(solutions: readonly UnitSolution[]): UnitSolution {
    return solutions.reduce((a, b) => ({
        states: a.states.map((states, p) => states.map((state, e) => addStates(state, b.states[p]![e]!))),
        holds: a.holds.map((holds, p) => holds.map((hold, n) => {
            const other = b.holds[p]![n]!;
            return { right: hold.right + other.right, up: hold.up + other.up };
        }))
    }));
}

function addStates(a: ElementState, b: ElementState): ElementState {
    return {
        N: a.N + b.N, V: a.V + b.V, M: a.M + b.M, v: a.v + b.v, theta: a.theta + b.theta,
        along: a.along + b.along, down: a.down + b.down
    };
}
