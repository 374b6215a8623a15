/**
 * Where a utilisation reaches 1 between two values, one of which passes and the other not.
 *
 * R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4, procedure zero (from
 * memory): inverse quadratic interpolation or the secant where they behave, else bisection.
 */
import { passes, tried, type Asking, type Tried, type Worst } from './asking.js';

export interface Crossing {
    readonly passing: Tried;
    readonly failing: Tried;
}

/** A passing value as near to 1 as this is the limit. */
const near = 5e-7;

/** −1 for nought, 0 at 1, 1 for Infinity: a root finder needs finite numbers. */
const excess = ({ utilisation }: Worst): number => (utilisation < Infinity ? (utilisation - 1) / (utilisation + 1) : 1);

/**
 * `from` and `to` are on different sides. Ends where the passing one is within 5e-7 of 1, or the two within
 * `tolerance` of each other, as they are at a jump.
 */
export function* crossing(from: Tried, to: Tried, tolerance: number): Asking<number, Crossing> {
    let [a, b, c] = [from, to, from];
    let step = b.value - a.value;
    let lastStep = step;
    for (;;) {
        if (passes(c) === passes(b)) {
            c = a;
            step = lastStep = b.value - a.value;
        }
        if (Math.abs(excess(c)) < Math.abs(excess(b))) [a, b, c] = [b, c, b];
        const half = (c.value - b.value) / 2;
        const found = passes(b) ? { passing: b, failing: c } : { passing: c, failing: b };
        if (1 - found.passing.utilisation <= near || Math.abs(half) <= tolerance / 2) return found;
        const proposed = Math.abs(lastStep) >= tolerance && Math.abs(excess(a)) > Math.abs(excess(b)) ? interpolated(a, b, c) : undefined;
        if (proposed !== undefined && withinReach(proposed, half, lastStep, tolerance)) [lastStep, step] = [step, proposed];
        else step = lastStep = half;
        a = b;
        b = yield* tried(b.value + (Math.abs(step) > tolerance / 2 ? step : Math.sign(half) * tolerance / 2));
    }
}

/** The step from b to where the parabola through the three (as value over excess), or the line through two, is nought. */
function interpolated(a: Tried, b: Tried, c: Tried): number {
    const [fa, fb, fc] = [excess(a), excess(b), excess(c)];
    const s = fb / fa;
    if (a.value === c.value) return (c.value - b.value) * s / (s - 1);
    const [q, r] = [fa / fc, fb / fc];
    return -s * ((c.value - b.value) * q * (q - r) - (b.value - a.value) * (r - 1)) / ((q - 1) * (r - 1) * (s - 1));
}

function withinReach(step: number, half: number, lastStep: number, tolerance: number): boolean {
    return step * half > 0 && Math.abs(step) < 1.5 * Math.abs(half) - tolerance / 4 && Math.abs(step) < Math.abs(lastStep) / 2;
}
