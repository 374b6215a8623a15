/** E from readings, against SciPy's curve_fit and against the E that readings were made with. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { standardGravity as g } from '../../language/src/quantity.js';
import { backFigure } from '../../server/src/proof-load/back-figure.js';
import { member, model } from '../oracle/fixture.js';
import { predictedFor, tested } from './yard.js';

interface Stored {
    readonly b: number; readonly h: number; readonly L: number; readonly G: number;
    readonly cases: readonly { readonly E_true: number; readonly noise: number; readonly rows: readonly [number, number][]; readonly read: readonly number[]; readonly E: number; readonly scatter: number }[];
}
const stored = JSON.parse(readFileSync(new URL('oracle/curve-fit.json', import.meta.url), 'utf8')) as Stored;
const { b, h, L, G } = stored;
const [I, As] = [b * h ** 3 / 12, 5 / 6 * b * h];
const flexibility = (x: number, E: number): number => x ** 2 * (L - x) ** 2 / (3 * E * I * L) + x * (L - x) / (G * As * L);

describe('by SciPy curve_fit on the closed form', () => {
    test.each(stored.cases)('E $E_true MPa, noise $noise mm: the same E and the same standard error, through the whole analysis', ({ rows, read, E, scatter }) => {
        // C24 has the shear modulus of the stored cases.
        const yard = model([member({ length: L, b, h, supports: [{ at: 0 }, { at: L }] })], [{ q: 1 }]);
        const result = tested(yard, {
            blocks: [0, L], weights: rows.map(([mass, x]) => [mass, x] as const), reads: rows.map(([mass], i) => [mass, read[i]!] as const)
        });
        const distinct = new Set(rows.map(([mass]) => mass)).size === rows.length;
        // A reading finds its weight by the mass: cases with one mass at two places are put to the least squares alone.
        const found = distinct ? { E: result.E?.value, scatter: result.EScatter?.value }
            : backFigure(rows.map(([mass, x], i) => ({ read: read[i]!, predicted: (modulus) => mass * g * flexibility(x, modulus) })), 11_000);
        expect(Math.abs(found!.E! / E - 1)).toBeLessThan(1e-4);
        expect(Math.abs(found!.scatter! - scatter)).toBeLessThan(1e-3 * scatter + 0.5);
    });
});

/** Uniform in 0..1, the same each time: Park and Miller's generator. */
function random(seed: number): () => number {
    let state = seed;
    return () => (state = state * 48_271 % 2_147_483_647) / 2_147_483_647;
}
const normal = (next: () => number): number => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());

describe('readings from a known E with noise', () => {
    test('400 tests of 8 weights: E within one standard error of it in two of three, within three in all but a few, and right in the mean', () => {
        const next = random(20_260);
        const [E, noise, tests] = [10_300, 0.15, 400];
        const found = Array.from({ length: tests }, () => backFigure([1, 2, 3, 4, 5, 6, 7, 8].map(i => {
            const P = 100 * i * g;
            return { read: P * flexibility(L / 2, E) + noise * normal(next), predicted: (modulus: number) => P * flexibility(L / 2, modulus) };
        }), 9000)!);
        const within = (errors: number): number => found.filter(one => Math.abs(one.E - E) <= errors * one.scatter!).length / tests;
        // Student's t with 7 degrees of freedom: 0.649 and 0.980.
        expect(within(1)).toBeGreaterThan(0.58);
        expect(within(1)).toBeLessThan(0.72);
        expect(within(3)).toBeGreaterThan(0.95);
        expect(within(3)).toBeLessThan(1.0001);
        expect(Math.abs(found.reduce((sum, one) => sum + one.E, 0) / tests / E - 1)).toBeLessThan(2e-3);
    });

    test('of leaves with bolts, where E and sinking are no straight line: the E of the readings comes back', () => {
        const bolts = [200, 500, 800, 1100, 1400, 1700, 2000, 2300, 2600, 2900, 3200, 3400].map(x => [x, 0] as const);
        const leaves = (material: string) => ({ ...member({ length: 3600, b: 50, h, supports: [{ at: 0 }, { at: 3600 }], plies: { count: 2, bolts, butts: [[1, 1250]] } }), material });
        const sketch = { blocks: [0, 3600], weights: [[100, 1800], [200, 1800]] as const };
        // Readings as C30 would give them (12 000 MPa) to a calculation that takes C24, whose bolts and G are almost those.
        const reads = predictedFor(model([leaves('C30')], [{ q: 1 }]), sketch).map((value, i) => [sketch.weights[i]![0], value] as const);
        const { E, EMean } = tested(model([leaves('C24')], [{ q: 1 }]), { ...sketch, reads });
        expect(EMean).toEqual({ value: 11_000, unit: 'MPa' });
        expect(E!.value).toBeGreaterThan(11_800);
        expect(E!.value).toBeLessThan(13_600);
    });
});

describe('what cannot be back-figured', () => {
    const simple = (read: number) => backFigure([{ read, predicted: E => 1e4 / E + 1 }], 10_000);
    test('one reading has no scatter', () => {
        expect(simple(2)).toEqual({ E: expect.closeTo(10_000, 3) });
    });
    test('less than shear alone would give, or nothing read', () => {
        expect(simple(0.5)).toBeUndefined();
        expect(backFigure([], 10_000)).toBeUndefined();
    });
    test('far softer than any timber', () => {
        expect(simple(200)).toBeUndefined();
    });
});
