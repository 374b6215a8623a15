import { steelNamed } from '../../catalog/steel-material.js';
import type { HangerContext } from '../check.js';
import { plateBending } from '../en1993/rods/plate-bending.js';
import { problem, type Problem, type Verdict } from '../verdict.js';
import { named } from '../en1995/leaves/bolt-answers.js';
import { crossPlate, seatName, type RodLayout } from './layout.js';
import { hangerCheck, type SeatContext } from './seats.js';

/** Head and foot plate in bending and shear between rods and timber. */
export const plates = hangerCheck('plates', 'EN 1993-1-1 6.2.5, 6.2.6', (context, layout, seats) => ({
    each: force => seats.flatMap(seat => ofSeat(context, layout, seat, force))
}));

function ofSeat({ parameters, materials }: HangerContext, layout: RodLayout, seat: SeatContext, force: number): readonly (Verdict | Problem)[] {
    const plate = crossPlate(layout, seat);
    if (!plate || !seat.plate) {
        return [];
    }
    const found = steelNamed(seat.plate.steel, plate.thickness, materials);
    return ['problem' in found ? problem(found.problem) : named(
        `${seatName(seat)}; ${spacingNote(layout)}`,
        plateBending({ plate, fy: found.steel.fy, force, gammaM0: parameters.steel.gammaM0 })
    )];
}

function spacingNote({ spacing }: RodLayout): string {
    return spacing > 0 ? `rods ${Math.round(spacing)} mm apart, as far as the plates let them (1.2 d0 to their ends)` : 'one line of rods in the middle';
}
