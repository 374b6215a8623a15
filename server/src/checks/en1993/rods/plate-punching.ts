import { kN, plain, quotient, step } from '../../steps.js';
import { unsound, type Problem, type Verdict } from '../../verdict.js';
import { punchingResistance, type Bolt } from '../bolts/bolt.js';

export interface PunchingInput {
    readonly rod: Bolt;
    readonly plate: { readonly t: number; readonly fu: number };
    /** Of one rod, N, design value. */
    readonly force: number;
    readonly gammaM2: number;
}

/** Nut through plate: EN 1993-1-8 Table 3.4, B_p,Rd, with the width across flats for d_m, on the safe side. */
export function platePunching({ rod, plate, force, gammaM2 }: PunchingInput): Verdict | Problem {
    const bad = unsound('positive', { 'the width of the nut': rod.across, 'the thickness of the plate': plate.t, 'the strength of the plate': plate.fu, 'γ_M2': gammaM2 })
        ?? unsound('finite', { 'the force of a rod': force });
    if (bad) {
        return bad;
    }
    const demand = Math.max(0, force);
    const capacity = punchingResistance(rod, plate, gammaM2);
    const utilisation = quotient(demand, capacity);
    const clause = 'EN 1993-1-8 Table 3.4';
    return {
        utilisation, demand: kN(demand), capacity: kN(capacity), clause,
        explain: () => [
            step('B_{p,Rd}', '\\frac{0.6\\,\\pi\\,d_m\\,t\\,f_u}{\\gamma_{M2}}', [
                ['d_m', rod.across, 'mm', 'nut across flats'], ['t', plate.t, 'mm'], ['f_u', plate.fu, 'MPa'], ['\\gamma_{M2}', gammaM2, '']
            ], { value: capacity, unit: 'N' }, { clause }),
            step('\\eta', '\\frac{F_{t,Ed}}{B_{p,Rd}}', [['F_{t,Ed}', demand, 'N', 'one rod'], ['B_{p,Rd}', capacity, 'N']], plain(utilisation), { clause })
        ]
    };
}
