import { describe, expect, test } from 'vitest';
import { endPlateStiffness, tensionRows, type EndPlateSplice } from '../../server/src/analysis/splice.js';
import { coverStiffness, type CoverSplice } from '../../server/src/analysis/splice-covers.js';
import { boltGrades, threads } from '../../server/src/catalog/bolts.js';
import { boltOf } from '../../server/src/checks/en1993/bolts/bolt.js';
import { groupForces } from '../../server/src/checks/en1993/bolts/group.js';
import { coverSplice, splitForces } from '../../server/src/checks/en1993/splice/covers.js';
import type { CoverCheck } from '../../server/src/checks/en1993/splice/cover-check.js';
import { endPlateSplice } from '../../server/src/checks/en1993/splice/end-plate.js';
import { spliceUtilisation, type SpliceResult } from '../../server/src/checks/en1993/splice/splice-result.js';
import type { EndPlateCheck } from '../../server/src/checks/en1993/splice/tension-row.js';
import { isProblem } from '../../server/src/checks/verdict.js';
import { good, memberOf } from './answers.js';
import { referenceCase, within } from './cases.js';

const M16 = boltOf(threads.get('M16')!, boltGrades.get('8.8')!);
const kNm = 1e6;
const of = (result: SpliceResult, name: string) => {
    const found = result.verdicts.find(verdict => verdict.name === name);
    if (!found) {
        throw new Error(`no verdict ${name}`);
    }
    return found;
};

describe('end plate 150 x 12 on HEA 140 in S275, four M16 8.8, by hand', () => {
    const beam = memberOf('HEA 140', 'S275');
    const splice: EndPlateSplice = {
        beam: beam.section, plate: { width: 150, thickness: 12, above: 0, below: 0 },
        rows: [-32, 32], gauge: 80, bolt: { d: 16, As: 157 }, weldThroat: 0
    };
    const given: EndPlateCheck = { beam, splice, bolt: M16, plateSteel: { fy: 275, fu: 430 } };

    test('rows: levers about the compression flange, T-stub side by side', () => {
        const [far, near] = tensionRows(splice, 'sagging');
        expect([far!.lever, near!.lever]).toEqual([94.25, 30.25]);
        // m = (80 - 5.5)/2 = 37.25, e = 35; half pattern 2m + 0.625e = 96.375 towards the flange, 64/2 towards the other row.
        expect([far!.m, far!.e, far!.leff1, far!.leff2]).toEqual([37.25, 35, 128.375, 128.375]);
        expect(tensionRows(splice, 'hogging').map(({ height }) => height)).toEqual([32, -32]);
    });

    test('moment resistance: row of 122.8 kN in mode 2, in proportion to the levers', () => {
        const result = good(endPlateSplice(given, { N: 0, V: 0, M: 5 * kNm }));
        const row = (2 * 0.25 * 128.375 * 144 * 275 + 35 * 180_864) / 72.25;
        const tension = of(result, 'end plate and bolts in tension');
        within(tension.capacity.value * kNm, row / 94.25 * (94.25 ** 2 + 30.25 ** 2), 1e-9, 'Mj,Rd');
        within(tension.utilisation, 5 / tension.capacity.value, 1e-12, 'utilisation');
        const pull = 5 * kNm * (94.25 + 30.25) / (94.25 ** 2 + 30.25 ** 2);
        within(of(result, 'compression flange').demand.value, pull / 1e3, 1e-9, 'Fc');
        expect(result.misplaced).toEqual([]);
        expect(result.notChecked.join()).toMatch(/weld/);
        expect(tension.explain().map(step => step.note).join()).toMatch(/mode 2 122\.8 kN/);
    });

    test('the bolts of a row at its resistance are at their tension, and shear comes on top', () => {
        const capacity = of(good(endPlateSplice(given, { N: 0, V: 0, M: kNm })), 'end plate and bolts in tension').capacity.value * kNm;
        within(of(good(endPlateSplice(given, { N: 0, V: 0, M: capacity })), 'bolts in shear and tension').utilisation, 1, 1e-9, 'tension');
        const both = of(good(endPlateSplice(given, { N: 0, V: 4 * 60_288 * 0.5, M: capacity / 2 })), 'bolts in shear and tension');
        within(both.utilisation, 0.5 + 0.5 / 1.4, 1e-9, 'Table 3.4');
    });

    test('axial tension is a moment about the compression flange; compression loads that flange and helps no bolt', () => {
        const withN = (N: number) => good(endPlateSplice(given, { N, V: 0, M: 2 * kNm }));
        within(of(withN(40_000), 'end plate and bolts in tension').demand.value * kNm, 2 * kNm + 40_000 * 62.25, 1e-12, 'M');
        expect(of(withN(-40_000), 'end plate and bolts in tension').utilisation).toBe(of(withN(0), 'end plate and bolts in tension').utilisation);
        within(of(withN(-40_000), 'compression flange').demand.value - of(withN(0), 'compression flange').demand.value, 40, 1e-9, 'flange');
    });

    test('an extended plate brings a row outside the flange: Table 6.6', () => {
        const extended: EndPlateSplice = { ...splice, plate: { ...splice.plate, below: 70 }, rows: [-32, 32, -66.5 - 35] };
        const outer = tensionRows(extended, 'sagging')[0]!;
        expect(outer).toMatchObject({ place: 'outer', m: 35, e: 35, lever: 62.25 + 101.5 });
        // min(4·35 + 1.25·35, 35 + 70 + 21.875, 75, 40 + 70 + 21.875) = 75
        expect(outer.leff2).toBe(75);
        expect(outer.leff1).toBe(75);
        const gain = of(good(endPlateSplice({ ...given, splice: extended }, { N: 0, V: 0, M: kNm })), 'end plate and bolts in tension').capacity.value
            / of(good(endPlateSplice(given, { N: 0, V: 0, M: kNm })), 'end plate and bolts in tension').capacity.value;
        expect(gain).toBeGreaterThan(1.2);
        // Hogging, the row below the bottom flange does not pull.
        expect(tensionRows(extended, 'hogging').map(({ height }) => height)).toEqual([32, -32]);
    });

    test('rotational stiffness by hand: E Σ k h² / 3 (EN 1993-1-8 6.3, Tables 6.11 and 5.2)', () => {
        const k5 = 0.9 * 128.375 * 12 ** 3 / 37.25 ** 3;
        const k10 = 1.6 * 157 / (24 + 1.15 * 16);
        const k = 1 / (2 / k5 + 1 / k10);
        const stiffness = endPlateStiffness(splice);
        within(stiffness.rotational, 210_000 * k * (94.25 ** 2 + 30.25 ** 2) / 3, 1e-9, 'Sj');
        expect(stiffness.play).toBe(0);
        expect(endPlateStiffness({ ...splice, plate: { ...splice.plate, thickness: 20 } }).rotational).toBeGreaterThan(stiffness.rotational);
    });

    test('what makes no splice is a problem', () => {
        const forces = { N: 0, V: 1, M: 1 };
        const bad: readonly Partial<EndPlateSplice>[] = [
            { rows: [] }, { rows: [-62, 62] }, { rows: [-32, -32] }, { rows: [-32, 90] }, { gauge: 0 }, { gauge: 5 }, { gauge: 150 }, { rows: [32] },
            { plate: { ...splice.plate, thickness: 0 } }, { plate: { ...splice.plate, width: NaN } }, { weldThroat: -1 }, { beam: memberOf('UPN 140').section }
        ];
        for (const change of bad) {
            expect(isProblem(endPlateSplice({ ...given, splice: { ...splice, ...change } }, change.rows?.[0] === 32 ? { N: 0, V: 0, M: NaN } : forces)), JSON.stringify(change)).toBe(true);
        }
    });

    test('bolts too near the edge fail the splice', () => {
        const near = good(endPlateSplice({ ...given, splice: { ...splice, gauge: 120 } }, { N: 0, V: 1, M: 1 }));
        expect(near.misplaced.join()).toMatch(/edge distance e2 15 mm/);
        expect(spliceUtilisation(near)).toBe(Infinity);
    });
});

describe('covers on IPE 300', () => {
    const beam = memberOf('IPE 300');
    const splice: CoverSplice = {
        beam: beam.section, gap: 10,
        flange: { width: 150, thickness: 12, pairs: 3, pitch: 60, gauge: 90, coverEnd: 40, beamEnd: 40 },
        web: { depth: 230, thickness: 8, rows: 4, lines: 1, rowPitch: 60, linePitch: 60, coverEnd: 35, beamEnd: 55 }
    };
    const given: CoverCheck = { beam, beamFu: 360, splice, bolt: M16, coverSteel: { fy: 235, fu: 360 } };

    test('SP-01: elastic split, flange force and web bolts', () => {
        const reference = referenceCase('SP-01');
        const forces = splitForces({ beam, splice }, { N: 0, V: reference.input('V'), M: reference.input('M') });
        reference.expect('F_flange', forces.pull);
        reference.expect('M_web', forces.web.M - reference.input('V') * reference.input('e'));
        reference.expect('M_bolts', forces.web.M);
        const bolts = groupForces(reference.list('bolt_y').map(y => ({ x: 0, y })), { Fx: 0, Fy: forces.web.V, M: forces.web.M });
        reference.expect('F_bolt_x', Math.max(...bolts.map(({ fx }) => fx)));
        reference.expect('F_bolt_z', bolts[0]!.fy);
        const result = good(coverSplice(given, { N: 0, V: reference.input('V'), M: reference.input('M') }));
        reference.expect('F_bolt_max', of(result, 'web bolts').demand.value * 1e3);
    });

    test('flange: six bolts in shear, net section and block of the cover by hand', () => {
        const result = good(coverSplice(given, { N: 0, V: 0, M: 40 * kNm }));
        within(of(result, 'flange bolts').capacity.value, 6 * 60.288, 1e-9, 'shear governs');
        const net = 0.9 * (150 - 36) * 12 * 360 / 1.25;
        const gross = 150 * 12 * 235;
        const block = 360 * Math.min(150 - 90 - 18, 90 - 18) * 12 / 1.25 + 235 / Math.sqrt(3) * 2 * 12 * (40 + 120 - 2.5 * 18);
        within(of(result, 'flange cover in tension').capacity.value * 1e3, Math.min(net, gross, block), 1e-9, 'cover');
        within(of(result, 'flange at its holes').capacity.value * 1e3, Math.min(0.9 * (150 - 36) * 10.7 * 360 / 1.25, 150 * 10.7 * 235), 1e-9, 'flange');
        // 90 mm between bolts over the joint is less than 9 ε t = 108 mm: no buckling.
        within(of(result, 'flange cover in compression').capacity.value * 1e3, gross, 1e-9, 'compression');
        expect(spliceUtilisation(result)).toBeLessThan(1);
    });

    test('a slender cover buckles between its bolts', () => {
        const thin = { ...given, splice: { ...splice, flange: { ...splice.flange, thickness: 4 } } };
        expect(of(good(coverSplice(thin, { N: 0, V: 0, M: kNm })), 'flange cover in compression').capacity.value * 1e3).toBeLessThan(150 * 4 * 235);
    });

    test('web covers: block tearing of the corner, (3.10), both covers', () => {
        const result = good(coverSplice(given, { N: 0, V: 50_000, M: 0 }));
        const corner = 0.5 * 360 * 16 * (35 - 9) / 1.25 + 235 / Math.sqrt(3) * 16 * (25 + 180 - 3.5 * 18);
        within(of(result, 'block tearing of the web and its covers').capacity.value * 1e3, corner, 1e-9, 'corner');
    });

    test('stiffness: all springs rigid but the bare covers leaves E A z²/2L; play by the clearance', () => {
        const bolt = { d: 16, d0: 18, fub: 800 };
        const real = coverStiffness(splice, bolt, 360);
        const rigid = 210_000 * 312 ** 2 * 1800 / (2 * 90);
        expect(real.rotational).toBeLessThan(rigid);
        expect(real.play).toBeCloseTo(4 * 2 / 312, 12);
        expect(coverStiffness(splice, { ...bolt, d0: 16 }, 360).play).toBe(0);
        // k11 = 16·3·16²·800/(E·16), k12 with k_b = min(0.25·40/16 + 0.5, 0.25·60/16 + 0.375, 1.25), k_t = 1.5 t/16: Table 6.11.
        const E = 210_000;
        const k12 = (t: number) => 24 * 3 * Math.min(1.125, 1.3125, 1.25) * 1.5 * t / 16 * 16 * 360 / E;
        const side = 1 / (16 * 3 * 256 * 800 / (E * 16)) + 1 / k12(10.7) + 1 / k12(12);
        within(real.rotational, E * 312 ** 2 / (2 * (2 * side + 90 / 1800)), 1e-9, 'Sj');
    });

    test('what makes no splice is a problem', () => {
        const forces = { N: 0, V: 1, M: 1 };
        const change = (flange: Partial<CoverSplice['flange']>, web: Partial<CoverSplice['web']> = {}, gap = 10): CoverCheck =>
            ({ ...given, splice: { ...splice, gap, flange: { ...splice.flange, ...flange }, web: { ...splice.web, ...web } } });
        for (const bad of [change({ pairs: 0 }), change({ pairs: 1.5 }), change({ gauge: 20 }), change({ thickness: -1 }), change({}, { depth: 290 }), change({}, { rows: 0 }), change({}, { rows: 1 }), change({}, {}, -1), change({ width: NaN })]) {
            expect(isProblem(coverSplice(bad, forces)), JSON.stringify(bad.splice)).toBe(true);
        }
        expect(isProblem(coverSplice(given, { N: 0, V: NaN, M: 0 }))).toBe(true);
    });
});
