/** What each bolt of a member of leaves carries in each plane. */
import type { BoltActions } from './actions.js';
import type { Rule } from './combinations.js';
import { combined, corners, extremes } from './placement.js';
import { cleaned, steadyForce, type ReactionContext } from './reactions.js';

type State = BoltActions['states'][number];

export function boltActions({ mesh, cases, loaded, rules }: ReactionContext, piece: number): BoltActions[] {
    return mesh.bolts.filter((link) => link.piece === piece).map(({ bolt, plane, along, across }): BoltActions => {
        const states = new Map<State['combination'], State>();
        for (const { solutions, scales, combine } of loaded) {
            const units = (link: number): Float64Array => cleaned(solutions.ofCases.map(({ links }) => links[link]!), scales);
            const [x, y] = [units(along), units(across)];
            for (const rule of rules) {
                const steady = [steadyForce(cases, x, rule), steadyForce(cases, y, rule)] as const;
                const stateOf = (present: Uint8Array): State => ({
                    combination: combine(rule, present),
                    along: combined(rule, present, steady[0], x, 0),
                    across: combined(rule, present, steady[1], y, 0)
                });
                for (const state of worstOf(rule, x, y, stateOf)) states.set(state.combination, state);
            }
        }
        const { row, place, height } = bolt;
        return { row, place, x: bolt.x, height, plane, states: [...states.values()] };
    });
}

/** The greatest resultant, and the greatest and least force along and across the grain. */
function worstOf(rule: Rule, x: Float64Array, y: Float64Array, stateOf: (present: Uint8Array) => State): State[] {
    const [along, across] = [extremes(rule, x, 0), extremes(rule, y, 0)];
    const all = corners(rule, x, y, 0).map(stateOf);
    const resultant = ({ along: a, across: b }: State): number => Math.hypot(a, b);
    const greatest = all.reduce((most, state) => (resultant(state) > resultant(most) ? state : most));
    return [greatest, ...[along.most, along.least, across.most, across.least].map(stateOf)];
}
