/** Beams of reference-cases.json: standard beam theory, each confirmed there by a second method. */
import { describe, expect, test } from 'vitest';
import { input, referenceCase } from './cases.js';
import { elastic, single } from './fixture.js';
import { close, greatest, least, slender, storedBeam, unfactored, valueAt } from './figures.js';

describe('single beams against standard beam theory', () => {
    test('SS-01 simply supported, uniform load', () => {
        const of = referenceCase('SS-01');
        const actions = storedBeam(of);
        close(greatest(actions.diagrams.M).max, of.results['M']);
        close(actions.instant[0]!.value, of.results['d']);
        close(actions.supports[0]!.design.max, of.results['R']);
    });
    test('SS-02 central point load', () => {
        const of = referenceCase('SS-02');
        const actions = storedBeam(of);
        close(greatest(actions.diagrams.M).max, of.results['M']);
        close(actions.instant[0]!.value, of.results['d']);
    });
    test('SS-03 point load off the middle: peak of the deflection between nodes', () => {
        const of = referenceCase('SS-03');
        const actions = storedBeam(of);
        close(greatest(actions.diagrams.M).max, of.results['M']);
        close(valueAt(actions.diagrams.instant, 1200), of.results['d_load']);
        close(actions.instant[0]!.value, of.results['d_max']);
        close(actions.instant[0]!.at, of.results['x_max']);
        close(actions.supports[0]!.design.max, of.results['R1']);
    });
    test('SS-04 two equal loads', () => {
        const of = referenceCase('SS-04');
        const actions = storedBeam(of);
        close(greatest(actions.diagrams.M).max, of.results['M']);
        close(actions.instant[0]!.value, of.results['d']);
    });
    test('SS-05 partial uniform load: peak moment where the shear is zero', () => {
        const of = referenceCase('SS-05');
        const actions = storedBeam(of);
        close(actions.supports[0]!.design.max, of.results['R1']);
        close(actions.supports[1]!.design.max, of.results['R2']);
        close(greatest(actions.diagrams.M).max, of.results['M_max']);
    });
    test('CA-01 cantilever', () => {
        const of = referenceCase('CA-01');
        const actions = storedBeam(of);
        close(least(actions.diagrams.M).min, of.results['M']);
        close(actions.instant[0]!.value, of.results['d']);
    });
    test('PR-01 propped cantilever', () => {
        const of = referenceCase('PR-01');
        const actions = storedBeam(of);
        close(least(actions.diagrams.M).min, of.results['M_fix']);
        close(greatest(actions.diagrams.M).max, of.results['M_span']);
        close(actions.supports[1]!.design.max, of.results['R_prop']);
        close(actions.instant[0]!.value, of.results['d_max']);
    });
    test('CB-U1 two unequal spans', () => {
        const of = referenceCase('CB-U1');
        const actions = storedBeam(of);
        close(least(actions.diagrams.M).min, of.results['M_B']);
        for (const [i, name] of ['R_A', 'R_B', 'R_C'].entries()) close(actions.supports[i]!.design.max, of.results[name]);
    });
    test('SPR-01 elastic prop at the middle', () => {
        const of = referenceCase('SPR-01');
        const actions = storedBeam(of);
        close(actions.supports.find(({ kind }) => kind === 'spring')!.design.max, of.results['R_spring']);
        close(valueAt(actions.diagrams.instant, 2000), of.results['d_mid']);
        close(valueAt(actions.diagrams.M, 2000), of.results['M_mid']);
    });
    test('WF-01 long beam on an elastic foundation of springs', () => {
        const of = referenceCase('WF-01');
        const actions = storedBeam(of);
        // The chord runs between the ends, which 9 m and more from the load do not move.
        close(valueAt(actions.diagrams.instant, 6000), of.results['w0']);
        close(valueAt(actions.diagrams.M, 6000), of.results['M0']);
    });
    test('SD-01 shear deflection of a short deep beam', () => {
        const of = referenceCase('SD-01');
        const beam = (G: number): number => single(
            { length: input(of, 'L'), b: input(of, 'b'), h: input(of, 'h'), supports: [{ at: 0 }, { at: input(of, 'L') }] },
            [{ q: input(of, 'w') }], elastic(input(of, 'E'), { G }), unfactored
        ).instant[0]!.value;
        const bending = beam(1e12);
        close(bending, of.results['d_bend']);
        close(beam(input(of, 'G')) - bending, of.results['d_shear']);
    });
    test('ML-01 two loads where their moment is greatest', () => {
        const of = referenceCase('ML-01');
        const [L, P, a] = [input(of, 'L'), input(of, 'P'), input(of, 'a')];
        const peak = (x: number): number => greatest(
            slender(1e12, L, [{ at: 0 }, { at: L }], [{ F: P, at: x }, { F: P, at: x + a }]).diagrams.M).max;
        const x = of.results['x']!.value;
        close(peak(x), of.results['M_max']);
        for (const shift of [-100, -10, 10, 100]) expect(peak(x + shift)).toBeLessThan(peak(x));
    });
});

describe('beams of other sources', () => {
    test('ST-03, ST-04 overhanging beam with its imposed load where it is worst, TU Delft "Structural Design Essentials" (seen in source)', () => {
        const [span, tip] = [referenceCase('ST-03'), referenceCase('ST-04')];
        const [L, a] = [input(span, 'L') * 1000, input(span, 'a') * 1000];
        // The source's factors are the Dutch ones, 1.2 and 1.5.
        const beam = slender(210_000 * input(span, 'Iy'), L + a, [{ at: 0 }, { at: L }], [
            { name: 'dead', q: input(span, 'g') }, { name: 'live', q: input(span, 'q'), action: { kind: 'imposed', category: 'A' } }
        ], { ...unfactored, gammaG: 1.2, gammaQ: 1.5 });
        close(-least(beam.diagrams.M).min / 1e6, tip.results['M_support']);
        // Deflections of the imposed load alone, on the span and on the overhang.
        const live = slender(210_000 * input(span, 'Iy'), L + a, [{ at: 0 }, { at: L }], [
            { name: 'live', q: input(span, 'q'), action: { kind: 'imposed', category: 'A' } }
        ]);
        close(live.instant[0]!.value, span.results['w_q']);
        close(valueAt(live.diagrams.instant, L + a), tip.results['w_tip']);
        expect(live.instant[0]!.combination.label).toBe('1.0 live (span 1)');
        // With the span loaded the tip rises further than its own load pushes it down.
        expect(live.instant[1]).toMatchObject({ value: expect.closeTo(-input(span, 'q') * L ** 3 * a / (24 * 210_000 * input(span, 'Iy')), 6), at: L + a });
    });
    test('SB-IPE200-w deflection', () => {
        const of = referenceCase('SB-IPE200-w');
        const L = input(of, 'L');
        close(slender(input(of, 'E') * input(of, 'Iy'), L, [{ at: 0 }, { at: L }], [{ q: input(of, 'q') }]).instant[0]!.value, of.results['w']);
    });
    test('MH-timber mass of a joist', () => {
        const of = referenceCase('MH-timber');
        const L = input(of, 'L');
        const { weight } = single({ length: L, b: input(of, 'b'), h: input(of, 'h'), supports: [{ at: 0 }, { at: L }] }, [], elastic(11000, { density: input(of, 'rho') }));
        close(weight / 9.80665, of.results['mass']);
    });
});
