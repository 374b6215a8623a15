import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isProblem } from '../../server/src/checks/verdict.js';
import { plateMoment, type CrossPlate } from '../../server/src/checks/en1993/rods/cross-plate.js';
import { plateOnGrain } from '../../server/src/checks/en1993/rods/grain.js';
import { hangerStiffness, plateFlexibility } from '../../server/src/checks/en1993/rods/hanger-stiffness.js';
import { plateBending } from '../../server/src/checks/en1993/rods/plate-bending.js';
import { platePunching } from '../../server/src/checks/en1993/rods/plate-punching.js';
import { rodEdges } from '../../server/src/checks/en1993/rods/rod-edges.js';
import { rodTension } from '../../server/src/checks/en1993/rods/rod-tension.js';
import { tighteningLoss } from '../../server/src/checks/en1993/rods/tightening.js';
import { washerOnGrain } from '../../server/src/checks/en1993/rods/washer-on-grain.js';
import { sound } from './sound.js';

const rod = { name: 'M12 4.6', d: 12, d0: 13, As: 84.3, fub: 400, alphaV: 0.6, across: 18 };
const plate: CrossPlate = { rodSpacing: 250, contact: 190, width: 70, thickness: 10, hole: 13, holesPerLine: 1 };
const E = 210_000;

describe('rods, EN 1993-1-8 Table 3.4', () => {
    test('two M12 4.6 share the force: 24.278 kN each (case WA-M12)', () => {
        expect(sound(rodTension({ rod, rods: 2, force: 24278.4, gammaM2: 1.25 })).utilisation).toBeCloseTo(0.5, 9);
    });
    test('a rod that takes more than its part', () => {
        expect(sound(rodTension({ rod, rods: 2, force: 24278.4, greatestShare: 0.6, gammaM2: 1.25 })).utilisation).toBeCloseTo(0.6, 9);
    });
    test('rods are not pushed', () => {
        expect(sound(rodTension({ rod, rods: 2, force: -5000, gammaM2: 1.25 })).utilisation).toBe(0);
    });
});

describe('plates between rods, standard statics', () => {
    test('a point under the plate: F s / 4', () => {
        expect(plateMoment({ ...plate, contact: 1e-9 }, 1000, 0)).toBeCloseTo(1000 * 250 / 4, 3);
    });
    test('even pressure from rod to rod: F s / 8', () => {
        expect(plateMoment({ ...plate, contact: 250 }, 1000, 0)).toBeCloseTo(1000 * 250 / 8, 9);
    });
    test('a rod in the middle: the plate sticks out on both sides, F c / 8', () => {
        expect(plateMoment({ ...plate, rodSpacing: 0 }, 1000, 0)).toBeCloseTo(-1000 * 190 / 8, 9);
    });
    test('elastic moment of 70 x 10 mm S275, worked by hand: W = 1166.7 mm³, M = F (2 s − c) / 8 = 387.5 N·m', () => {
        const verdict = sound(plateBending({ plate, fy: 275, force: 10_000, gammaM0: 1 }));
        expect(verdict.demand.value).toBeCloseTo(10 * (2 * 250 - 190) / 8 / 1000, 9);
        expect(verdict.capacity.value).toBeCloseTo(70 * 100 / 6 * 275 / 1e6, 9);
        expect(verdict.utilisation).toBeGreaterThan(1);
    });
    test('a rod through plate and timber weakens the plate where it bends most', () => {
        const holed = sound(plateBending({ plate: { ...plate, rodSpacing: 0 }, fy: 275, force: 5000, gammaM0: 1 }));
        expect(holed.capacity.value).toBeCloseTo((70 - 13) * 100 / 6 * 275 / 1e6, 9);
    });
    test('a plate that hardly spans is governed by shear', () => {
        const stub = { ...plate, rodSpacing: 1, contact: 2, thickness: 4, width: 30, hole: 26 };
        expect(sound(plateBending({ plate: stub, fy: 275, force: 4000, gammaM0: 1 })).clause).toBe('EN 1993-1-1 6.2.6');
    });
    test('shear at three quarters of its resistance takes a quarter of the yield stress, EN 1993-1-1 6.2.8(3)', () => {
        const thick = { ...plate, rodSpacing: 0, contact: 20, thickness: 10 };
        const force = 2 * 0.75 * (70 - 13) * 10 * 275 / Math.sqrt(3);
        const verdict = sound(plateBending({ plate: thick, fy: 275, force, gammaM0: 1 }));
        expect(verdict.utilisation).toBeCloseTo(force * 20 / 8 / (0.75 * (70 - 13) * 100 / 6 * 275), 9);
    });
    test('the explanation ends in the utilisation', () => {
        const verdict = sound(plateBending({ plate, fy: 275, force: 4000, gammaM0: 1 }));
        expect(verdict.explain().at(-1)!.result.value).toBe(verdict.utilisation);
    });
    test('punching of a nut: 0.6 π 18 · 10 · 430 / 1.25', () => {
        const { capacity } = sound(platePunching({ rod, plate: { t: 10, fu: 430 }, force: 1000, gammaM2: 1.25 }));
        expect(capacity.value).toBeCloseTo(0.6 * Math.PI * 18 * 10 * 430 / 1.25 / 1e3, 9);
    });
    test('more force, more use; a thicker plate, less', () => {
        const force = fc.integer({ min: 1, max: 50_000 }), spacing = fc.integer({ min: 0, max: 400 });
        fc.assert(fc.property(force, spacing, fc.integer({ min: 4, max: 30 }), (F, rodSpacing, thickness) => {
            const use = (N: number, t: number) => sound(plateBending({ plate: { ...plate, rodSpacing, thickness: t }, fy: 275, force: N, gammaM0: 1 })).utilisation;
            expect(use(F + 100, thickness)).toBeGreaterThanOrEqual(use(F, thickness));
            expect(use(F, thickness + 1)).toBeLessThanOrEqual(use(F, thickness));
        }));
    });
});

describe('stiffness of a hanger', () => {
    const EI = E * 70 * 1000 / 12;
    test('a plate over a point gives s³ / 48 EI', () => {
        expect(plateFlexibility({ ...plate, contact: 1e-9 }, E)).toBeCloseTo(250 ** 3 / (48 * EI), 9);
    });
    test('a plate pressed evenly from rod to rod gives s³ / 120 EI (bending energy of w L⁴ / 120 EI)', () => {
        expect(plateFlexibility({ ...plate, contact: 250 }, E)).toBeCloseTo(250 ** 3 / (120 * EI), 12);
    });
    test('a rod in the middle: two cantilevers of c / 2, c³ / 320 EI', () => {
        // Each half: energy ∫ (p x² / 2)² / 2EI over c/2 with p = F / c.
        expect(plateFlexibility({ ...plate, rodSpacing: 0 }, E)).toBeCloseTo(2 * 2 * (190 / 2) ** 5 / 5 / (4 * 190 ** 2) / (2 * EI), 15);
        expect(plateFlexibility({ ...plate, rodSpacing: 0 }, E)).toBeCloseTo(190 ** 3 / (320 * EI), 15);
    });
    test('parts in series: stiff plates and timber leave the rods, n E A / L', () => {
        const { stiffness } = sound(hangerStiffness({ rods: { count: 2, As: 84.3, length: 700, E }, plates: [], timbers: [] }));
        expect(stiffness).toBeCloseTo(2 * E * 84.3 / 700, 6);
    });
    test('every part is named, and together they give way as the sum', () => {
        const { stiffness, parts } = sound(hangerStiffness({
            rods: { count: 2, As: 84.3, length: 700, E },
            plates: [{ ...plate, name: 'head plate', E }, { ...plate, name: 'foot plate', E }],
            timbers: [{ name: 'R1', area: 70 * 189, depth: 200, E90: 370 }, { name: 'T2', area: 70 * 190, depth: 205, E90: 300 }]
        }));
        expect(parts.map(({ name }) => name)).toEqual(['rods', 'head plate', 'foot plate', 'R1', 'T2']);
        expect(1 / stiffness).toBeCloseTo(parts.reduce((sum, { flexibility }) => sum + flexibility, 0), 15);
        expect(parts[3]!.flexibility).toBeCloseTo(100 / (370 * 70 * 189), 15);
    });
});

describe('tightening lost by shrinkage', () => {
    const timbers = [{ name: 'T2', depth: 240, moisture: 0.17, expectedMoisture: 0.12 }, { name: 'R1', depth: 200, moisture: 0.2, expectedMoisture: 0.12 }];
    test('worked by hand: 240 mm by 5 points and 200 mm by 8 points at 0.25 % a point shrink by 7 mm', () => {
        const { slack } = sound(tighteningLoss({ tightening: 2500, timbers, stiffness: 10_000 }));
        expect(slack).toBeCloseTo(0.0025 * (240 * 5 + 200 * 8), 9);
    });
    test('rigid members: what the hanger had stretched is all gone when the slack is more', () => {
        const { loss, left, stretch } = sound(tighteningLoss({ tightening: 2500, timbers, stiffness: 10_000 }));
        expect(stretch).toBeCloseTo(0.25, 9);
        expect(loss).toBe(2500);
        expect(left).toBe(0);
    });
    test('members that spring after it keep part of it', () => {
        const { loss, left } = sound(tighteningLoss({ tightening: 2500, timbers, stiffness: 10_000, membersFlexibility: 0.0099 }));
        expect(loss).toBeCloseTo(700, 6);
        expect(left).toBeCloseTo(1800, 6);
    });
    test('half is gone after half the stretch: the points of moisture after which to tighten again', () => {
        const { halfGoneAfter } = sound(tighteningLoss({ tightening: 2500, timbers, stiffness: 10_000 }));
        const dried = timbers.map(timber => ({ ...timber, expectedMoisture: timber.moisture - halfGoneAfter }));
        expect(sound(tighteningLoss({ tightening: 2500, timbers: dried, stiffness: 10_000 })).loss).toBeCloseTo(1250, 6);
    });
    test('the explanation adds up, for wet timber too', () => {
        const wet = timbers.map(timber => ({ ...timber, moisture: 0.5 }));
        const { slack, loss, explain } = sound(tighteningLoss({ tightening: 2500, timbers: wet, stiffness: 10_000, membersFlexibility: 0.1 }));
        const steps = explain();
        expect(steps[0]!.terms.find(({ symbol }) => symbol === 'u_1')!.amount.value).toBe(0.3);
        expect(steps[0]!.result.value + steps[1]!.result.value).toBeCloseTo(slack, 12);
        expect(steps.at(-1)!.result.value).toBeCloseTo(loss / 1e3, 12);
    });
    test('above fibre saturation nothing shrinks; swelling tightens', () => {
        const wet = [{ name: 'T2', depth: 240, moisture: 0.45, expectedMoisture: 0.32 }];
        expect(sound(tighteningLoss({ tightening: 2500, timbers: wet, stiffness: 10_000 })).slack).toBe(0);
        const dry = [{ name: 'T2', depth: 240, moisture: 0.10, expectedMoisture: 0.14 }];
        expect(sound(tighteningLoss({ tightening: 2500, timbers: dry, stiffness: 10_000 })).left).toBeGreaterThan(2500);
    });
});

describe('plates, washers and rods on and in timber', () => {
    test('holes come off the contact', () => {
        const { demand } = sound(plateOnGrain({ force: 10_000, effectiveLength: 130, width: 190, holes: [13, 13], kc90: 1, fc90_d: 1.5 }));
        expect(demand.value).toBeCloseTo(10_000 / (130 * 190 - 2 * Math.PI / 4 * 169), 9);
    });
    test('distances of a rod through timber: 3 d to a face, 7 d or 80 mm to an end, 4 d to the next', () => {
        const findings = sound(rodEdges({ d: 12, edge: 30, end: 90, nextAlong: 50, nextAcross: 40, washer: 50 }));
        expect(findings.map(({ required, ok }) => [required, ok])).toEqual([[36, false], [84, true], [48, true], [48, false], [25, true]]);
    });
    test.each<[string, object]>([
        ['a plate that the holes eat up', plateBending({ plate: { ...plate, hole: 70 }, fy: 275, force: 1, gammaM0: 1 })],
        ['a plate without thickness', plateBending({ plate: { ...plate, thickness: 0 }, fy: 275, force: 1, gammaM0: 1 })],
        ['contact that holes eat up', plateOnGrain({ force: 1, effectiveLength: 10, width: 10, holes: [12], kc90: 1, fc90_d: 1 })],
        ['a washer within its hole', washerOnGrain({ kind: 'washer', outer: 12, hole: 13, fc90_k: 2.5 }, 1, { kmod: 1, gammaM: 1 })],
        ['no rods', rodTension({ rod, rods: 0, force: 1, gammaM2: 1.25 })],
        ['a force that is no number', rodTension({ rod, rods: 1, force: NaN, gammaM2: 1.25 })],
        ['rods without length', hangerStiffness({ rods: { count: 2, As: 84.3, length: 0, E }, plates: [], timbers: [] })],
        ['no timber to shrink', tighteningLoss({ tightening: 1, timbers: [], stiffness: 1 })],
        ['a rod on the face', rodEdges({ d: 12, edge: 0, end: 100 })]
    ])('%s is a problem', (_, result) => {
        expect(isProblem(result)).toBe(true);
    });
});
