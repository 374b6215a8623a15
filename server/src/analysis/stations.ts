/** Stations of a member and the candidate states there. */
import type { ActionState, Combination, DiagramPoint, Range, Station, UnitCase } from './actions.js';
import type { Combine, Rule } from './combinations.js';
import { addCandidate, appendCandidate, noCandidates, type Candidates } from './candidates.js';
import type { Effects, Place } from './effects.js';
import { isSet, shortness } from './durations.js';
import { placeIndex, type PieceMesh, type StrandMesh } from './mesh.js';
import { addCorners, addExtremes, combined, extremes, placementsFor, roomFor, rowOf, type Placements } from './placement.js';

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
        for (let s = 0; s < places.length; s++) {
            const { most, least } = extremes(rule, M, s * cases, room);
            for (let before = Math.max(0, s - 1); before <= s && before + 1 < places.length; before++) {
                const a = places[before]!;
                const b = places[before + 1]!;
                if (a.element !== b.element) continue;
                for (let which = 0; which < 2; which++) {
                    const present = which === 0 ? most : least;
                    const left = combined(rule, present, steadyShear(steady, rule, before), V, before * cases);
                    const right = combined(rule, present, steadyShear(steady, rule, before + 1), V, (before + 1) * cases);
                    if (left * right >= 0) continue;
                    const into = a.into + ((b.into - a.into) * left) / (left - right);
                    peaks.push({ element: a.element, into, x: a.x - a.into + into });
                }
            }
        }
    }
    return peaks;
}

function steadyShear({ loads, set }: Steady, { permanent }: Rule, s: number): number {
    return permanent * loads.V[s]! + set.V[s]!;
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

/** What is always there at a place: permanent loads, by a rule's factor, and tightening and lift, by 1. */
export interface Steady { readonly loads: Forces; readonly set: Forces }

interface Forces { readonly N: Float64Array; readonly V: Float64Array; readonly M: Float64Array }

export function steadyOf({ cases: count, places, ...effects }: Effects, cases: readonly UnitCase[]): Steady {
    const sums = (ids: readonly number[]): Forces => {
        const sum = (values: Float64Array): Float64Array => {
            const total = new Float64Array(places.length);
            for (const id of ids) for (let s = 0; s < total.length; s++) total[s]! += values[s * count + id]!;
            return total;
        };
        return { N: sum(effects.N), V: sum(effects.V), M: sum(effects.M) };
    };
    return {
        loads: sums(cases.flatMap((unit) => (unit.permanent && !isSet(unit) ? [unit.id] : []))),
        set: sums(cases.flatMap((unit) => (isSet(unit) ? [unit.id] : [])))
    };
}

/** Effects of one stiffness with how they combine. */
export interface Loaded {
    readonly effects: Effects;
    readonly steady: Steady;
    readonly combine: Combine;
}

/** Rules that are placed alike, on one stiffness. */
interface Source {
    readonly loaded: Loaded;
    readonly rules: readonly Rule[];
    /** Number of the first rule among those of all sources. */
    readonly number: number;
    readonly placements: Placements;
    /** Of each variable case. */
    readonly shortness: Uint8Array;
    readonly axial: boolean;
}

export interface Envelopes { readonly N: readonly DiagramPoint[]; readonly V: readonly DiagramPoint[]; readonly M: readonly DiagramPoint[] }

export interface Along { readonly stations: readonly Station[]; readonly envelopes: Envelopes }

/**
 * `worst` keeps the states that may be the worst of a check, `every` all that were looked at, `followed` keeps what is that anywhere everywhere, so that
 * one combination can be followed along the member; `none` has the envelopes alone.
 */
export type Keep = 'worst' | 'every' | 'followed' | 'none';

export interface Keeping {
    readonly keep: Keep;
    /** Some check looks at V and M together, as that of steel: else V is the worst by itself. */
    readonly joint: boolean;
}

/** The cases of a member, and which of its group's they are. */
export interface OwnCases { readonly cases: readonly UnitCase[]; readonly ids: readonly number[] }

/**
 * At each place, for each rule and stiffness, are looked at: the states of greatest and least V, and all corners of what
 * N and M can be together (the greatest and least of both are among them).
 */
export function stationsOf({ strand, elements }: StrandMesh, loaded: readonly Loaded[], own: OwnCases, rules: readonly Rule[], { keep, joint }: Keeping): Along {
    const sources = sourcesOf(loaded, own.cases, rules);
    const envelopes = { N: [] as DiagramPoint[], V: [] as DiagramPoint[], M: [] as DiagramPoint[] };
    const lists = joint ? [noCandidates('all')] : [noCandidates('N and M'), noCandidates('V')];
    const leaf = strand.leaf === undefined ? {} : { leaf: strand.leaf };
    const from = new Map<Combination, Loaded>();
    const stations: Station[] = [];
    loaded[0]!.effects.places.forEach(({ element, x }, s) => {
        const { segment } = elements[element]!;
        // The moment of an axial force off the middle of what is left may help one stress: nothing is let go there.
        const eccentric = strand.segments[segment]!.weakened;
        const ranges = lookAt(sources, s, lists, keep === 'none' ? undefined : (axial) => (keep === 'every' || (axial && eccentric) ? appendCandidate : addCandidate));
        for (const of of ['N', 'V', 'M'] as const) envelopes[of].push({ x, ...ranges[of] });
        if (keep !== 'none') stations.push({ x, segment, states: statesOf(sources, lists, from), ...leaf });
    });
    return { stations: keep === 'followed' ? followed(stations, from, own.ids) : stations, envelopes };
}

function sourcesOf(loaded: readonly Loaded[], cases: readonly UnitCase[], rules: readonly Rule[]): Source[] {
    const alike = new Map<Float64Array, Rule[]>();
    for (const rule of rules) {
        const group = alike.get(rule.factors);
        if (group) group.push(rule); else alike.set(rule.factors, [rule]);
    }
    let number = 0;
    return loaded.flatMap((one) => {
        const axial = one.effects.N.some((value) => value !== 0);
        return [...alike.values()].map((group): Source => {
            number += group.length;
            return {
                loaded: one, rules: group, number: number - group.length, axial, placements: placementsFor(group[0]!),
                shortness: Uint8Array.from(group[0]!.variable, (id) => shortness(cases[id]!.duration))
            };
        });
    });
}

function countOf(sources: readonly Source[]): number {
    const last = sources.at(-1)!;
    return last.number + last.rules.length;
}

interface Ranges { readonly N: Range; readonly V: Range; readonly M: Range }

/** Fills the lists with what may be worst at place `s`; tells how far the forces range there. */
function lookAt(sources: readonly Source[], s: number, lists: readonly Candidates[], take?: (axial: boolean) => typeof addCandidate): Ranges {
    let lowN = Infinity;
    let highN = -Infinity;
    let lowV = Infinity;
    let highV = -Infinity;
    let lowM = Infinity;
    let highM = -Infinity;
    const rulesInAll = countOf(sources);
    for (const list of lists) list.count = 0;
    for (const { loaded: { effects: { N, V, M, cases }, steady: { loads, set } }, rules, number, placements, shortness: lasting, axial } of sources) {
        const first = rules[0]!;
        const { factors } = first;
        const offset = s * cases;
        const add = take?.(axial);
        placements.count = 0;
        if (axial) addCorners(placements, first, N, M, offset); else addExtremes(placements, first, M, offset);
        addExtremes(placements, first, V, offset);
        for (let row = 0; row < placements.count; row++) {
            const { rows, size } = placements;
            const at = row * size;
            const n = axial ? combined(first, rows, 0, N, offset, at) : 0;
            const v = combined(first, rows, 0, V, offset, at);
            const m = combined(first, rows, 0, M, offset, at);
            let shortest = 0;
            for (let i = 0; i < size; i++) if (rows[at + i] && lasting[i]! > shortest && factors[i] !== 0) shortest = lasting[i]!;
            for (let r = 0; r < rules.length; r++) {
                const { permanent } = rules[r]!;
                const sumN = permanent * loads.N[s]! + set.N[s]! + n;
                const sumV = permanent * loads.V[s]! + set.V[s]! + v;
                const sumM = permanent * loads.M[s]! + set.M[s]! + m;
                if (sumN < lowN) lowN = sumN;
                if (sumN > highN) highN = sumN;
                if (sumV < lowV) lowV = sumV;
                if (sumV > highV) highV = sumV;
                if (sumM < lowM) lowM = sumM;
                if (sumM > highM) highM = sumM;
                if (add) for (let l = 0; l < lists.length; l++) add(lists[l]!, sumN, sumV, sumM, shortest, row * rulesInAll + number + r);
            }
        }
    }
    return { N: { min: lowN, max: highN }, V: { min: lowV, max: highV }, M: { min: lowM, max: highM } };
}

/** `from` is told on which stiffness each combination was found. */
function statesOf(sources: readonly Source[], lists: readonly Candidates[], from: Map<Combination, Loaded>): ActionState[] {
    const rulesInAll = countOf(sources);
    const states = new Map<Combination, ActionState>();
    for (const { count, N, V, M, tags } of lists) {
        for (let i = 0; i < count; i++) {
            const number = tags[i]! % rulesInAll;
            let k = 0;
            while (number >= sources[k]!.number + sources[k]!.rules.length) k += 1;
            const { loaded, rules, placements, number: first } = sources[k]!;
            const combination = loaded.combine(rules[number - first]!, rowOf(placements, Math.floor(tags[i]! / rulesInAll)));
            from.set(combination, loaded);
            states.set(combination, { combination, N: N[i]!, V: V[i]!, M: M[i]! });
        }
    }
    return [...states.values()];
}

/** Every combination at every station. */
function followed(stations: readonly Station[], from: ReadonlyMap<Combination, Loaded>, ids: readonly number[]): Station[] {
    return stations.map((station, s) => ({
        ...station,
        states: [...from].map(([combination, { effects: { N, V, M, cases } }]) => {
            const sum = (values: Float64Array): number => ids.reduce((total, id, c) => total + combination.factors[id]! * values[s * cases + c]!, 0);
            return { combination, N: sum(N), V: sum(V), M: sum(M) };
        })
    }));
}
