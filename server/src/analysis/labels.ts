/** Names of combinations, e.g. `1.35 G + 1.5 storage (span 2) + 0.75 valley`. */
import type { UnitCase } from './actions.js';
import { isSet } from './durations.js';

/** Loads that are absent are not named; permanent loads that share a factor are `G`. */
export function labelOf(cases: readonly UnitCase[], factors: readonly number[]): string {
    const terms: string[] = [];
    const { permanent, set, variable } = kindsOf(cases);
    for (const { key } of groupBy(permanent.filter(({ id }) => factors[id] !== 0), ({ id }) => factors[id]!)) {
        terms.push(`${shown(key)} G`);
    }
    for (const { id, load } of set) if (factors[id] !== 0) terms.push(`${shown(factors[id]!)} ${load}`);
    for (const { key: load, items } of variable) {
        const present = items.filter(({ id }) => factors[id] !== 0);
        if (present.length === 0) continue;
        for (const { key: factor, items: alike } of groupBy(present, ({ id }) => factors[id]!)) {
            terms.push(`${shown(factor)} ${load}${placesOf(alike, items)}`);
        }
    }
    return terms.length > 0 ? terms.join(' + ') : 'no load';
}

interface Kinds {
    readonly permanent: readonly UnitCase[];
    readonly set: readonly UnitCase[];
    readonly variable: readonly { readonly key: string; readonly items: readonly UnitCase[] }[];
}

const known = new WeakMap<readonly UnitCase[], Kinds>();

/** A group's cases are sorted once for all of its combinations. */
function kindsOf(cases: readonly UnitCase[]): Kinds {
    const found = known.get(cases) ?? {
        permanent: cases.filter((unit) => unit.permanent && !isSet(unit)),
        set: cases.filter(isSet),
        variable: groupBy(cases.filter((unit) => !unit.permanent), ({ load }) => load)
    };
    known.set(cases, found);
    return found;
}

/** ` (span 1, 3, right overhang)` where a load stands on some of its stretches only. */
function placesOf(present: readonly UnitCase[], all: readonly UnitCase[]): string {
    if (present.length === all.length) return '';
    const places = present.map(placeOf);
    const words = places.map((place, i) => (places[i - 1]?.startsWith('span ') && place.startsWith('span ') ? place.slice('span '.length) : place));
    return ` (${words.join(', ')})`;
}

/** A case that is a stretch of its load is named `load (stretch)`. */
function placeOf(unit: UnitCase): string {
    return unit.name.slice(unit.load.length + 2, -1);
}

function shown(factor: number): string {
    return Number.isInteger(factor) ? factor.toFixed(1) : String(Number(factor.toFixed(4)));
}

function groupBy<T, K>(items: readonly T[], keyOf: (item: T) => K): { readonly key: K; readonly items: T[] }[] {
    const groups = new Map<K, T[]>();
    for (const item of items) {
        const group = groups.get(keyOf(item));
        if (group) group.push(item); else groups.set(keyOf(item), [item]);
    }
    return [...groups].map(([key, group]) => ({ key, items: group }));
}
