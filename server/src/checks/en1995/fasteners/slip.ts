import type { Step } from '../../../results.js';
import { step } from '../../steps.js';
import { problem, unsound, type Problem } from '../../verdict.js';

/** Mean density of a timber, kg/m³, or steel. */
export type SlipSide = { readonly rho_mean: number } | 'steel';

export interface SlipModulus {
    /** kg/m³: of the two timbers together. */
    readonly rho_m: number;
    /** Instantaneous, service, N/mm for one bolt and one shear plane. */
    readonly K_ser: number;
    /** Ultimate limit states, N/mm. */
    readonly K_u: number;
    readonly explain: () => readonly Step[];
}

/**
 * Slip modulus of a bolt. EN 1995-1-1 Table 7.1; two densities by (7.1)'s geometric mean; steel on timber
 * twice by 7.1(3); K_u by (2.1). A hole up to 1 mm over the bolt (10.4.3(1)) does not change K: Table 7.1
 * is for bolts with or without clearance and has the clearance added to the slip, see `clearanceSlip`.
 */
export function slipModulus(d: number, side1: SlipSide, side2: SlipSide): SlipModulus | Problem {
    const densities = [side1, side2].flatMap(side => side === 'steel' ? [] : [side.rho_mean]);
    if (densities.length === 0) {
        return problem('both parts are steel: EN 1995-1-1 Table 7.1 needs a timber');
    }
    const wrong = unsound('positive', { 'the bolt diameter': d, 'the density': Math.min(...densities) });
    if (wrong) {
        return wrong;
    }
    const [first, second = first] = densities as [number, number?];
    const rho_m = Math.sqrt(first * second);
    const steel = densities.length === 1;
    const K_ser = (steel ? 2 : 1) * rho_m ** 1.5 * d / 23;
    const K_u = 2 / 3 * K_ser;
    return {
        rho_m, K_ser, K_u,
        explain: () => [
            ...(steel ? [] : [step('\\rho_m', '\\sqrt{\\rho_{m,1}\\,\\rho_{m,2}}',
                [['\\rho_{m,1}', first, 'kg/m³'], ['\\rho_{m,2}', second, 'kg/m³']],
                { value: rho_m, unit: 'kg/m³' }, { clause: 'EN 1995-1-1 (7.1)' })]),
            step('K_{ser}', `${steel ? '2\\,' : ''}\\frac{\\rho_m^{1.5}\\,d}{23}`, [['\\rho_m', rho_m, 'kg/m³'], ['d', d, 'mm']],
                { value: K_ser, unit: 'N/mm' }, {
                    clause: steel ? 'EN 1995-1-1 Table 7.1, 7.1(3)' : 'EN 1995-1-1 Table 7.1',
                    note: 'a clear hole is not in this modulus: its clearance adds to the slip'
                }),
            step('K_u', '\\frac{2}{3}\\,K_{ser}', [['K_{ser}', K_ser, 'N/mm']], { value: K_u, unit: 'N/mm' }, { clause: 'EN 1995-1-1 (2.1)' })
        ]
    };
}

/**
 * Slip before a bolt that stands in the middle of its two holes bears on both, mm; up to twice as much where it
 * hung on the wrong side. EN 1995-1-1 Table 7.1, footnote: to be added to the slip by K. Nought for holes
 * drilled to the bolt's own diameter.
 */
export function clearanceSlip(d: number, hole1: number, hole2: number): number {
    return Math.max(0, hole1 - d) / 2 + Math.max(0, hole2 - d) / 2;
}
