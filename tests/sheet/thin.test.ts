import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DiagramPoint } from '../../server/src/analysis/actions.js';
import { thinned } from '../../server/src/sheet/drawing/thin.js';

const tolerance = 0.15;
const points = fc.array(fc.record({ step: fc.constantFrom(0, 0.5, 1, 7), min: fc.double({ min: -60, max: 60, noNaN: true }), more: fc.double({ min: 0, max: 30, noNaN: true }) }), { maxLength: 60 })
    .map(steps => {
        let x = 0;
        return steps.map(({ step, min, more }): DiagramPoint => ({ x: x += step, min, max: min + more }));
    });

describe('a thinned curve', () => {
    it('is nowhere farther from what was left out than is seen', () => fc.assert(fc.property(points, all => {
        const kept = thinned(all, tolerance);
        expect([kept[0], kept.at(-1)]).toEqual([all[0], all.at(-1)]);
        for (const point of all.filter(one => !kept.includes(one))) {
            const after = kept.findIndex(one => all.indexOf(one) > all.indexOf(point));
            const [a, b] = [kept[after - 1]!, kept[after]!];
            const share = (point.x - a.x) / (b.x - a.x);
            for (const side of ['min', 'max'] as const) {
                expect(Math.abs(a[side] + share * (b[side] - a[side]) - point[side])).toBeLessThanOrEqual(tolerance + 1e-9);
            }
        }
    })));

    it('keeps both sides of a jump, and little of a line or a parabola', () => {
        const line = Array.from({ length: 100 }, (_, x) => ({ x, min: -x, max: 2 * x }));
        expect(thinned(line, tolerance)).toEqual([line[0], line[99]]);
        const jump = [{ x: 0, min: 0, max: 5 }, { x: 50, min: 0, max: 5 }, { x: 50, min: 0, max: -5 }, { x: 100, min: 0, max: -5 }];
        expect(thinned(jump, tolerance)).toEqual(jump);
        expect(thinned(line.map(({ x }) => ({ x, min: 0, max: x * (99 - x) / 40 })), tolerance).length).toBeLessThan(25);
    });
});
