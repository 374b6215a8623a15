/**
 * No published figures of lateral torsional buckling are at hand: the formulas are held against each
 * other, against the exact torsion constant of a square, and against figures worked by hand.
 */
import { describe, expect, it } from 'vitest';
import {
    criticalStress, criticalStressGeneral, criticalStressSoftwood, kcrit, shearModulus05, torsionConstant
} from '../../server/src/checks/en1995/lateral-buckling.js';
import { bucklingOf } from '../../server/src/checks/en1995/buckling.js';
import { compressionEdgeAt } from '../../server/src/checks/en1995/compression-edge.js';
import { stability, stabilitySum } from '../../server/src/checks/en1995/stability.js';
import { beam, given, lineLoad, pointLoad, segment, state, strengthOf } from './fixture.js';

describe('k_crit, EN 1995-1-1 (6.34)', () => {
    it.each([[0, 1], [0.75, 1], [1, 0.81], [1.4, 0.51], [1.5, 1 / 2.25], [2, 0.25]])('at λ_rel,m = %d', (slenderness, expected) => {
        expect(kcrit(slenderness)).toBeCloseTo(expected, 12);
    });
    it('is almost continuous at its branches', () => {
        expect(kcrit(0.75 + 1e-9)).toBeCloseTo(0.9975, 6);
        expect(kcrit(1.4 + 1e-9)).toBeCloseTo(0.5102, 4);
    });
    it('is not a number where the slenderness is none', () => {
        expect(kcrit(NaN)).toBeNaN();
    });
});

describe('critical stress', () => {
    it('by (6.32), worked by hand: 50 × 200 C24, l_ef 3.6 m', () => {
        expect(criticalStressSoftwood(50, 200, 3600, 7400)).toBeCloseTo(0.78 * 2500 * 7400 / 720_000, 12);
        expect(criticalStressSoftwood(50, 200, 3600, 7400)).toBeCloseTo(20.04, 2);
    });
    it('by (6.31) agrees with (6.32) for a thin section with G = E/16', () => {
        const general = criticalStressGeneral(2, 200, 3600, 7400, 7400 / 16);
        expect(general / criticalStressSoftwood(2, 200, 3600, 7400)).toBeCloseTo(Math.PI / 4 / 0.78, 2);
    });
    it('has the torsion constant of a square, 0.1406 a⁴ (Timoshenko and Goodier, from memory)', () => {
        expect(torsionConstant(100, 100) / 1e8).toBeCloseTo(0.1406, 3);
        expect(torsionConstant(50, 200)).toBe(torsionConstant(200, 50));
        expect(torsionConstant(50, 200) / (200 * 50 ** 3)).toBeCloseTo(0.281, 3);
    });
    it('takes G_0,05 of GL24h as EN 14080:2013 has it, 540 MPa', () => {
        expect(shearModulus05(strengthOf('GL24h'))).toBeCloseTo(540, -1);
    });
    it('takes (6.31) for glulam and hardwood', () => {
        const oak = strengthOf('D30');
        expect(criticalStress(oak, 50, 200, 3600)).toBe(criticalStressGeneral(50, 200, 3600, oak.E0_05, shearModulus05(oak)));
        expect(criticalStress(strengthOf('C24'), 50, 200, 3600)).toBe(criticalStressSoftwood(50, 200, 3600, 7400));
    });
});

describe('effective length, Table 6.1', () => {
    const joist = (member = {}, context = {}, actions = {}) => beam({ b: 50, h: 200, length: 4000, member, context, actions });
    it.each([
        ['spread load over all of the span', joist({}, { loads: [lineLoad(0, 4000)] }), 0.9 * 4000 + 400],
        ['a point load with it', joist({}, { loads: [lineLoad(0, 4000), pointLoad(2000)] }), 4000 + 400],
        ['a load on part of the span', joist({}, { loads: [lineLoad(500, 4000)] }), 4000 + 400],
        ['restrained', joist({ restraint: given(600) }, { loads: [lineLoad(0, 4000)] }), 600 + 400]
    ])('%s', (_, context, expected) => {
        expect(compressionEdgeAt(context, 2000, false).lef).toBe(expected);
    });
    it('hogging is not held by the restraint of the top', () => {
        const edge = compressionEdgeAt(joist({ restraint: given(600) }, { loads: [lineLoad(0, 4000)] }), 2000, true);
        expect(edge.lef).toBe(4000 + 400);
        expect(edge.note).toContain('does not hold the bottom');
    });
    it('an overhang', () => {
        const spans = [{ from: 0, to: 3000, overhang: false }, { from: 3000, to: 4000, overhang: true }];
        expect(compressionEdgeAt(joist({}, { loads: [lineLoad(0, 4000)] }, { spans }), 3900, true).lef).toBe(0.5 * 1000 + 400);
        expect(compressionEdgeAt(joist({}, { loads: [pointLoad(4000)] }, { spans }), 3900, true).lef).toBe(0.8 * 1000 + 400);
        // At the support the longer of the two neighbours counts.
        expect(compressionEdgeAt(joist({}, { loads: [pointLoad(4000)] }, { spans }), 3000, true).lef).toBe(3000 + 400);
    });
    it('takes the weakest section along the length', () => {
        const segments = [segment(0, 2000, 50, 200), segment(2000, 2500, 45, 200, { weakened: true }), segment(2500, 4000, 50, 200)];
        expect(compressionEdgeAt(joist({ restraint: given(100) }, {}, { segments }), 1000, false)).toMatchObject({ b: 45, kcrit: 1 });
    });
});

describe('the check', () => {
    const slender = (more: Parameters<typeof state>[0]) => stability.outcomes(beam({
        b: 50, h: 200, length: 4000, context: { loads: [lineLoad(0, 4000)] }, states: [[2000, state({ M: 3e6, ...more })]]
    }))[0];
    const fm = 0.8 * 24 / 1.3;
    const sigma = 3e6 * 6 / (50 * 200 ** 2);
    const k = kcrit(Math.sqrt(24 / criticalStressSoftwood(50, 200, 4000, 7400)));

    it('holds the stress against k_crit f_m,d, (6.33)', () => {
        expect(slender({})?.utilisation).toBeCloseTo(sigma / (k * fm), 12);
        expect(slender({})?.capacity).toEqual({ value: expect.closeTo(k * fm, 9) as number, unit: 'MPa' });
    });
    it('adds compression by (6.35)', () => {
        const kcz = bucklingOf(4000, 50, strengthOf('C24'), 0.2).kc;
        const axial = 20_000 / 10_000 / (kcz * 0.8 * 21 / 1.3);
        expect(slender({ N: -20_000 })?.utilisation).toBeCloseTo((sigma / (k * fm)) ** 2 + axial, 9);
    });
    it('never helps itself to the square of a small share', () => {
        expect(stabilitySum(0.5, 0.1)).toBe(0.5);
        expect(stabilitySum(0.9, 0.3)).toBeCloseTo(1.11, 12);
        expect(stabilitySum(0.9, 0)).toBe(0.9);
    });
});
