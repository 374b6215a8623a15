/** What each bolt of a member of leaves carries in each plane. */
import type { BoltActions, Combination } from './actions.js';
import type { Rule } from './combinations.js';
import { addCorners, combined, placementsFor, rowOf } from './placement.js';
import { cleaned, shortestOf, steadyForce, type ReactionContext } from './reactions.js';

/** On one stiffness, by unit case. */
interface UnitForce { readonly along: Float64Array; readonly across: Float64Array; readonly combine: (rule: Rule, present: Uint8Array) => Combination }

/** Every combination that may be the worst of any bolt in any plane, in all of them: rows of bolts are looked at together. */
export function boltActions({ mesh, cases, ids, loaded, rules }: BoltContext, piece: number): BoltActions[] {
    const bolts = mesh.bolts.filter((link) => link.piece === piece).map((link) => ({
        link,
        forces: loaded.map(({ solutions, scales, combine }): UnitForce => {
            const of = (index: number): Float64Array => cleaned(solutions.ofCases.map(({ links }) => links[index]!), scales);
            return { along: of(link.along), across: of(link.across), combine };
        })
    }));
    const worst = loaded.map((_, set) => {
        const combinations = new Set<Combination>();
        for (const { forces } of bolts) for (const one of worstOf(forces[set]!, cases, rules)) combinations.add(one);
        return [...combinations].map((combination) => ({ combination, factors: Float64Array.from(ids, (id) => combination.factors[id]!) }));
    });
    return bolts.map(({ link: { bolt, plane }, forces }): BoltActions => ({
        row: bolt.row, place: bolt.place, x: bolt.x, height: bolt.height, plane,
        states: worst.flatMap((combinations, set) => combinations.map(({ combination, factors }) =>
            ({ combination, along: dot(factors, forces[set]!.along), across: dot(factors, forces[set]!.across) })))
    }));
}

export type BoltContext = ReactionContext & { readonly ids: readonly number[] };

interface Candidate { readonly along: number; readonly force: number; readonly leaning: number; readonly shortness: number; readonly combination: () => Combination }

/**
 * What is no worse than another is let go: it lasts no longer, is less along the grain (where rows are weak), and asks
 * less of the timber. That is the force over an embedment strength in proportion to 1 / (k90 sin² + cos²), EN 1995-1-1
 * (8.31), with k90 from 1 to 2 (8.33): `force` is at the one end of that, `leaning`, force × (1 + sin²), at the other.
 */
function covers(a: Candidate, b: Candidate): boolean {
    return a.shortness <= b.shortness && a.along >= b.along && a.force >= b.force && a.leaning >= b.leaning;
}

function worstOf({ along, across, combine }: UnitForce, cases: ReactionContext['cases'], rules: readonly Rule[]): Combination[] {
    let worst: Candidate[] = [];
    for (const rule of rules) {
        const steady = [steadyForce(cases, along, rule), steadyForce(cases, across, rule)] as const;
        const placements = placementsFor(rule);
        addCorners(placements, rule, along, across, 0);
        for (let row = 0; row < placements.count; row++) {
            const x = Math.abs(combined(rule, placements.rows, steady[0], along, 0, row * placements.size));
            const y = Math.abs(combined(rule, placements.rows, steady[1], across, 0, row * placements.size));
            const force = Math.hypot(x, y);
            const candidate: Candidate = { along: x, force, leaning: force === 0 ? 0 : force + y * y / force, shortness: shortestOf(rule, placements.rows, cases, row * placements.size), combination: () => combine(rule, rowOf(placements, row)) };
            if (worst.some((one) => covers(one, candidate))) continue;
            worst = worst.filter((one) => !covers(candidate, one));
            worst.push(candidate);
        }
    }
    return worst.map(({ combination }) => combination());
}

function dot(a: Float64Array, b: Float64Array): number {
    let sum = 0;
    for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
    return sum;
}
