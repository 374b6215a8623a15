import { describe, expect, test } from 'vitest';
import { threads } from '../../server/src/catalog/bolts.js';
import { isProblem } from '../../server/src/checks/verdict.js';
import { axialCapacity } from '../../server/src/checks/en1995/fasteners/axial.js';
import { blockShear, verifyBlockShear, type BlockShearInput } from '../../server/src/checks/en1995/fasteners/block-shear.js';
import { boltShear } from '../../server/src/checks/en1995/fasteners/bolt-through-leaves.js';
import { designValue, kmodOfTwo } from '../../server/src/checks/en1995/fasteners/design-value.js';
import { effectiveNumber, rowAlongGrain } from '../../server/src/checks/en1995/fasteners/effective-number.js';
import { embedment } from '../../server/src/checks/en1995/fasteners/embedment.js';
import { angleToGrain, components } from '../../server/src/checks/en1995/fasteners/force.js';
import { holeSize, washerSize } from '../../server/src/checks/en1995/fasteners/holes-and-washers.js';
import { planeCapacity } from '../../server/src/checks/en1995/fasteners/shear-plane.js';
import { clearanceSlip, slipModulus } from '../../server/src/checks/en1995/fasteners/slip.js';
import { leastDistances } from '../../server/src/checks/en1995/fasteners/spacing.js';
import { splitting, splittingCapacity } from '../../server/src/checks/en1995/fasteners/splitting.js';
import { bolt, bolted, leaf, unfactored } from './bolt.js';
import { degrees, sound } from './sound.js';

describe('washers and holes, EN 1995-1-1 10.4.3', () => {
    const fits = (size: string, standard: string): boolean => sound(washerSize(threads.get(size)!.d, threads.get(size)!.washers.find(washer => washer.standard === standard)!)).every(({ ok }) => ok);
    test('no ordinary washer is large enough for timber; large ones are too thin; those for timber fit', () => {
        expect(fits('M12', 'ISO 7089')).toBe(false);
        expect(fits('M12', 'ISO 7093')).toBe(false);
        expect(fits('M12', 'ISO 7094')).toBe(true);
        expect(fits('M16', 'ISO 7094')).toBe(true);
        expect(fits('M20', 'ISO 7094')).toBe(true);
    });
    test('holes in timber: the bolt to 1 mm over; in steel 2 mm or 0.1 d over', () => {
        expect([12, 13, 13.1, 11.9].map(hole => sound(holeSize(12, hole, 'timber')).ok)).toEqual([true, true, false, false]);
        expect([14, 14.1].map(hole => sound(holeSize(12, hole, 'steel')).ok)).toEqual([true, false]);
        expect(sound(holeSize(30, 33, 'steel')).ok).toBe(true);
    });
    test('a square washer bears on its corners too', () => {
        const end = { kind: 'washer', outer: 40, hole: 13, fc90_k: 2.5 } as const;
        const Fax = (square: boolean) => sound(axialCapacity({ d: 12, As: 84.3, fu_k: 800, ends: [{ ...end, square }, { ...end, square }] })).Fax_Rk;
        expect(Fax(true) - Fax(false)).toBeCloseTo(3 * 2.5 * 1600 * (1 - Math.PI / 4), 6);
    });
    test('a thin plate is a washer of 12 t', () => {
        const end = { kind: 'plate', thickness: 3, hole: 13, fc90_k: 2.5 } as const;
        expect(sound(axialCapacity({ d: 12, As: 84.3, fu_k: 800, ends: [end, end] })).Fax_Rk).toBeCloseTo(7.5 * Math.PI / 4 * (36 ** 2 - 13 ** 2), 6);
    });
});

describe('clearance, EN 1995-1-1 Table 7.1 footnote', () => {
    test('adds to the slip, not to the modulus; nought for holes of the bolt itself', () => {
        expect(clearanceSlip(12, 12, 12)).toBe(0);
        expect(clearanceSlip(12, 13, 13)).toBe(1);
    });
});

describe('force and grain', () => {
    test('components turn with the grain', () => {
        const { along, across } = components({ x: 3, z: 4 }, Math.PI / 2);
        expect(along).toBeCloseTo(4, 12);
        expect(across).toBeCloseTo(-3, 12);
        expect(angleToGrain({ x: -3, z: 4 })).toBeCloseTo(Math.atan2(4, 3), 12);
    });
    test('k_mod of unlike timbers is the geometric mean', () => {
        expect(kmodOfTwo(0.8, 0.6)).toBeCloseTo(Math.sqrt(0.48), 12);
        expect(designValue(1300, { kmod: 0.8, gammaM: 1.3 })).toBeCloseTo(800, 9);
    });
});

test('a row along the grain carries n_ef bolts, EN 1995-1-1 8.1.2(5)', () => {
    const verdict = sound(rowAlongGrain({ n: 4, a1: 84, d: 12 }, 6000, 5000));
    expect(verdict.utilisation).toBeCloseTo(6000 / (2.982927 * 5000), 6);
    expect(verdict.explain().at(-1)!.result.value).toBe(verdict.utilisation);
});

describe('splitting, EN 1995-1-1 8.1.4', () => {
    const input = { b: 100, h: 240, he: 160, wood: 'softwood' } as const;
    test('the greater shear on either side counts (SPL-01: F90,Rk = 30672 N)', () => {
        const { utilisation } = sound(splitting(input, [4000, -9000], { kmod: 0.8, gammaM: 1.3 }));
        expect(utilisation).toBeCloseTo(9000 / (0.8 * 30672.46 / 1.3), 6);
    });
    test('hardwood and a bolt outside the timber have no capacity, but words', () => {
        expect(splittingCapacity({ ...input, wood: 'hardwood' })).toHaveProperty('problem');
        expect(splittingCapacity({ ...input, he: 240 })).toHaveProperty('problem');
    });
});

describe('block and plug shear, EN 1995-1-1 Annex A (from memory), against areas summed by hand', () => {
    const input: BlockShearInput = {
        t1: 60, rows: 2, bolts: 3, a1: 60, a2: 48, a3: 84, hole: 13, d: 12, My_Rk: 76745, fh_k: 25.256, ft0_k: 14.5, fv_k: 4, mode: 'f'
    };
    test('whole thickness: two sides of 77.5 + 47 + 47 mm, 35 mm between the rows', () => {
        const { Lv, Lt, Fbs_Rk } = sound(blockShear(input));
        expect(Lv).toBe(343);
        expect(Lt).toBe(35);
        expect(Fbs_Rk).toBeCloseTo(Math.max(1.5 * 35 * 60 * 14.5, 0.7 * 343 * 60 * 4), 6);
    });
    test('plug: both sides over its depth and its floor', () => {
        const { tef, Av } = sound(blockShear({ ...input, mode: 'h' }));
        expect(tef).toBeCloseTo(2 * Math.sqrt(76745 / (25.256 * 12)), 9);
        expect(Av).toBeCloseTo(343 / 2 * (35 + 2 * tef!), 9);
    });
    test('the plug is shallower the thinner the plate, and never deeper than the timber', () => {
        const depth = (mode: string, t1 = 60) => sound(blockShear({ ...input, mode, t1 })).tef!;
        expect(depth('b')).toBeLessThan(depth('e'));
        expect(depth('a')).toBeCloseTo(24, 9);
        expect(depth('e', 20)).toBe(20);
    });
    test('holes that touch leave nothing', () => {
        expect(isProblem(blockShear({ ...input, a2: 12 }))).toBe(true);
        expect(isProblem(blockShear({ ...input, a1: 0 }))).toBe(true);
    });
    test('verified with its design value', () => {
        expect(sound(verifyBlockShear(input, 20000, { kmod: 0.8, gammaM: 1.3 })).utilisation).toBeCloseTo(20000 / (0.8 * 57624 / 1.3), 6);
    });
});

describe('bad input gives a problem, never NaN', () => {
    const through = bolted(bolt('M12', '8.8'), [leaf(45), leaf(45)]);
    const force = [{ x: 100, z: 0 }];
    test.each<[string, unknown]>([
        ['a bolt larger than the leaf', boltShear(bolted(bolt('M30', '8.8'), [leaf(25), leaf(45)]), force, unfactored)],
        ['a leaf of nought', boltShear({ ...through, leaves: [leaf(0), leaf(45)] }, force, unfactored)],
        ['one leaf', boltShear({ ...through, leaves: [leaf(45)] }, [], unfactored)],
        ['forces that do not fit the planes', boltShear(through, [...force, ...force], unfactored)],
        ['a force that is no number', boltShear(through, [{ x: NaN, z: 0 }], unfactored)],
        ['two plates together', boltShear({ ...through, leaves: [{ kind: 'steel', thickness: 6, hole: 13 }, { kind: 'steel', thickness: 6, hole: 13 }] }, force, unfactored)],
        ['a hole smaller than the bolt', boltShear({ ...through, leaves: [{ kind: 'steel', thickness: 6, hole: 11 }, leaf(45)] }, force, unfactored)],
        ['k_mod of nought', boltShear(through, force, { kmod: 0, gammaM: 1.3 })],
        ['a bolt above 30 mm', embedment({ d: 36, rho_k: 350, wood: 'softwood', angle: 0 })],
        ['no density', embedment({ d: 12, rho_k: 0, wood: 'softwood', angle: 0 })],
        ['a spacing of nought', effectiveNumber({ n: 3, a1: 0, d: 12, angle: 0 })],
        ['no bolts', effectiveNumber({ n: 0, a1: 60, d: 12, angle: 0 })],
        ['steel on steel slips by no timber rule', slipModulus(12, 'steel', 'steel')],
        ['a washer smaller than its hole', axialCapacity({ d: 12, As: 84.3, fu_k: 400, ends: [{ kind: 'washer', outer: 13, hole: 13, fc90_k: 2.5 }, { kind: 'washer', outer: 40, hole: 13, fc90_k: 2.5 }] })],
        ['no embedment strength', planeCapacity({ d: 12, My_Rk: 1, Fax_Rk: 0 }, { kind: 'timber', thickness: 45, fh_k: 0, held: false }, { kind: 'timber', thickness: 45, fh_k: 25, held: false })],
        ['a bolt of nought', leastDistances(0, degrees(30))]
    ])('%s', (_, result) => {
        expect((result as { problem?: string }).problem).toMatch(/\w{3}/);
    });
});
