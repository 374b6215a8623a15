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
    /** Where to read what governs: the passing one that is near to 1, or beyond a jump the failing one. */
    readonly governing: Tried;
}

/** A passing value as near to 1 as this is the limit; what is aimed at is in the middle of that, so that a hit passes. */
const near = 5e-7;
const aim = 1 - near / 2;
/** Shares of the width that is searched: over the coarse one no check that changes steadily does so by as much as a jump. */
const [coarse, fine] = [2e-5, 1e-10];
const jump = 0.01;

/** −1 for nought, 0 at the aim, 1 for Infinity: a root finder needs finite numbers. */
const excess = ({ utilisation }: Worst): number => (utilisation < Infinity ? (utilisation - aim) / (utilisation + aim) : 1);
const isBelow = ({ utilisation }: Worst): boolean => utilisation <= aim;
const isLimit = ({ utilisation }: Worst): boolean => utilisation <= 1 && utilisation >= 1 - near;

/**
 * `from` and `to` are on different sides. Ends where one that passes is within 5e-7 of 1; at a jump where the two
 * are within 2e-5 of `width` of each other, the width being that of all that is searched.
 */
export function* crossing(from: Tried, to: Tried, width: number): Asking<number, Crossing> {
    if (isLimit(from) || isLimit(to)) return yield* halved(from, to, width);
    const tolerance = fine * width;
    let [a, b, c] = [from, to, from];
    let step = b.value - a.value;
    let lastStep = step;
    for (;;) {
        if (isLimit(b)) return { passing: b, failing: passes(c) ? a : c, governing: b };
        if (isBelow(c) === isBelow(b)) {
            c = a;
            step = lastStep = b.value - a.value;
        }
        if (Math.abs(excess(c)) < Math.abs(excess(b))) [a, b, c] = [b, c, b];
        const half = (c.value - b.value) / 2;
        if (isNarrow(b, c, width)) return atJump(b, c);
        const proposed = Math.abs(lastStep) >= tolerance && Math.abs(excess(a)) > Math.abs(excess(b)) ? interpolated(a, b, c) : undefined;
        if (proposed !== undefined && withinReach(proposed, half, lastStep, tolerance)) [lastStep, step] = [step, proposed];
        else step = lastStep = half;
        a = b;
        b = yield* tried(b.value + (Math.abs(step) > tolerance / 2 ? step : Math.sign(half) * tolerance / 2));
    }
}

const isNarrow = (a: Tried, b: Tried, width: number): boolean => {
    const apart = Math.abs(a.value - b.value) / width;
    return apart <= fine || (apart <= coarse && Math.abs(a.utilisation - b.utilisation) > jump);
};

const atJump = (a: Tried, b: Tried): Crossing => (passes(a) ? { passing: a, failing: b, governing: b } : { passing: b, failing: a, governing: a });

/** Where one is at 1 already it may be so all the way, until another check takes over. */
function* halved(from: Tried, to: Tried, width: number): Asking<number, Crossing> {
    let [a, b] = [from, to];
    while (!isNarrow(a, b, width)) {
        const middle = yield* tried((a.value + b.value) / 2);
        if (passes(middle) === passes(a)) a = middle; else b = middle;
    }
    return atJump(a, b);
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
