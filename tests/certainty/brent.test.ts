import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Asking, Worst } from '../../server/src/certainty/asking.js';
import { tried } from '../../server/src/certainty/asking.js';
import { crossing, type Crossing } from '../../server/src/certainty/brent.js';
import oracle from './oracle/brentq.json' with { type: 'json' };

type Utilisation = (x: number) => number;

function answered<T>(asking: Asking<number, T>, utilisation: Utilisation): { readonly result: T; readonly asked: number } {
    let asked = 0;
    let step = asking.next();
    while (!step.done) {
        asked += 1;
        const worst: Worst = { utilisation: utilisation(step.value), check: 'B1.bending', without: [], failing: [] };
        step = asking.next(worst);
    }
    return { result: step.value, asked };
}

function* between(low: number, high: number): Asking<number, Crossing> {
    return yield* crossing(yield* tried(low), yield* tried(high), high - low);
}

const cases: readonly (readonly [keyof typeof oracle.roots, Utilisation, number, number])[] = [
    ['residual depth', (t) => 0.4 / (1 - t / 240) ** 2, 0, 239.9],
    ['line', (q) => 0.13 + 0.51 * q, 0, 10],
    ['hyperbola', (l) => 61 / (l + 30), 0, 400],
    ['root', (x) => Math.sqrt(x / 7), 1, 50],
    ['steep', (x) => Math.exp(3 * (x - 2)), 0, 9],
    ['falling', (x) => 5 * Math.exp(-x), 0, 20]
];

describe('where a utilisation reaches 1', () => {
    it.each(cases)('agrees with scipy.optimize.brentq: %s', (name, utilisation, low, high) => {
        const { result, asked } = answered(between(low, high), utilisation);
        expect(result.passing.value).toBeCloseTo(oracle.roots[name], 4);
        expect(result.passing.utilisation).toBeLessThanOrEqual(1);
        expect(result.passing.utilisation).toBeGreaterThan(1 - 1e-6);
        expect(asked).toBeLessThan(16);
    });

    it('finds a root that is flat to the third power, where a value near to 1 says little of its place', () => {
        const { result } = answered(between(0, 4), (x) => 1 + (x - 1.7) ** 3);
        expect(Math.abs(result.passing.value - oracle.roots.flat)).toBeLessThan(1e-2);
        expect(result.passing.utilisation).toBeLessThanOrEqual(1);
    });

    it('closes in on a jump, with Infinity on the far side', () => {
        const { result } = answered(between(0, 10), (x) => (x < Math.PI ? 0.3 : Infinity));
        expect(result.passing.value).toBeLessThan(Math.PI);
        expect(result.failing.value).toBeGreaterThanOrEqual(Math.PI);
        expect(result.failing.value - result.passing.value).toBeLessThanOrEqual(2e-4);
    });

    it('goes on where a check stays at 1, until another takes over', () => {
        const { result } = answered(between(2, 10), (x) => Math.max(1, x / 7));
        expect(result.passing.value).toBeCloseTo(7, 6);
    });

    it('ends on the passing side for any power, either way round', () => {
        fc.assert(fc.property(fc.double({ min: 0.2, max: 6, noNaN: true }), fc.double({ min: 1, max: 99, noNaN: true }), fc.boolean(), (power, root, falls) => {
            const { result } = answered(between(0.1, 100), (x) => (falls ? root / x : x / root) ** power);
            expect(result.passing.value).toBeCloseTo(root, 3);
            expect(result.passing.utilisation).toBeLessThanOrEqual(1);
            expect(result.failing.utilisation).toBeGreaterThan(1);
        }));
    });
});
