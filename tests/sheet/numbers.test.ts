import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { force as forceDimension, length, ratio, stress } from '../../language/src/quantity.js';
import { against, amount, deflection, force, moment, percentUp, quantity, ratioUp, setOut, significant, spanRatio, station } from '../../server/src/sheet/numbers.js';

const table = <T>(print: (value: T) => string, rows: readonly (readonly [T, string])[]) =>
    it.each(rows.map(([value, printed]) => ({ value, printed })))('$value → $printed', ({ value, printed }) => expect(print(value)).toBe(printed));

describe('utilisation', () => {
    table(percentUp, [
        [0, '0 %'], [0.001, '1 %'], [0.83, '83 %'], [0.8301, '84 %'], [0.07, '7 %'], [0.29, '29 %'], [0.999, '100 %'], [1, '100 %'],
        [1.0000000000000002, '101 %'], [1.004, '101 %'], [1.01, '101 %'], [1.0101, '102 %'], [2.5, '250 %'],
        [-0.001, '0 %'], [1e7, '> 9999 %'], [1e308, '> 9999 %'], [Infinity, '∞'], [NaN, 'not computed']
    ]);

    it('never prints more than 100 % of a pass, nor 100 % or less of a failure, nor less than it is', () => {
        const anything = fc.oneof(fc.double({ min: 0, max: 2 }), fc.double({ min: 0.999999, max: 1.000001 }), fc.double({ min: 0 }));
        fc.assert(fc.property(anything, utilisation => {
            const printed = percentUp(utilisation);
            if (Number.isNaN(utilisation)) {
                return printed === 'not computed';
            }
            const percent = printed === '∞' || printed === '> 9999 %' ? Infinity : Number(printed.replace(' %', ''));
            return utilisation <= 1
                ? percent <= 100 && percent >= utilisation * 100 - 1e-6
                : percent >= 101 && percent >= utilisation * 100 - 1e-6;
        }), { numRuns: 5000 });
    });
});

describe('utilisation as a number', () => {
    table(ratioUp, [[0.44051, '0.441'], [0.44, '0.440'], [0.9999, '1.000'], [1, '1.000'], [1.0000001, '1.001'], [1.004, '1.004'], [-0.0001, '0.000'], [Infinity, '∞'], [NaN, 'not computed']]);
});

describe('three significant figures', () => {
    table(significant, [
        [5.498, '5.50'], [5.49843, '5.50'], [0.8, '0.8'], [1.3, '1.3'], [240, '240'], [1824, '1824'], [1824.37, '1820'], [21888, '21900'],
        [0.0123456, '0.0123'], [0, '0'], [-0, '0'], [-3.2, '−3.2'], [0.1 + 0.2, '0.3'],
        [1e308, '1 × 10³⁰⁸'], [1.23456e-9, '1.23 × 10⁻⁹'], [Infinity, '∞'], [-Infinity, '−∞'], [NaN, 'not computed']
    ]);

    it('is within half of the third figure, and never says NaN', () => {
        fc.assert(fc.property(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), value =>
            Math.abs(Number(significant(value)) - value) <= 0.00501 * value));
        fc.assert(fc.property(fc.double(), value => !/NaN|e[+-]/.test(significant(value))));
    });
});

describe('amounts', () => {
    table(amount, [
        [{ value: 3.48123, unit: 'kNm' }, '3.48 kN·m'], [{ value: 632812.5, unit: 'mm3' }, '633 cm³'], [{ value: 218880000, unit: 'mm4' }, '21900 cm⁴'],
        [{ value: 45600, unit: 'mm2' }, '45600 mm²'], [{ value: 0.8, unit: '' }, '0.8'], [{ value: NaN, unit: 'MPa' }, 'not computed'],
        [{ value: Infinity, unit: 'kN' }, '∞'], [{ value: 0.02, unit: 'm/(Ns2)' }, '0.02 m/(N·s²)'], [{ value: 0.75, unit: 'kN/m2' }, '0.75 kN/m²'],
        [{ value: 1.1, unit: 'mm/kN' }, '1.1 mm/kN']
    ]);

    describe('of base units', () => table(quantity, [
        [{ value: 35, dimension: length }, '35 mm'], [{ value: 4900, dimension: length }, '4.9 m'], [{ value: 0.00075, dimension: stress }, '0.75 kN/m²'],
        [{ value: 2, dimension: stress }, '2 MPa'], [{ value: 0.17, dimension: ratio }, '0.17'], [{ value: 3200, dimension: forceDimension }, '3.2 kN']
    ]));
});

describe('a demand against its capacity', () => {
    it('takes as many figures as tell one from the other', () => {
        const MPa = (value: number) => ({ value, unit: 'MPa' });
        expect(against(MPa(5.234), MPa(11.0769))).toBe('5.23 MPa against 11.1 MPa');
        expect(against(MPa(11.0811), MPa(11.0769))).toBe('11.081 MPa against 11.077 MPa');
        expect(against(MPa(7), MPa(7))).toBe('7 MPa against 7 MPa');
    });
});

describe('the rounding of the trade', () => {
    describe('moments', () => table(moment, [[3.4812, '3.48 kN·m'], [-0.0239, '−0.02 kN·m'], [-1e-9, '0 kN·m'], [18.63, '18.6 kN·m'], [NaN, 'not computed']]));
    describe('deflection', () => table(deflection, [[9.94, '9.9 mm'], [-0.5, '−0.5 mm'], [0, '0.0 mm'], [0.02, '0.02 mm'], [NaN, 'not computed']]));
    describe('span ratio, rounded down', () => table(spanRatio, [[475.99, 'L/475'], [300, 'L/300'], [299.99999999999994, 'L/300'], [299.9, 'L/299'], [Infinity, 'L/∞'], [NaN, 'not computed']]));
    describe('setting out', () => table(setOut, [[4900, '4900'], [1599.6, '1600'], [-0.2, '−0.2'], [0, '0']]));
    describe('stations', () => table(station, [[2100, '2.10 m'], [2212, '2.21 m'], [2356.4, '2.36 m'], [0, '0.00 m'], [4800.0000001, '4.80 m']]));
    describe('forces', () => table(force, [[5.24, '5.2 kN'], [-0.04, '−0.04 kN'], [1e-13, '0.0 kN'], [0, '0.0 kN'], [1e308, '1 × 10³⁰⁸ kN'], [Infinity, '∞']]));
});
