/**
 * The stiffnesses that a structure is solved with where its parts give way or creep differently.
 *
 * - `instant`: mean E and G, K_ser (EN 1995-1-1 2.2.3(3));
 * - `final`: E/(1 + kdef), K_ser/(1 + 2 kdef) (2.3.2.2(1) and (3), with ψ2 = 1: all lasts);
 * - `ultimate`: K_u = 2/3 K_ser (2.2.2(2)), and `ultimate final` with it what creep leaves (2.3.2.2(2)).
 * A member that is joined by neither bolts nor hangers shares nothing by stiffness that creep could shift: one solution does.
 */
import type { HangerElasticity } from './elastic.js';

export type StiffnessSet = 'instant' | 'final' | 'ultimate' | 'ultimate final';

export function creeps(set: StiffnessSet): boolean {
    return set === 'final' || set === 'ultimate final';
}

/** What E and G are divided by. */
export function softening(set: StiffnessSet, kdef: number): number {
    return creeps(set) ? 1 + kdef : 1;
}

/** Of a bolt between two leaves of one timber, N/mm: kdef of the joint is twice the timber's, EN 1995-1-1 2.3.2.2(3). */
export function boltStiffness(set: StiffnessSet, Kser: number, kdef: number): number {
    const strength = set === 'ultimate' || set === 'ultimate final';
    return (strength ? (2 / 3) * Kser : Kser) / softening(set, 2 * kdef);
}

export function hangerStiffness(set: StiffnessSet, { initial, final }: HangerElasticity): number {
    return creeps(set) ? final : initial;
}
