/**
 * Sentences that were made with the results, for the reader: numbers with a unit, `190 × 240 mm` or `2.21 m`, in the
 * reader's units and decimal sign. Without a unit nothing is a number here: clauses and names have points too.
 */
import { hasComma, isImperial } from './display.js';
import { amount, size, station } from './numbers.js';

const symbols = ['kN/m²', 'kN/m2', 'kN/m³', 'kN/m', 'kN·m', 'kNm', 'kN', 'N/mm²', 'N/mm', 'MPa', 'kg/m³', 'kg/m²', 'kg/m', 'kg', 'mm²', 'mm', 'm²', 'm', 'N', '%'];
const numberWithUnit = new RegExp(`(?<![\\w.,/])(\\d+(?:\\.\\d+)?(?: × \\d+(?:\\.\\d+)?)*) (${symbols.join('|')})(?![\\w²³⁴/·])`, 'g');
const ascii: Readonly<Record<string, string>> = { '²': '2', '³': '3', '·': '' };

export function prose(text: string): string {
    return !isImperial() && !hasComma() ? text
        : text.replace(numberWithUnit, (_, numbers: string, unit: string) => isImperial() ? converted(numbers.split(' × ').map(Number), unit) : `${numbers.replaceAll('.', ',')} ${unit}`);
}

function converted(numbers: readonly number[], unit: string): string {
    return unit === 'm' ? numbers.map(value => station(value * 1000)).join(' × ')
        : unit === 'mm' && numbers.every(Number.isInteger) ? size(...numbers)
            : numbers.map(value => amount({ value, unit: unit.replace(/[²³·]/g, character => ascii[character]!) })).join(' × ');
}

/** The factors of a combination: `1,35 G + 1,5 storage`. */
export function combinationLabel(label: string): string {
    return hasComma() ? label.replace(/(?<![\w.])(\d+)\.(\d+)(?= )/g, '$1,$2') : label;
}
