import { rodEdges } from '../en1993/rods/rod-edges.js';
import { tooClose } from '../en1993/bolts/bolt.js';
import { named } from '../en1995/leaves/bolt-answers.js';
import { distanceVerdict } from '../shortfall.js';
import { isProblem, problem, type Problem, type Verdict } from '../verdict.js';
import type { HangerContext } from '../check.js';
import { seatName, type RodLayout } from './layout.js';
import { hangerCheck, type SeatContext } from './seats.js';

/** Rods through a timber: their distances to its faces and ends. Beside it: that they clear it and that the plate reaches them. */
export const edge = hangerCheck('edge', 'EN 1995-1-1 Table 8.4, EN 1993-1-8 Table 3.3', (context, layout, seats) => {
    const said = seats.flatMap(seat => [...ofSeat(context, layout, seat), ...onPlate(layout, seat)].map(one => named(seatName(seat), one)));
    return {
        each: () => said,
        lacking: seats.flatMap(({ context: { member }, context, which }) => 'steel' in context && layout.through[which]
            ? [`rods through the flange of ${member.name}: its holes are not taken off`] : [])
    };
});

function ofSeat({ hanger }: HangerContext, layout: RodLayout, seat: SeatContext): readonly (Verdict | Problem)[] {
    const { rod, spacing, perLine, pitch, through } = layout;
    if ('steel' in seat.context) {
        return [];
    }
    const half = seat.breadth / 2;
    if (!through[seat.which]) {
        return [distanceVerdict({ required: half + seat.shift + rod.d / 2, provided: spacing / 2, what: 'from the middle to a rod beside the timber', clause: 'geometry' })];
    }
    const middle = (seat.stretch.from + seat.stretch.to) / 2;
    const found = rodEdges({
        d: rod.d, edge: half - seat.shift - spacing / 2, end: Math.min(middle, seat.context.member.length.value - middle) - (perLine - 1) * pitch / 2,
        ...perLine > 1 && { nextAlong: pitch }, ...spacing > 0 && { nextAcross: spacing },
        ...!seat.plate && hanger.washers && { washer: hanger.washers.size.value }
    });
    return isProblem(found) ? [problem(`${seatName(seat)}: ${found.problem}`)] : found.map(distanceVerdict);
}

function onPlate({ rod, perLine, pitch }: RodLayout, { plate }: SeatContext): readonly Verdict[] {
    if (!plate) {
        return [];
    }
    const e2 = (plate.width.value - (perLine - 1) * pitch) / 2;
    return tooClose(rod, { e2, ...perLine > 1 && { p2: pitch } }).map(what =>
        distanceVerdict({ required: 1.2 * rod.d0, provided: Math.min(e2, perLine > 1 ? pitch / 2 : Infinity), what, clause: 'EN 1993-1-8 Table 3.3' }));
}
