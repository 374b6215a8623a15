import { describe, expect, it } from 'vitest';
import type { ValueOverride } from '../../language/src/model.js';
import { flexibility, length, ratio, type Dimension } from '../../language/src/quantity.js';
import { createParameters, parameterNames } from '../../server/src/catalog/parameters.js';
import { source } from './fixture.js';

const value = (name: string, amount: number, dimension: Dimension = ratio): ValueOverride => ({ name, value: amount, dimension, source });

describe('parameters', () => {
    it('are the recommended values where the file is silent (EN 1990 A1.2, EN 1995-1-1 2.3 and 7.2)', () => {
        const { parameters, findings } = createParameters([]);
        expect(findings).toEqual([]);
        expect([parameters.gammaG, parameters.gammaGfavourable, parameters.gammaQ, parameters.xi]).toEqual([1.35, 1, 1.5, 0.85]);
        expect([parameters.gammaGequilibrium, parameters.gammaGequilibriumFavourable]).toEqual([1.1, 0.9]);
        expect([parameters.gammaM('solid'), parameters.gammaM('glulam'), parameters.gammaM('masonry')]).toEqual([1.3, 1.25, 3]);
        expect([parameters.instantLimit, parameters.finalLimit, parameters.kcr]).toEqual([300, 250, 0.67]);
        expect(parameters.psi('imposed E')).toEqual([1, 0.9, 0.8]);
        expect(parameters.kmod('solid', 3, 'long-term')).toBe(0.55);
    });
    it('are the file’s where it sets them', () => {
        const { parameters, findings } = createParameters([
            value('gamma_M solid', 1.25), value('psi2 imposed E', 0.9), value('limit final', 1 / 300), value('limit instant', 400), value('vibration a', 0.002, flexibility)
        ]);
        expect(findings).toEqual([]);
        expect([parameters.gammaM('solid'), parameters.psi('imposed E')[2], parameters.instantLimit, parameters.vibrationA]).toEqual([1.25, 0.9, 400, 2]);
        expect(parameters.finalLimit).toBeCloseTo(300, 9);
        expect(parameters.uses()).toContainEqual({ name: 'gamma_M solid', value: 1.25, origin: 'set in this file' });
    });
    it('list what was used, once each, with its origin', () => {
        const { parameters } = createParameters([]);
        expect(parameters.uses()).toEqual([]);
        void [parameters.kcr, parameters.kcr, parameters.kmod('solid', 1, 'short-term')];
        expect(parameters.uses()).toEqual([
            { name: 'k_cr', value: 0.67, origin: 'EN 1995-1-1 6.1.7(2) recommended, from memory' },
            { name: 'k_mod short-term, service class 1', value: 0.9, origin: 'EN 1995-1-1 Table 3.1, seen in an open textbook (TU Delft)' }
        ]);
    });
    it.each([
        ['an unknown name', value('gamma_M soild', 1.3), 'unknown-value', 'the nearest name is gamma_M solid'],
        ['a name of the language itself', value('constructor', 1.3), 'unknown-value', 'there is no value constructor'],
        ['a length for a factor', value('gamma_G', 1.3, length), 'wrong-dimension', 'gamma_G is a plain number'],
        ['a plain number for a flexibility', value('vibration a', 1.5), 'wrong-dimension', '1.5 mm/kN'],
        ['a negative factor', value('gamma_G', -1), 'value-out-of-range', 'from 0 to 10'],
        ['a ψ above 1', value('psi0 snow', 1.2), 'value-out-of-range', 'from 0 to 1'],
        ['no number', value('gamma_Q', NaN), 'value-out-of-range', 'gamma_Q has to be']
    ])('%s is found, and the recommended value stays', (_, wrong, code, message) => {
        const { parameters, findings } = createParameters([wrong]);
        expect(findings).toEqual([expect.objectContaining({ code, severity: 'error', message: expect.stringContaining(message) as string, source })]);
        expect(parameters.gammaG).toBe(1.35);
    });
    it('can all be set by their names', () => {
        for (const name of parameterNames) {
            expect(createParameters([name === 'vibration a' ? value(name, 0.001, flexibility) : value(name, 1)]).findings, name).toEqual([]);
        }
    });
});
