import { describe, expect, it } from 'vitest';
import {
    fundamentalFrequency, impulseVelocity, impulseVelocityLimit, modesBelow40Hz, pointLoadDeflection, pointLoadFactor
} from '../../server/src/checks/en1995/floor-vibration.js';
import { vibration } from '../../server/src/checks/en1995/vibration.js';
import { published } from './figures.js';
import { beam, given, load, source, strengthOf } from './fixture.js';

describe('published cases', () => {
    published('LVL-03', g => {
        const f1 = fundamentalFrequency(g('L'), g('EIl'), g('m'));
        const n40 = modesBelow40Hz(f1, g('B'), g('L'), g('EIl'), g('EIb'));
        return { f1, n40, v: impulseVelocity(n40, g('m'), g('B'), g('L')), v_limit: impulseVelocityLimit(g('b_limit'), f1, g('zeta')) };
    });
    published('LVL-06', g => {
        const EIb = g('EI_deck') + g('EI_bracing') + g('batten_E') * 1e6 * (g('batten_b') * g('batten_h') ** 3 / 12) * 1e-12 / (g('batten_s') / 1000);
        return { k_delta: pointLoadFactor(g('EIl'), EIb), w: pointLoadDeflection(g('L'), g('EIl'), EIb, 0.4) };
    });
});

/** The floor of LVL-03: its joists 45 × 240 with E = 13 800 MPa at 400 mm. */
const floor = {
    width: given(5000), spacing: given(400), massPerArea: given(120e-6), transverseStiffness: given(3110e3), damping: given(0.01), source
};
const joist = (length: number, more = {}) => beam({
    b: 45, h: 240, length, strength: { ...strengthOf('C24'), E0_mean: 13_800 }, member: { floor, ...more }
});

describe('a floor member', () => {
    it('of LVL-03 has its frequency by E I over the spacing, and its velocity', () => {
        const [frequency, stiffness, velocity] = vibration.outcomes(joist(4500));
        expect(frequency?.capacity.value).toBeCloseTo(9.47, 1);
        expect(frequency?.utilisation).toBeCloseTo(8 / 9.47, 2);
        expect(stiffness?.capacity).toEqual({ value: 1.5, unit: 'mm/kN' });
        expect(velocity?.demand.value).toBeCloseTo(0.00968, 4);
    });
    it('of 8 Hz or less never passes, 7.3.3(1)', () => {
        const slow = vibration.outcomes(joist(5200))[0];
        expect(slow?.capacity.value).toBeLessThan(8);
        expect(slow?.utilisation).toBeGreaterThan(1);
    });
    it('of 40 Hz or more has no mode below it', () => {
        expect(modesBelow40Hz(40, 5, 4, 1e6, 1e4)).toBe(0);
        expect(modesBelow40Hz(39.9, 5, 4, 1e6, 1e4)).toBeGreaterThan(0);
    });
    it('without a deck is held by one joist alone', () => {
        expect(pointLoadDeflection(4.5, 1.79e6, 0, 0.4)).toBeCloseTo(1e6 * 4.5 ** 3 / (48 * 0.4 * 1.79e6), 12);
    });
    it('in a dwelling that says nothing of its floor is said to be unchecked', () => {
        const imposed = (category: 'A' | 'E') => beam({
            b: 45, h: 240, length: 4500, context: { loads: [load({ action: { kind: 'imposed', category } })] }
        });
        expect(vibration.outcomes(imposed('A'))).toEqual([]);
        expect(vibration.lacking?.(imposed('A'))).toHaveLength(1);
        expect(vibration.lacking?.(imposed('E'))).toEqual([]);
    });
});
