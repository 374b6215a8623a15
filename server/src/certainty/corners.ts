/** The worst corner of each check of a model with bands, as the views tell it. */
import type { Model } from '../../../language/src/model.js';
import type { BandsResult, Corner } from '../results.js';
import { modelAt, valueAt, type Band } from './bands.js';
import { allCornersUpTo, explore, type Explored, type WorstPoint } from './explore.js';
import { amountOf, nameOf, unitOf, written } from './naming.js';

export interface Corners<T> {
    /** What was found with each set of values that was tried. */
    readonly all: readonly T[];
    /** The worst of each check, by the key that its utilisation goes under. */
    readonly worst: ReadonlyMap<string, { readonly found: T; readonly corner?: Corner }>;
    readonly bands: BandsResult;
}

/** @param usesOf utilisations of what was found, by check; of a check that is not there none */
export function cornersOf<T>(model: Model, bands: readonly Band[], find: (model: Model) => T, usesOf: (found: T) => ReadonlyMap<string, number>): Corners<T> {
    const found = new Map<string, T>();
    const explored = explore(bands, point => {
        const one = find(modelAt(model, bands, point));
        found.set(point.join(), one);
        return usesOf(one);
    });
    return {
        all: explored.tried.map(point => found.get(point.join())!),
        worst: new Map([...explored.worst].map(([key, worst]) => [key, {
            found: found.get(worst.point.join())!,
            ...(worst.feels.length > 0 && { corner: cornerOf(model, bands, worst, key) })
        }])),
        bands: { paths: bands.map(({ given }) => given.path), tried: explored.tried.length, sentence: account(bands, explored) }
    };
}

function cornerOf(model: Model, bands: readonly Band[], { point, feels, by }: WorstPoint, key: string): Corner {
    const at = feels.map(i => {
        const { given } = bands[i]!;
        const share = point[i]!;
        return { path: given.path, value: amountOf(valueAt(bands[i]!, share), given), end: share === 0 ? 'low' as const : share === 1 ? 'high' as const : 'between' as const };
    });
    const [subject] = key.split('.');
    const values = feels.map((i, place) => {
        const { given } = bands[i]!;
        const name = given.path.split('.')[0] === subject ? nameOf(model, given.path) : given.path;
        return `${name} ${at[place]!.end === 'between' ? 'about ' : ''}${written(valueAt(bands[i]!, point[i]!), unitOf(given))}`;
    });
    return { at, by, sentence: `worst with ${values.join(', ')}${by === 'search' ? ', by search: it gets better and worse by turns' : ''}` };
}

function account(bands: readonly Band[], { tried, bySigns, givenUp }: Explored): string {
    const known = bands.filter(({ worseEnd }) => worseEnd !== undefined).map(({ given }) => given.path);
    const free = bands.length - known.length;
    return [
        `${bands.length === 1 ? `${bands[0]!.given.path} is a band` : `${bands.length} inputs are bands`}: each check is shown where it is worst, of ${tried.length} sets of values that the whole was computed with`,
        ...(known.length > 0 ? [`less of ${known.join(', ')} is never better, so ${known.length === 1 ? 'it counts' : 'they count'} at the low end`] : []),
        ...(free === 1 ? ['both ends were computed and values between them']
            : free > allCornersUpTo && bySigns ? [`of the corners of the ${free} others only those were computed that varying one at a time points to`]
                : free > 1 ? [`all ${2 ** free} corners were computed and values between them`] : []),
        ...(givenUp ? ['a search for the worst was ended at its bound'] : [])
    ].join('; ');
}
