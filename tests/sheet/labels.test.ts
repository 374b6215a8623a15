import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clip, labelName, placeFlags, spread, stack, type Flag } from '../../server/src/sheet/drawing/labels.js';

const ascending = fc.array(fc.double({ min: 0, max: 400, noNaN: true }), { maxLength: 30 }).map(xs => xs.sort((a, b) => a - b));

describe('spread', () => {
    it('leaves alone what is far enough apart', () => expect(spread([0, 50, 100], 12, 0, 100)).toEqual([0, 50, 100]));
    it('moves a pair evenly', () => expect(spread([100, 104], 12, 0, 400)).toEqual([96, 108]));

    it('keeps all apart and, where they fit, within', () => fc.assert(fc.property(ascending, xs => {
        const placed = spread(xs, 12, 0, 400);
        expect(placed.length).toBe(xs.length);
        placed.slice(1).forEach((x, i) => expect(x - placed[i]!).toBeGreaterThanOrEqual(12 - 1e-6));
        placed.forEach(x => expect(x).toBeGreaterThanOrEqual(0));
        placed.forEach(x => expect(x).toBeLessThanOrEqual(400 + 1e-6));
    })));
});

describe('stack', () => {
    const extents = fc.array(fc.record({ from: fc.double({ min: 0, max: 400, noNaN: true }), width: fc.double({ min: 1, max: 200, noNaN: true }) })
        .map(({ from, width }) => ({ from, to: from + width })), { maxLength: 20 });

    it('overlaps nothing within a row', () => fc.assert(fc.property(extents, all => {
        const rows = stack(all);
        all.forEach((a, i) => all.slice(0, i).forEach((b, j) =>
            expect(rows[i] === rows[j] && a.from < b.to && b.from < a.to).toBe(false)));
    })));
});

describe('flags', () => {
    const within = { from: -20, to: 420 };
    const box = (flag: Flag, side: 'left' | 'right') => side === 'right' ? [flag.x + 3, flag.x + 3 + flag.width] as const : [flag.x - 3 - flag.width, flag.x - 3] as const;

    it('stand in one row where they do not meet', () => {
        expect(placeFlags([{ x: 10, width: 50 }, { x: 200, width: 50 }], within).map(({ row, side }) => [row, side])).toEqual([[0, 'right'], [0, 'right']]);
    });

    it('climb from right to left where they do, and turn round at the end', () => {
        expect(placeFlags([{ x: 10, width: 50 }, { x: 14, width: 50 }, { x: 18, width: 50 }], within).map(({ row }) => row)).toEqual([2, 1, 0]);
        expect(placeFlags([{ x: 410, width: 50 }, { x: 415, width: 50 }], within).map(({ row, side }) => [row, side])).toEqual([[0, 'left'], [1, 'left']]);
    });

    it('never lie on one another', () => fc.assert(fc.property(
        fc.array(fc.record({ x: fc.integer({ min: 0, max: 400 }), width: fc.integer({ min: 20, max: 160 }) }), { maxLength: 12 }),
        flags => {
            const placed = placeFlags(flags, within);
            flags.forEach((a, i) => flags.slice(0, i).forEach((b, j) => {
                const [one, other] = [box(a, placed[i]!.side), box(b, placed[j]!.side)];
                expect(placed[i]!.row === placed[j]!.row && one[0] < other[1] && other[0] < one[1]).toBe(false);
            }));
        })));
});

describe('names', () => {
    it.each([['short', 'short'], ['😀'.repeat(30), `${'😀'.repeat(23)}…`], ['a\u202eb\u0007', 'ab'], ['مرحبا', '\u2068مرحبا\u2069']])('%s', (name, label) => expect(labelName(name)).toBe(label));
    it('are cut to a number of characters, not of halves of them', () => expect(clip('ab😀cd', 4)).toBe('ab😀…'));
});
