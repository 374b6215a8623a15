/** What drying takes of a hanger's tightening. */
import type { HangerContext } from '../check.js';
import { tighteningLoss, type DryingTimber, type TighteningLoss } from '../en1993/rods/tightening.js';
import { isProblem, problem, type Problem } from '../verdict.js';
import { seatsOf, type SeatContext } from './seats.js';
import { stiffnessOf } from './stiffness.js';

/** Moisture that timber comes to, EN 1995-1-1 2.3.1.3: about 12 % indoors, up to 20 % sheltered (18 % taken), from memory; outdoors 20 % and more. */
const expected: Readonly<Record<1 | 2 | 3, number>> = { 1: 0.12, 2: 0.18, 3: 0.2 };

/** Undefined where no stage tightens the hanger; a problem where a moisture is not known. */
export function tighteningOf(context: HangerContext): TighteningLoss | Problem | undefined {
    const { tightening, hanger, materials, job } = context;
    if (tightening === undefined) {
        return undefined;
    }
    const seats = seatsOf(context);
    const stiffness = stiffnessOf(hanger, seats.map(seat => ({ ...seat, ...'steel' in seat.context ? {} : { strength: seat.context.strength } })), materials);
    if (isProblem(stiffness)) {
        return stiffness;
    }
    const timbers = seats.filter(({ context: { member } }) => member.section.shape !== 'rolled').map(seat => dryingTimber(context, seat, expected[job.serviceClass]));
    const unknown = timbers.find(isProblem);
    return unknown ?? tighteningLoss({ tightening, stiffness: stiffness.stiffness, timbers: timbers as readonly DryingTimber[] });
}

function dryingTimber({ materials }: HangerContext, { context, depth }: SeatContext, expectedMoisture: number): DryingTimber | Problem {
    const { name, material } = context.member;
    const timber = materials.find(one => one.name === material);
    return timber?.kind === 'timber' && timber.moisture
        ? { name, depth, moisture: timber.moisture.value, expectedMoisture }
        : problem(`the moisture of ${name} is not given`);
}
