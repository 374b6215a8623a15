/** Stations of a member and the candidate states there. */
import type { ActionState, Combination, DiagramPoint, Station, UnitCase } from './actions.js';
import type { Combine, Rule } from './combinations.js';
import type { Effects, Place } from './effects.js';
import { isSet } from './durations.js';
import { placeIndex, type PieceMesh, type StrandMesh } from './mesh.js';
import { combined, corners, extremes, placementKey, roomFor } from './placement.js';

/** Parts an element is looked at in: even, so that its middle is a station; fewer of short ones, as between bolts. Peaks are found beside. */
function partsOf(share: number, bolted: boolean): number {
    return Math.min(10, 2 * Math.ceil((bolted ? 12.5 : 50) * share));
}

/** Both ends of every element and places between. */
export function gridOf({ places, piece: { bolts } }: PieceMesh): Place[] {
    return places.slice(0, -1).flatMap((x, element) => {
        const end = places[element + 1]!;
        const parts = partsOf((end - x) / places.at(-1)!, bolts.length > 0);
        return Array.from({ length: parts + 1 }, (_, i): Place => {
            const into = ((end - x) * i) / parts;
            return { element, into, x: i < parts ? x + into : end };
        });
    });
}

/** Where nothing jumps at a place its left side speaks for both. */
export function withoutTwins(grid: readonly Place[], jumps: (place: number) => boolean): Place[] {
    return grid.filter(({ element, into }) => into > 0 || element === 0 || jumps(element));
}

/** Whether a section, a force, a support or a bolt makes a diagram jump at a place; `forced` are those with point loads. */
export function jumpsOf({ places, strands, supportPlaces, bearerPlaces, levelPlaces, piece: { bolts } }: PieceMesh, forced: readonly number[]): (place: number) => boolean {
    const parted = strands.flatMap(({ at }) => at.flatMap((nodes, place) => (nodes.length > 1 ? [place] : [])));
    const held = new Set([...supportPlaces, ...bearerPlaces, ...levelPlaces, ...forced, ...parted, ...bolts.map(({ x }) => placeIndex(places, x))]);
    return (place) => held.has(place) || strands.some(({ elements }) => elements[place - 1]?.segment !== elements[place]?.segment);
}

/** Places between grid places where V passes zero in a state that is extreme in M beside them: the peak of its moment. */
export function peaksOf(effects: Effects, steady: Steady, rules: readonly Rule[]): Place[] {
    const { places, cases, M, V } = effects;
    const peaks: Place[] = [];
    for (const rule of rules) {
        const room = roomFor(rule);
        const search = (s: number, present: Uint8Array): void => {
            const [a, b] = [places[s], places[s + 1]];
            if (!a || !b || a.element !== b.element) return;
            const left = combined(rule, present, steady('V', rule, s), V, s * cases);
            const right = combined(rule, present, steady('V', rule, s + 1), V, (s + 1) * cases);
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

/** What is always there at a place by a rule: permanent loads by its factor, tightening and lift by 1. */
export type Steady = (of: 'N' | 'V' | 'M', rule: Rule, s: number) => number;

export function steadyOf(effects: Effects, cases: readonly UnitCase[]): Steady {
    const sums = (ids: readonly number[]) => {
        const sum = (values: Float64Array): Float64Array => Float64Array.from(effects.places, (_, s) =>
            ids.reduce((total, id) => total + values[s * effects.cases + id]!, 0));
        return { N: sum(effects.N), V: sum(effects.V), M: sum(effects.M) };
    };
    const loads = sums(cases.flatMap((unit) => (unit.permanent && !isSet(unit) ? [unit.id] : [])));
    const set = sums(cases.flatMap((unit) => (isSet(unit) ? [unit.id] : [])));
    return (of, rule, s) => rule.permanent * loads[of][s]! + set[of][s]!;
}

/** Effects of one stiffness with how they combine. */
export interface Loaded {
    readonly effects: Effects;
    readonly steady: Steady;
    readonly combine: Combine;
}

/**
 * At each place, for each rule and stiffness: the states of greatest and least V, and all corners of what N and M can be
 * together (the greatest and least of both are among them). `complete`: and those of every other place too, so that one
 * combination can be followed along the member.
 */
export function stationsOf({ strand, elements }: StrandMesh, loaded: readonly Loaded[], rules: readonly Rule[], complete = false): Station[] {
    const alike = new Map<Float64Array, Rule[]>();
    for (const rule of rules) alike.set(rule.factors, [...alike.get(rule.factors) ?? [], rule]);
    const known = loaded.flatMap((one) => [...alike.values()].map((group) => ({
        ...one, group, first: group[0]!, axial: one.effects.N.some((value) => value !== 0),
        placed: placements((present) => group.map((rule) => one.combine(rule, present))), shear: roomFor(group[0]!), bending: roomFor(group[0]!)
    })));
    const placedAt = loaded[0]!.effects.places.map((_, s) => known.map(({ effects: { N, V, M, cases }, first, axial, placed, shear, bending }) => {
        const offset = s * cases;
        extremes(first, V, offset, shear);
        extremes(first, M, offset, bending);
        const bent = axial ? corners(first, N, M, offset) : [bending.most, bending.least];
        return [...new Set([...bent, shear.most, shear.least].map(placed.of))];
    }));
    return loaded[0]!.effects.places.map(({ element, x }, s) => {
        const states: ActionState[] = [];
        known.forEach(({ effects: { N, V, M, cases }, steady, group, first, placed }, k) => {
            const offset = s * cases;
            for (const { present, combinations } of complete ? placed.all : placedAt[s]![k]!) {
                const [n, v, m] = [combined(first, present, 0, N, offset), combined(first, present, 0, V, offset), combined(first, present, 0, M, offset)];
                group.forEach((rule, i) => states.push({
                    combination: combinations[i]!, N: steady('N', rule, s) + n, V: steady('V', rule, s) + v, M: steady('M', rule, s) + m
                }));
            }
        });
        const leaf = strand.leaf === undefined ? {} : { leaf: strand.leaf };
        return { x, segment: elements[element]!.segment, states: unique(states), ...leaf };
    });
}

interface Placed { readonly present: Uint8Array; readonly combinations: readonly Combination[] }

/** Neighbours are mostly placed alike: the last few placements are looked at first. */
function placements(combine: (present: Uint8Array) => readonly Combination[]): { readonly of: (present: Uint8Array) => Placed; readonly all: readonly Placed[] } {
    const all: Placed[] = [];
    const known = new Map<number | string, Placed>();
    const recent: Placed[] = [];
    const of = (present: Uint8Array): Placed => {
        const last = recent.find((one) => same(one.present, present));
        if (last) return last;
        const key = placementKey(present);
        let placed = known.get(key);
        if (!placed) {
            known.set(key, placed = { present: present.slice(), combinations: combine(present) });
            all.push(placed);
        }
        recent.unshift(placed);
        recent.length = Math.min(recent.length, 4);
        return placed;
    };
    return { of, all };
}

function same(a: Uint8Array, b: Uint8Array): boolean {
    for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
    return true;
}

/** One state a combination: rules that come to the same loads come to the same combination. */
function unique(states: readonly ActionState[]): ActionState[] {
    return [...new Map(states.map((state) => [state.combination, state])).values()];
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
