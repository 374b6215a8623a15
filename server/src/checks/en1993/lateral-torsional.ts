/**
 * EN 1993-1-1 6.3.2: moment resistance of a length that may buckle sideways.
 *
 * Default 6.3.2.3 for rolled I and H with the recommended λ̄_LT,0 = 0.4 and β = 0.75, without the favourable f;
 * 6.3.2.2 for channels and flats, and for all where the national choice is `general`.
 */
import type { Step } from '../../results.js';
import { kNm, plain, step } from '../steps.js';
import { modulus, momentResistance } from './bending.js';
import { imperfection, lateralCurve, lateralReduction, type Curve } from './buckling-curves.js';
import type { SectionClass } from './classification.js';
import { criticalMoment, explainCriticalMoment, type LateralLength } from './critical-moment.js';
import { gammaM1Term, yieldTerm, type SteelMember } from './steel-member.js';

export interface LateralResistance {
    readonly criticalMoment: number;
    /** λ̄_LT. */
    readonly slenderness: number;
    readonly chi: number;
    /** M_b,Rd, N mm. */
    readonly resistance: number;
    readonly explain: () => readonly Step[];
}

/** All input sound; see `stability` for what checks it. */
export function lateralResistance(member: SteelMember, sectionClass: SectionClass, lateral: LateralLength): LateralResistance {
    const { section, steel, parameters } = member;
    const critical = criticalMoment(section, steel, lateral);
    const W = modulus(member, sectionClass);
    const slenderness = Math.sqrt(W * steel.fy / critical);
    const { method, curve, plateau, beta } = rules(member);
    const chi = lateralReduction(slenderness, imperfection[curve], plateau, beta);
    const f = parameters.momentShapeFactor && method === 'rolled' ? shapeFactor(slenderness, lateral.shape.C1) : 1;
    const modified = slenderness > 0 ? Math.min(chi / f, 1, 1 / slenderness ** 2) : 1;
    const resistance = modified * momentResistance(member, sectionClass) * parameters.gammaM0 / parameters.gammaM1;
    const clause = method === 'rolled' ? 'EN 1993-1-1 6.3.2.3' : 'EN 1993-1-1 6.3.2.2';
    return {
        criticalMoment: critical, slenderness, chi: modified, resistance,
        explain: () => [
            ...(slenderness === 0 ? [] : explainReduction()),
            step('M_{b,Rd}', '\\chi_{LT} \\frac{W_y f_y}{\\gamma_{M1}}', [
                ['\\chi_{LT}', modified, ''], ['W_y', W, 'mm3'], yieldTerm(member), gammaM1Term(member)
            ], kNm(resistance), { clause: 'EN 1993-1-1 6.3.2.1(3)', ...(slenderness === 0 ? { note: 'held sideways all along' } : {}) })
        ]
    };

    function explainReduction(): readonly Step[] {
        return [
            explainCriticalMoment(section, steel, lateral),
            step('\\lambda_{rel,LT}', '\\sqrt{\\frac{W_y f_y}{M_{cr}}}', [
                ['W_y', W, 'mm3'], yieldTerm(member), ['M_{cr}', critical / 1e6, 'kNm']
            ], plain(slenderness), { clause: `${clause}(1)` }),
            step('\\chi_{LT}', '\\frac{1}{\\phi_{LT} + \\sqrt{\\phi_{LT}^2 - \\beta \\lambda_{rel,LT}^2}}', [
                ['\\phi_{LT}', 0.5 * (1 + imperfection[curve] * (slenderness - plateau) + beta * slenderness ** 2), ''],
                ['\\beta', beta, ''], ['\\lambda_{rel,LT}', slenderness, '']
            ], plain(chi), { clause, note: `curve ${curve}, α_LT = ${imperfection[curve]}, λ̄_LT,0 = ${plateau}` }),
            ...(f < 1 ? [step('f', '1 - 0.5 (1 - k_c) (1 - 2 (\\lambda_{rel,LT} - 0.8)^2)', [
                ['k_c', 1 / Math.sqrt(lateral.shape.C1), '', '1/√C1'], ['\\lambda_{rel,LT}', slenderness, '']
            ], plain(f), { clause: 'EN 1993-1-1 6.3.2.3(2)' })] : [])
        ];
    }
}

function rules({ section, parameters }: SteelMember): { method: 'rolled' | 'general'; curve: Curve; plateau: number; beta: number } {
    const method = section.shape === 'I' ? parameters.lateralTorsional : 'general';
    const curve = lateralCurve(section, method);
    return method === 'rolled' ? { method, curve, plateau: parameters.lambdaLT0, beta: parameters.betaLT } : { method, curve, plateau: 0.2, beta: 1 };
}

/** f of 6.3.2.3(2) with k_c = 1/√C1 ("Steel Buildings in Europe", multi-storey part 10, 5.2). */
const shapeFactor = (slenderness: number, C1: number): number =>
    Math.min(1 - 0.5 * (1 - 1 / Math.sqrt(Math.max(C1, 1))) * (1 - 2 * (slenderness - 0.8) ** 2), 1);
