/** What one load does to a group, as flat rows of numbers that add up. */
import { elementState, type ElementState, type LineLoad } from './element.js';
import { direction } from './strand-mesh.js';
import type { Mesh } from './mesh.js';
import type { Part } from './unit-cases.js';

/** Per element: N, V, M, v, theta, along, down. */
const stateSize = 7;

export interface UnitSolution {
    /** By element id. */
    readonly states: Float64Array;
    /** By node id: force on the member from what holds it there, to the right and upwards, N. */
    readonly holds: Float64Array;
    /** By link: its force. */
    readonly links: Float64Array;
    /** By prop: what it pushes up with. */
    readonly props: Float64Array;
}

/** Where elements and links have come to: each element's own displacements since it was built in, each link's force. */
export interface Course {
    /** Six by element id. */
    readonly moved: Float64Array;
    readonly links: Float64Array;
}

export function noSolution(mesh: Mesh): UnitSolution {
    return {
        states: new Float64Array(stateSize * mesh.elements.length),
        holds: new Float64Array(2 * mesh.nodeCount),
        links: new Float64Array(mesh.links.length),
        props: new Float64Array(mesh.props.length)
    };
}

export function addTo(sum: UnitSolution, one: UnitSolution): void {
    for (const key of ['states', 'holds', 'links', 'props'] as const) {
        const [to, from] = [sum[key], one[key]];
        for (let i = 0; i < to.length; i++) to[i]! += from[i]!;
    }
}

export function stateOf({ states }: UnitSolution, element: number): ElementState {
    const i = stateSize * element;
    return {
        N: states[i]!, V: states[i + 1]!, M: states[i + 2]!, v: states[i + 3]!, theta: states[i + 4]!,
        along: states[i + 5]!, down: states[i + 6]!
    };
}

/** Sum of states of one element, each solution by its factor. */
export function weightedState(solutions: readonly UnitSolution[], factors: ArrayLike<number>, element: number): ElementState {
    const sum = new Float64Array(stateSize);
    solutions.forEach(({ states }, c) => {
        const factor = factors[c]!;
        if (factor !== 0) for (let i = 0; i < stateSize; i++) sum[i]! += factor * states[stateSize * element + i]!;
    });
    const [N, V, M, v, theta, along, down] = sum as unknown as [number, number, number, number, number, number, number];
    return { N, V, M, v, theta, along, down };
}

const unloaded: LineLoad = { along: 0, down: 0 };

/** `part` where its load stands. */
export function solutionOf(mesh: Mesh, { moved, links }: Course, part?: Part): UnitSolution {
    const solution = noSolution(mesh);
    const { states, holds } = solution;
    const lines = new Map(part?.lines.map(({ element, load }) => [element, load]));
    mesh.pieces.forEach(({ piece: { member }, strands }) => {
        const { cos, sin } = direction(member);
        for (const { elements, nodes } of strands) {
            for (const element of elements) {
                const load = lines.get(element.id) ?? unloaded;
                const state = elementState(element, moved.subarray(6 * element.id, 6 * element.id + 6), load);
                const { N, V, along, down } = state;
                states.set([N, V, state.M, state.v, state.theta, along, down], stateSize * element.id);
                const push = (id: number, axial: number, normal: number): void => {
                    holds[2 * id]! += cos * axial - sin * normal;
                    holds[2 * id + 1]! += sin * axial + cos * normal;
                };
                push(nodes[element.node]!.id, -N, V);
                push(nodes[element.next]!.id, N - along * element.length, -(V - down * element.length));
            }
        }
    });
    for (const { node, right, up } of part?.points ?? []) {
        holds[2 * node]! -= right;
        holds[2 * node + 1]! -= up;
    }
    solution.links.set(links);
    mesh.links.forEach(({ pulls }, index) => {
        for (const { node, right, up } of pulls) {
            holds[2 * node]! -= right * links[index]!;
            holds[2 * node + 1]! -= up * links[index]!;
        }
    });
    return solution;
}
