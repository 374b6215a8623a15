/** EN 1993-1-1 6.2.6: shear along the web. */
import { kN, step } from '../steps.js';
import { against, problem, unsound, type Problem, type Verdict } from '../verdict.js';
import { epsilon, gammaM0Term, webDepth, yieldTerm, type SteelMember } from './steel-member.js';

export const shearClause = 'EN 1993-1-1 6.2.6';

/** V_c,Rd, N: plastic for I and channel, elastic (A/1.5) for a plate. */
export const shearResistance = ({ section, steel, parameters }: SteelMember): number =>
    section.Avz * steel.fy / (Math.sqrt(3) * parameters.gammaM0);

/** A shear force V (N, either sign). A problem for a web that buckles in shear, 6.2.6(6): no rolled section here does. */
export function shear(member: SteelMember, V: number): Verdict | Problem {
    const { section, steel, parameters } = member;
    const limit = 72 * epsilon(steel.fy) / parameters.eta;
    if (section.shape !== 'plate' && webDepth(section) / section.tw > limit) {
        return problem(`the web of ${section.name} is so thin that it may buckle in shear (EN 1993-1-5 5): not covered`);
    }
    const capacity = shearResistance(member);
    return unsound('finite', { 'the shear force': V }) ?? against(Math.abs(V), capacity, kN, shearClause, () => [
        step('V_{c,Rd}', '\\frac{A_v f_y}{\\sqrt{3} \\, \\gamma_{M0}}', [
            ['A_v', section.Avz, 'mm2', section.shape === 'plate' ? 'A/1.5, elastic' : section.name], yieldTerm(member), gammaM0Term(member)
        ], kN(capacity), { clause: section.shape === 'plate' ? `${shearClause}(4)` : `${shearClause}(2), (3)` })
    ]);
}
