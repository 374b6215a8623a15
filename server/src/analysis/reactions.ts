/** What each support, and each member that bears on this one, passes on. */
import type { Support } from '../../../language/src/model.js';
import type { Parameters } from '../catalog/parameters.js';
import type { Range, SupportActions, UnitCase } from './actions.js';
import { addCandidate, appendCandidate, noCandidates } from './candidates.js';
import { equilibriumRules, type Combine, type Rule } from './combinations.js';
import type { Scale } from './effects.js';
import { isSet, shortness } from './durations.js';
import { carries, isBearing } from './holding.js';
import type { UnitSolutions } from './history.js';
import type { Mesh } from './mesh.js';
import type { Standing } from './structure.js';
import { combined, extremes } from './placement.js';
import type { Part } from './unit-cases.js';

/** All that turns unit reactions into design ones; by stiffness where there are more. */
export interface ReactionContext {
    readonly mesh: Mesh;
    readonly cases: readonly UnitCase[];
    readonly parts: readonly Part[];
    readonly loaded: readonly { readonly solutions: UnitSolutions; readonly scales: readonly Scale[]; readonly combine: Combine }[];
    readonly rules: readonly Rule[];
    readonly parameters: Parameters;
    readonly kept: 'worst' | 'every';
}

/** Nodes whose upward holds sum to the force from a member's support: its own there, and those of what rests on it there. */
function nodesUpTo(mesh: Mesh, piece: number, place: number): number[] {
    const { bearerPlaces, piece: { bearers } } = mesh.pieces[piece]!;
    const upper = bearers.flatMap((bearer, i) => (bearerPlaces[i] === place ? nodesUpTo(mesh, bearer.piece, placeOf(mesh, bearer.piece, bearer.support)) : []));
    return [...ownNodes(mesh, piece, place), ...upper];
}

function ownNodes(mesh: Mesh, piece: number, place: number): number[] {
    return mesh.pieces[piece]!.strands.flatMap(({ at, nodes }) => at[place]!.map((node) => nodes[node]!.id));
}

/** `component` 0 is to the right, 1 upwards. */
function sumAt(nodes: readonly number[], holds: Float64Array, component: 0 | 1): number {
    let sum = 0;
    for (const node of nodes) sum += holds[2 * node + component]!;
    return sum;
}

function placeOf(mesh: Mesh, piece: number, support: Support): number {
    const { piece: { member }, supportPlaces } = mesh.pieces[piece]!;
    return supportPlaces[member.supports.indexOf(support)]!;
}

/**
 * A support's share of the force at its node. `pinned` or `fixed` where another support stands takes none of the
 * vertical force; springs at one place share it by stiffness, and nothing where a firm support stands with them.
 */
function shareOf(supports: readonly Support[], support: Support): number {
    const firm = supports.find(({ kind }) => kind === 'wall' || kind === 'member');
    if (firm) return support === firm ? 1 : 0;
    const springs = supports.filter(({ kind }) => kind === 'spring');
    if (springs.length === 0) return support === supports[0] ? 1 : 0;
    const total = springs.reduce((sum, { stiffness }) => sum + (stiffness?.value ?? 0), 0);
    return support.kind === 'spring' ? (support.stiffness?.value ?? 0) / total : 0;
}

export function supportActions(context: ReactionContext, piece: number): SupportActions[] {
    const { member } = context.mesh.pieces[piece]!.piece;
    return member.supports.flatMap((support) => {
        const together = companions(context.mesh, piece, support);
        if (!isBearing(support) && together[0] !== support) return [];
        return [reaction(context, piece, support, support.on)];
    });
}

/** Members that bear on this one in a stage. */
export function crossingActions(context: ReactionContext, piece: number, { pieces }: Standing): SupportActions[] {
    return context.mesh.pieces[piece]!.piece.bearers.filter((bearer) => pieces[bearer.piece]).map((bearer) => {
        const { member } = context.mesh.pieces[bearer.piece]!.piece;
        return { ...reaction(context, bearer.piece, bearer.support, member.name), at: bearer.at, kind: 'member' };
    });
}

/** Supports at the same place that carry vertically, the ones with a bearing first. */
function companions(mesh: Mesh, piece: number, support: Support): Support[] {
    const { supportPlaces, piece: { member } } = mesh.pieces[piece]!;
    const place = placeOf(mesh, piece, support);
    return member.supports
        .filter((other, i) => supportPlaces[i] === place && carries(member, other))
        .sort((a, b) => Number(isBearing(b)) - Number(isBearing(a)));
}

function reaction(context: ReactionContext, piece: number, support: Support, name: string): SupportActions {
    const { mesh, cases, parts, loaded, rules, parameters, kept } = context;
    const { member } = mesh.pieces[piece]!.piece;
    const place = placeOf(mesh, piece, support);
    const share = carries(member, support) ? shareOf(companions(mesh, piece, support), support) : 0;
    const [lifting, own] = [nodesUpTo(mesh, piece, place), ownNodes(mesh, piece, place)];
    const up = (holds: Float64Array): number => share * sumAt(lifting, holds, 1);
    const right = (holds: Float64Array): number => sumAt(own, holds, 0);
    const unit = (of: (holds: Float64Array) => number): UnitForces[] => loaded.map(({ solutions, scales, combine }) =>
        ({ combine, units: cleaned(solutions.ofCases.map(({ holds }) => of(holds)), scales) }));
    const [vertical, horizontal] = [unit(up), unit(right)];
    const { states, range } = forceStates(cases, vertical, rules, kept);
    const overturning = equilibriumRules(cases, parameters);
    return {
        support: name,
        kind: support.kind,
        at: support.at.value,
        bearing: support.bearing?.value,
        tied: support.tied,
        source: support.source,
        design: range,
        states,
        equilibriumMin: Math.min(...vertical.map(({ units }, i) =>
            equilibriumMin(cases, units, parts, Float64Array.from(loaded[i]!.solutions.holdsOfParts, up), overturning, parameters))),
        ...(horizontal.some(({ units }) => units.some((force) => force !== 0)) ? { horizontal: forceStates(cases, horizontal, rules, 'worst').range } : {})
    };
}

/** What is so little that it is rounding counts as nothing. */
export function cleaned(forces: readonly number[], scales: readonly Scale[]): Float64Array {
    return Float64Array.from(forces, (force, c) => (Math.abs(force) > scales[c]!.force ? force : 0));
}

/** A force by unit case, of one stiffness. */
export interface UnitForces { readonly units: Float64Array; readonly combine: Combine }

export interface ForceStates { readonly states: SupportActions['states']; readonly range: Range }

/** Greatest and least by every rule: how far the force ranges, and of its states those that may be the worst of a check. */
export function forceStates(cases: readonly UnitCase[], forces: readonly UnitForces[], rules: readonly Rule[], kept: 'worst' | 'every'): ForceStates {
    const found = noCandidates('N and M');
    const add = kept === 'every' ? appendCandidate : addCandidate;
    let min = Infinity;
    let max = -Infinity;
    forces.forEach(({ units }, f) => rules.forEach((rule, r) => {
        const steady = steadyForce(cases, units, rule);
        const { most, least } = extremes(rule, units, 0);
        for (const present of [most, least]) {
            const R = combined(rule, present, steady, units, 0);
            min = Math.min(min, R);
            max = Math.max(max, R);
            add(found, 0, 0, R, shortestOf(rule, present, cases), 2 * (f * rules.length + r) + Number(present === least));
        }
    }));
    const states = new Map<SupportActions['states'][number]['combination'], number>();
    for (let i = 0; i < found.count; i++) {
        const number = found.tags[i]! >> 1;
        const { units, combine } = forces[Math.floor(number / rules.length)]!;
        const rule = rules[number % rules.length]!;
        const { most, least } = extremes(rule, units, 0);
        states.set(combine(rule, found.tags[i]! % 2 === 1 ? least : most), found.M[i]!);
    }
    return { states: [...states].map(([combination, R]) => ({ combination, R })), range: { min, max } };
}

/** The duration of what is present, by the row that starts there: that of the shortest. */
export function shortestOf({ variable, factors }: Rule, present: Uint8Array, cases: readonly UnitCase[], row = 0): number {
    let shortest = 0;
    for (let i = 0; i < variable.length; i++) if (present[row + i] && factors[i] !== 0) shortest = Math.max(shortest, shortness(cases[variable[i]!]!.duration));
    return shortest;
}

/** Of permanent loads by the rule's factor, of tightening and lift by 1. */
export function steadyForce(cases: readonly UnitCase[], units: Float64Array, rule: Rule): number {
    return cases.reduce((sum, unit) => sum + (unit.permanent ? units[unit.id]! * (isSet(unit) ? 1 : rule.permanent) : 0), 0);
}

/** Set A takes each part of a permanent load by itself: 0.9 where it holds down, 1.1 where it lifts. */
function equilibriumMin(
    cases: readonly UnitCase[], units: Float64Array, parts: readonly Part[], ofParts: Float64Array,
    rules: readonly Rule[], parameters: Parameters
): number {
    let permanent = 0;
    parts.forEach(({ unit }, i) => {
        if (!cases[unit]!.permanent) return;
        const R = ofParts[i]!;
        if (isSet(cases[unit]!)) permanent += R;
        else permanent += R * (R > 0 ? parameters.gammaGequilibriumFavourable : parameters.gammaGequilibrium);
    });
    return Math.min(...rules.map((rule) => combined(rule, extremes(rule, units, 0).least, permanent, units, 0)));
}
