import type { Combination } from '../../analysis/actions.js';
import type { HangerContext, MemberContext } from '../check.js';
import { plateOnGrain } from '../en1993/rods/grain.js';
import { effectiveContactLength, kc90At } from '../en1995/contact.js';
import { patchesOf, sidesOf } from '../en1995/contacts.js';
import { greatestHole } from '../en1995/fasteners/holes-and-washers.js';
import { durationFactors } from '../en1995/design-strength.js';
import { named } from '../en1995/leaves/bolt-answers.js';
import { outline, wholeSection } from '../en1995/section.js';
import type { Problem, Verdict } from '../verdict.js';
import { seatName, type RodLayout } from './layout.js';
import { hangerCheck, type SeatContext } from './seats.js';

/** Compression across the grain under head and foot plate, on the sound face that is left of an old timber. */
export const grain = hangerCheck('grain', 'EN 1995-1-1 6.1.5', (context, layout, seats) => ({
    each: (force, duration) => seats.flatMap(seat => 'steel' in seat.context ? [] : ofSeat(context, layout, seat, seat.context, force, duration)),
    lacking: seats.flatMap(({ context: { member } }) => member.slope === 0 ? [] : [`${member.name} is not level: plates at an angle to the grain are not covered`])
}));

function ofSeat(
    { hanger }: HangerContext, { rod, through }: RodLayout, seat: SeatContext, timber: MemberContext, force: number, duration: Combination['duration']
): readonly (Verdict | Problem)[] {
    const { plate, stretch, breadth, which } = seat;
    if (!plate || timber.member.slope !== 0) {
        return [];
    }
    const sides = sidesOf(timber, stretch, patchesOf(timber));
    const toNext = Math.min(...sides.map(side => side.toNext));
    const said = plateOnGrain({
        force, width: Math.min(plate.length.value, breadth),
        effectiveLength: effectiveContactLength(plate.width.value, sides),
        holes: through[which] ? Array.from({ length: hanger.rods.count }, () => greatestHole(rod.d)) : [],
        kc90: kc90At(timber.strength, plate.width.value, toNext, wholeSection(timber.member).h),
        fc90_d: timber.strength.fc90_k * durationFactors(timber)(duration)
    });
    const lost = breadth < outline(timber.member).b ? `; bears on the ${Math.round(breadth)} mm that are sound` : '';
    return [named(`${seatName(seat)}${lost}`, said)];
}
