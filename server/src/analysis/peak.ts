/** The exact peak of a smooth curve beside its best sample. */
import type { Place } from './effects.js';

export interface Sample { readonly height: number; readonly slope: number }

/** Of the two runs beside place `s`, where the slope passes zero; the place itself where it does not. */
export function peakBetween(places: readonly Place[], s: number, at: (place: Place) => Sample): { readonly height: number; readonly x: number } {
    const { x } = places[s]!;
    // A place at a step stands there twice, once on either side.
    let [left, right] = [s, s];
    while (places[left - 1]?.x === x) left--;
    while (places[right + 1]?.x === x) right++;
    let best = { height: at(places[s]!).height, x };
    for (const [a, b] of [[places[left - 1], places[left]], [places[right], places[right + 1]]]) {
        if (!a || !b) continue;
        const start = b.x - b.into;
        const placeAt = (into: number): Place => ({ element: b.element, into, x: start + into });
        const into = zeroBetween((distance) => at(placeAt(distance)).slope, a.x - start, b.into);
        if (into === undefined) continue;
        const { height } = at(placeAt(into));
        if (height > best.height) best = { height, x: start + into };
    }
    return best;
}

/** By the Illinois rule of false position, which is sure to stay between; undefined where both ends have one sign. */
function zeroBetween(f: (x: number) => number, from: number, to: number): number | undefined {
    let [a, b] = [from, to];
    let [fa, fb] = [f(a), f(b)];
    if (fa * fb >= 0) return undefined;
    const close = 1e-12 * Math.max(Math.abs(fa), Math.abs(fb));
    for (let i = 0; i < 40; i++) {
        const x = (a * fb - b * fa) / (fb - fa);
        const fx = f(x);
        if (Math.abs(fx) <= close) return x;
        if (fx * fb < 0) {
            a = b;
            fa = fb;
        } else {
            fa /= 2;
        }
        b = x;
        fb = fx;
    }
    return b;
}
