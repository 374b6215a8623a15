/** EN 1993-1-1 6.2.8 to 6.2.10: a moment with shear and an axial force at one section. */
import type { Step } from '../../results.js';
import { kNm, plain, quotient, step, type TermRow } from '../steps.js';
import { unsound, type Problem, type Verdict } from '../verdict.js';
import { momentResistance } from './bending.js';
import { withClass, type SectionClass } from './classification.js';
import { shearResistance } from './shear.js';
import { gammaM0Term, webDepth, yieldTerm, type SteelMember } from './steel-member.js';

export const interactionClause = 'EN 1993-1-1 6.2.8 to 6.2.10';

export interface SectionForces {
    /** N, tension positive. */
    readonly N: number;
    readonly V: number;
    /** N mm. */
    readonly M: number;
}

interface Reduced {
    /** ρ of 6.2.8(3): what the shear takes of the yield stress of the shear area. */
    readonly rho: number;
    /** |N| over N_pl,Rd, with the shear's share taken off. */
    readonly n: number;
    /** N, with the shear's share taken off. */
    readonly axial: number;
    readonly shearMoment: number;
    readonly moment: number;
}

/**
 * Moment, shear and axial force together. I and H by 6.2.8(5) and 6.2.9.1(5), a flat by 6.2.9.1(3);
 * channels and class 3 sections by the linear sum 6.2.1(7), which is on the safe side.
 */
export function interaction(member: SteelMember, forces: SectionForces): Verdict | Problem {
    const compression = Math.max(-forces.N, 0);
    return unsound('finite', { 'the axial force': forces.N, 'the shear force': forces.V, 'the moment': forces.M })
        ?? withClass(member.section, member.steel, compression, found => {
            const reduced = reduce(member, found.sectionClass, forces);
            const demand = Math.abs(forces.M);
            const ofMoment = demand > 0 ? quotient(demand, reduced.moment) : 0;
            return {
                utilisation: Math.max(ofMoment, reduced.n),
                demand: ofMoment >= reduced.n ? kNm(demand) : plain(reduced.n),
                capacity: ofMoment >= reduced.n ? kNm(reduced.moment) : plain(1),
                clause: interactionClause,
                explain: () => [...found.explain(), ...explain(member, found.sectionClass, forces, reduced)]
            };
        });
}

function reduce(member: SteelMember, sectionClass: SectionClass, { N, V }: SectionForces): Reduced {
    const { section, steel, parameters } = member;
    const share = Math.abs(V) / shearResistance(member);
    const rho = share > 0.5 ? Math.min((2 * share - 1) ** 2, 1) : 0;
    const full = momentResistance(member, sectionClass);
    const webArea = webDepth(section) * section.tw;
    const shearMoment = section.shape === 'I' && sectionClass < 3
        ? full - rho * webArea ** 2 / (4 * section.tw) * steel.fy / parameters.gammaM0
        : (1 - rho) * full;
    const axial = (section.A - rho * section.Avz) * steel.fy / parameters.gammaM0;
    const n = quotient(Math.abs(N), axial);
    return { rho, n, axial, shearMoment, moment: shearMoment * axialFactor(member, sectionClass, n) };
}

/** What is left of the moment resistance beside the axial force. */
function axialFactor({ section }: SteelMember, sectionClass: SectionClass, n: number): number {
    const left = Math.max(1 - n, 0);
    if (sectionClass === 3 || section.shape === 'channel') {
        return left;
    }
    if (section.shape === 'plate') {
        return Math.max(1 - n ** 2, 0);
    }
    const a = Math.min((section.A - 2 * section.b * section.tf) / section.A, 0.5);
    const webShare = 0.5 * webDepth(section) * section.tw / section.A;
    return n <= Math.min(0.25, webShare) ? 1 : Math.min(left / (1 - 0.5 * a), 1);
}

function explain(member: SteelMember, sectionClass: SectionClass, { N, V, M }: SectionForces, reduced: Reduced): readonly Step[] {
    const { section } = member;
    const capacity = shearResistance(member);
    const factor = reduced.shearMoment > 0 ? reduced.moment / reduced.shearMoment : 0;
    const whole: readonly TermRow[] = [['M_{c,Rd}', momentResistance(member, sectionClass) / 1e6, 'kNm'], ['\\rho', reduced.rho, '']];
    const rolled = section.shape === 'I' && sectionClass < 3;
    return [
        reduced.rho === 0
            ? step('\\rho', '0', [], plain(0), { clause: 'EN 1993-1-1 6.2.8(2)', note: `V = ${(Math.abs(V) / 1e3).toFixed(1)} kN is no more than half of V_pl,Rd = ${(capacity / 1e3).toFixed(1)} kN` })
            : step('\\rho', '\\min\\left(\\left(\\frac{2 V_{Ed}}{V_{pl,Rd}} - 1\\right)^2, 1\\right)', [
                ['V_{Ed}', Math.abs(V) / 1e3, 'kN'], ['V_{pl,Rd}', capacity / 1e3, 'kN']
            ], plain(reduced.rho), { clause: 'EN 1993-1-1 6.2.8(3)' }),
        rolled
            ? step('M_{V,Rd}', 'M_{c,Rd} - \\rho \\frac{A_w^2}{4 t_w} \\frac{f_y}{\\gamma_{M0}}', [
                ...whole, ['A_w', webDepth(section) * section.tw, 'mm2'], ['t_w', section.tw, 'mm'], yieldTerm(member), gammaM0Term(member)
            ], kNm(reduced.shearMoment), { clause: 'EN 1993-1-1 6.2.8(5)' })
            : step('M_{V,Rd}', '(1 - \\rho) M_{c,Rd}', whole, kNm(reduced.shearMoment), { clause: 'EN 1993-1-1 6.2.8(3)' }),
        step('M_{N,V,Rd}', 'M_{V,Rd} k_N', [
            ['M_{V,Rd}', reduced.shearMoment / 1e6, 'kNm'], ['k_N', factor, '', `what N = ${(N / 1e3).toFixed(1)} kN, n = ${reduced.n.toFixed(3)}, leaves`]
        ], kNm(reduced.moment), { clause: 'EN 1993-1-1 6.2.9, 6.2.10' }),
        step('n', '\\frac{N_{Ed}}{N_{V,Rd}}', [['N_{Ed}', Math.abs(N) / 1e3, 'kN'], ['N_{V,Rd}', reduced.axial / 1e3, 'kN', 'axial resistance beside the shear']],
            plain(reduced.n), { clause: 'EN 1993-1-1 6.2.9, 6.2.10' }),
        ...(reduced.moment > 0 || M !== 0 ? [step('\\eta', '\\max\\left(\\frac{M_{Ed}}{M_{N,V,Rd}}, n\\right)', [
            ['M_{Ed}', Math.abs(M) / 1e6, 'kNm'], ['M_{N,V,Rd}', reduced.moment / 1e6, 'kNm'], ['n', reduced.n, '']
        ], plain(Math.max(M === 0 ? 0 : quotient(Math.abs(M), reduced.moment), reduced.n)))] : [step('\\eta', 'n', [['n', reduced.n, '']], plain(reduced.n))])
    ];
}
