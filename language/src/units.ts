/**
 * Every unit of the language, with its factor to the base units (mm, N, kg, day, rad).
 *
 * Sources: SI by definition. Imperial from the exact definitions 1 in = 25.4 mm, 1 lb = 0.45359237 kg
 * and g = 9.80665 m/s² (NIST SP 811 Appendix B, from memory), so 1 lbf = 0.45359237 · 9.80665 N.
 */
import * as dim from './quantity.js';
import type { Dimension, Quantity } from './quantity.js';
import { sameDimension, standardGravity } from './quantity.js';

export interface UnitOfMeasure {
    readonly symbol: string;
    readonly factor: number;
    readonly dimension: Dimension;
}

const inch = 25.4;
const foot = 12 * inch;
const pound = 0.45359237;
const poundForce = pound * standardGravity;
const kip = 1000 * poundForce;

const table: readonly (readonly [symbols: string, factor: number, dimension: Dimension])[] = [
    ['%', 0.01, dim.ratio],
    ['mm', 1, dim.length], ['cm', 10, dim.length], ['m', 1000, dim.length], ['in', inch, dim.length], ['ft', foot, dim.length],
    ['mm2', 1, dim.area], ['cm2', 1e2, dim.area], ['m2', 1e6, dim.area], ['in2', inch ** 2, dim.area], ['ft2', foot ** 2, dim.area],
    ['mm3', 1, dim.volume], ['cm3', 1e3, dim.volume], ['m3', 1e9, dim.volume], ['in3', inch ** 3, dim.volume], ['ft3', foot ** 3, dim.volume],
    ['mm4', 1, dim.secondMoment], ['cm4', 1e4, dim.secondMoment], ['m4', 1e12, dim.secondMoment], ['in4', inch ** 4, dim.secondMoment],
    ['N', 1, dim.force], ['kN', 1e3, dim.force], ['MN', 1e6, dim.force], ['lbf', poundForce, dim.force], ['kip', kip, dim.force],
    ['g', 1e-3, dim.mass], ['kg', 1, dim.mass], ['t', 1e3, dim.mass], ['lb', pound, dim.mass],
    ['Nmm', 1, dim.moment], ['Nm', 1e3, dim.moment], ['kNm', 1e6, dim.moment], ['lbfft', poundForce * foot, dim.moment],
    ['lbfin', poundForce * inch, dim.moment], ['kipft', kip * foot, dim.moment], ['kipin', kip * inch, dim.moment],
    ['Pa', 1e-6, dim.stress], ['kPa', 1e-3, dim.stress], ['MPa', 1, dim.stress], ['GPa', 1e3, dim.stress],
    ['N/mm2', 1, dim.stress], ['kN/mm2', 1e3, dim.stress], ['N/m2', 1e-6, dim.stress], ['kN/m2', 1e-3, dim.stress], ['kN/cm2', 10, dim.stress],
    ['psi', poundForce / inch ** 2, dim.stress], ['ksi', kip / inch ** 2, dim.stress], ['psf', poundForce / foot ** 2, dim.stress],
    ['lbf/ft2', poundForce / foot ** 2, dim.stress], ['lbf/in2', poundForce / inch ** 2, dim.stress],
    ['N/mm', 1, dim.lineLoad], ['N/m', 1e-3, dim.lineLoad], ['kN/m', 1, dim.lineLoad], ['kN/mm', 1e3, dim.lineLoad],
    ['plf', poundForce / foot, dim.lineLoad], ['lbf/ft', poundForce / foot, dim.lineLoad], ['lbf/in', poundForce / inch, dim.lineLoad],
    ['kip/ft', kip / foot, dim.lineLoad],
    ['kg/m3', 1e-9, dim.density], ['t/m3', 1e-6, dim.density], ['g/cm3', 1e-6, dim.density], ['lb/ft3', pound / foot ** 3, dim.density], ['pcf', pound / foot ** 3, dim.density],
    ['kN/m3', 1e-6, dim.weightDensity], ['N/m3', 1e-9, dim.weightDensity],
    ['kg/m2', 1e-6, dim.massPerArea], ['lb/ft2', pound / foot ** 2, dim.massPerArea],
    ['kg/m', 1e-3, dim.massPerLength], ['lb/ft', pound / foot, dim.massPerLength],
    ['Nmm2', 1, dim.bendingStiffness], ['Nm2', 1e6, dim.bendingStiffness], ['kNm2', 1e9, dim.bendingStiffness],
    ['Nmm2/mm', 1, dim.moment], ['Nm2/m', 1e3, dim.moment], ['kNm2/m', 1e6, dim.moment],
    ['mm/N', 1, dim.flexibility], ['mm/kN', 1e-3, dim.flexibility],
    ['day', 1, dim.time], ['days', 1, dim.time], ['year', 365.25, dim.time], ['years', 365.25, dim.time],
    ['week', 7, dim.time], ['weeks', 7, dim.time], ['h', 1 / 24, dim.time], ['min', 1 / 1440, dim.time], ['s', 1 / 86400, dim.time],
    ['deg', Math.PI / 180, dim.angle], ['°', Math.PI / 180, dim.angle], ['rad', 1, dim.angle]
];

const superscripts: Readonly<Record<string, string>> = { '2': '²', '3': '³', '4': '⁴' };

/** `mm²` beside `mm2`. */
function spellings(symbol: string): readonly string[] {
    const raised = symbol.replace(/([A-Za-z])([234])/g, (_, letter: string, digit: string) => letter + superscripts[digit]);
    return raised === symbol ? [symbol] : [symbol, raised];
}

export const units: ReadonlyMap<string, UnitOfMeasure> = new Map(
    table.flatMap(([symbol, factor, dimension]) => spellings(symbol).map(name => [name, { symbol: name, factor, dimension }]))
);

const dimensionNames: readonly (readonly [Dimension, string])[] = [
    [dim.ratio, 'a plain number'], [dim.length, 'a length'], [dim.area, 'an area'], [dim.volume, 'a volume'],
    [dim.secondMoment, 'a second moment of area'], [dim.force, 'a force'], [dim.mass, 'a mass'], [dim.moment, 'a moment'],
    [dim.stress, 'a stress or area load'], [dim.lineLoad, 'a line load'], [dim.density, 'a density'],
    [dim.weightDensity, 'a weight per volume'], [dim.massPerArea, 'a mass per area'], [dim.massPerLength, 'a mass per length'],
    [dim.bendingStiffness, 'a bending stiffness'], [dim.flexibility, 'a flexibility'], [dim.time, 'a time'], [dim.angle, 'an angle']
];

/** With its article: `a length`. */
export function dimensionName(dimension: Dimension): string {
    return dimensionNames.find(([known]) => sameDimension(known, dimension))?.[1] ?? 'a quantity of another kind';
}

const preferred: readonly (readonly [symbol: string, from: number])[] = [
    ['m', 1000], ['mm', 0], ['m2', 1e6], ['mm2', 0], ['m3', 1e8], ['mm3', 0], ['mm4', 0],
    ['kN', 1000], ['N', 0], ['kg', 0], ['kNm', 1e5], ['Nmm', 0], ['MPa', 0.1], ['kN/m2', 0], ['kN/m', 0],
    ['kg/m3', 0], ['kN/m3', 0], ['kg/m2', 0], ['kg/m', 0], ['kNm2', 0], ['mm/kN', 0], ['day', 0], ['deg', 0]
];

/** The symbol that a person would choose for this quantity; empty for a plain number. */
export function naturalUnit(quantity: Quantity): string {
    const fits = ([symbol, from]: readonly [string, number]) =>
        sameDimension(units.get(symbol)!.dimension, quantity.dimension) && Math.abs(quantity.value) >= from;
    return preferred.find(fits)?.[0] ?? '';
}

/** `2.45 m`, four significant digits at most. */
export function formatQuantity(quantity: Quantity, unit: string = naturalUnit(quantity)): string {
    const factor = units.get(unit)?.factor ?? 1;
    const digits = String(Number((quantity.value / factor).toPrecision(4)));
    return unit === '' ? digits : `${digits} ${unit}`;
}
