/**
 * Sentences that were made with the results, for the reader: numbers with a unit, `2.21 m`, `190 × 240 mm` or
 * `1.60 to 2.70 m`, in the reader's units and decimal sign. Without a unit nothing is a number here: clauses and
 * names have points too.
 */
import { hasComma, isImperial } from './display.js';
import { amount, size, station } from './numbers.js';

const number = '\\d+(?:\\.\\d+)?';
const symbols = ['kN/m²', 'kN/m2', 'kN/m³', 'kN/m', 'kN·m', 'kNm', 'kN', 'N/mm²', 'N/mm', 'MPa', 'kg/m³', 'kg/m²', 'kg/m', 'kg', 'mm²', 'mm', 'm²', 'm', 'N', '%'];
const numbersWithUnit = new RegExp(`(?<![\\w.,/])(${number}(?: (?:×|to) ${number})*) (${symbols.join('|')})(?![\\w²³⁴/·])`, 'g');
const ascii: Readonly<Record<string, string>> = { '²': '2', '³': '3', '·': '' };

export function prose(text: string): string {
    return !isImperial() && !hasComma() ? text
        : text.replace(numbersWithUnit, (_, numbers: string, unit: string) => isImperial() ? converted(numbers, unit) : `${numbers.replaceAll('.', ',')} ${unit}`);
}

function converted(numbers: string, unit: string): string {
    const print = unit === 'm' ? (value: number) => station(value * 1000)
        : unit === 'mm' && !numbers.includes('.') ? size
            : (value: number) => amount({ value, unit: unit.replace(/[²³·]/g, character => ascii[character]!) });
    return numbers.replace(new RegExp(number, 'g'), text => print(Number(text)));
}

/** The factors of a combination: `1,35 G + 1,5 storage`. */
export function combinationLabel(label: string): string {
    return hasComma() ? label.replace(/(?<![\w.])(\d+)\.(\d+)(?= )/g, '$1,$2') : label;
}
