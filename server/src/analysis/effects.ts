/** What each unit case does at each station of a member. */
import type { ElementState } from './element.js';
import type { Element, Mesh, PieceMesh, StrandMesh } from './mesh.js';
import { stateSize, type UnitSolution } from './unit-solutions.js';

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
    return {
        v: state.v + upwards(theta, M, V, down, EI, GAs, x),
        slope: rotation - (V - down * x) / GAs
    };
}

/** Greatest effects anywhere in the group by case: less than a billionth of that is rounding. */
export interface Scale { readonly force: number; readonly moment: number; readonly movement: number }

const rounding = 1e-9;
/** N, N·mm: less is none, as of a lift that has been released again. */
const noForce = 1e-9;

/** Times `Scale`: a member that feels no more than a ten-millionth of a case's greatest effect does without it. */
export const negligible = 1e-7 / rounding;

export function scaleOf({ elements }: Mesh, { states, links }: UnitSolution): Scale {
    let force = 0;
    let moment = 0;
    let movement = 0;
    for (let e = 0; e < elements.length; e++) {
        const { id, length, EI, GAs } = elements[e]!;
        const i = stateSize * id;
        const N = states[i]!;
        const V = states[i + 1]!;
        const M = states[i + 2]!;
        const v = states[i + 3]!;
        const down = states[i + 6]!;
        force = Math.max(force, Math.abs(N), Math.abs(N - states[i + 5]! * length), Math.abs(V), Math.abs(V - down * length));
        moment = Math.max(moment, Math.abs(M));
        movement = Math.max(movement, Math.abs(v));
        for (let x = length / 2; x <= length; x += length / 2) {
            moment = Math.max(moment, Math.abs(M + (V - down * x / 2) * x));
            movement = Math.max(movement, Math.abs(v + upwards(states[i + 4]!, M, V, down, EI, GAs, x)));
        }
    }
    for (let i = 0; i < links.length; i++) force = Math.max(force, Math.abs(links[i]!));
    return { force: Math.max(force * rounding, noForce), moment: Math.max(moment * rounding, noForce), movement: movement * rounding };
}

/** Of a place x on an element above its start. */
export function upwards(theta: number, M: number, V: number, down: number, EI: number, GAs: number, x: number): number {
    const bending = ((M / 2 + (V / 6 - (down * x) / 24) * x) * x * x) / EI;
    return theta * x + bending - ((V - (down * x) / 2) * x) / GAs;
}

/** On one strand. */
export function effectsAt({ elements }: StrandMesh, places: readonly Place[], solutions: readonly UnitSolution[], scales: readonly Scale[]): Effects {
    const cases = solutions.length;
    const size = places.length * cases;
    const effects = { cases, places, N: new Float64Array(size), V: new Float64Array(size), M: new Float64Array(size) };
    solutions.forEach(({ states }, c) => {
        const { force, moment } = scales[c]!;
        if (force === 0 && moment === 0) return;
        for (let s = 0; s < places.length; s++) {
            const { element, into } = places[s]!;
            const i = stateSize * elements[element]!.id;
            const V0 = states[i + 1]!;
            const down = states[i + 6]!;
            const N = states[i]! - states[i + 5]! * into;
            const V = V0 - down * into;
            const M = states[i + 2]! + (V0 - down * into / 2) * into;
            const at = s * cases + c;
            if (Math.abs(N) > force) effects.N[at] = N;
            if (Math.abs(V) > force) effects.V[at] = V;
            if (Math.abs(M) > moment) effects.M[at] = M;
        }
    });
    return effects;
}

/** All strands together. */
export function sumOf(all: readonly Effects[]): Effects {
    const [first, ...others] = all as [Effects, ...Effects[]];
    if (others.length === 0) return first;
    const sum = { ...first, N: first.N.slice(), V: first.V.slice(), M: first.M.slice() };
    for (const other of others) {
        for (const key of ['N', 'V', 'M'] as const) {
            const [to, from] = [sum[key], other[key]];
            for (let i = 0; i < to.length; i++) to[i]! += from[i]!;
        }
    }
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
