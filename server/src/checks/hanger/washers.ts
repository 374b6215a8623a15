import { steelNamed } from '../../catalog/steel-material.js';
import type { HangerContext } from '../check.js';
import { platePunching } from '../en1993/rods/plate-punching.js';
import { washerOnGrain } from '../en1993/rods/washer-on-grain.js';
import { greatestHole, washerSize } from '../en1995/fasteners/holes-and-washers.js';
import { named } from '../en1995/leaves/bolt-answers.js';
import { timberFactors } from '../en1995/leaves/through-bolts.js';
import { distanceVerdict } from '../shortfall.js';
import { isProblem, problem, type Problem, type Verdict } from '../verdict.js';
import type { Combination } from '../../analysis/actions.js';
import { seatName, type RodLayout } from './layout.js';
import { hangerCheck, type SeatContext } from './seats.js';

/** Under the nuts: on a plate the nut's punching through it, on timber the washer on the grain and its size. */
export const washers = hangerCheck('washers', 'EN 1995-1-1 8.5.2, EN 1993-1-8 Table 3.4', (context, layout, seats) => ({
    each: (force, duration) => seats.flatMap(seat => ofSeat(context, layout, seat, force * layout.greatestShare, duration).map(said => named(seatName(seat), said)))
}));

function ofSeat(context: HangerContext, { rod }: RodLayout, seat: SeatContext, force: number, duration: Combination['duration']): readonly (Verdict | Problem)[] {
    const { hanger, parameters, materials } = context;
    const { gammaM2 } = parameters.steel;
    if (seat.plate) {
        const found = steelNamed(seat.plate.steel, seat.plate.thickness.value, materials);
        return ['problem' in found ? problem(found.problem)
            : platePunching({ rod, force, gammaM2, plate: { t: seat.plate.thickness.value, fu: found.steel.fu ?? NaN } })];
    }
    if ('steel' in seat.context) {
        const { section, steel } = seat.context.steel;
        return [platePunching({ rod, force, gammaM2, plate: { t: section.shape === 'plate' ? section.tw : section.tf, fu: steel.fu ?? NaN } })];
    }
    if (!hanger.washers) {
        return [problem(`neither plate nor washers are given, ${seatName(seat)}`)];
    }
    const { size, thickness } = hanger.washers;
    const sizes = washerSize(rod.d, { outer: size.value, thickness: thickness.value });
    return [
        washerOnGrain({ kind: 'washer', outer: size.value, hole: greatestHole(rod.d), fc90_k: seat.context.strength.fc90_k }, force, timberFactors(seat.context, duration)),
        ...isProblem(sizes) ? [sizes] : sizes.filter(({ ok }) => !ok).map(distanceVerdict)
    ];
}
