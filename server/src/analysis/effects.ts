/** What each unit case does at each station of a member. */
import type { ElementState } from './element.js';
import type { Element, Mesh, PieceMesh, StrandMesh } from './mesh.js';
import { stateOf, type UnitSolution } from './unit-solutions.js';

/** A place on the element of this index in any strand of a member, mm from the element's start. */
export interface Place { readonly element: number; readonly into: number; readonly x: number }

/** Row by row: the value of case c at station s stands at `s * cases + c`. */
export interface Effects {
    readonly cases: number;
    readonly places: readonly Place[];
    readonly N: Float64Array;
    readonly V: Float64Array;
    readonly M: Float64Array;
}

export function forcesAt(state: ElementState, x: number): { readonly N: number; readonly V: number; readonly M: number } {
    const { N, V, M, along, down } = state;
    return { N: N - along * x, V: V - down * x, M: M + V * x - (down * x * x) / 2 };
}

/** Upwards, normal to the axis, and its derivative: bending and shear, exact under a uniform load. */
export function shapeAt(element: Element, state: ElementState, x: number): { readonly v: number; readonly slope: number } {
    const { EI, GAs } = element;
    const { V, M, theta, down } = state;
    const rotation = theta + (M * x + (V * x * x) / 2 - (down * x ** 3) / 6) / EI;
    const bending = ((M * x * x) / 2 + (V * x ** 3) / 6 - (down * x ** 4) / 24) / EI;
    return {
        v: state.v + theta * x + bending - (V * x - (down * x * x) / 2) / GAs,
        slope: rotation - (V - down * x) / GAs
    };
}

/** Greatest effects anywhere in the group by case: less than a billionth of that is rounding. */
export interface Scale { readonly force: number; readonly moment: number; readonly movement: number }

const rounding = 1e-9;

export function scaleOf({ elements }: Mesh, solution: UnitSolution): Scale {
    let [force, moment, movement] = [0, 0, 0];
    for (const element of elements) {
        const state = stateOf(solution, element.id);
        for (const into of [0, element.length / 2, element.length]) {
            const { N, V, M } = forcesAt(state, into);
            force = Math.max(force, Math.abs(N), Math.abs(V));
            moment = Math.max(moment, Math.abs(M));
            movement = Math.max(movement, Math.abs(shapeAt(element, state, into).v));
        }
    }
    for (const value of solution.links) force = Math.max(force, Math.abs(value));
    return { force: force * rounding, moment: moment * rounding, movement: movement * rounding };
}

/** On one strand. */
export function effectsAt({ elements }: StrandMesh, places: readonly Place[], solutions: readonly UnitSolution[], scales: readonly Scale[]): Effects {
    const cases = solutions.length;
    const size = places.length * cases;
    const effects = { cases, places, N: new Float64Array(size), V: new Float64Array(size), M: new Float64Array(size) };
    solutions.forEach((solution, c) => {
        const { force, moment } = scales[c]!;
        if (force === 0 && moment === 0) return;
        let [element, state] = [-1, stateOf(solution, 0)];
        places.forEach((place, s) => {
            if (place.element !== element) state = stateOf(solution, elements[element = place.element]!.id);
            const { N, V, M } = forcesAt(state, place.into);
            const at = s * cases + c;
            if (Math.abs(N) > force) effects.N[at] = N;
            if (Math.abs(V) > force) effects.V[at] = V;
            if (Math.abs(M) > moment) effects.M[at] = M;
        });
    });
    return effects;
}

/** All strands together. */
export function sumOf(all: readonly Effects[]): Effects {
    const [first, ...others] = all as [Effects, ...Effects[]];
    if (others.length === 0) return first;
    const sum = { ...first, N: first.N.slice(), V: first.V.slice(), M: first.M.slice() };
    for (const other of others) for (const key of ['N', 'V', 'M'] as const) other[key].forEach((value, i) => { sum[key][i]! += value; });
    return sum;
}

/** The element that a station lies on, the earlier one at a node. */
export function placeAt({ places }: PieceMesh, x: number): Place {
    let [low, high] = [0, places.length - 2];
    while (low < high) {
        const middle = (low + high + 1) >> 1;
        if (places[middle]! < x) low = middle; else high = middle - 1;
    }
    const into = Math.min(Math.max(0, x - places[low]!), places[low + 1]! - places[low]!);
    return { element: low, into, x };
}
