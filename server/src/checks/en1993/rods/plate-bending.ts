import { kN, kNm, plain, quotient, step } from '../../steps.js';
import { unsound, worst, type Problem, type Verdict } from '../../verdict.js';
import { plateMoment, unsoundPlate, type CrossPlate } from './cross-plate.js';

export interface PlateBendingInput {
    readonly plate: CrossPlate;
    /** MPa. */
    readonly fy: number;
    /** Tension of all rods, N, design value. */
    readonly force: number;
    readonly gammaM0: number;
}

const bendingClause = 'EN 1993-1-1 6.2.5';
const shearClause = 'EN 1993-1-1 6.2.6';

/**
 * A head or foot plate in bending and shear between its rods and the timber, on the real lever.
 * EN 1993-1-1 6.2.5 lets a plate reach its plastic moment b t²/4; the elastic one, b t²/6, is taken here: it is
 * on the safe side, and a plate that yields lets the hanger's tightening go. Shear beyond half of its
 * resistance lowers the yield stress by 6.2.8(3).
 */
export function plateBending({ plate, fy, force, gammaM0 }: PlateBendingInput): Verdict | Problem {
    const bad = unsoundPlate(plate) ?? unsound('positive', { 'the yield strength': fy, 'γ_M0': gammaM0 }) ?? unsound('finite', { 'the force of the hanger': force });
    if (bad) {
        return bad;
    }
    const F = Math.max(0, force);
    const sheared = inShear(plate, fy, F, gammaM0);
    const rho = sheared.utilisation > 0.5 ? Math.min(1, (2 * sheared.utilisation - 1) ** 2) : 0;
    const places = [
        { where: 'in the middle of the plate', x: 0, holed: plate.rodSpacing === 0 },
        ...(plate.rodSpacing > 0 && plate.rodSpacing < plate.contact ? [{ where: 'at a rod', x: plate.rodSpacing / 2, holed: true }] : [])
    ];
    return worst(sheared, ...places.map(place => inBending(plate, fy, F, gammaM0, rho, place)));
}

interface Place { readonly where: string; readonly x: number; readonly holed: boolean }

function inBending(plate: CrossPlate, fy: number, F: number, gammaM0: number, rho: number, { where, x, holed }: Place): Verdict {
    const width = holed ? plate.width - plate.hole * plate.holesPerLine : plate.width;
    const W = width * plate.thickness ** 2 / 6;
    const M = Math.abs(plateMoment(plate, F, x));
    const Rd = (1 - rho) * W * fy / gammaM0;
    const utilisation = quotient(M, Rd);
    const formula = x === 0 ? '\\left|\\frac{F_{Ed}\\,(2 s - c)}{8}\\right|' : '\\frac{F_{Ed}\\,(c - s)^2}{8\\,c}';
    return {
        utilisation, demand: kNm(M), capacity: kNm(Rd), clause: bendingClause,
        explain: () => [
            step('M_{Ed}', formula, [
                ['F_{Ed}', F, 'N', 'all rods'], ['s', plate.rodSpacing, 'mm', 'between the rods'], ['c', plate.contact, 'mm', 'contact with the timber, even pressure']
            ], { value: M, unit: 'N·mm' }, { note: where }),
            step('W_{el}', '\\frac{b\\,t^2}{6}', [['b', width, 'mm', holed ? 'less the holes' : 'width of the plate'], ['t', plate.thickness, 'mm']], { value: W, unit: 'mm3' }),
            step('M_{el,Rd}', rho > 0 ? '\\frac{(1-\\rho)\\,W_{el}\\,f_y}{\\gamma_{M0}}' : '\\frac{W_{el}\\,f_y}{\\gamma_{M0}}', [
                ...(rho > 0 ? [['\\rho', rho, '', 'shear above half of its resistance, 6.2.8(3)'] as const] : []),
                ['W_{el}', W, 'mm3'], ['f_y', fy, 'MPa'], ['\\gamma_{M0}', gammaM0, '']
            ], { value: Rd, unit: 'N·mm' }, { clause: `${bendingClause} (6.14)`, note: 'elastic, on the safe side of the plastic moment' }),
            step('\\eta', '\\frac{M_{Ed}}{M_{el,Rd}}', [['M_{Ed}', M, 'N·mm'], ['M_{el,Rd}', Rd, 'N·mm']], plain(utilisation), { clause: bendingClause })
        ]
    };
}

function inShear(plate: CrossPlate, fy: number, F: number, gammaM0: number): Verdict {
    const width = plate.width - plate.hole * plate.holesPerLine;
    const V = F / 2;
    const Rd = width * plate.thickness * fy / (Math.sqrt(3) * gammaM0);
    const utilisation = quotient(V, Rd);
    return {
        utilisation, demand: kN(V), capacity: kN(Rd), clause: shearClause,
        explain: () => [
            step('V_{Rd}', '\\frac{b\\,t\\,f_y}{\\sqrt{3}\\,\\gamma_{M0}}', [
                ['b', width, 'mm', 'less the holes'], ['t', plate.thickness, 'mm'], ['f_y', fy, 'MPa'], ['\\gamma_{M0}', gammaM0, '']
            ], { value: Rd, unit: 'N' }, { clause: `${shearClause} (6.18)` }),
            step('\\eta', '\\frac{F_{Ed}/2}{V_{Rd}}', [['F_{Ed}', F, 'N', 'all rods'], ['V_{Rd}', Rd, 'N']], plain(utilisation), { clause: shearClause })
        ]
    };
}
