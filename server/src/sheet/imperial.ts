/**
 * Imperial units for print. The factors are those of the language (`language/src/units.ts`): 1 in = 25.4 mm,
 * 1 lb = 0.45359237 kg and g = 9.80665 m/s², exact by definition. Which unit of several: common practice, no source.
 */
import { units } from '../../../language/src/units.js';
import type { Amount } from '../results.js';

/** The base amounts of a unit, as `units` have them; of those that stand in a calculation only, by their parts. */
function factorOf(unit: string): number {
    const [over = '', under] = unit.split('/');
    return units.get(unit)?.factor ?? (units.get(over)?.factor ?? NaN) / (under === undefined ? 1 : units.get(under)?.factor ?? NaN);
}

/** For each unit the imperial one, and from which number on a larger one. */
const table: readonly (readonly [si: readonly string[], imperial: string, larger?: string, from?: number])[] = [
    [['mm', 'cm'], 'in'], [['mm2', 'cm2'], 'in2'], [['m2'], 'ft2'], [['mm3', 'cm3'], 'in3'], [['m3'], 'ft3'], [['mm4', 'cm4'], 'in4'],
    [['N', 'kN', 'MN'], 'lbf', 'kip', 1e4], [['Nmm', 'N·mm', 'Nm', 'kNm'], 'lbfft', 'kipft', 1e5],
    [['MPa', 'GPa', 'N/mm2', 'kN/mm2'], 'psi', 'ksi', 1e5], [['N/m2', 'kN/m2', 'kPa'], 'psf'], [['kN/m'], 'lbf/ft'], [['N/mm', 'kN/mm'], 'lbf/in'],
    [['mm/kN', 'mm/N'], 'in/kip'], [['kg', 't'], 'lb'], [['kg/m'], 'lb/ft'], [['kg/m2'], 'lb/ft2'], [['kg/m3', 'kg/m³', 't/m3'], 'lb/ft3'], [['kN/m3'], 'lbf/ft3']
];

const targets = new Map(table.flatMap(([si, imperial, larger = imperial, from = Infinity]) => si.map(unit => {
    const own = unit === 'N·mm' ? factorOf('Nmm') : unit === 'kg/m³' ? factorOf('kg/m3') : factorOf(unit);
    return [unit, { imperial, larger, from, factor: own / factorOf(imperial), largerFactor: own / factorOf(larger) }] as const;
})));

/** The same amount; undefined where the unit stays as it is (per cent, seconds, degrees, products of a formula alone). */
export function imperial({ value, unit }: Amount): Amount | undefined {
    const target = targets.get(unit);
    if (!target) {
        return undefined;
    }
    const converted = value * target.factor;
    return Math.abs(converted) < target.from ? { value: converted, unit: target.imperial } : { value: value * target.largerFactor, unit: target.larger };
}

const inch = units.get('in')!.factor;

/** `7'-3 1/2"`, to a part of an inch; below a foot without feet. Trade's way of writing: common practice, no source. */
export function feetAndInches(mm: number, parts: number): string {
    const whole = Math.round(Math.abs(mm) / inch * parts);
    const [feet, inches, left] = [Math.floor(whole / (12 * parts)), Math.floor(whole / parts) % 12, whole % parts];
    const shared = greatestCommonDivisor(left, parts);
    const fraction = left === 0 ? '' : `${left / shared}/${parts / shared}`;
    const said = fraction === '' ? `${inches}"` : inches === 0 ? `${fraction}"` : `${inches}\u00A0${fraction}"`;
    return `${mm < 0 && whole > 0 ? '−' : ''}${feet === 0 ? said : `${feet}'-${fraction !== '' && inches === 0 ? `0\u00A0${fraction}"` : said}`}`;
}

function greatestCommonDivisor(a: number, b: number): number {
    return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
