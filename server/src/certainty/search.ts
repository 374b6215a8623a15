/** The nearest value of an input at which a verdict turns: outward on both sides of the given one, then Brent. */
import { passes, tried, type Asking, type Tried } from './asking.js';
import { crossing, type Crossing } from './brent.js';
import type { Range } from './range.js';

export interface Found {
    readonly given: Tried;
    /** Undefined where the verdict is the same at every value that was tried. */
    readonly crossing?: Crossing;
    /** Every value that was tried, ascending. */
    readonly tried: readonly Tried[];
    /** How the crossing was bracketed: between the given value and a bound, where the check only gets worse; else on a grid. */
    readonly by: 'bracket' | 'grid';
}

/** Shares of the distance to a bound, fine near the given value. */
const gridOf = (steps: number): readonly number[] => Array.from({ length: steps }, (_, i) => ((i + 1) / steps) ** 2);

export function* search(value: number, range: Range): Asking<number, Found> {
    const given = yield* tried(value);
    if (given.check === '' && given.without.length > 0) return { given, tried: [given], by: 'grid' };
    const seen = [given];
    const better = range.worse === 'up' ? range.low : range.high;
    const worse = range.worse === 'up' ? range.high : range.low;
    const bracketed = range.steps === 1;
    const bounds = bracketed ? [passes(given) ? worse : better] : passes(given) ? [worse, better] : [better, worse];
    let nearest: Crossing | undefined;
    for (const bound of bounds) {
        let before = given;
        for (const share of gridOf(range.steps)) {
            const next = value + share * (bound - value);
            if (next === before.value || (nearest && Math.abs(before.value - value) >= distance(nearest, value))) break;
            const here = yield* tried(next);
            seen.push(here);
            if (passes(here) !== passes(given)) {
                const found = yield* crossing(before, here, range.high - range.low);
                seen.push(found.passing, found.failing);
                if (nearest === undefined || distance(found, value) < distance(nearest, value)) nearest = found;
                break;
            }
            before = here;
        }
    }
    return { given, ...(nearest && { crossing: nearest }), tried: [...new Set(seen)].sort((a, b) => a.value - b.value), by: bracketed ? 'bracket' : 'grid' };
}

const distance = ({ passing }: Crossing, value: number): number => Math.abs(passing.value - value);

/** Whether the worst utilisation only rises, or only falls, on each side of the given value, over the values that were tried. */
export function isMonotone({ given, tried: values }: Found): boolean {
    return goesOneWay(values.filter(({ value }) => value <= given.value)) && goesOneWay(values.filter(({ value }) => value >= given.value));
}

function goesOneWay(values: readonly Tried[]): boolean {
    const pairs = values.slice(1).map(({ utilisation }, i) => ({ before: values[i]!.utilisation, after: utilisation }));
    return pairs.every(({ before, after }) => after >= before - 1e-9) || pairs.every(({ before, after }) => after <= before + 1e-9);
}
