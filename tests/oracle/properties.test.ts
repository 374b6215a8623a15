/** What must hold for every structure: equilibrium, superposition, symmetry, and that more loads never narrow an envelope. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Action, Face } from '../../language/src/model.js';
import type { MemberActions, Range } from '../../server/src/analysis/actions.js';
import { elastic, member, model, recommended, single, solve, type LoadSketch, type MemberSketch } from './fixture.js';
import { unfactored } from './figures.js';

const properties = elastic(11000);
const faces: Face[] = ['top', 'bottom', 'left', 'right'];

const beams: fc.Arbitrary<MemberSketch> = fc.record({
    spans: fc.array(fc.integer({ min: 800, max: 6000 }), { minLength: 1, maxLength: 4 }),
    start: fc.integer({ min: 0, max: 900 }),
    end: fc.integer({ min: 0, max: 900 }),
    h: fc.integer({ min: 120, max: 400 }),
    loss: fc.option(fc.tuple(fc.double({ min: 0, max: 0.5, noNaN: true }), fc.double({ min: 0.05, max: 0.5, noNaN: true }), fc.constantFrom(...faces), fc.integer({ min: 1, max: 40 }))),
    slope: fc.constantFrom(0, 0, 0.3, -0.6)
}).map(({ spans, start, end, h, loss, slope }) => {
    const stops = spans.reduce((list, span) => [...list, list.at(-1)! + span], [start]);
    const length = stops.at(-1)! + end;
    return {
        length, h, slope, supports: stops.map((at) => ({ at })),
        losses: loss ? [{ from: loss[0] * length, to: (loss[0] + loss[1]) * length, [loss[2]]: loss[3] }] : []
    };
});

const kinds: readonly Action[] = [
    { kind: 'permanent' }, { kind: 'imposed', category: 'A' }, { kind: 'imposed', category: 'H' }, { kind: 'snow' }, { kind: 'wind' }
];
interface Share { readonly action: Action; readonly size: number; readonly a: number; readonly b: number; readonly point: boolean }
/** Finer than this, ends of loads are put to the next node. */
const part = fc.integer({ min: 0, max: 5000 }).map((n) => n / 5000);
const shares: fc.Arbitrary<Share> = fc.record({
    action: fc.constantFrom(...kinds), size: fc.integer({ min: 1, max: 9 }), a: part, b: part, point: fc.boolean()
});

function placed({ action, size, a, b, point }: Share, length: number, name: string): LoadSketch {
    return point ? { name, action, F: size * 1000, at: a * length } : { name, action, q: size, from: Math.min(a, b) * length, to: Math.max(a, b) * length };
}

const permanent = ({ q, F, ...rest }: LoadSketch, factor = 1): LoadSketch =>
    ({ ...rest, action: { kind: 'permanent' }, ...(F === undefined ? { q: q! * factor } : { F: F * factor }) });

const total = (loads: readonly LoadSketch[]): number => loads.reduce((sum, { q, F, from = 0, to = 0 }) => sum + (F ?? q! * (to - from)), 0);

describe('every beam', () => {
    test('stands in equilibrium: reactions sum to the loads, moments about the start too', () => {
        fc.assert(fc.property(beams, fc.array(shares, { maxLength: 4 }), (drawn, list) => {
            // On a slope a load on a shifted axis stands a little to the side.
            const sketch = drawn.slope === 0 ? drawn : { ...drawn, losses: [] };
            const loads = list.map((share, i) => permanent(placed(share, sketch.length, `load ${i}`)));
            const { supports } = single(sketch, loads, properties, unfactored);
            expect(supports.reduce((sum, { design }) => sum + design.max, 0)).toBeCloseTo(total(loads), 3);
            const turning = loads.reduce((sum, { q, F, at, from = 0, to = 0 }) => sum + (F === undefined ? q! * (to - from) * (from + to) / 2 : F * at!), 0);
            const scale = Math.max(1, total(loads)) * sketch.length;
            expect(supports.reduce((sum, { design, at }) => sum + design.max * at, 0) / scale).toBeCloseTo(turning / scale, 5);
        }));
    });
    test('self weight is density times volume times g', () => {
        fc.assert(fc.property(beams, (sketch) => {
            const { supports, weight } = single({ ...sketch, losses: [], selfWeight: true }, [], properties, unfactored);
            const wanted = 420e-9 * 100 * sketch.h! * sketch.length * 9.80665;
            expect(weight).toBeCloseTo(wanted, 6);
            expect(supports.reduce((sum, { design }) => sum + design.max, 0)).toBeCloseTo(wanted, 6);
        }));
    });
    test('adds up: twice a load and another are the sum of both', () => {
        fc.assert(fc.property(beams, shares, shares, (sketch, one, other) => {
            const a = placed(one, sketch.length, 'a');
            const b = placed(other, sketch.length, 'b');
            const solved = (f: number, g: number): MemberActions => single(sketch, [permanent(a, f), permanent(b, g)], properties, unfactored);
            const [both, first, second] = [solved(2, 1), solved(1, 0), solved(0, 1)];
            both.supports.forEach(({ design }, i) => {
                expect(design.max).toBeCloseTo(2 * first.supports[i]!.design.max + second.supports[i]!.design.max, 3);
            });
            const at = (of: MemberActions, x: number): number | undefined => of.diagrams.instant.find((point) => Math.abs(point.x - x) < 1e-6)?.max;
            for (const { x, max } of both.diagrams.instant) {
                const [f, s] = [at(first, x), at(second, x)];
                if (f !== undefined && s !== undefined) expect(max).toBeCloseTo(2 * f + s, 6);
            }
        }));
    });
    test('turned round, it is the same', () => {
        fc.assert(fc.property(beams, fc.array(shares, { maxLength: 3 }), (drawn, list) => {
            const sketch = { ...drawn, slope: 0 };
            const { length } = sketch;
            const loads = list.map((share, i) => placed(share, length, `load ${i}`));
            const mirrored = {
                ...sketch,
                supports: sketch.supports.map(({ at }) => ({ at: length - at })),
                losses: sketch.losses!.map(({ from, to, ...rest }) => ({ ...rest, from: length - to, to: length - from }))
            };
            const turned = loads.map(({ at, from, to, ...rest }): LoadSketch => ({ ...rest, ...(at === undefined ? { from: length - to!, to: length - from! } : { at: length - at }) }));
            const [a, b] = [single(sketch, loads, properties), single(mirrored, turned, properties)];
            const reach = (of: MemberActions): number[] => {
                const M = of.stations.flatMap(({ states }) => states.map((state) => state.M));
                return [Math.max(0, ...M), Math.min(0, ...M), ...of.supports.flatMap(({ design }) => [design.min, design.max])];
            };
            const scale = Math.max(1, ...reach(a).map(Math.abs));
            reach(a).forEach((value, i) => expect(value / scale).toBeCloseTo(reach(b)[i]! / scale, 5));
            const sag = (of: MemberActions): number => Math.max(0, ...of.instant.map(({ value }) => Math.abs(value)));
            expect(sag(a)).toBeCloseTo(sag(b), 6);
        }));
    });
    test('has no narrower an envelope for a further variable load', () => {
        fc.assert(fc.property(beams, fc.array(shares, { maxLength: 3 }), shares, (sketch, list, more) => {
            const loads = list.map((share, i) => placed(share, sketch.length, `load ${i}`));
            const further = placed({ ...more, action: { kind: 'imposed', category: 'A' } }, sketch.length, 'more');
            const [before, after] = [single(sketch, loads, properties), single(sketch, [...loads, further], properties)];
            // A load's end may fall on a place that the further one has made, 1e-5 of the length away.
            const snapped = ({ min, max }: Range): number => 1e-3 + 1e-4 * (max - min);
            before.supports.forEach(({ design }, i) => {
                expect(after.supports[i]!.design.max).toBeGreaterThanOrEqual(design.max - snapped(design));
                expect(after.supports[i]!.design.min).toBeLessThanOrEqual(design.min + snapped(design));
            });
        }));
    });
    test('bears at least what it bears with every span loaded, but for what a short end turns', () => {
        fc.assert(fc.property(beams, shares, (sketch, share) => {
            const load = placed({ ...share, point: false, a: 0, b: 1 }, sketch.length, 'floor');
            const patterned = single(sketch, [{ ...load, action: { kind: 'imposed', category: 'A' } }], properties);
            const full = single(sketch, [{ ...load, action: { kind: 'snow' } }], properties);
            full.supports.forEach(({ design }, i) => expect(patterned.supports[i]!.design.max).toBeGreaterThanOrEqual(design.max * (1 - 1e-3) - 1e-3));
            const reach = (of: MemberActions): number => Math.max(...of.stations.flatMap(({ states }) => states.map(({ M }) => Math.abs(M))));
            expect(reach(patterned)).toBeGreaterThanOrEqual(reach(full) * (1 - 1e-3));
        }));
    });
    test('does not mind loads that all but meet', () => {
        fc.assert(fc.property(beams, shares, fc.double({ min: 0.01, max: 2, noNaN: true }), (drawn, share, gap) => {
            const sketch = { ...drawn, losses: [] };
            const at = 0.1 * sketch.length + share.a * 0.8 * sketch.length;
            const [one, two] = [[{ F: 2000, at }], [{ name: 'a', F: 1000, at: at - gap / 2 }, { name: 'b', F: 1000, at: at + gap / 2 }]];
            const [a, b] = [single(sketch, one, properties, unfactored), single(sketch, two, properties, unfactored)];
            a.supports.forEach(({ design }, i) => expect(Math.abs(design.max - b.supports[i]!.design.max)).toBeLessThan(20));
        }));
    });
});

describe('members that meet', () => {
    test('SPR-01 again: a crossing beam is the spring it is, and gets what the spring would', () => {
        fc.assert(fc.property(fc.integer({ min: 1000, max: 4000 }), fc.integer({ min: 120, max: 300 }), fc.integer({ min: 1, max: 9 }), (length, h, q) => {
            const carrier: MemberSketch = { name: 'under', length, b: 80, h, supports: [{ at: 0 }, { at: length }] };
            const softness = single(carrier, [{ F: 1, at: length / 2 }], properties, unfactored).instant[0]!.value;
            const upper = (middle: MemberSketch['supports'][number]): MemberSketch => ({ name: 'over', length: 5000, supports: [{ at: 0 }, middle, { at: 5000 }] });
            const sprung = single(upper({ at: 2000, kind: 'spring', k: 1 / softness }), [{ q }], properties, unfactored);
            const { members } = solve(model([
                member(upper({ at: 2000, kind: 'member', on: 'under', onCarrierAt: length / 2 })), member(carrier)
            ], [{ q }]), properties, unfactored);
            const [over, under] = [members[0]!, members[1]!];
            over.supports.forEach(({ design }, i) => expect(design.max).toBeCloseTo(sprung.supports[i]!.design.max, 4));
            expect(under.crossings[0]!.design.max).toBeCloseTo(over.supports[1]!.design.max, 6);
            expect(under.crossings[0]).toMatchObject({ support: 'over', at: length / 2 });
            expect(under.supports[0]!.design.max).toBeCloseTo(over.supports[1]!.design.max / 2, 6);
            expect(under.instant[0]!.value).toBeCloseTo(softness * over.supports[1]!.design.max, 6);
        }), { numRuns: 30 });
    });
    test('a post passes its beam down, squeezed by it', () => {
        const post = member({ name: 'post', kind: 'post', length: 2400, b: 100, h: 100, supports: [{ at: 0, on: 'floor' }] });
        const beam = member({ name: 'beam', length: 4000, supports: [{ at: 0 }, { at: 3900, kind: 'member', on: 'post' }] });
        const { members } = solve(model([beam, post], [{ q: 2 }]), properties, unfactored);
        const R = 2 * 4000 * 2000 / 3900;
        expect(members[0]!.supports[1]!.design.max).toBeCloseTo(R, 6);
        expect(members[1]!.supports[0]!.design.max).toBeCloseTo(R, 6);
        expect(members[1]!.diagrams.N.every(({ max }) => Math.abs(max + R) < 1e-6)).toBe(true);
        expect(members[1]!.spans).toEqual([{ from: 0, to: 2400, overhang: false }]);
    });
    test('members that do not meet are solved as if alone', () => {
        const one = member({ name: 'one', length: 4000, supports: [{ at: 0 }, { at: 4000 }], selfWeight: true });
        const other = member({ name: 'other', length: 3000, supports: [{ at: 0 }, { at: 3000 }] });
        const loads: LoadSketch[] = [{ on: 'one', name: 'a', q: 1, action: { kind: 'snow' } }];
        const together = solve(model([one, other], [...loads, { on: 'other', name: 'b', q: 2 }]), properties, recommended);
        const [alone] = solve(model([one], loads), properties, recommended).members;
        expect(together.members[0]).toEqual(alone);
        expect(together.cases).toEqual([...alone!.cases, ...together.members[1]!.cases]);
    });
    test('the order of the file does not matter', () => {
        const beam = member({ name: 'beam', length: 4000, supports: [{ at: 4000 }, { at: 0 }] });
        const joists = [1000, 2000, 3000].map((x, i) => member({ name: `joist ${i}`, length: 3000, supports: [{ at: 0 }, { at: 3000, kind: 'member', on: 'beam', onCarrierAt: x }] }));
        const loads: LoadSketch[] = joists.map(({ name }) => ({ on: name, name: `floor ${name}`, q: 1, action: { kind: 'imposed', category: 'A' } }));
        const reaction = (list: typeof joists): number[] => solve(model(list, loads), properties, recommended).members.find((one) => one.member === 'beam')!.supports.map(({ design }) => design.max);
        const [a, b] = [reaction([beam, ...joists]), reaction([...joists].reverse().concat(beam))];
        a.forEach((R, i) => expect(R).toBeCloseTo(b[i]!, 6));
        expect(a[0]).toBeCloseTo(1.5 * 1.5 * 1500, 3);
    });
});
