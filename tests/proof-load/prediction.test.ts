/** What a test should show, against closed forms of beams with shear (Timoshenko), and the band of E. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Model } from '../../language/src/model.js';
import { standardGravity as g } from '../../language/src/quantity.js';
import { upperModulus } from '../../server/src/proof-load/moduli.js';
import { member, model, type MemberSketch } from '../oracle/fixture.js';
import { predictedFor, tested } from './yard.js';

/** C24, EN 338: mean, 5 % and mean shear modulus, MPa. */
const [E, low, G] = [11_000, 7400, 690];
const [b, h, L] = [100, 200, 4000];
const [I, As] = [b * h ** 3 / 12, 5 / 6 * b * h];
const beam = (over: Partial<MemberSketch> = {}): Model => model([member({ length: L + 400, b, h, supports: [{ at: 100 }, { at: L + 300 }], ...over })], [{ q: 1 }]);
/** Blocks 200 mm from either end, so that the span is L and x is from the left one. */
const blocks = [200, L + 200];
const at = (x: number): number => 200 + x;
const relative = (actual: number, wanted: number): number => Math.abs(actual / wanted - 1);

/** A force at x, and the deflection there; handbook case of a simple beam, with its shear. */
const under = (P: number, x: number, E1 = E, G1 = G): number => P * x ** 2 * (L - x) ** 2 / (3 * E1 * I * L) + P * x * (L - x) / (G1 * As * L);

describe('predictions', () => {
    test.each([2000, 1300, 400])('a weight at %s mm of the span sinks as the closed form has it, shear included', (x) => {
        const [predicted] = predictedFor(beam(), { blocks, weights: [[300, at(x)]] });
        expect(relative(predicted!, under(300 * g, x))).toBeLessThan(1e-3);
        expect(predicted!).toBeGreaterThan(under(300 * g, x, E, 1e12));
    });

    test('a weight spread over c in the middle: W (8 L³ - 4 L c² + c³) / 384 EI, and W (L/4 - c/8) / G A of shear', () => {
        const c = 600;
        const W = 480 * g;
        const [predicted] = predictedFor(beam(), { blocks, weights: [[480, at(L / 2), c]] });
        expect(relative(predicted!, W * (8 * L ** 3 - 4 * L * c ** 2 + c ** 3) / (384 * E * I) + W * (L / 4 - c / 8) / (G * As))).toBeLessThan(1e-3);
    });

    test('on an end beyond the blocks: P a² (L + a) / 3 EI, and P a (L + a) / L of shear', () => {
        const span = 3000;
        const a = 1000;
        const P = 100 * g;
        const [predicted] = predictedFor(beam(), { blocks: [200, 200 + span], weights: [[100, 200 + span + a]] });
        expect(relative(predicted!, P * a ** 2 * (span + a) / (3 * E * I) + P * a * (span + a) / (span * G * As))).toBeLessThan(1e-3);
    });

    test('the band is from the 95 % modulus to the 5 % one, G in proportion', () => {
        const point = tested(beam(), { blocks, weights: [[300, at(2000)]] }).points[0]!;
        expect(relative(point.high.value, under(300 * g, 2000, low, G * low / E))).toBeLessThan(1e-3);
        const high = upperModulus(E, low);
        expect(relative(point.low.value, under(300 * g, 2000, high, G * high / E))).toBeLessThan(1e-3);
        expect(point.low.value).toBeLessThan(point.predicted.value);
    });

    test('its own weight and its loads in place are not in the readings; slope and camber of its place are not either', () => {
        const bare = predictedFor(beam(), { blocks, weights: [[300, at(2000)]] });
        expect(predictedFor(beam({ selfWeight: true, precamber: 10, slope: 0.4 }), { blocks, weights: [[300, at(2000)]] })).toEqual(bare);
    });

    test('a loss makes it softer', () => {
        const [whole] = predictedFor(beam(), { blocks, weights: [[300, at(2000)]] });
        const [eaten] = predictedFor(beam({ losses: [{ from: 1800, to: 2600, top: 40 }] }), { blocks, weights: [[300, at(2000)]] });
        expect(eaten!).toBeGreaterThan(1.1 * whole!);
    });
});

describe('leaves', () => {
    const bolts = [300, 900, 1500, 2200, 2900, 3500, 4100].map(x => [x, 0] as const);
    const plies = (over: Partial<MemberSketch> = {}): Model => beam({ b: 50, plies: { count: 3, bolts }, ...over });

    test('two of three unbroken ones are worth two', () => {
        const [two] = predictedFor(plies(), { leaves: [1, 3], blocks, weights: [[300, at(2000)]] });
        expect(relative(two!, under(300 * g, 2000))).toBeLessThan(1e-3);
        const [all] = predictedFor(plies(), { blocks, weights: [[300, at(2000)]] });
        expect(relative(all!, 2 / 3 * two!)).toBeLessThan(1e-6);
    });

    test('the butts of leaves that are not tested are not there', () => {
        const broken = plies({ plies: { count: 3, bolts, butts: [[3, 2000]] } });
        expect(predictedFor(broken, { leaves: [1, 2], blocks, weights: [[300, at(2000)]] }))
            .toEqual(predictedFor(plies(), { leaves: [1, 2], blocks, weights: [[300, at(2000)]] }));
        const [withIt] = predictedFor(broken, { leaves: [2, 3], blocks, weights: [[300, at(2000)]] });
        expect(withIt!).toBeGreaterThan(1.2 * under(300 * g, 2000));
    });

    test('a loss from the left eats the leaves in their order, whichever are tested', () => {
        // 30 mm of leaf 1 alone.
        const eaten = plies({ losses: [{ from: 0, to: L + 400, left: 30 }] });
        const sound = predictedFor(plies(), { leaves: [2, 3], blocks, weights: [[300, at(2000)]] });
        expect(predictedFor(eaten, { leaves: [2, 3], blocks, weights: [[300, at(2000)]] })).toEqual(sound);
        const [first] = predictedFor(eaten, { leaves: [1], blocks, weights: [[300, at(2000)]] });
        // One leaf of 20 mm instead of two of 50 mm.
        expect(relative(first!, 5 * under(300 * g, 2000))).toBeLessThan(1e-3);
        // And from the right leaf 3 first.
        const right = plies({ losses: [{ from: 0, to: L + 400, right: 30 }] });
        expect(predictedFor(right, { leaves: [1, 2], blocks, weights: [[300, at(2000)]] })).toEqual(sound);
        expect(relative(predictedFor(right, { leaves: [3], blocks, weights: [[300, at(2000)]] })[0]!, first!)).toBeLessThan(1e-9);
    });
});

test('the upper value of E is that of the lognormal distribution with this mean and 5 % value: SciPy', () => {
    const stored = JSON.parse(readFileSync(new URL('oracle/lognormal.json', import.meta.url), 'utf8')) as { mean: number; low: number; high: number }[];
    for (const { mean, low: fifth, high } of stored) expect(relative(upperModulus(mean, fifth), high)).toBeLessThan(1e-4);
    expect(upperModulus(11_000, 11_000)).toBe(11_000);
});
