import { kN, plain, quotient, step } from '../../steps.js';
import { unsound, type Problem, type Verdict } from '../../verdict.js';
import { tensionResistance, type Bolt } from '../bolts/bolt.js';

export interface RodTensionInput {
    /** The rod's thread; A_s is what counts. */
    readonly rod: Bolt;
    readonly rods: number;
    /** Tension of all rods together, N, design value; pulls are positive, a push leaves the rods idle. */
    readonly force: number;
    /** Share of the rod that takes most, 0 to 1; equal shares unless said. */
    readonly greatestShare?: number;
    readonly gammaM2: number;
}

/**
 * Rods of a hanger in tension on the stress area of their thread. EN 1993-1-8 Table 3.4, k2 = 0.9.
 * Nuts of a class no lower than the rod's are taken to hold it (EN ISO 898-2, from memory).
 */
export function rodTension({ rod, rods, force, greatestShare = 1 / rods, gammaM2 }: RodTensionInput): Verdict | Problem {
    const bad = unsound('positive', {
        'the stress area': rod.As, 'the strength of the rod': rod.fub, 'the number of rods': rods, 'the share of a rod': greatestShare, 'γ_M2': gammaM2
    }) ?? unsound('finite', { 'the force of the hanger': force });
    if (bad) {
        return bad;
    }
    const demand = Math.max(0, force) * greatestShare;
    const capacity = tensionResistance(rod, gammaM2);
    const utilisation = quotient(demand, capacity);
    const clause = 'EN 1993-1-8 Table 3.4';
    return {
        utilisation, demand: kN(demand), capacity: kN(capacity), clause,
        explain: () => [
            step('F_{t,Ed}', 's\\,F_{Ed}', [['s', greatestShare, '', `share of one of ${rods} rods`], ['F_{Ed}', Math.max(0, force) / 1e3, 'kN', 'hanger']], kN(demand)),
            step('F_{t,Rd}', '\\frac{0.9\\,f_{ub}\\,A_s}{\\gamma_{M2}}',
                [['f_{ub}', rod.fub, 'MPa'], ['A_s', rod.As, 'mm2', 'stress area of the thread'], ['\\gamma_{M2}', gammaM2, '']],
                { value: capacity, unit: 'N' }, { clause }),
            step('\\eta', '\\frac{F_{t,Ed}}{F_{t,Rd}}', [['F_{t,Ed}', demand / 1e3, 'kN'], ['F_{t,Rd}', capacity / 1e3, 'kN']], plain(utilisation), { clause })
        ]
    };
}
