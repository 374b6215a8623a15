/**
 * EN 1993-1-5 6: an unstiffened web under a load on one flange, within the length (type a) or at an end (type c),
 * with the moment there by 7.2. Through the web's own plane: a load beside it twists the beam, which is not covered.
 */
import type { Step } from '../../results.js';
import { kN, mm, plain, quotient, step, type TermRow } from '../steps.js';
import { problem, unsound, type Problem, type Verdict } from '../verdict.js';
import { gammaM1Term, webDepth, yieldTerm, type SteelMember } from './steel-member.js';

export const webClause = 'EN 1993-1-5 6';

export type LoadPlace =
    /** Distance between stiffeners, or supports where there are none, mm. */
    | { readonly kind: 'inner'; readonly panel: number }
    /** From the end of the beam to the near edge of the bearing, mm. */
    | { readonly kind: 'end'; readonly overhang: number };

export interface WebInput {
    /** N, either sign. */
    readonly F: number;
    /** Length of stiff bearing s_s, mm, along the beam; more than the web's depth is counted as that, 6.3(1). */
    readonly stiffBearing: number;
    readonly place: LoadPlace;
    /** Moment at the load, N mm: counted where it compresses the loaded flange. */
    readonly M?: number;
}

interface Patch {
    readonly m1: number;
    readonly m2: number;
    readonly kF: number;
    /** s_s as it counts, and l_e of an end, mm. */
    readonly ss: number;
    readonly le?: number;
    /** l_y, mm. */
    readonly length: number;
    readonly critical: number;
    readonly slenderness: number;
    readonly chi: number;
    /** F_Rd, N. */
    readonly resistance: number;
}

/** A problem for a plate, which has no flange to spread the load. */
export function web(member: SteelMember, input: WebInput): Verdict | Problem {
    if (member.section.shape === 'plate') {
        return problem('a flat has no web and flange: EN 1993-1-5 6 does not apply');
    }
    const { place, stiffBearing, F, M = 0 } = input;
    const bad = unsound('finite', { 'the load': F, 'the moment': M }) ?? unsound('not negative', { 'the length of bearing': stiffBearing })
        ?? (place.kind === 'inner' ? unsound('positive', { 'the panel length': place.panel }) : unsound('not negative', { 'the overhang': place.overhang }));
    if (bad) {
        return bad;
    }
    const patch = patchResistance(member, Math.min(stiffBearing, webDepth(member.section)), place);
    const ofLoad = quotient(Math.abs(F), patch.resistance);
    const ofMoment = Math.abs(M) * member.parameters.gammaM0 / (member.section.Wely * member.steel.fy);
    const together = (ofLoad + 0.8 * ofMoment) / 1.4;
    return {
        utilisation: F === 0 ? 0 : Math.max(ofLoad, together), demand: kN(Math.abs(F)), capacity: kN(patch.resistance), clause: webClause,
        explain: () => [...explain(member, place, patch), step('\\eta', '\\max\\left(\\frac{F_{Ed}}{F_{Rd}}, \\frac{1}{1.4} \\left(\\frac{F_{Ed}}{F_{Rd}} + 0.8 \\eta_1\\right)\\right)', [
            ['F_{Ed}', Math.abs(F) / 1e3, 'kN'], ['F_{Rd}', patch.resistance / 1e3, 'kN'], ['\\eta_1', F === 0 ? 0 : ofMoment, '', 'moment over W_el f_y']
        ], plain(F === 0 ? 0 : Math.max(ofLoad, together)), { clause: 'EN 1993-1-5 6.6, 7.2' })]
    };
}

function patchResistance(member: SteelMember, ss: number, place: LoadPlace): Patch {
    const withFlange = patchOf(member, ss, place, 0.02 * (webDepth(member.section) / member.section.tf) ** 2);
    // (6.9): m2 counts only for a web that is slender without doubt.
    return withFlange.slenderness > 0.5 ? withFlange : patchOf(member, ss, place, 0);
}

function patchOf({ section, steel, parameters }: SteelMember, ss: number, place: LoadPlace, m2: number): Patch {
    const { tw, tf } = section;
    const hw = webDepth(section);
    const m1 = section.b / tw;
    const kF = place.kind === 'inner' ? 6 + 2 * (hw / place.panel) ** 2 : Math.min(2 + 6 * (ss + place.overhang) / hw, 6);
    const inner = ss + 2 * tf * (1 + Math.sqrt(m1 + m2));
    const le = place.kind === 'end' ? Math.min(kF * steel.E * tw ** 2 / (2 * steel.fy * hw), ss + place.overhang) : undefined;
    const length = le === undefined ? Math.min(inner, place.kind === 'inner' ? place.panel : inner) : Math.min(inner, ...endLengths(le));
    const critical = 0.9 * kF * steel.E * tw ** 3 / hw;
    const slenderness = Math.sqrt(length * tw * steel.fy / critical);
    const chi = Math.min(0.5 / slenderness, 1);
    return { m1, m2, kF, ss, ...le === undefined ? {} : { le }, length, critical, slenderness, chi, resistance: chi * length * tw * steel.fy / parameters.gammaM1 };

    /** (6.11) and (6.12). */
    function endLengths(le: number): readonly [number, number] {
        return [le + tf * Math.sqrt(m1 / 2 + (le / tf) ** 2 + m2), le + tf * Math.sqrt(m1 + m2)];
    }
}

function explain(member: SteelMember, place: LoadPlace, patch: Patch): readonly Step[] {
    const { section } = member;
    const tw: TermRow = ['t_w', section.tw, 'mm'];
    const ly: TermRow = ['l_y', patch.length, 'mm'];
    return [
        step('F_{cr}', '0.9 k_F E \\frac{t_w^3}{h_w}', [
            ['k_F', patch.kF, ''], ['E', member.steel.E, 'MPa'], tw, ['h_w', webDepth(section), 'mm']
        ], kN(patch.critical), { clause: 'EN 1993-1-5 (6.5)' }),
        explainLength(member, place, patch),
        step('\\lambda_{rel,F}', '\\sqrt{\\frac{l_y t_w f_y}{F_{cr}}}', [
            ly, tw, yieldTerm(member), ['F_{cr}', patch.critical / 1e3, 'kN']
        ], plain(patch.slenderness), { clause: 'EN 1993-1-5 (6.4)' }),
        step('\\chi_F', '\\min\\left(\\frac{0.5}{\\lambda_{rel,F}}, 1\\right)', [['\\lambda_{rel,F}', patch.slenderness, '']], plain(patch.chi), { clause: 'EN 1993-1-5 (6.3)' }),
        step('F_{Rd}', '\\chi_F \\frac{f_y l_y t_w}{\\gamma_{M1}}', [
            ['\\chi_F', patch.chi, ''], yieldTerm(member), ly, tw, gammaM1Term(member)
        ], kN(patch.resistance), { clause: 'EN 1993-1-5 (6.1)' })
    ];
}

const innerLength = 's_s + 2 t_f (1 + \\sqrt{m_1 + m_2})';
const endLength = 'l_e + t_f \\sqrt{\\frac{m_1}{2} + \\frac{l_e^2}{t_f^2} + m_2}, l_e + t_f \\sqrt{m_1 + m_2}';

function explainLength({ section }: SteelMember, place: LoadPlace, { length, m1, m2, ss, le }: Patch): Step {
    const shared: readonly TermRow[] = [['s_s', ss, 'mm', 'stiff bearing'], ['t_f', section.tf, 'mm'], ['m_1', m1, ''], ['m_2', m2, '']];
    return place.kind === 'inner'
        ? step('l_y', `\\min\\left(${innerLength}, a\\right)`, [...shared, ['a', place.panel, 'mm', 'panel']], mm(length), { clause: 'EN 1993-1-5 (6.10)' })
        : step('l_y', `\\min\\left(${innerLength}, ${endLength}\\right)`, [...shared, ['l_e', le ?? NaN, 'mm', 'k_F E t_w²/2 f_y h_w, not above s_s + c']], mm(length),
            { clause: 'EN 1993-1-5 (6.10), (6.11), (6.12)' });
}
