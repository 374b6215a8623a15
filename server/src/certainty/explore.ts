/**
 * Where in a box of bands each check is worst.
 *
 * Every band is walked along in five steps while the others rest, then the corners are looked at: all of them up to
 * four bands; with more, of each check the one corner that its walks point to. From its worst place each check is then
 * walked along every band that it feels, and where one gets worse between the ends a golden section narrows that down.
 * What no walk shows, such as a peak that is narrower than its steps, is not found.
 */

/** A coordinate of the box, from 0 at its low end to 1 at its high one. */
export interface Axis {
    /** Where it is known which end is worse for every check, only that one is looked at. */
    readonly worseEnd?: 0 | 1;
}

export type Point = readonly number[];

export interface WorstPoint {
    readonly point: Point;
    /** Axes that the check feels. */
    readonly feels: readonly number[];
    /** `ends`: on every walk it only rose or only fell. `search`: it gets better and worse by turns, and this is the worst that was found. */
    readonly by: 'ends' | 'search';
}

export interface Explored {
    readonly worst: ReadonlyMap<string, WorstPoint>;
    readonly tried: readonly Point[];
    /** More bands than that all corners would be looked at. */
    readonly bySigns: boolean;
    /** The search was given up for the number of values that it had tried. */
    readonly givenUp: boolean;
}

/** Up to so many bands all corners are looked at: 16. */
export const allCornersUpTo = 4;
/** More sets of values than this are not tried after the corners. */
const patience = 120;
/** Near the ends too, so that one peak is seen unless it is within a twentieth of an end: there it is hardly worse than the end. */
const walk = [0, 0.1, 0.5, 0.9, 1];
const ends = [0, 1];
const same = (a: number, b: number): boolean => a === b || (Number.isFinite(a) && Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a)));

/** @param at utilisations by check; one that is not there is nought */
export function explore(axes: readonly Axis[], at: (point: Point) => ReadonlyMap<string, number>): Explored {
    const box = new Box(at);
    const base = axes.map(({ worseEnd }) => worseEnd ?? 0.5);
    const free = axes.flatMap(({ worseEnd }, i) => (worseEnd === undefined ? [i] : []));
    axes.forEach((axis, i) => (axis.worseEnd === undefined ? walk : ends).forEach(share => box.look(moved(base, i, share))));
    box.look(base);
    const bySigns = free.length > allCornersUpTo;
    for (const corner of bySigns ? cornersBySigns(box, base, free) : allCorners(base, free)) box.look(corner);
    const limit = box.points.length + patience;
    const isOver = (): boolean => box.points.length >= limit;
    for (const key of box.keysWorstFirst()) climb(box, key, base, free, isOver);
    const worst = new Map(box.keys().map(key => [key, settled(box, key, base, axes)]));
    return { worst, tried: box.points, bySigns, givenUp: isOver() };
}

const moved = (point: Point, axis: number, share: number): Point => point.map((old, i) => (i === axis ? share : old));

/** What was looked at, each point once. */
class Box {
    private readonly known = new Map<string, ReadonlyMap<string, number>>();
    readonly points: Point[] = [];

    constructor(private readonly at: (point: Point) => ReadonlyMap<string, number>) { }

    look(point: Point): ReadonlyMap<string, number> {
        const key = point.join();
        const found = this.known.get(key) ?? this.at(point);
        if (!this.known.has(key)) {
            this.known.set(key, found);
            this.points.push(point);
        }
        return found;
    }

    /** What is no number is worse than any. */
    value(key: string, point: Point): number {
        const value = this.look(point).get(key) ?? 0;
        return Number.isNaN(value) ? Infinity : value;
    }

    keys(): readonly string[] {
        return [...new Set(this.points.flatMap(point => [...this.look(point).keys()]))];
    }

    worst(key: string): Point {
        return this.points.reduce((most, point) => (this.value(key, point) > this.value(key, most) ? point : most));
    }

    keysWorstFirst(): readonly string[] {
        const ranked = this.keys().map(key => ({ key, value: this.value(key, this.worst(key)) }));
        return ranked.sort((a, b) => (a.value === b.value ? 0 : b.value - a.value)).map(({ key }) => key);
    }

    /** Values along an axis through a point, as far as they were looked at, ascending. */
    along(key: string, point: Point, axis: number): readonly { readonly share: number; readonly value: number }[] {
        return this.points.filter(other => other.every((share, i) => i === axis || share === point[i]))
            .map(other => ({ share: other[axis]!, value: this.value(key, other) })).sort((a, b) => a.share - b.share);
    }

    feels(key: string, point: Point, axis: number): boolean {
        const [first, ...rest] = this.along(key, point, axis);
        return rest.some(({ value }) => !same(value, first!.value));
    }

    isOneWay(key: string, point: Point, axis: number): boolean {
        const steps = this.along(key, point, axis).flatMap(({ value }, i, all) => (i === 0 || same(value, all[i - 1]!.value) ? [] : [value > all[i - 1]!.value]));
        return new Set(steps).size <= 1;
    }
}

function* allCorners(base: Point, free: readonly number[]): Generator<Point> {
    for (let bits = 0; bits < 2 ** free.length; bits++) {
        yield base.map((share, i) => (free.includes(i) ? (bits >> free.indexOf(i)) & 1 : share));
    }
}

/** The corners that the checks' walks point to, those of several checks in one where they do not contradict each other. */
function cornersBySigns(box: Box, base: Point, free: readonly number[]): readonly Point[] {
    const patterns: (number | undefined)[][] = [];
    for (const key of box.keysWorstFirst()) {
        const signs = base.map((_, i) => {
            const [low, high] = ends.map(share => box.value(key, moved(base, i, share)));
            return !free.includes(i) || same(low!, high!) ? undefined : low! > high! ? 0 : 1;
        });
        const fitting = patterns.find(pattern => pattern.every((sign, i) => sign === undefined || signs[i] === undefined || sign === signs[i]));
        if (fitting) signs.forEach((sign, i) => { fitting[i] ??= sign; });
        else patterns.push(signs);
    }
    return patterns.map(pattern => base.map((share, i) => (free.includes(i) ? pattern[i] ?? 1 : share)));
}

/** From the worst point of a check along each axis that it feels, until it gets no worse. */
function climb(box: Box, key: string, base: Point, free: readonly number[], isOver: () => boolean): void {
    for (let before: Point | undefined, best = box.worst(key); best !== before && !isOver(); best = box.worst(key)) {
        before = best;
        for (const axis of free) {
            if (isOver() || !(box.feels(key, base, axis) || box.feels(key, best, axis))) continue;
            const shares = box.isOneWay(key, base, axis) && box.isOneWay(key, best, axis) ? [0, 0.5, 1] : walk;
            for (const share of shares) box.look(moved(best, axis, share));
            narrow(box, key, best, axis);
        }
    }
}

const golden = (Math.sqrt(5) - 1) / 2;
/** A peak is found to so much of the band. */
const width = 0.01;

/** Between the neighbours of the worst place along an axis, where that is not at an end. */
function narrow(box: Box, key: string, point: Point, axis: number): void {
    const line = box.along(key, point, axis);
    const at = line.reduce((most, { value }, i) => (value > line[most]!.value ? i : most), 0);
    let [low, high] = [line[at - 1]?.share, line[at + 1]?.share];
    if (low === undefined || high === undefined || (same(line[at]!.value, line[at - 1]!.value) && same(line[at]!.value, line[at + 1]!.value))) return;
    while (high - low > width) {
        const [left, right]: readonly [number, number] = [high - golden * (high - low), low + golden * (high - low)];
        if (box.value(key, moved(point, axis, left)) > box.value(key, moved(point, axis, right))) high = right; else low = left;
    }
}

function settled(box: Box, key: string, base: Point, axes: readonly Axis[]): WorstPoint {
    const point = box.worst(key);
    const feels = axes.flatMap((_, i) => (box.feels(key, base, i) || box.feels(key, point, i) ? [i] : []));
    const isOneWay = feels.every(i => box.isOneWay(key, base, i) && box.isOneWay(key, point, i));
    return { point, feels, by: isOneWay ? 'ends' : 'search' };
}
