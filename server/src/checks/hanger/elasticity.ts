/** The spring that a hanger is to the analysis, on whole sections: what a timber has lost is not known of its stiffness. */
import type { Hanger, Material, Member } from '../../../../language/src/model.js';
import type { HangerElasticity } from '../../analysis/elastic.js';
import { rolledSection } from '../../catalog/rolled-sections.js';
import type { TimberStrength } from '../../catalog/timber.js';
import { outline } from '../en1995/section.js';
import { isProblem, type Problem } from '../verdict.js';
import { stiffOver } from './layout.js';
import { stiffnessOf, type SpringSeat } from './stiffness.js';

export interface HungMember {
    readonly member: Member;
    /** Of timber alone. */
    readonly strength?: TimberStrength;
}

/**
 * @param carrier what it hangs from, with the head plate; `carried` with the foot plate
 * @param kdef of the timbers, EN 1995-1-1 Table 3.2: across the grain creep is taken as along it
 */
export function hangerElasticity(
    hanger: Hanger, { carrier, carried }: { readonly carrier: HungMember; readonly carried: HungMember }, materials: readonly Material[], kdef: number
): HangerElasticity | Problem {
    const seats = [seat('head', carrier, hanger.headPlate), seat('foot', carried, hanger.footPlate)];
    const initial = stiffnessOf(hanger, seats, materials);
    const final = stiffnessOf(hanger, seats, materials, 1 + kdef);
    return isProblem(initial) ? initial : isProblem(final) ? final : { initial: initial.stiffness, final: final.stiffness };
}

function seat(which: SpringSeat['which'], { member, strength }: HungMember, plate: Hanger['headPlate']): SpringSeat {
    const { b, h } = outline(member);
    const rolled = member.section.shape === 'rolled' ? rolledSection(member.section.designation) : undefined;
    return {
        which, member: member.name, breadth: b, depth: h, shift: 0, stiff: rolled ? stiffOver(rolled) : b,
        ...plate && { plate }, ...strength && { strength }
    };
}
