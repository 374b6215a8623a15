/**
 * Factors against values that are not ours: imperial ones computed with scipy.constants of SciPy 1.17.1
 * (inch, foot, pound, pound_force, psi, degree), printed to full precision in SI; SI ones by definition.
 */
import { describe, expect, it } from 'vitest';
import { dimensionName, formatQuantity, units } from '../../language/src/index.js';
import * as dim from '../../language/src/quantity.js';

const scipy = { inch: 0.0254, foot: 0.30479999999999996, pound: 0.45359236999999997, poundForce: 4.4482216152605, psi: 6894.757293168361, degree: 0.017453292519943295 };

/** Unit, how much of the SI unit it is, and the SI unit's factor to base units. */
const imperial: readonly (readonly [string, number, number])[] = [
    ['in', scipy.inch, 1e3], ['ft', scipy.foot, 1e3], ['in2', scipy.inch ** 2, 1e6], ['ft2', scipy.foot ** 2, 1e6], ['in3', scipy.inch ** 3, 1e9],
    ['ft3', scipy.foot ** 3, 1e9], ['in4', scipy.inch ** 4, 1e12], ['lb', scipy.pound, 1], ['lbf', scipy.poundForce, 1], ['kip', 1e3 * scipy.poundForce, 1],
    ['psi', scipy.psi, 1e-6], ['ksi', 1e3 * scipy.psi, 1e-6], ['psf', scipy.psi / 144, 1e-6], ['lbf/in2', scipy.psi, 1e-6], ['lbf/ft2', scipy.psi / 144, 1e-6],
    ['plf', scipy.poundForce / scipy.foot, 1e-3], ['lbf/ft', scipy.poundForce / scipy.foot, 1e-3], ['lbf/in', scipy.poundForce / scipy.inch, 1e-3],
    ['kip/ft', 1e3 * scipy.poundForce / scipy.foot, 1e-3], ['lbfft', scipy.poundForce * scipy.foot, 1e3], ['lbfin', scipy.poundForce * scipy.inch, 1e3],
    ['kipft', 1e3 * scipy.poundForce * scipy.foot, 1e3], ['kipin', 1e3 * scipy.poundForce * scipy.inch, 1e3], ['lb/ft3', scipy.pound / scipy.foot ** 3, 1e-9],
    ['pcf', scipy.pound / scipy.foot ** 3, 1e-9], ['lb/ft2', scipy.pound / scipy.foot ** 2, 1e-6], ['lb/ft', scipy.pound / scipy.foot, 1e-3], ['deg', scipy.degree, 1]
];

/** From memory, as tables of conversion print them (NIST SP 811, Appendix B): a second look at the powers of ten. */
const printed: readonly (readonly [string, number, number])[] = [
    ['psi', 6.894757e3, 1e-6], ['psf', 4.788026e1, 1e-6], ['plf', 1.459390e1, 1e-3], ['lbfft', 1.355818, 1e3], ['lbfin', 1.129848e-1, 1e3],
    ['lb/ft3', 1.601846e1, 1e-9], ['lb/ft2', 4.882428, 1e-6], ['lb/ft', 1.488164, 1e-3], ['in4', 4.162314e-7, 1e12], ['in3', 1.638706e-5, 1e9]
];

const metric: readonly (readonly [string, number, dim.Dimension])[] = [
    ['%', 0.01, dim.ratio], ['mm', 1, dim.length], ['cm', 10, dim.length], ['m', 1e3, dim.length], ['mm2', 1, dim.area], ['cm2', 1e2, dim.area], ['m2', 1e6, dim.area],
    ['cm3', 1e3, dim.volume], ['m3', 1e9, dim.volume], ['cm4', 1e4, dim.secondMoment], ['m4', 1e12, dim.secondMoment], ['N', 1, dim.force], ['kN', 1e3, dim.force],
    ['kg', 1, dim.mass], ['t', 1e3, dim.mass], ['kNm', 1e6, dim.moment], ['Nm', 1e3, dim.moment], ['Pa', 1e-6, dim.stress], ['kPa', 1e-3, dim.stress], ['MPa', 1, dim.stress],
    ['GPa', 1e3, dim.stress], ['N/mm2', 1, dim.stress], ['kN/m2', 1e-3, dim.stress], ['kN/m²', 1e-3, dim.stress], ['N/mm²', 1, dim.stress], ['kN/cm2', 10, dim.stress],
    ['kN/m', 1, dim.lineLoad], ['N/mm', 1, dim.lineLoad], ['kN/mm', 1e3, dim.lineLoad], ['kg/m3', 1e-9, dim.density], ['kN/m3', 1e-6, dim.weightDensity],
    ['kg/m2', 1e-6, dim.massPerArea], ['kg/m', 1e-3, dim.massPerLength], ['kNm2', 1e9, dim.bendingStiffness], ['kNm2/m', 1e6, dim.moment], ['mm/kN', 1e-3, dim.flexibility],
    ['day', 1, dim.time], ['year', 365.25, dim.time], ['h', 1 / 24, dim.time], ['min', 1 / 1440, dim.time], ['rad', 1, dim.angle]
];

describe('units', () => {
    it.each(imperial)('%s as SciPy has it', (symbol, si, base) => expect(units.get(symbol)!.factor / (si * base)).toBeCloseTo(1, 12));
    it.each(printed)('%s as tables print it', (symbol, si, base) => expect(units.get(symbol)!.factor / (si * base)).toBeCloseTo(1, 6));
    it.each(metric)('%s by definition', (symbol, factor, dimension) => expect(units.get(symbol)).toEqual({ symbol, factor, dimension }));
    it('each belongs to a kind of quantity that has a name', () => {
        for (const unit of units.values()) {
            expect(dimensionName(unit.dimension), unit.symbol).not.toBe('a quantity of another kind');
        }
    });
});

describe('printing a quantity', () => {
    it.each([
        [{ value: 2450, dimension: dim.length }, '2.45 m'], [{ value: -200, dimension: dim.length }, '-200 mm'], [{ value: 0, dimension: dim.length }, '0 mm'],
        [{ value: 3200, dimension: dim.force }, '3.2 kN'], [{ value: 0.00075, dimension: dim.stress }, '0.75 kN/m2'], [{ value: 7.345678, dimension: dim.stress }, '7.346 MPa'],
        [{ value: 480, dimension: dim.mass }, '480 kg'], [{ value: 0.9, dimension: dim.ratio }, '0.9'], [{ value: 3.5e-7, dimension: dim.density }, '350 kg/m3'],
        [{ value: 12e6, dimension: dim.moment }, '12 kNm']
    ] as const)('%j', (quantity, text) => expect(formatQuantity(quantity)).toBe(text));

    it('in a unit that is asked for', () => expect(formatQuantity({ value: 254, dimension: dim.length }, 'in')).toBe('10 in'));
});
