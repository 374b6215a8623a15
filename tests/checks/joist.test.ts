/**
 * Case TB-01 of the oracles (closed form, EN 1995-1-1:2004+A1:2008 6.1.5, 6.1.6, 6.1.7) through the
 * checks themselves and their runner: 75 × 225 C24 joists at 400 mm over 4 m, 1.0 + 2.0 kN/m².
 */
import { describe, expect, it } from 'vitest';
import { memberChecks } from '../../server/src/checks/index.js';
import { runChecks } from '../../server/src/checks/runner.js';
import { beam, deflection, state, support } from './fixture.js';

const load = 1.74;
const L = 4000;
const joist = beam({
    b: 75, h: 225, length: L,
    states: [[0, state({ V: load * L / 2 })], [L / 2, state({ M: load * L * L / 8 })], [L, state({ V: -load * L / 2 })]],
    actions: {
        // Contacts are centred on their support: 50 mm of each 100 mm bearing stands on the joist.
        supports: [support('west', 0, 100, [load * L / 2]), support('east', L, 100, [load * L / 2])],
        instant: [deflection(4, 0, L)],
        final: [deflection(6, 0, L)]
    }
});

describe('TB-01', () => {
    const { results, lacking } = runChecks(joist, memberChecks);
    const result = (check: string) => {
        const found = results.find(candidate => candidate.check === check);
        if (!found) {
            throw new Error(`no result for ${check}`);
        }
        return found;
    };

    it('bending', () => {
        expect(result('bending').demand.value).toBeCloseTo(5.499259, 4);
        expect(result('bending').capacity.value).toBeCloseTo(14.76923, 4);
        expect(result('bending').utilisation).toBeCloseTo(0.3723457, 5);
        expect(result('bending').at).toEqual({ value: 2, unit: 'm' });
    });

    it('shear with cracks', () => {
        expect(result('shear').demand.value).toBeCloseTo(0.4616915, 5);
        expect(result('shear').capacity.value).toBeCloseTo(2.461538, 5);
        expect(result('shear').utilisation).toBeCloseTo(0.1875622, 5);
    });

    it('bearing over the effective length', () => {
        expect(result('bearing').demand.value).toBeCloseTo(0.58, 6);
        expect(result('bearing').utilisation).toBeCloseTo(0.2513333, 5);
    });

    it('deflection against the span', () => {
        expect(result('instant').utilisation).toBeCloseTo(4 / (L / 300), 9);
        expect(result('final').utilisation).toBeCloseTo(6 / (L / 250), 9);
    });

    it('lacks nothing and passes', () => {
        expect(lacking).toEqual([]);
        expect(results.every(({ pass }) => pass)).toBe(true);
    });
});
