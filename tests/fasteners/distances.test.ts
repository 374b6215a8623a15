import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isProblem } from '../../server/src/checks/verdict.js';
import { distances, type DistanceFinding, type Towards } from '../../server/src/checks/en1995/fasteners/distances.js';
import type { DrilledBolt } from '../../server/src/checks/en1995/fasteners/drilled-pattern.js';
import type { Force } from '../../server/src/checks/en1995/fasteners/force.js';
import { sound } from './sound.js';

/** EN 1995-1-1 Table 8.4 (from memory, case SPC-01) on drilled patterns; M12 in a leaf 1900 x 200 mm unless said. */
const piece = { start: 0, end: 1900, bottom: -100, top: 100 };
const found = (bolts: readonly DrilledBolt[], loads: readonly (readonly Force[])[], d = 12): readonly DistanceFinding[] => sound(distances({ d, piece, bolts }, loads));
const to = (findings: readonly DistanceFinding[], bolt: number, towards: Exclude<Towards, object>): DistanceFinding =>
    findings.find(one => one.bolt === bolt && one.towards === towards)!;
const neighbour = (findings: readonly DistanceFinding[], bolt: number): DistanceFinding => findings.find(one => one.bolt === bolt && typeof one.towards === 'object')!;
const is = ({ rule, required, provided, ok }: DistanceFinding) => [rule, Math.round(required * 100) / 100, provided, ok];

describe('ends and edges of one bolt', () => {
    const alone = (force: readonly Force[], at: DrilledBolt = { station: 1800, height: 0 }) => found([at], [force]);

    test('pressed along the grain towards an end: 7 d or 80 mm there, 4 d at the other, 3 d to both edges', () => {
        const findings = alone([{ x: 5, z: 0 }]);
        expect(is(to(findings, 0, 'end'))).toEqual(['a3,t', 84, 100, true]);
        expect(is(to(findings, 0, 'start'))).toEqual(['a3,c', 48, 1800, true]);
        expect(is(to(findings, 0, 'top'))).toEqual(['a4,c', 36, 100, true]);
        expect(is(to(findings, 0, 'bottom'))).toEqual(['a4,c', 36, 100, true]);
    });
    test('a small bolt keeps 80 mm from a loaded end', () => {
        expect(is(to(found([{ station: 1825, height: 0 }], [[{ x: 1, z: 0 }]], 8), 0, 'end'))).toEqual(['a3,t', 80, 75, false]);
    });
    test('pressed upwards: 4 d to the top, 3 d to the bottom, and either end counts as loaded', () => {
        const findings = alone([{ x: 0, z: 5 }], { station: 1850, height: 50 });
        expect(is(to(findings, 0, 'top'))).toEqual(['a4,t', 48, 50, true]);
        expect(is(to(findings, 0, 'bottom'))).toEqual(['a4,c', 36, 150, true]);
        expect(is(to(findings, 0, 'end'))).toEqual(['a3,t', 84, 50, false]);
        expect(to(findings, 0, 'start').rule).toBe('a3,t');
    });
    test('at 60° away from an end: (1 + 6 sin α) d there; (2 + 2 sin α) d to the edge it presses on', () => {
        const findings = alone([{ x: -Math.cos(Math.PI / 3), z: -Math.sin(Math.PI / 3) }]);
        expect(is(to(findings, 0, 'end'))).toEqual(['a3,c', Math.round((1 + 6 * Math.sin(Math.PI / 3)) * 1200) / 100, 100, true]);
        expect(is(to(findings, 0, 'bottom'))).toEqual(['a4,t', Math.round((2 + 2 * Math.sin(Math.PI / 3)) * 1200) / 100, 100, true]);
    });
    test('each distance is the greatest that any load case asks for', () => {
        const findings = alone([{ x: 5, z: 0 }, { x: -5, z: 0 }, { x: 0, z: 2 }, { x: 0, z: -2 }]);
        expect((['start', 'end', 'top', 'bottom'] as const).map(side => to(findings, 0, side).rule)).toEqual(['a3,t', 'a3,t', 'a4,t', 'a4,t']);
    });
    test('a bolt without force needs the unloaded distances', () => {
        expect((['start', 'end', 'top', 'bottom'] as const).map(side => to(alone([]), 0, side).required)).toEqual([48, 48, 36, 36]);
    });
});

describe('bolts among each other', () => {
    const force = [{ x: 1, z: 0 }];
    const pair = (along: number, across: number, loads = [force, force]) =>
        is(neighbour(found([{ station: 500, height: 0 }, { station: 500 + along, height: across }], loads), 0));

    test('in a row along the grain: 5 d, where loaded along it', () => {
        expect(pair(60, 0)).toEqual(['a1', 60, 60, true]);
        expect(pair(59, 0)).toEqual(['a1', 60, 59, false]);
    });
    test('in a row along the grain: 4 d, where loaded across it', () => {
        expect(pair(50, 0, [[{ x: 0, z: 1 }], [{ x: 0, z: 1 }]])).toEqual(['a1', 48, 50, true]);
    });
    test('of two neighbours the one that asks for more counts', () => {
        expect(pair(55, 0, [[{ x: 0, z: 1 }], force])).toEqual(['a1', 60, 55, false]);
    });
    test('one above the other: 4 d', () => {
        expect(pair(0, 48)).toEqual(['a2', 48, 48, true]);
        expect(pair(0, 40)).toEqual(['a2', 48, 40, false]);
    });
    test('staggered: rows nearer than 4 d count as one row', () => {
        expect(pair(70, 30)).toEqual(['a1', 60, 70, true]);
        expect(pair(45, 40)).toEqual(['a2', 48, 40, false]);
    });
    test('the neighbour named is the one that comes nearest to its limit, wherever it stands in the list', () => {
        const bolts = [{ station: 900, height: 0 }, { station: 100, height: 0 }, { station: 970, height: 60 }, { station: 150, height: 0 }];
        const findings = found(bolts, bolts.map(() => force));
        expect(neighbour(findings, 1).towards).toEqual({ bolt: 3 });
        expect(neighbour(findings, 1).ok).toBe(false);
        expect(neighbour(findings, 0).towards).toEqual({ bolt: 2 });
    });
    test('agrees with the comparison of every pair, on any pattern', () => {
        const place = fc.record({ station: fc.integer({ min: 1, max: 1899 }), height: fc.integer({ min: -99, max: 99 }) });
        const direction = fc.record({ x: fc.integer({ min: -3, max: 3 }), z: fc.integer({ min: -3, max: 3 }) });
        fc.assert(fc.property(fc.uniqueArray(place, { minLength: 2, maxLength: 12, selector: ({ station, height }) => `${station} ${height}` }), fc.array(direction, { minLength: 12, maxLength: 12 }), (bolts, forces) => {
            const findings = found(bolts, bolts.map((_, i) => [forces[i]!]));
            const a1 = ({ x, z }: Force): number => x === 0 && z === 0 ? 48 : (4 + Math.abs(x) / Math.hypot(x, z)) * 12;
            for (const [i, one] of bolts.entries()) {
                const fits = bolts.every((other, j) => i === j || Math.abs(other.height - one.height) >= 48
                    || Math.abs(other.station - one.station) >= Math.max(a1(forces[i]!), a1(forces[j]!)) - 1e-6);
                expect(neighbour(findings, i).ok).toBe(fits);
            }
        }));
    });
});

describe('bad input gives words', () => {
    const words = (bolts: readonly DrilledBolt[], d = 12, of = piece): string => {
        const result = distances({ d, piece: of, bolts }, bolts.map(() => []));
        return isProblem(result) ? result.problem : 'none';
    };
    test.each<[string, string, RegExp]>([
        ['a bolt larger than the leaf', words([{ station: 500, height: 0 }], 200), /larger than a leaf/],
        ['a spacing of nought', words([{ station: 500, height: 0 }, { station: 500, height: 0 }]), /bolts 1 and 2 are at one place/],
        ['a bolt past the butt', words([{ station: 1950, height: 0 }]), /bolt 1 at 1950 mm.* not within the piece/],
        ['a bolt of nought', words([], 0), /bolt diameter/],
        ['no number', words([{ station: NaN, height: 0 }]), /station of bolt 1/],
        ['a piece without length', words([], 12, { ...piece, end: 0 }), /length of the piece/]
    ])('%s', (_, said, expected) => {
        expect(said).toMatch(expected);
    });
    test('lists of forces that do not fit', () => {
        expect(isProblem(distances({ d: 12, piece, bolts: [{ station: 500, height: 0 }] }, []))).toBe(true);
    });
    test('never NaN, whatever is given', () => {
        const number = fc.oneof(fc.double(), fc.constantFrom<number>(0, -1, NaN, Infinity, -Infinity));
        const force = fc.record({ x: number, z: number });
        fc.assert(fc.property(number, fc.record({ start: number, end: number, bottom: number, top: number }), fc.array(fc.record({ station: number, height: number }), { maxLength: 4 }), fc.array(force), (d, of, bolts, forces) => {
            const result = distances({ d, piece: of, bolts }, bolts.map(() => forces));
            for (const one of isProblem(result) ? [] : result) {
                expect(Number.isNaN(one.required) || Number.isNaN(one.provided)).toBe(false);
            }
        }));
    });
});
