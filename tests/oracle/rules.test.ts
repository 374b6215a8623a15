/** Rules for loads, supports and spans, against closed forms worked in the test; the rule's source is beside it. */
import { describe, expect, test } from 'vitest';
import type { Action } from '../../language/src/model.js';
import type { MemberActions } from '../../server/src/analysis/actions.js';
import { durationOf } from '../../server/src/analysis/index.js';
import { elastic, load, member, model, recommended, single, solve, type LoadSketch, type MemberSketch } from './fixture.js';
import { greatest, least, unfactored, valueAt } from './figures.js';

const properties = elastic(11000);
const L = 4000;
const simple: MemberSketch = { length: L, supports: [{ at: 0 }, { at: L }] };
const imposed = (category: 'A' | 'E' | 'H'): Action => ({ kind: 'imposed', category });
const sumOf = (of: MemberActions): number => of.supports.reduce((sum, { design }) => sum + design.max, 0);

describe('loads on a slope', () => {
    const slope = 0.5;
    const rafter = (loads: readonly LoadSketch[], parameters = recommended): MemberActions => single({ ...simple, slope }, loads, properties, parameters);
    test('permanent along the slope, imposed and snow by plan (EN 1991-1-3 5.2(3), from memory)', () => {
        expect(sumOf(rafter([{ q: 2 }], unfactored))).toBeCloseTo(2 * L, 6);
        for (const action of [imposed('H'), { kind: 'snow' } as const]) {
            expect(sumOf(rafter([{ q: 2, action }]))).toBeCloseTo(1.5 * 2 * L * Math.cos(slope), 6);
        }
    });
    test('moment normal to the axis: q cos α L²/8, and the axial part along it', () => {
        const { diagrams } = rafter([{ q: 2 }], unfactored);
        expect(greatest(diagrams.M).max).toBeCloseTo(2 * Math.cos(slope) * L ** 2 / 8, 3);
        // Supported vertically at both ends: half of the weight's share along the slope in compression below, in tension above.
        expect(valueAt(diagrams.N, 0)).toBeCloseTo(-Math.sin(slope) * 2 * L / 2, 6);
        expect(valueAt(diagrams.N, L)).toBeCloseTo(Math.sin(slope) * 2 * L / 2, 6);
    });
    test('wind normal to it: its horizontal part goes to the first support', () => {
        const wind = rafter([{ q: 2, action: { kind: 'wind' } }]);
        expect(greatest(wind.diagrams.M).max).toBeCloseTo(1.5 * 2 * L ** 2 / 8, 3);
        expect(sumOf(wind)).toBeCloseTo(1.5 * 2 * L * Math.cos(slope), 6);
        expect(wind.supports[0]!.horizontal!.min).toBeCloseTo(-1.5 * 2 * L * Math.sin(slope), 6);
        expect(wind.supports[1]!.horizontal).toBeUndefined();
    });
    test('a post is squeezed by what stands on it and bent by wind', () => {
        const post = single({ kind: 'post', length: 2400, supports: [{ at: 0 }, { at: 2400 }] },
            [{ q: 1, action: { kind: 'snow' } }, { name: 'W', q: 1, action: { kind: 'wind' } }, { name: 'P', F: 5000, at: 2400 }], properties);
        expect(least(post.diagrams.N).min).toBeCloseTo(-1.35 * 5000 - 1.5 * 2400, 6);
        expect(greatest(post.diagrams.M).max).toBeCloseTo(1.5 * 2400 ** 2 / 8, 3);
        expect(post.supports[0]!.design.max).toBeCloseTo(1.35 * 5000 + 1.5 * 2400, 6);
    });
});

describe('durations, EN 1995-1-1 Table 2.2 (tables.json, EC5_load_duration; category H and construction from memory)', () => {
    const of = (sketch: LoadSketch) => durationOf(load(sketch, member(simple)));
    test.each([
        [{ kind: 'permanent' }, 'permanent'], [imposed('A'), 'medium-term'], [imposed('E'), 'long-term'], [imposed('H'), 'short-term'],
        [{ kind: 'snow' }, 'short-term'], [{ kind: 'wind' }, 'short-term'], [{ kind: 'construction' }, 'short-term']
    ] as [Action, string][])('%o is %s', (action, duration) => expect(of({ q: 1, action })).toBe(duration));
    test('what the file says comes first', () => expect(of({ q: 1, action: { kind: 'snow' }, lasting: 'medium-term' })).toBe('medium-term'));
    test('a load that does nothing to a member does not set its kmod', () => {
        const carrier = member({ name: 'beam', length: L, supports: [{ at: 0 }, { at: L }] });
        const joist = (name: string, x: number) => member({ name, length: 3000, supports: [{ at: 0 }, { at: 3000, kind: 'member', on: 'beam', onCarrierAt: x }] });
        const { members } = solve(model([carrier, joist('J1', 1000), joist('J2', 2000)], [
            { on: 'J1', name: 'live', q: 1, action: imposed('A') }, { on: 'J2', name: 'snow', q: 1, action: { kind: 'snow' } }
        ]), properties);
        const durations = (name: string) => new Set(members.find((one) => one.member === name)!.stations.flatMap(({ states }) => states.map(({ combination }) => combination.duration)));
        expect(durations('J1')).toEqual(new Set(['permanent', 'medium-term']));
        expect(durations('beam')).toEqual(new Set(['permanent', 'medium-term', 'short-term']));
    });
});

describe('equilibrium, EN 1990 6.4.2 and Table A1.2(A)', () => {
    test('each part of a permanent load by itself: 0.9 where it holds down, 1.1 where it lifts', () => {
        const a = 2000;
        const beam = (P: number): MemberActions => single({ length: L + a, supports: [{ at: 0 }, { at: L }] },
            [{ q: 2 }, { name: 'crowd', F: P, at: L + a, action: imposed('A') }], properties);
        const helps = 2 * L / 2;
        const lifts = 2 * a * (a / 2) / L;
        expect(beam(3000).supports[0]!.equilibriumMin).toBeCloseTo(0.9 * helps - 1.1 * lifts - 1.5 * 3000 * a / L, 6);
        expect(beam(9000).supports[0]!.equilibriumMin).toBeLessThan(0);
        // A load that holds down is left out.
        expect(beam(3000).supports[1]!.equilibriumMin).toBeCloseTo(0.9 * (2 * L / 2 + 2 * a * (L + a / 2) / L), 6);
    });
});

describe('deflection', () => {
    const dead = 1.5;
    const sag = (q: number): number => single(simple, [{ q }], properties).instant[0]!.value;
    test('final is quasi-permanent times 1 + kdef, total is instant plus kdef times quasi-permanent (EN 1995-1-1 2.2.3(5))', () => {
        const { instant, final, total } = single(simple, [{ q: dead }, { name: 'live', q: 2, action: imposed('A') }], properties);
        expect(instant[0]!.value).toBeCloseTo(sag(dead + 2), 9);
        expect(final[0]!.value).toBeCloseTo(sag(dead + 0.3 * 2) * 1.8, 9);
        expect(total[0]!.value).toBeCloseTo(sag(dead + 2) + 0.8 * sag(dead + 0.3 * 2), 9);
        expect([instant, final, total].map(([one]) => one!.combination.label)).toEqual(['1.0 G + 1.0 live', '1.0 G + 0.3 live', '1.0 G + 1.0 live']);
        expect(final[0]!.at).toBeCloseTo(L / 2, 3);
    });
    test('precamber is taken off the final and total ones, not the instant one, and never makes an upward one', () => {
        const solved = (precamber: number): MemberActions => single({ ...simple, precamber }, [{ q: dead }], properties);
        const [none, some, much] = [solved(0), solved(3), solved(1000)];
        expect(some.instant).toEqual(none.instant);
        expect(some.final[0]!.value).toBeCloseTo(none.final[0]!.value - 3, 9);
        expect(some.total[0]!.value).toBeCloseTo(none.total[0]!.value - 3, 9);
        expect(much.final[0]!.value).toBe(0);
        expect(valueAt(some.diagrams.final, L / 2)).toBeCloseTo(some.final[0]!.value, 6);
    });
    test('is measured from the chord between supports, which may themselves move', () => {
        const carrier = (name: string) => member({ name, length: 3000, b: 50, h: 100, supports: [{ at: 0 }, { at: 3000 }] });
        const joist = member({ name: 'joist', length: L, supports: [{ at: 0, kind: 'member', on: 'left', onCarrierAt: 1500 }, { at: L, kind: 'member', on: 'right', onCarrierAt: 700 }] });
        const { members } = solve(model([joist, carrier('left'), carrier('right')], [{ q: dead }]), properties, unfactored);
        expect(members[0]!.instant[0]!.value).toBeCloseTo(sag(dead), 6);
        expect(members[1]!.instant[0]!.value).toBeGreaterThan(1);
    });
    test('each span and overhang has its own', () => {
        const { instant, spans } = single({ length: 7000, supports: [{ at: 1000 }, { at: 4000 }, { at: 7000 }] }, [{ q: 1, action: imposed('A') }], properties);
        expect(spans.map(({ from, to, overhang }) => [from, to, overhang])).toEqual([[0, 1000, true], [1000, 4000, false], [4000, 7000, false]]);
        expect(instant.map(({ span }) => span)).toEqual(spans);
        expect(instant[0]!.at).toBe(0);
    });
});

describe('stations and names', () => {
    test('what lies on a short end past its support goes straight into it, with the span beside it', () => {
        const actions = single({ length: 4900, supports: [{ at: 100, bearing: 150 }, { at: 4800, bearing: 120 }] }, [{ name: 'live', q: 1, action: imposed('A') }], properties);
        expect(actions.spans).toEqual([{ from: 100, to: 4800, overhang: false }]);
        expect(actions.instant).toHaveLength(1);
        expect(actions.cases.map(({ name }) => name)).toEqual(['live']);
        // Nothing on the ends relieves the span.
        expect(greatest(actions.diagrams.M).max).toBeCloseTo(1.5 * 4700 ** 2 / 8, 3);
        expect(actions.supports[0]!.design.max).toBeCloseTo(1.5 * (4700 / 2 + 100), 3);
        const labels = new Set(actions.stations.flatMap(({ states }) => states.map(({ combination }) => combination.label)));
        expect(labels).toEqual(new Set(['no load', '1.5 live']));
    });
    test('free loads are cases by span and overhang, others whole', () => {
        const { cases } = single({ length: 9000, supports: [{ at: 1000 }, { at: 4000 }, { at: 8000 }], selfWeight: true },
            [{ q: 1 }, { name: 'live', q: 1, action: imposed('A') }, { name: 'snow', q: 1, action: { kind: 'snow' } }], properties);
        expect(cases.map(({ name }) => name)).toEqual([
            'self weight', 'load', 'live (left overhang)', 'live (span 1)', 'live (span 2)', 'live (right overhang)', 'snow'
        ]);
        expect(cases.map(({ id }) => id)).toEqual(cases.map((_, i) => i));
    });
    test('labels name the spans where only some are loaded', () => {
        const { stations } = single({ length: 6000, supports: [{ at: 0 }, { at: 3000 }, { at: 6000 }] },
            [{ q: 1 }, { name: 'live', q: 2, action: imposed('A') }, { name: 'snow', q: 1, action: { kind: 'snow' } }], properties);
        const labels = new Set(stations.flatMap(({ states }) => states.map(({ combination }) => combination.label)));
        for (const label of ['1.35 G', '1.0 G', '1.35 G + 1.5 live', '1.35 G + 1.5 live (span 1)', '1.35 G + 1.5 live (span 2) + 0.75 snow', '1.35 G + 1.05 live + 1.5 snow']) {
            expect(labels).toContain(label);
        }
    });
    test('a jump stands there twice, once for either side', () => {
        const { stations, segments } = single({ ...simple, losses: [{ from: 1000, to: 2000, top: 30 }] }, [{ F: 1000, at: 3000 }], properties, unfactored);
        const at = (x: number) => stations.filter((station) => station.x === x);
        expect(at(1000).map(({ segment }) => segment)).toEqual([0, 1]);
        expect(segments[1]).toEqual({ from: 1000, to: 2000, b: 100, h: 170, shiftUp: -15, shiftRight: 0, weakened: true });
        const [left, right] = at(3000).map(({ states }) => states[0]!.V);
        expect(left! - right!).toBeCloseTo(1000, 6);
        expect(at(0)).toHaveLength(1);
        expect(stations.map(({ x }) => x)).toEqual([...stations.map(({ x }) => x)].sort((a, b) => a - b));
    });
    test('overlapping losses take the deepest of each face; a notch is a loss on its face', () => {
        const { segments } = single({ ...simple, losses: [{ from: 500, to: 1500, top: 20, left: 5 }, { from: 1000, to: 2000, top: 30, bottom: 10 }], notches: [{ face: 'bottom', from: 0, to: 300, depth: 40 }] }, [], properties);
        expect(segments.map(({ from, to, b, h }) => [from, to, b, h])).toEqual([
            [0, 300, 100, 160], [300, 500, 100, 200], [500, 1000, 95, 180], [1000, 1500, 95, 160], [1500, 2000, 100, 160], [2000, 4000, 100, 200]
        ]);
        expect(segments[3]).toMatchObject({ shiftUp: -10, shiftRight: 2.5 });
    });
    test('pinned where it bears: the wall bears, the pin holds along', () => {
        const { supports } = single({ length: L, supports: [{ at: 0, on: 'north' }, { at: 0, kind: 'pinned' }, { at: L, on: 'south' }, { at: L, kind: 'pinned' }], losses: [{ from: 1000, to: 3000, bottom: 60 }] }, [{ q: 1 }], properties, unfactored);
        expect(supports.map(({ support }) => support)).toEqual(['north', 'south']);
        expect(supports[0]!.design.max).toBeCloseTo(L / 2, 6);
        expect(supports[0]!.horizontal!.max).toBeCloseTo(-supports[1]!.horizontal!.max, 6);
        expect(Math.abs(supports[0]!.horizontal!.max)).toBeGreaterThan(100);
    });
    test('a pin over a crossing or a spring does not prop it', () => {
        const under: MemberSketch = { name: 'under', length: 3000, supports: [{ at: 0 }, { at: 3000 }] };
        const over = (pin: MemberSketch['supports']): MemberSketch => ({ name: 'over', length: 3000, supports: [{ at: 0 }, ...pin] });
        const solved = (pin: MemberSketch['supports']): MemberActions[] => [...solve(model([
            member(over([{ at: 3000, kind: 'member', on: 'under', onCarrierAt: 1500 }, ...pin])), member(under)
        ], [{ q: 1 }]), properties, unfactored).members];
        const [plain, pinned] = [solved([]), solved([{ at: 3000, kind: 'pinned' }])];
        expect(pinned[1]!.crossings[0]!.design.max).toBeCloseTo(1500, 6);
        expect(pinned[1]!.supports[0]!.design.max).toBeCloseTo(plain[1]!.supports[0]!.design.max, 6);
        const sprung = single(over([{ at: 3000, kind: 'spring', k: 100 }, { at: 3000, kind: 'pinned' }]), [{ q: 1 }], properties, unfactored);
        expect(sprung.supports.map(({ kind, design }) => [kind, Math.round(design.max)])).toEqual([['wall', 1500], ['spring', 1500]]);
    });
    test('a column that is bent and squeezed by different loads has every corner of N and M among its states', () => {
        const { stations } = single({ kind: 'post', length: 3000, supports: [{ at: 0 }, { at: 3000 }], losses: [{ from: 1000, to: 2000, top: 40 }] }, [
            { name: 'floor', F: 20000, at: 3000, action: imposed('A') }, { name: 'wind', q: 1, action: { kind: 'wind' } }, { name: 'lift', q: -1, action: { kind: 'wind' } }
        ], properties);
        const middle = stations.find(({ x }) => Math.abs(x - 1500) < 1e-6)!;
        const labels = middle.states.map(({ combination }) => combination.label);
        expect(labels).toEqual(expect.arrayContaining(['1.5 floor', '1.5 floor + 0.9 wind', '1.5 floor + 0.9 lift', '1.5 wind', '1.05 floor + 1.5 lift']));
    });
});
