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

/** By halving; undefined where both ends have one sign. */
function zeroBetween(f: (x: number) => number, from: number, to: number): number | undefined {
    const first = f(from);
    if (first * f(to) >= 0) return undefined;
    let [low, high] = [from, to];
    for (let i = 0; i < 40; i++) {
        const middle = (low + high) / 2;
        if (f(middle) * first > 0) low = middle; else high = middle;
    }
    return (low + high) / 2;
}
