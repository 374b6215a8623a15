/**
 * Placing loads by sign against trying everything: every subset of spans and loads, every leading action, permanent
 * loads both ways (EN 1990 6.4.3.2, Table A1.2(B); 6.5.3), each over the kmod of the shortest action in it
 * (EN 1995-1-1 3.1.3(2)).
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Action, Duration } from '../../language/src/model.js';
import type { ActionState, MemberActions } from '../../server/src/analysis/actions.js';
import type { KeptStates } from '../../server/src/analysis/solve-group.js';
import { durationOf } from '../../server/src/analysis/index.js';
import { elastic, load, member, model, recommended, solve, type LoadSketch } from './fixture.js';
import { unfactored } from './figures.js';

const properties = elastic(11000);
const kmod = (duration: Duration): number => recommended.kmod('solid', 2, duration);

interface Scene { readonly stops: readonly number[]; readonly length: number; readonly loads: readonly LoadSketch[] }

const actions: readonly Action[] = [{ kind: 'imposed', category: 'A' }, { kind: 'imposed', category: 'E' }, { kind: 'snow' }, { kind: 'wind' }];

const scenes = fc.record({
    spans: fc.array(fc.integer({ min: 20, max: 50 }), { minLength: 1, maxLength: 3 }),
    overhang: fc.constantFrom(0, 12),
    q: fc.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 5 }), fc.integer({ min: -3, max: 4 })),
    kinds: fc.tuple(fc.constantFrom(...actions), fc.constantFrom(...actions)),
    point: fc.double({ min: 0.05, max: 0.95, noNaN: true })
}).map(({ spans, overhang, q, kinds, point }): Scene => {
    const stops = spans.reduce((list, span) => [...list, list.at(-1)! + span * 100], [0]);
    const length = stops.at(-1)! + overhang * 100;
    return {
        stops, length,
        loads: [
            { name: 'dead', q: q[0] },
            { name: 'first', q: q[1], action: kinds[0] },
            { name: 'second', F: 3000 * (q[2] || 1), at: Math.round(point * length), action: kinds[1] }
        ]
    };
});

function beam({ stops, length }: Scene, loads: readonly LoadSketch[], parameters = recommended, equation: '6.10' | '6.10a/b' = '6.10', states: KeptStates = 'every'): MemberActions {
    return solve(model([member({ length, supports: stops.map((at) => ({ at })) })], loads, equation), properties, parameters, states).members[0]!;
}

/** One load, or one span of a free one, alone and unfactored; the rest weigh nothing but keep the stations. */
interface Item { readonly action: string; readonly duration: Duration; readonly psi: readonly number[]; readonly alone: MemberActions }

function itemsOf(scene: Scene): { readonly dead: MemberActions; readonly items: readonly Item[] } {
    const { stops, length } = scene;
    const bounds = [...stops, ...(length > stops.at(-1)! ? [length] : [])];
    const pieces = scene.loads.flatMap((one): LoadSketch[] => {
        if (one.action?.kind !== 'imposed') return [one];
        const inSpan = bounds.slice(1).map((to, i): LoadSketch | undefined => {
            const from = bounds[i]!;
            if (one.F !== undefined) return one.at! <= to && (one.at! > from || i === 0) ? one : undefined;
            return { ...one, from, to };
        });
        return inSpan.filter((part) => part !== undefined);
    });
    const silent = pieces.map((one): LoadSketch => ({ ...one, action: { kind: 'permanent' }, ...(one.F === undefined ? { q: 0 } : { F: 0 }) }));
    const alone = (i: number): MemberActions =>
        beam(scene, silent.map((one, j) => (i === j ? { ...pieces[j]!, action: { kind: 'permanent' } } : one)), unfactored);
    const all = pieces.map((one, i) => ({ one, alone: alone(i) }));
    const host = member({ length, supports: [] });
    return {
        dead: all[0]!.alone,
        items: all.slice(1).map(({ one, alone: solved }) => {
            const written = load(one, host);
            const name = written.action.kind === 'imposed' ? `imposed ${written.action.category}` : written.action.kind;
            return { action: name, duration: durationOf(written), psi: recommended.psi(name), alone: solved };
        })
    };
}

interface Combined { readonly value: number; readonly duration: Duration }

/** Everything that EN 1990 lets happen, of one quantity. */
function everything(dead: number, items: readonly (readonly [Item, number])[], permanents: readonly number[], factor: (item: Item, leads: boolean) => number): Combined[] {
    const order: Duration[] = ['permanent', 'long-term', 'medium-term', 'short-term', 'instantaneous'];
    const leaders = [...new Set(items.map(([{ action }]) => action)), ''];
    const found: Combined[] = [];
    for (let bits = 0; bits < 2 ** items.length; bits++) {
        const present = items.filter((_, i) => (bits >> i) & 1);
        for (const leader of leaders) {
            for (const permanent of permanents) {
                let value = permanent * dead;
                let shortest = 0;
                for (const [item, effect] of present) {
                    const own = factor(item, item.action === leader);
                    value += own * effect;
                    if (own !== 0) shortest = Math.max(shortest, order.indexOf(item.duration));
                }
                found.push({ value, duration: order[shortest]! });
            }
        }
    }
    return found;
}

const ultimate = (item: Item, leads: boolean): number => 1.5 * (leads ? 1 : item.psi[0]!);

/** The two sides of every place with a station in all solutions (where a shear vanishes is each one's own). */
function places(of: readonly MemberActions[]): { readonly x: number; readonly last: boolean }[] {
    const [first, ...others] = of.map(({ stations }) => stations.map(({ x }) => Math.round(x * 1e4)));
    const common = new Set(first!.filter((x) => others.every((list) => list.includes(x))));
    return [...common].flatMap((x) => [{ x: x / 1e4, last: false }, { x: x / 1e4, last: true }]);
}

function statesAt({ stations }: MemberActions, { x, last }: { readonly x: number; readonly last: boolean }): readonly ActionState[] {
    const here = stations.filter((station) => Math.abs(station.x - x) < 1e-3);
    return here.at(last ? -1 : 0)!.states;
}

const runs = { numRuns: 25 };

describe('placing by sign finds what trying everything finds', () => {
    for (const quantity of ['M', 'V'] as const) {
        test(`${quantity}, over its own kmod`, () => {
            fc.assert(fc.property(scenes, (scene) => {
                const ours = beam(scene, scene.loads, recommended, '6.10', 'worst');
                const { dead, items } = itemsOf(scene);
                const solutions = [ours, dead, ...items.map(({ alone }) => alone)];
                const scale = Math.max(...ours.stations.flatMap(({ states }) => states.map((state) => Math.abs(state[quantity]))));
                for (const spot of places(solutions)) {
                    const of = (one: MemberActions): number => statesAt(one, spot)[0]![quantity];
                    const all = everything(of(dead), items.map((item) => [item, of(item.alone)] as const), [1.35, 1], ultimate);
                    const worst = (list: readonly Combined[], sign: number): number => Math.max(0, ...list.map(({ value, duration }) => (sign * value) / kmod(duration)));
                    const states = statesAt(ours, spot).map((state) => ({ value: state[quantity], duration: state.combination.duration }));
                    for (const sign of [1, -1]) {
                        expect(Math.abs(worst(states, sign) - worst(all, sign)) / scale).toBeLessThan(1e-6);
                    }
                }
            }), runs);
        });
    }
    test('M by (6.10a) and (6.10b)', () => {
        fc.assert(fc.property(scenes, (scene) => {
            const ours = beam(scene, scene.loads, recommended, '6.10a/b');
            const { dead, items } = itemsOf(scene);
            for (const spot of places([ours, dead, ...items.map(({ alone }) => alone)])) {
                const of = (one: MemberActions): number => statesAt(one, spot)[0]!.M;
                const effects = items.map((item) => [item, of(item.alone)] as const);
                const all = [
                    ...everything(of(dead), effects, [1.35, 1], (item) => 1.5 * item.psi[0]!),
                    ...everything(of(dead), effects, [0.85 * 1.35, 1], ultimate)
                ].map(({ value }) => value);
                const states = statesAt(ours, spot).map(({ M }) => M);
                expect(Math.max(...states)).toBeCloseTo(Math.max(...all), 1);
                expect(Math.min(...states)).toBeCloseTo(Math.min(...all), 1);
            }
        }), runs);
    });
    test('reactions', () => {
        fc.assert(fc.property(scenes, (scene) => {
            const ours = beam(scene, scene.loads);
            const { dead, items } = itemsOf(scene);
            ours.supports.forEach(({ design }, s) => {
                const of = (one: MemberActions): number => one.supports[s]!.design.max;
                const all = everything(of(dead), items.map((item) => [item, of(item.alone)] as const), [1.35, 1], ultimate).map(({ value }) => value);
                expect(design.max).toBeCloseTo(Math.max(...all), 3);
                expect(design.min).toBeCloseTo(Math.min(...all), 3);
            });
        }), runs);
    });
    test('deflections, characteristic and quasi-permanent', () => {
        fc.assert(fc.property(scenes, (scene) => {
            const ours = beam(scene, scene.loads);
            const { dead, items } = itemsOf(scene);
            for (const [kind, factor, creep] of [
                ['instant', (item: Item, leads: boolean) => (leads ? 1 : item.psi[0]!), 1],
                ['final', (item: Item) => item.psi[2]!, 1 + properties.kdef]
            ] as const) {
                const at = (one: MemberActions, x: number): number => one.diagrams.instant.find((point) => Math.abs(point.x - x) < 1e-6)?.max ?? NaN;
                const scale = Math.max(...ours.diagrams[kind].map(({ min, max }) => Math.max(-min, max)));
                for (const { x, min, max } of ours.diagrams[kind]) {
                    if (Number.isNaN(at(dead, x)) || items.some((item) => Number.isNaN(at(item.alone, x)))) continue;
                    const all = everything(at(dead, x), items.map((item) => [item, at(item.alone, x)] as const), [1], factor).map(({ value }) => value * creep);
                    expect(Math.abs(max - Math.max(...all)) / scale).toBeLessThan(1e-6);
                    expect(Math.abs(min - Math.min(...all)) / scale).toBeLessThan(1e-6);
                }
            }
        }), runs);
    });
});
