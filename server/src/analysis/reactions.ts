/** What each support, and each member that bears on this one, passes on. */
import type { Support } from '../../../language/src/model.js';
import type { Parameters } from '../catalog/parameters.js';
import type { Range, SupportActions, UnitCase } from './actions.js';
import { equilibriumRules, type Combine, type Relevant, type Rule } from './combinations.js';
import type { Scale } from './effects.js';
import { carries, isBearing, type Mesh } from './mesh.js';
import { combined, extremes } from './placement.js';
import type { Part } from './unit-cases.js';
import type { UnitSolution, UnitSolutions } from './unit-solutions.js';

/** All that turns unit reactions into design ones. */
export interface ReactionContext {
    readonly mesh: Mesh;
    readonly cases: readonly UnitCase[];
    readonly parts: readonly Part[];
    readonly solutions: UnitSolutions;
    readonly scales: readonly Scale[];
    readonly rules: readonly Rule[];
    readonly combine: Combine;
    readonly relevant: Relevant;
    readonly parameters: Parameters;
}

/** Upward force on a member at a node, from its support there: what it needs itself and what rests on it there. */
function upwardAt(mesh: Mesh, solution: UnitSolution, piece: number, node: number): number {
    const { bearerNodes, piece: { bearers } } = mesh.pieces[piece]!;
    let sum = solution.holds[piece]![node]!.up;
    bearers.forEach((bearer, i) => {
        if (bearerNodes[i] === node) sum += upwardAt(mesh, solution, bearer.piece, nodeOf(mesh, bearer.piece, bearer.support));
    });
    return sum;
}

function nodeOf(mesh: Mesh, piece: number, support: Support): number {
    const { piece: { member }, supportNodes } = mesh.pieces[piece]!;
    return supportNodes[member.supports.indexOf(support)]!;
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

/** Members that bear on this one. */
export function crossingActions(context: ReactionContext, piece: number): SupportActions[] {
    return context.mesh.pieces[piece]!.piece.bearers.map((bearer) => {
        const { member } = context.mesh.pieces[bearer.piece]!.piece;
        return { ...reaction(context, bearer.piece, bearer.support, member.name), at: bearer.at, kind: 'member' };
    });
}

/** Supports at the same node that carry vertically, the ones with a bearing first. */
function companions(mesh: Mesh, piece: number, support: Support): Support[] {
    const { supportNodes, piece: { member } } = mesh.pieces[piece]!;
    const node = nodeOf(mesh, piece, support);
    return member.supports
        .filter((other, i) => supportNodes[i] === node && carries(member, other))
        .sort((a, b) => Number(isBearing(b)) - Number(isBearing(a)));
}

function reaction(context: ReactionContext, piece: number, support: Support, name: string): SupportActions {
    const { mesh, cases, parts, solutions, scales, rules, combine, relevant, parameters } = context;
    const { member } = mesh.pieces[piece]!.piece;
    const node = nodeOf(mesh, piece, support);
    const share = carries(member, support) ? shareOf(companions(mesh, piece, support), support) : 0;
    const up = (solution: UnitSolution): number => share * upwardAt(mesh, solution, piece, node);
    const right = (solution: UnitSolution): number => solution.holds[piece]![node]!.right;
    const vertical = cleaned(solutions.ofCases.map(up), scales);
    const horizontal = cleaned(solutions.ofCases.map(right), scales);
    const states = reactionStates(cases, vertical, rules, combine);
    return {
        support: name,
        kind: support.kind,
        at: support.at.value,
        bearing: support.bearing?.value,
        tied: support.tied,
        source: support.source,
        design: rangeOf(states),
        states,
        equilibriumMin: equilibriumMin(cases, vertical, parts, Float64Array.from(solutions.ofParts, up), equilibriumRules(cases, relevant, parameters), parameters),
        ...(horizontal.some((force) => force !== 0) ? { horizontal: rangeOf(reactionStates(cases, horizontal, rules, combine)) } : {})
    };
}

function cleaned(forces: readonly number[], scales: readonly Scale[]): Float64Array {
    return Float64Array.from(forces, (force, c) => (Math.abs(force) > scales[c]!.force ? force : 0));
}

function reactionStates(cases: readonly UnitCase[], units: Float64Array, rules: readonly Rule[], combine: Combine): SupportActions['states'] {
    const permanent = cases.reduce((sum, { id, permanent: lasts }) => sum + (lasts ? units[id]! : 0), 0);
    const states = new Map<SupportActions['states'][number]['combination'], number>();
    for (const rule of rules) {
        const { most, least } = extremes(rule, units, 0);
        for (const present of [most, least]) states.set(combine(rule, present), combined(rule, present, permanent, units, 0));
    }
    return [...states].map(([combination, R]) => ({ combination, R }));
}

function rangeOf(states: SupportActions['states']): Range {
    return { min: Math.min(...states.map(({ R }) => R)), max: Math.max(...states.map(({ R }) => R)) };
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
        permanent += R * (R > 0 ? parameters.gammaGequilibriumFavourable : parameters.gammaGequilibrium);
    });
    return Math.min(...rules.map((rule) => combined(rule, extremes(rule, units, 0).least, permanent, units, 0)));
}
