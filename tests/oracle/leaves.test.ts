/** Members of leaves: the limits that must come out, whatever the bolts. */
import { describe, expect, test } from 'vitest';
import type { MemberActions } from '../../server/src/analysis/actions.js';
import { elastic, member, model, recommended, single, solve, type LoadSketch, type MemberSketch, type PliesSketch } from './fixture.js';

const span = 4700;
const supports = [{ at: 0 }, { at: span }];
const loads: readonly LoadSketch[] = [{ q: 4, action: { kind: 'imposed', category: 'A' } }];
const plain = { ...recommended, gammaG: 1, gammaGfavourable: 1, gammaQ: 1 };

const bolts = (pitch: number, zigzag = 50): readonly (readonly [number, number])[] => {
    const count = Math.ceil((span - 200) / pitch);
    return Array.from({ length: count + 1 }, (_, i): [number, number] => [100 + ((span - 200) * i) / count, [zigzag, 0, -zigzag, 0][i % 4]!]);
};
const sketch = (plies: PliesSketch): MemberSketch => ({ length: span, b: 63, h: 200, supports, plies });
const built = (plies: PliesSketch, slip: number, of = loads, kdef = 0): MemberActions => single(sketch(plies), of, elastic(11000, { kdef, slip: () => slip }), plain);
const alone = (b: number, of = loads): MemberActions => single({ length: span, b, h: 200, supports }, of, elastic(11000, { kdef: 0 }), plain);

const most = (points: readonly { readonly max: number }[]): number => Math.max(...points.map(({ max }) => max));
const slipM12 = 420 ** 1.5 * 12 / 23;
/** The trade's way: two outer leaves broken at one place, the middle one at another. */
const staggered: PliesSketch = { count: 3, butts: [[1, 1800], [3, 1800], [2, 2900]], bolts: bolts(350) };

describe('limits', () => {
    test.each([1, 2, 3, 5])('%i leaves without butts on rigid bolts are that many leaves', (count) => {
        const one = built({ count, bolts: bolts(350) }, 1e7);
        const whole = alone(63 * count);
        expect(one.instant[0]!.value / whole.instant[0]!.value).toBeCloseTo(1, 6);
        expect(most(one.diagrams.M) / most(whole.diagrams.M)).toBeCloseTo(1, 9);
        expect(one.stiffnessRatio).toBe(count === 1 ? undefined : one.stiffnessRatio);
        if (count > 1) expect(one.stiffnessRatio).toBeCloseTo(count, 5);
        for (const leaf of one.leaves ?? []) expect(leaf.moment.max * count / most(whole.diagrams.M)).toBeCloseTo(1, 6);
        for (const bolt of one.bolts ?? []) for (const { along, across } of bolt.states) expect(Math.hypot(along, across)).toBeLessThan(1e-3);
    });
    test('without bolts the broken leaf carries nothing and the others all', () => {
        const one = built({ count: 3, butts: [[2, 2000]] }, slipM12);
        expect(one.leaves!.map(({ moment, shear }) => [moment, shear])[1]).toEqual([{ min: 0, max: 0 }, { min: 0, max: 0 }]);
        expect(one.leaves![0]!.moment.max).toBeCloseTo(4 * span ** 2 / 8 / 2, 3);
        expect(one.stiffnessRatio).toBeCloseTo(2, 9);
        expect(one.instant[0]!.value).toBeCloseTo(alone(126).instant[0]!.value, 9);
        expect(one.supports.map(({ design }) => design.max)).toEqual([4 * span / 2, 4 * span / 2].map((R) => expect.closeTo(R, 3)));
    });
    test('with soft bolts the broken leaf carries little, with stiff ones more', () => {
        const share = (slip: number): number => built({ count: 3, butts: [[2, 2000]], bolts: bolts(350) }, slip).leaves![1]!.moment.max;
        const shares = [1, 100, 1000, 1e4, 1e5].map(share);
        shares.slice(1).forEach((moment, i) => expect(moment).toBeGreaterThan(shares[i]!));
        expect(shares[0]!).toBeLessThan(0.05 * 4 * span ** 2 / 8);
    });
    test('every leaf broken at one place folds, by name and place', () => {
        const of = (plies: PliesSketch) => solve(model([member(sketch(plies))], loads), elastic(11000, { slip: () => slipM12 }));
        const butts = [1, 2, 3].map((leaf): [number, number] => [leaf, 2000]);
        for (const plies of [{ count: 3, butts }, { count: 3, butts, bolts: bolts(350) }]) {
            expect(of(plies).members).toEqual([]);
            expect(of(plies).findings.map(({ code, message }) => [code, message])).toEqual([
                ['mechanism', 'B1 folds at 2.00 m: every leaf is broken there and nothing joins the ends']
            ]);
        }
    });
    test('where every run is held by one bolt too few, it says so', () => {
        const { findings, members } = solve(model([member(sketch({ count: 2, butts: [[1, 1000], [2, 3500]] }))], loads), elastic(11000, { slip: () => slipM12 }));
        expect(members).toEqual([]);
        expect(findings.map(({ code, message }) => [code, message])).toEqual([['mechanism', expect.stringMatching(/^B1 comes apart: at \d\.\d\d m too few bolts hold any of its leaves$/)]]);
    });
    test('a load on one leaf reaches the others through the bolts alone', () => {
        const leafLoad: LoadSketch[] = [{ F: 5000, at: span / 2, leaf: 1, action: { kind: 'imposed', category: 'A' } }];
        const one = built({ count: 2, bolts: [[1500, 0], [3200, 0]] }, slipM12, leafLoad);
        const across = one.bolts!.map(({ states }) => Math.max(...states.map((state) => state.across)));
        // Two equal bolts bear the second leaf up: its ends take what they bring.
        expect(across[0]! + across[1]!).toBeGreaterThan(1500);
        expect(one.leaves![1]!.moment.max).toBeCloseTo(across[0]! * 1500, 0);
        const none = built({ count: 2 }, slipM12, leafLoad);
        expect(none.leaves![1]!.moment.max).toBe(0);
        expect(none.leaves![0]!.moment.max).toBeCloseTo(5000 * span / 4, 3);
    });
    test('a support of some leaves leaves the others to the bolts', () => {
        const one = single({ ...sketch({ count: 3, bolts: bolts(350) }), supports: [{ at: 0, leaves: [1] }, { at: span }] }, loads, elastic(11000, { kdef: 0, slip: () => slipM12 }), plain);
        const at0 = one.bolts!.filter(({ x }) => x === 100).map(({ states }) => Math.min(...states.map(({ across }) => across)));
        expect(one.supports[0]!.design.max).toBeCloseTo(4 * span / 2, 3);
        for (const across of at0) expect(across).toBeLessThan(-1000);
    });
});

describe('what holds of every arrangement', () => {
    const one = built(staggered, slipM12);
    test('the leaves together carry what one beam would', () => {
        const whole = alone(189);
        const at = (x: number): number[] => [1, 2, 3].map((leaf) => {
            const station = one.stations.find((candidate) => candidate.leaf === leaf && Math.abs(candidate.x - x) < 1e-6)!;
            return Math.max(...station.states.map(({ M }) => M));
        });
        const places = [...new Set(one.stations.map(({ x }) => x))];
        const middle = places.reduce((best, x) => (Math.abs(x - 2350) < Math.abs(best - 2350) ? x : best));
        expect(at(middle).reduce((a, b) => a + b)).toBeCloseTo(4 * middle * (span - middle) / 2, 2);
        expect(most(one.diagrams.M) / most(whole.diagrams.M)).toBeCloseTo(1, 6);
    });
    test('a butt carries no moment and no shear', () => {
        for (const [leaf, x] of staggered.butts!) {
            const ends = one.stations.filter((station) => station.leaf === leaf && station.x === x);
            expect(ends).toHaveLength(2);
            for (const { states } of ends) for (const { N, V, M } of states) expect([N, V, M].map(Math.abs).every((value) => value < 1e-3)).toBe(true);
        }
    });
    test('each leaf is in balance between two bolts, and with them', () => {
        for (const leaf of [1, 2, 3]) {
            const stations = one.stations.filter((station) => station.leaf === leaf);
            for (const { x, height } of one.bolts!.filter(({ plane }) => plane === 1)) {
                const [left, right] = stations.filter((station) => Math.abs(station.x - x) < 1e-6);
                const combination = left!.states[0]!.combination;
                const jump = right!.states.find((state) => state.combination === combination)!.V - left!.states[0]!.V;
                const here = one.bolts!.filter((bolt) => bolt.x === x && bolt.height === height);
                const force = here.reduce((sum, bolt) => {
                    const { across } = bolt.states.find((state) => state.combination === combination) ?? { across: NaN };
                    return sum + (bolt.plane === leaf ? across : bolt.plane === leaf - 1 ? -across : 0);
                }, 0);
                if (!Number.isNaN(force)) expect(jump).toBeCloseTo(force, 2);
            }
        }
    });
    test('segments and stations are the leaves\'', () => {
        for (const { segment, leaf } of one.stations) expect(one.segments[segment]).toMatchObject({ leaf, b: 63, h: 200 });
        expect(one.leaves!.map(({ pieces }) => pieces)).toEqual([[{ from: 0, to: 1800 }, { from: 1800, to: span }], [{ from: 0, to: 2900 }, { from: 2900, to: span }], [{ from: 0, to: 1800 }, { from: 1800, to: span }]]);
    });
    test('creep softens the bolts twice as much as the timber', () => {
        const crept = built(staggered, slipM12, loads, 0.8);
        const labels = new Set(crept.stations.flatMap(({ states }) => states.map(({ combination }) => combination.label)));
        expect([...labels]).toEqual(expect.arrayContaining(['1.0 load', '1.0 load, after creep']));
        // E/1.8 and K/2.6 share as E and K 1.8/2.6 do.
        const softer = built(staggered, slipM12 * 1.8 / 2.6);
        const greatest = (of: MemberActions, label: string): number[] => of.stations.map(({ states }) => Math.max(...states.filter(({ combination }) => combination.label === label).map(({ M }) => M)));
        const [later, like] = [greatest(crept, '1.0 load, after creep'), greatest(softer, '1.0 load')];
        expect(like.filter(Number.isFinite).length).toBeGreaterThan(100);
        crept.stations.forEach(({ x, leaf }, s) => {
            const other = softer.stations.findIndex((station) => station.leaf === leaf && Math.abs(station.x - x) < 1e-6);
            if (other >= 0 && crept.stations[s - 1]?.x !== x && softer.stations[other + 1]?.x !== x) expect(later[s]! - like[other]!).toBeCloseTo(0, 0);
        });
        // ψ2 = 0.3 of it, with E/1.8 and K/2.6: between 1.8 and 2.6 times as much.
        const ratio = crept.final[0]!.value / (0.3 * crept.instant[0]!.value);
        expect(ratio).toBeGreaterThan(1.8);
        expect(ratio).toBeLessThan(2.6);
    });
});
