/** Stations of a member and the candidate states there. */
import type { ActionState, Combination, DiagramPoint, Station, UnitCase } from './actions.js';
import type { Combine, Rule } from './combinations.js';
import type { Effects, Place } from './effects.js';
import type { PieceMesh } from './mesh.js';
import { combined, corners, extremes, placementKey, roomFor } from './placement.js';

/** Parts an element is looked at in: even, so that its middle is a station. */
const partsOfElement = 10;

/** Both ends of every element and nine places between. */
export function gridOf({ elements, nodes }: PieceMesh): Place[] {
    return elements.flatMap(({ length, x, node }, element) => Array.from({ length: partsOfElement + 1 }, (_, i): Place => {
        const into = (length * i) / partsOfElement;
        return { element, into, x: i < partsOfElement ? x + into : nodes[node + 1]!.x };
    }));
}

/** Where nothing jumps at a node its left side speaks for both. */
export function withoutTwins({ elements }: PieceMesh, grid: readonly Place[], jumps: (node: number) => boolean): Place[] {
    return grid.filter(({ element, into }) => into > 0 || element === 0 || jumps(elements[element]!.node));
}

/** Whether a section, a force or a support makes a diagram jump at a node; `forced` are those with point loads. */
export function jumpsOf({ elements, supportNodes, bearerNodes }: PieceMesh, forced: readonly number[]): (node: number) => boolean {
    const held = new Set([...supportNodes, ...bearerNodes, ...forced]);
    return (node) => held.has(node) || elements[node - 1]?.segment !== elements[node]?.segment;
}

/** Places between grid places where V passes zero in a state that is extreme in M beside them: the peak of its moment. */
export function peaksOf(effects: Effects, permanent: Effects, rules: readonly Rule[]): Place[] {
    const { places, cases, M, V } = effects;
    const peaks: Place[] = [];
    for (const rule of rules) {
        const room = roomFor(rule);
        const search = (s: number, present: Uint8Array): void => {
            const [a, b] = [places[s], places[s + 1]];
            if (!a || !b || a.element !== b.element) return;
            const left = combined(rule, present, permanent.V[s]!, V, s * cases);
            const right = combined(rule, present, permanent.V[s + 1]!, V, (s + 1) * cases);
            if (left * right >= 0) return;
            const into = a.into + ((b.into - a.into) * left) / (left - right);
            peaks.push({ element: a.element, into, x: a.x - a.into + into });
        };
        for (let s = 0; s < places.length; s++) {
            const { most, least } = extremes(rule, M, s * cases, room);
            for (const present of [most, least]) {
                search(s - 1, present);
                search(s, present);
            }
        }
    }
    return peaks;
}

/** In order along the member: the whole grid, and the peaks that are not within `gap` of it or of each other. */
export function merge(grid: readonly Place[], peaks: readonly Place[], gap: number): Place[] {
    const fixed = new Set(grid);
    const all = [...grid, ...peaks].sort((a, b) => a.element - b.element || a.into - b.into);
    const kept: Place[] = [];
    for (const one of all) {
        const last = kept.at(-1);
        const close = last?.element === one.element && one.into - last.into < gap;
        if (close && !fixed.has(one)) continue;
        if (close && !fixed.has(last)) kept.pop();
        kept.push(one);
    }
    return kept;
}

/** Sums over the permanent cases, as effects of one case. */
export function permanentSum(effects: Effects, cases: readonly UnitCase[]): Effects {
    const ids = cases.flatMap((unit) => (unit.permanent ? [unit.id] : []));
    const sum = (values: Float64Array): Float64Array => Float64Array.from(effects.places, (_, s) =>
        ids.reduce((total, id) => total + values[s * effects.cases + id]!, 0));
    return { cases: 1, places: effects.places, N: sum(effects.N), V: sum(effects.V), M: sum(effects.M) };
}

/**
 * At each place and for each rule: the states of greatest and least V, and all corners of what N and M can be together
 * (the greatest and least of both are among them).
 */
export function stationsOf(mesh: PieceMesh, effects: Effects, permanent: Effects, rules: readonly Rule[], combine: Combine): Station[] {
    const { N, V, M, cases, places } = effects;
    const axial = N.some((value) => value !== 0);
    const known = rules.map((rule) => ({ rule, combinations: new Map<number | string, Combination>(), shear: roomFor(rule), bending: roomFor(rule) }));
    return places.map(({ element, x }, s) => {
        const offset = s * cases;
        const states = new Map<Combination, ActionState>();
        for (const { rule, combinations, shear, bending } of known) {
            extremes(rule, V, offset, shear);
            extremes(rule, M, offset, bending);
            const bent = axial ? corners(rule, N, M, offset) : [bending.most, bending.least];
            for (const present of [...bent, shear.most, shear.least]) {
                const key = placementKey(present);
                let combination = combinations.get(key);
                if (!combination) combinations.set(key, combination = combine(rule, present));
                if (states.has(combination)) continue;
                states.set(combination, {
                    combination,
                    N: combined(rule, present, permanent.N[s]!, N, offset),
                    V: combined(rule, present, permanent.V[s]!, V, offset),
                    M: combined(rule, present, permanent.M[s]!, M, offset)
                });
            }
        }
        return { x, segment: mesh.elements[element]!.segment, states: [...states.values()] };
    });
}

export function envelope(stations: readonly Station[], of: (state: ActionState) => number): DiagramPoint[] {
    return stations.map(({ x, states }) => {
        let [min, max] = [Infinity, -Infinity];
        for (const state of states) {
            min = Math.min(min, of(state));
            max = Math.max(max, of(state));
        }
        return { x, min, max };
    });
}
