/** The spring that a hanger is to the analysis, on whole sections: what a timber has lost is not known of its stiffness. */
import type { Hanger, Material, Member } from '../../../../language/src/model.js';
import type { HangerElasticity } from '../../analysis/elastic.js';
import type { TimberStrength } from '../../catalog/timber.js';
import { isProblem, type Problem } from '../verdict.js';
import { wholeSeat } from './layout.js';
import { stiffnessOf } from './stiffness.js';

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
    const seats = [
        { ...wholeSeat('head', carrier.member, hanger.headPlate), ...carrier.strength && { strength: carrier.strength } },
        { ...wholeSeat('foot', carried.member, hanger.footPlate), ...carried.strength && { strength: carried.strength } }
    ];
    const initial = stiffnessOf(hanger, seats, materials);
    const final = stiffnessOf(hanger, seats, materials, 1 + kdef);
    return isProblem(initial) ? initial : isProblem(final) ? final : { initial: initial.stiffness, final: final.stiffness };
}
