import { unsound, type Problem } from '../../verdict.js';

/**
 * A head or foot plate: lies across the grain of a timber and is pulled by rods in two lines beside it or
 * through it, or in one line in the middle (`rodSpacing` 0). mm, MPa.
 */
export interface CrossPlate {
    /** Between the two lines of rods, along the plate. */
    readonly rodSpacing: number;
    /** Length of plate that bears on timber: the timber's breadth, or the plate's length where that is less. */
    readonly contact: number;
    /** Width along the grain. */
    readonly width: number;
    readonly thickness: number;
    /** Diameter of a rod's hole. */
    readonly hole: number;
    /** Holes side by side across the width, on one line of rods. */
    readonly holesPerLine: number;
}

export function unsoundPlate({ rodSpacing, contact, width, thickness, hole, holesPerLine }: CrossPlate): Problem | undefined {
    return unsound('not negative', { 'the spacing of the rods': rodSpacing })
        ?? unsound('positive', { 'the contact of the plate': contact, 'the width of the plate': width, 'the thickness of the plate': thickness, 'the hole in the plate': hole, 'the number of holes': holesPerLine })
        ?? unsound('positive', { 'the width that the holes leave of the plate': width - hole * holesPerLine });
}

/**
 * Bending moment, N·mm, at x mm from the middle of the plate, under F N of all rods and an even pressure of the
 * timber. A plate that bends lifts off in the middle and presses more at the edges of the timber, which gives less.
 */
export function plateMoment({ rodSpacing, contact }: CrossPlate, F: number, x: number): number {
    return F / 2 * Math.max(0, rodSpacing / 2 - x) - F / contact * Math.max(0, contact / 2 - x) ** 2 / 2;
}
