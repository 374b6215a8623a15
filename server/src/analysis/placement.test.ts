import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Rule } from './combinations.js';
import { addCorners, combined, extremes, placementKey, placementsFor, rowOf } from './placement.js';

const effect = fc.oneof(fc.constant(0), fc.integer({ min: -50, max: 50 }));
const rules = fc.record({
    effects: fc.array(fc.tuple(fc.constantFrom(0.75, 1.05, 1.5), effect, effect), { maxLength: 8 }),
    direction: fc.double({ min: 0, max: 2 * Math.PI, noNaN: true })
});

function setUp(effects: readonly (readonly [number, number, number])[]) {
    const factors = Float64Array.from(effects, ([factor]) => factor);
    const rule: Rule = { kind: 'ultimate', permanent: 1.35, variable: Int32Array.from(effects, (_, i) => i), factors };
    return { rule, xs: Float64Array.from(effects, ([, x]) => x), ys: Float64Array.from(effects, ([, , y]) => y) };
}

function corners(rule: Rule, xs: Float64Array, ys: Float64Array): Uint8Array[] {
    const placements = placementsFor(rule);
    addCorners(placements, rule, xs, ys, 0);
    return Array.from({ length: placements.count }, (_, i) => rowOf(placements, i));
}

function patterns(n: number): Uint8Array[] {
    return Array.from({ length: 2 ** n }, (_, bits) => Uint8Array.from({ length: n }, (_unused, i) => (bits >> i) & 1));
}

test('the greatest and the least are those of all patterns', () => {
    fc.assert(fc.property(rules, ({ effects }) => {
        const { rule, xs } = setUp(effects);
        const { most, least } = extremes(rule, xs, 0);
        const all = patterns(effects.length).map((present) => combined(rule, present, 7, xs, 0));
        expect(combined(rule, most, 7, xs, 0)).toBeCloseTo(Math.max(...all), 9);
        expect(combined(rule, least, 7, xs, 0)).toBeCloseTo(Math.min(...all), 9);
    }));
});

test('in any direction of two effects a corner lies as far out as any pattern', () => {
    fc.assert(fc.property(rules, ({ effects, direction }) => {
        const { rule, xs, ys } = setUp(effects);
        const reach = (present: Uint8Array): number =>
            Math.cos(direction) * combined(rule, present, 0, xs, 0) + Math.sin(direction) * combined(rule, present, 0, ys, 0);
        const found = Math.max(...corners(rule, xs, ys).map(reach));
        expect(found).toBeCloseTo(Math.max(...patterns(effects.length).map(reach)), 6);
    }));
});

test('there are no more corners than twice the loads', () => {
    fc.assert(fc.property(rules, ({ effects }) => {
        const { rule, xs, ys } = setUp(effects);
        const found = corners(rule, xs, ys);
        expect(found.length).toBeLessThanOrEqual(Math.max(1, 2 * effects.length));
        expect(new Set(found.map(placementKey)).size).toBe(found.length);
    }));
});

test('keys of many loads stay apart', () => {
    const one = new Uint8Array(60);
    const other = one.slice();
    other[59] = 1;
    expect(placementKey(one)).not.toBe(placementKey(other));
});
