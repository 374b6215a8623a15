/** What one load does to a group, as flat rows of numbers that add up. */
import { writeState, type ElementState, type LineLoad } from './element.js';
import type { Mesh } from './mesh.js';
import type { Part } from './unit-cases.js';

/** Per element: N, V, M, v, theta, along, down. */
export const stateSize = 7;

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

export function copyOf({ states, holds, links, props }: UnitSolution): UnitSolution {
    return { states: states.slice(), holds: holds.slice(), links: links.slice(), props: props.slice() };
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

export function isStill(moved: Float64Array, id: number): boolean {
    for (let i = 6 * id; i < 6 * id + 6; i++) if (moved[i] !== 0) return false;
    return true;
}

/** `part` where its load stands. */
export function solutionOf(mesh: Mesh, { moved, links }: Course, part?: Part): UnitSolution {
    const solution = noSolution(mesh);
    const { states, holds } = solution;
    const lines = new Map(part?.lines.map(({ element, load }) => [element, load]));
    for (const element of mesh.elements) {
        const { id, cos, sin, length } = element;
        const load = lines.size === 0 ? unloaded : lines.get(id) ?? unloaded;
        if (load === unloaded && isStill(moved, id)) continue;
        const i = stateSize * id;
        writeState(element, moved, 6 * id, load, states, i);
        const [N, V] = [states[i]!, states[i + 1]!];
        const [end, shear] = [N - load.along * length, V - load.down * length];
        const [a, b] = [2 * element.from, 2 * element.to];
        holds[a]! -= cos * N + sin * V;
        holds[a + 1]! += cos * V - sin * N;
        holds[b]! += cos * end + sin * shear;
        holds[b + 1]! += sin * end - cos * shear;
    }
    for (const { node, right, up } of part?.points ?? []) {
        holds[2 * node]! -= right;
        holds[2 * node + 1]! -= up;
    }
    solution.links.set(links);
    mesh.links.forEach(({ pulls }, index) => {
        if (links[index] === 0) return;
        for (const { node, right, up } of pulls) {
            holds[2 * node]! -= right * links[index]!;
            holds[2 * node + 1]! -= up * links[index]!;
        }
    });
    return solution;
}
