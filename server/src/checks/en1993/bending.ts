/** EN 1993-1-1 6.2.5: bending about the strong axis. */
import { kNm, step } from '../steps.js';
import { against, unsound, type Problem, type Verdict } from '../verdict.js';
import { withClass, type SectionClass } from './classification.js';
import { gammaM0Term, yieldTerm, type SteelMember } from './steel-member.js';

export const bendingClause = 'EN 1993-1-1 6.2.5';

/** Section modulus that the class allows, mm³: plastic for 1 and 2, elastic for 3. */
export const modulus = ({ section }: Pick<SteelMember, 'section'>, sectionClass: SectionClass): number =>
    sectionClass < 3 ? section.Wply : section.Wely;

/** M_c,Rd, N mm. */
export const momentResistance = (member: SteelMember, sectionClass: SectionClass): number =>
    modulus(member, sectionClass) * member.steel.fy / member.parameters.gammaM0;

/** A moment M (N mm, either sign) alone. Holes in the tension flange: see the splice. */
export function bending(member: SteelMember, M: number): Verdict | Problem {
    return unsound('finite', { 'the moment': M }) ?? withClass(member.section, member.steel, 0, found => {
        const capacity = momentResistance(member, found.sectionClass);
        const W = found.sectionClass < 3 ? 'W_{pl,y}' : 'W_{el,y}';
        return against(Math.abs(M), capacity, kNm, bendingClause, () => [
            ...found.explain(),
            step('M_{c,Rd}', `\\frac{${W} f_y}{\\gamma_{M0}}`, [
                [W, modulus(member, found.sectionClass), 'mm3', member.section.name], yieldTerm(member), gammaM0Term(member)
            ], kNm(capacity), { clause: `${bendingClause}(2)`, note: `class ${found.sectionClass}${member.steel.ductile ? '' : ': old iron, held to its elastic limit'}` })
        ]);
    });
}
