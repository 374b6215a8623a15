/** EN 1993-1-1 6.3.1: compression of a length that may buckle in bending about either axis. */
import type { Step } from '../../results.js';
import { kN, plain, step } from '../steps.js';
import { flexuralCurve, imperfection, reduction, type Curve } from './buckling-curves.js';
import { gammaM1Term, yieldTerm, type SteelMember } from './steel-member.js';

export interface FlexuralResistance {
    readonly axis: 'y' | 'z';
    readonly slenderness: number;
    readonly chi: number;
    /** N_cr, N. */
    readonly critical: number;
    /** N_b,Rd, N. */
    readonly resistance: number;
    readonly explain: () => readonly Step[];
}

/**
 * Resistance about one axis, for a buckling length in mm (less than 1: cannot buckle that way).
 * Class 1 to 3, doubly symmetric or solid: a doubly symmetric rolled section does not buckle by twisting first
 * unless its lengths about the two axes differ much more than those here (6.3.1.4, not computed).
 */
export function flexuralResistance(member: SteelMember, axis: 'y' | 'z', bucklingLength: number): FlexuralResistance {
    const { section, steel, parameters } = member;
    const I = axis === 'y' ? section.Iy : section.Iz;
    const critical = bucklingLength >= 1 ? Math.PI ** 2 * steel.E * I / bucklingLength ** 2 : Infinity;
    const slenderness = Math.sqrt(section.A * steel.fy / critical);
    const curve = flexuralCurve(section, axis);
    const chi = reduction(slenderness, imperfection[curve]);
    const resistance = chi * section.A * steel.fy / parameters.gammaM1;
    return {
        axis, slenderness, chi, critical, resistance,
        explain: () => explain(member, { axis, slenderness, chi, critical, resistance, curve, bucklingLength, I })
    };
}

type Explained = Omit<FlexuralResistance, 'explain'> & { readonly curve: Curve; readonly bucklingLength: number; readonly I: number };

function explain(member: SteelMember, given: Explained): readonly Step[] {
    const { section } = member;
    const { axis, slenderness, chi, critical, resistance, curve, bucklingLength, I } = given;
    const full = step(`N_{b,${axis},Rd}`, `\\chi_${axis} \\frac{A f_y}{\\gamma_{M1}}`, [
        [`\\chi_${axis}`, chi, ''], ['A', section.A, 'mm2'], yieldTerm(member), gammaM1Term(member)
    ], kN(resistance), { clause: 'EN 1993-1-1 6.3.1.1' });
    return Number.isFinite(critical) ? [
        step(`\\lambda_{rel,${axis}}`, `\\sqrt{\\frac{A f_y}{N_{cr,${axis}}}}`, [
            ['A', section.A, 'mm2'], yieldTerm(member),
            [`N_{cr,${axis}}`, critical / 1e3, 'kN', `π² E I / L², L = ${bucklingLength} mm, I = ${I.toExponential(3)} mm4`]
        ], plain(slenderness), { clause: 'EN 1993-1-1 6.3.1.2' }),
        step(`\\chi_${axis}`, `\\frac{1}{\\phi + \\sqrt{\\phi^2 - \\lambda_{rel,${axis}}^2}}`, [
            ['\\phi', 0.5 * (1 + imperfection[curve] * (slenderness - 0.2) + slenderness ** 2), ''], [`\\lambda_{rel,${axis}}`, slenderness, '']
        ], plain(chi), { clause: 'EN 1993-1-1 6.3.1.2, Table 6.2', note: `curve ${curve}, α = ${imperfection[curve]}` }),
        full
    ] : [full];
}
