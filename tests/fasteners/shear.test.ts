import { describe, expect, test } from 'vitest';
import { boltGrades, threads } from '../../server/src/catalog/bolts.js';
import { boltShear, twoLeafCapacity } from '../../server/src/checks/en1995/fasteners/bolt-through-leaves.js';
import { rodFastener } from '../../server/src/checks/en1995/fasteners/fastener.js';
import type { SteelLeaf } from '../../server/src/checks/en1995/fasteners/leaf.js';
import type { Side } from '../../server/src/checks/en1995/fasteners/plane-reading.js';
import { planeCapacity } from '../../server/src/checks/en1995/fasteners/shear-plane.js';
import { bolt, bolted, leaf, unfactored } from './bolt.js';
import { sound } from './sound.js';

const along = { x: 1000, z: 0 };
const m12 = bolt('M12', '4.6');
const timber = (thickness: number, held = false): Side => ({ kind: 'timber', thickness, fh_k: 25, held });
const dowel = { d: 12, My_Rk: 76745, Fax_Rk: 0 };
const value = (side1: Side, side2: Side, letter: string): number =>
    sound(planeCapacity(dowel, side1, side2)).modes.find(mode => mode.letter === letter)!.capacity;

describe('closed forms of EN 1995-1-1 (8.6) for two equal timbers (beta = 1, t1 = t2)', () => {
    test('mode c is (√2 − 1) fh t d', () => {
        expect(value(timber(60), timber(60), 'c')).toBeCloseTo((Math.SQRT2 - 1) * 25 * 60 * 12, 6);
    });
    test('modes d and e are equal', () => {
        expect(value(timber(60), timber(60), 'd')).toBeCloseTo(value(timber(60), timber(60), 'e'), 6);
    });
    test('mode f is 1.15 √(2 My fh d)', () => {
        expect(value(timber(60), timber(60), 'f')).toBeCloseTo(1.15 * Math.sqrt(2 * 76745 * 25 * 12), 6);
    });
    test('a bolt without strength in bending turns: mode d comes to 1.05/3 fh t d', () => {
        expect(sound(planeCapacity({ ...dowel, My_Rk: 1e-9 }, timber(60), timber(60))).modes[3]!.capacity).toBeCloseTo(1.05 / 3 * (2 - 1) * 25 * 60 * 12, 2);
    });
    test('turning the joint round changes letters, not the capacity', () => {
        const one = sound(planeCapacity(dowel, { kind: 'timber', thickness: 40, fh_k: 25, held: false }, { kind: 'timber', thickness: 90, fh_k: 16, held: false }));
        const other = sound(planeCapacity(dowel, { kind: 'timber', thickness: 90, fh_k: 16, held: false }, { kind: 'timber', thickness: 40, fh_k: 25, held: false }));
        expect(one.capacity).toBeCloseTo(other.capacity, 6);
        const letters = 'abcdef', mirrored = 'bacedf';
        for (const [i, letter] of [...letters].entries()) {
            expect(one.modes.find(mode => mode.letter === letter)!.capacity).toBeCloseTo(other.modes.find(mode => mode.letter === mirrored[i])!.capacity, 6);
        }
    });
});

describe('three timbers and more', () => {
    test('double shear of slender bolts is twice the single shear of thick timbers', () => {
        const single = sound(twoLeafCapacity(bolted(m12, [leaf(200), leaf(200)]), along)).capacity;
        const double = sound(boltShear(bolted(m12, [leaf(200), leaf(400), leaf(200)]), [along, { x: -1000, z: 0 }], unfactored));
        expect(double.capacity.value * 1e3).toBeCloseTo(single, 6);
    });
    test('between two inner leaves either may be crushed over half of its thickness', () => {
        expect(value(timber(40, true), timber(70, true), 'h1')).toBeCloseTo(0.5 * 25 * 40 * 12, 9);
        expect(value(timber(40, true), timber(70, true), 'h2')).toBeCloseTo(0.5 * 25 * 70 * 12, 9);
    });
    test('a leaf beyond that takes nothing changes nothing', () => {
        const two = sound(boltShear(bolted(m12, [leaf(45), leaf(60)]), [along], unfactored)).utilisation;
        const three = sound(boltShear(bolted(m12, [leaf(45), leaf(60), leaf(45)]), [along, { x: 0, z: 0 }], unfactored)).utilisation;
        expect(three).toBeCloseTo(two, 9);
    });
    test('forces the same way in both planes turn the bolt: it carries less than to and fro', () => {
        const joint = bolted(bolt('M16', '8.8'), [leaf(45), leaf(45), leaf(45)]);
        const toAndFro = sound(boltShear(joint, [along, { x: -1000, z: 0 }], unfactored)).utilisation;
        const sameWay = sound(boltShear(joint, [along, along], unfactored)).utilisation;
        expect(sameWay).toBeGreaterThan(1.1 * toAndFro);
    });
    test('utilisation follows the forces without jumps', () => {
        const joint = bolted(m12, [leaf(45), leaf(45), leaf(45)]);
        let before: number | undefined;
        for (let second = -1200; second <= 1200; second += 5) {
            const now = sound(boltShear(joint, [along, { x: second, z: 0 }], unfactored)).utilisation;
            expect(Math.abs(now - (before ?? now))).toBeLessThan(0.01 * now);
            before = now;
        }
    });
    test('forces of unlike direction: between those of one and of the other', () => {
        const joint = bolted(m12, [leaf(45), leaf(45), leaf(45)]);
        const { utilisation } = sound(boltShear(joint, [along, { x: 0, z: 1000 }], unfactored));
        expect(utilisation).toBeGreaterThan(sound(boltShear(joint, [along, { x: -1000, z: 0 }], unfactored)).utilisation);
        expect(utilisation).toBeLessThan(1.0001 * sound(boltShear(joint, [{ x: 0, z: 1000 }, { x: 0, z: 1000 }], unfactored)).utilisation);
    });
    test('no force is no utilisation, with a capacity all the same', () => {
        const { utilisation, capacity } = sound(boltShear(bolted(m12, [leaf(45), leaf(45), leaf(45)]), [{ x: 0, z: 0 }, { x: 0, z: 0 }], unfactored));
        expect(utilisation).toBe(0);
        expect(capacity.value).toBeGreaterThan(1);
    });
    test('k_mod and gamma_M come in once', () => {
        const joint = bolted(m12, [leaf(45), leaf(45)]);
        const [plain, factored] = [unfactored, { kmod: 0.8, gammaM: 1.3 }].map(factors => sound(boltShear(joint, [along], factors)).utilisation) as [number, number];
        expect(factored / plain).toBeCloseTo(1.3 / 0.8, 9);
    });
});

describe('steel plates, EN 1995-1-1 8.2.3', () => {
    const plate = (thickness: number, hole = 13): SteelLeaf => ({ kind: 'steel', thickness, hole });
    const capacity = (thickness: number, hole?: number): number => sound(twoLeafCapacity(bolted(m12, [plate(thickness, hole), leaf(75)]), along)).capacity;
    test('up to half the bolt a plate is thin, from the bolt on thick, linear between', () => {
        expect(capacity(3)).toBe(capacity(6));
        expect(capacity(12)).toBe(capacity(25));
        expect(capacity(9)).toBeCloseTo((capacity(6) + capacity(12)) / 2, 6);
        expect(capacity(12)).toBeGreaterThan(capacity(6));
    });
    test('a hole 0.1 d wider or more makes a thick plate count as thin', () => {
        expect(capacity(12, 13.2)).toBe(capacity(6));
    });
    test('the mode that governs is named, two of them for a plate between thin and thick', () => {
        expect(sound(twoLeafCapacity(bolted(m12, [plate(12), leaf(75)]), along)).governing).toBe('d');
        expect(sound(twoLeafCapacity(bolted(m12, [plate(9), leaf(75)]), along)).governing).toBe('between a and d');
    });
    test('a flitch plate between two leaves is EN 1995-1-1 (8.11), whatever its thickness', () => {
        const [thin, thick] = [4, 15].map(t => sound(boltShear(bolted(m12, [leaf(60), plate(t), leaf(60)]), [along, { x: -1000, z: 0 }], unfactored)).utilisation);
        expect(thin).toBe(thick);
    });
});

test('rope effect: a quarter of the axial capacity, at most 25 % of the Johansen part, never on crushed timber', () => {
    const with_ = (Fax_Rk: number) => sound(planeCapacity({ ...dowel, Fax_Rk }, timber(60), timber(60))).modes;
    for (const [i, mode] of with_(4000).entries()) {
        expect(mode.rope).toBeCloseTo(i < 2 ? 0 : Math.min(1000, 0.25 * mode.johansen), 9);
    }
    for (const [i, mode] of with_(1e9).entries()) {
        expect(mode.capacity).toBeCloseTo(i < 2 ? mode.johansen : 1.25 * mode.johansen, 6);
    }
});

test('a threaded rod counts by the stress area of its thread, and carries less than a bolt of its size', () => {
    const rod = rodFastener(threads.get('M12')!, boltGrades.get('4.6')!);
    expect(rod.d).toBe(12);
    expect(Math.PI / 4 * rod.d_ef ** 2).toBeCloseTo(84.3, 6);
    const [withRod, withBolt] = [rod, m12].map(fastener => sound(twoLeafCapacity(bolted(fastener, [leaf(50), leaf(100)]), along)).capacity) as [number, number];
    expect(withRod).toBeLessThan(withBolt);
});

test('the explanation ends in the utilisation and names every mode with its value', () => {
    const verdict = sound(boltShear(bolted(m12, [leaf(45), leaf(45), leaf(45)]), [{ x: 900, z: 200 }, { x: -700, z: 300 }], { kmod: 0.8, gammaM: 1.3 }));
    const steps = verdict.explain();
    expect(steps.at(-1)!.result.value).toBeCloseTo(verdict.utilisation, 12);
    expect(steps.at(-2)!.result.value).toBeCloseTo(verdict.capacity.value * 1e3, 6);
    const letters = steps.flatMap(({ symbol }) => /^F_\{v,Rk,([a-m])\}$/.exec(symbol)?.[1] ?? []);
    expect(letters.length).toBeGreaterThanOrEqual(6);
    for (const { formula, terms, result } of steps) {
        expect(Number.isFinite(result.value)).toBe(true);
        for (const { symbol, amount } of terms) {
            expect(formula).toContain(symbol);
            expect(Number.isFinite(amount.value)).toBe(true);
        }
    }
});
