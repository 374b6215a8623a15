/** The search for the worst corner against dense grids and closed forms. */
import { describe, expect, test } from 'vitest';
import { explore, type Axis, type Point } from '../../server/src/certainty/explore.js';

const axes = (count: number): Axis[] => Array.from({ length: count }, () => ({}));
const one = (f: (point: Point) => number) => (point: Point) => new Map([['c', f(point)]]);
const worstOf = (count: number, f: (point: Point) => number) => {
    const { worst, tried } = explore(axes(count), one(f));
    return { ...worst.get('c')!, value: f(worst.get('c')!.point), tried: tried.length };
};

/** The greatest of f on a grid of so many steps along each axis. */
function gridMost(count: number, steps: number, f: (point: Point) => number): number {
    let most = -Infinity;
    for (let i = 0; i < (steps + 1) ** count; i++) {
        most = Math.max(most, f(Array.from({ length: count }, (_, axis) => Math.floor(i / (steps + 1) ** axis) % (steps + 1) / steps)));
    }
    return most;
}

describe('what only rises or only falls is worst at a corner, and says so', () => {
    test.each([
        [[1], 1, ([x]: Point) => 1 + x! ** 3],
        [[0], 1, ([x]: Point) => 1 / (1 + x!)],
        [[1, 0], 2, ([x, y]: Point) => (1 + x!) / (2 + y!)],
        [[1, 1], 2, ([x, y]: Point) => x! * y!],
        [[0, 1, 1, 0], 4, ([a, b, c, d]: Point) => (2 - a!) * (1 + b!) * Math.exp(c!) / (1 + d!)]
    ] as const)('%j', (corner, count, f) => {
        const found = worstOf(count, f);
        expect(found).toMatchObject({ point: corner, by: 'ends', feels: corner.map((_, i) => i) });
        expect(found.value).toBe(gridMost(count, 4, f));
    });

    test('also where which end is worse turns with the other input: (x - ½)(y - ½) and its opposite', () => {
        expect(worstOf(2, ([x, y]) => (x! - 0.5) * (y! - 0.5)).value).toBe(0.25);
        expect(worstOf(2, ([x, y]) => -(x! - 0.5) * (y! - 0.5)).value).toBe(0.25);
    });
});

describe('what gets better and worse by turns is searched', () => {
    test('a peak between the ends, against its closed form', () => {
        for (const peak of [0.1, 1 / 3, 0.5, 0.62, 0.93]) {
            const found = worstOf(1, ([x]) => 1 - (x! - peak) ** 2);
            expect(found.by).toBe('search');
            expect(found.value).toBeGreaterThan(1 - 5e-5);
            expect(found.point[0]).toBeCloseTo(peak, 1.9);
        }
    });

    test.each([
        ['peaks in both', 2, ([x, y]: Point) => Math.sin(3 * x!) * Math.cos(2 * y! - 0.6)],
        ['a ridge across', 2, ([x, y]: Point) => 1 - 2 * (x! + y! - 0.8) ** 2 + 0.2 * y!],
        ['the worst of several', 2, ([x, y]: Point) => Math.max(0.4 + 0.3 * x!, 1 - 3 * (y! - 0.4) ** 2, 0.9 - y!)],
        ['three', 3, ([x, y, z]: Point) => Math.sin(2.5 * x!) + y! * Math.exp(-2 * y!) - z!]
    ] as const)('%s, against a dense grid', (_, count, f) => {
        const { value, by } = worstOf(count, f);
        expect(by).toBe('search');
        expect(value).toBeGreaterThan(gridMost(count, count === 3 ? 40 : 200, f) - 2e-3);
    });

    test('an end that is worst although it is better between is said to be searched', () => {
        expect(worstOf(1, ([x]) => (x! - 0.4) ** 2)).toMatchObject({ point: [1], by: 'search' });
    });
});

test('what no check feels is not told, nor what one does not feel', () => {
    const { worst } = explore(axes(3), ([a, b]) => new Map([['a', a!], ['b', 1 - b!], ['none', 0.3]]));
    expect(worst.get('a')).toMatchObject({ feels: [0] });
    expect(worst.get('b')).toMatchObject({ feels: [1] });
    expect(worst.get('none')).toMatchObject({ feels: [], by: 'ends' });
});

test('where more is known never to be worse only the low end counts', () => {
    const { worst, tried } = explore([{ worseEnd: 0 }, {}], one(([strength, load]) => (1 + load!) / (1 + strength!)));
    expect(worst.get('c')).toMatchObject({ point: [0, 1], by: 'ends', feels: [0, 1] });
    expect(tried).toHaveLength(6);
});

test('many bands do not explode: one at a time, then the corners that they point to', () => {
    const weights = Array.from({ length: 12 }, (_, i) => (i % 3 === 0 ? -1 : 1) * (1 + i));
    const checks = ([...point]: Point) => new Map([
        ['sum', point.reduce((sum, share, i) => sum + share * weights[i]!, 0)],
        ['opposite', -point.reduce((sum, share, i) => sum + share * weights[i]!, 0)],
        ['first', point[0]!]
    ]);
    const { worst, tried, bySigns } = explore(axes(12), checks);
    expect(bySigns).toBe(true);
    expect(tried.length).toBeLessThan(110);
    expect(worst.get('sum')!.point).toEqual(weights.map(weight => (weight > 0 ? 1 : 0)));
    expect(worst.get('opposite')!.point).toEqual(weights.map(weight => (weight > 0 ? 0 : 1)));
});

test('what has no number, or none at all at one end, is worst there', () => {
    expect(explore(axes(1), one(([x]) => (x === 1 ? NaN : 0.5))).worst.get('c')!.point).toEqual([1]);
    expect(explore(axes(1), ([x]) => new Map(x === 0 ? [['lost', Infinity]] : [])).worst.get('lost')!.point).toEqual([0]);
});

test('a search that does not end is ended, and says so', () => {
    const wild = (point: Point) => new Map(Array.from({ length: 60 }, (_, i) => [`c${i}`, Math.sin((i + 3) * point[0]! + i) + Math.cos((i + 2) * point[1]!)]));
    const { givenUp, tried } = explore(axes(2), wild);
    expect(givenUp).toBe(true);
    expect(tried.length).toBeLessThan(180);
});
