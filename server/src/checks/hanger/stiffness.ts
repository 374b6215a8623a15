/** A hanger's rods, plates and timbers in series. */
import type { Hanger, Material } from '../../../../language/src/model.js';
import { steelNamed } from '../../catalog/steel-material.js';
import type { TimberStrength } from '../../catalog/timber.js';
import { hangerStiffness, type HangerParts, type HangerStiffness } from '../en1993/rods/hanger-stiffness.js';
import { washerArea } from '../en1995/fasteners/axial.js';
import { isProblem, problem, type Problem } from '../verdict.js';
import { crossPlate, rodLayout, seatName, type RodLayout, type Seat } from './layout.js';

export interface SpringSeat extends Seat {
    /** Of a timber. */
    readonly strength?: Pick<TimberStrength, 'E90_mean'>;
}

const rodE = 210_000;

/** @param softening what E of the timbers across the grain is divided by: 1, or 1 + k_def in the end */
export function stiffnessOf(hanger: Hanger, seats: readonly SpringSeat[], materials: readonly Material[], softening = 1): HangerStiffness | Problem {
    const layout = rodLayout(hanger, seats);
    if (isProblem(layout)) {
        return layout;
    }
    const { rods, gap } = hanger;
    const plates: HangerParts['plates'][number][] = [];
    for (const seat of seats) {
        const plate = crossPlate(layout, seat);
        const found = seat.plate && steelNamed(seat.plate.steel, seat.plate.thickness.value, materials);
        if (found && 'problem' in found) {
            return problem(found.problem);
        }
        if (plate && found) {
            plates.push({ ...plate, name: seatName(seat), E: found.steel.E });
        }
    }
    const thickness = seats.reduce((sum, { plate }) => sum + (plate?.thickness.value ?? 0), 0);
    return hangerStiffness({
        rods: { count: rods.count, As: layout.rod.As, E: rodE, length: seats.reduce((sum, { depth }) => sum + depth, gap.value + thickness) },
        plates,
        timbers: seats.flatMap(seat => seat.strength
            ? [{ name: seat.member, depth: seat.depth, E90: seat.strength.E90_mean / softening, area: pressedArea(hanger, layout, seat) }] : [])
    });
}

/** Under the plate less its holes, or under all washers. */
function pressedArea({ rods, washers }: Hanger, layout: RodLayout, seat: Seat): number {
    const plate = crossPlate(layout, seat);
    if (plate) {
        return plate.width * plate.contact - (layout.through[seat.which] ? rods.count * Math.PI / 4 * layout.rod.d0 ** 2 : 0);
    }
    return washers ? rods.count * washerArea({ outer: washers.size.value, hole: layout.rod.d0 }) : 0;
}
