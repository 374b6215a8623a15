/**
 * The one place where a number is rounded for print: hints, hovers, command line and sheet, in the units and
 * with the decimal sign of `./display.ts`.
 * Common practice of the trade, no source: three significant figures, whole millimetres for setting out,
 * 0.1 kN, 0.1 mm of deflection, utilisation in whole per cent rounded up.
 */
import type { Quantity } from '../../../language/src/quantity.js';
import { naturalUnit, units } from '../../../language/src/units.js';
import type { Amount } from '../results.js';
import { hasComma, isImperial } from './display.js';
import { feetAndInches, imperial } from './imperial.js';

const notComputed = 'not computed';
/** Far above the noise of double arithmetic, far below anything a person measures. */
const noise = 1e-9;

/**
 * Utilisation (a ratio) in whole per cent, rounded up: `100 %` is printed only of a pass (at most 1),
 * `101 %` or more only of a failure, however close to 1 it is. Above a hundredfold: `> 9999 %`.
 */
export function percentUp(utilisation: number): string {
    if (!Number.isFinite(utilisation)) {
        return Number.isNaN(utilisation) ? notComputed : infinite(utilisation);
    }
    const percent = Math.ceil(utilisation * 100 - noise);
    const honest = utilisation <= 1 ? Math.min(percent, 100) : Math.max(percent, 101);
    return honest > 9999 ? '> 9999 %' : `${signed(String(honest + 0))} %`;
}

/** Utilisation as a plain number, the third decimal rounded up: at most `1` only of a pass. */
export function ratioUp(utilisation: number): string {
    if (!Number.isFinite(utilisation) || Math.abs(utilisation) > 100) {
        return significant(utilisation);
    }
    const thousandths = Math.ceil(utilisation * 1000 - noise);
    return signed(((utilisation <= 1 ? Math.min(thousandths, 1000) : Math.max(thousandths, 1001)) / 1000 + 0).toFixed(3));
}

/** Three significant figures; what is shorter by itself is left so (`0.8`), as are whole numbers to `9999`. Finite or not. */
export function significant(value: number, digits = 3): string {
    if (!Number.isFinite(value)) {
        return Number.isNaN(value) ? notComputed : infinite(value);
    }
    const short = Number(value.toPrecision(Math.abs(value) < 9999.5 && isNear(value, Math.round(value)) ? 4 : digits));
    return signed(isNear(value, short) ? plain(short) : plain(value, digits));
}

function isNear(value: number, other: number): boolean {
    return Math.abs(value - other) <= noise * Math.abs(value);
}

function plain(value: number, digits?: number): string {
    const size = Math.abs(value);
    if (size !== 0 && (size < 1e-4 || size >= 1e7)) {
        const [mantissa = '', exponent = ''] = value.toExponential(digits && digits - 1).split('e');
        return `${mantissa} × 10${superscript(String(Number(exponent)))}`;
    }
    if (digits === undefined) {
        return String(value + 0);
    }
    const text = value.toPrecision(digits);
    return text.includes('e') ? String(Number(text)) : text;
}

/** Parts of an inch that lengths are told to: set out, and as prose tells a place. */
const parts = { setOut: 16, station: 4 };

/** `9.9 mm`: deflection, mm, to 0.1 mm; `0.39 in`. */
export function deflection(mm: number): string {
    return unlessMissing(mm, value => isImperial() ? `${fixed(imperial({ value, unit: 'mm' })!.value, 2)} in` : `${fixed(value, 1)} mm`);
}

/** `L/475` from span over deflection, rounded down: never better than it is. */
export function spanRatio(ratio: number): string {
    return unlessMissing(Math.abs(ratio), value => `L/${Math.floor(value + noise)}`, () => 'L/∞');
}

/** Whole millimetres for setting out, without the unit (a drawing says it once); feet and inches have their marks: `7'-3 1/2"`. */
export function setOut(mm: number): string {
    return unlessMissing(mm, value => isImperial() ? feetAndInches(value, parts.setOut) : fixed(value, 0));
}

/** `190 × 240 mm`, `4900 mm`: what is set out, with its unit. */
export function size(...mm: readonly number[]): string {
    return mm.map(setOut).join(' × ') + setOutUnit();
}

/** After the last of several values that are set out: ` mm`; inches have their mark each. */
export function setOutUnit(): string {
    return isImperial() ? '' : ' mm';
}

/** What a drawing's dimensions are in. */
export function dimensionsIn(): string {
    return isImperial() ? 'feet and inches' : 'mm';
}

/** `+50`, `0`, `−50`: mm from the axis. */
export function heightWords(height: number): string {
    const text = setOut(height);
    return height > 0 && text !== '0' ? `+${text}` : text;
}

/** `2.21 m`: a station given in mm, in metres to the centimetre, as prose tells it; what is set out is in whole millimetres. */
export function station(mm: number): string {
    return unlessMissing(mm, value => isImperial() ? feetAndInches(value, parts.station) : `${fixed(value / 1000, 2)} m`);
}

/** `5.2 kN`: force in kN to 0.1 kN; `1170 lbf` in three figures. */
export function force(kN: number): string {
    return unlessMissing(kN, value => isImperial() ? amount({ value, unit: 'kN' }) : `${fixed(value, 1)} kN`);
}

/** `3.48 kN·m`: moment in kN·m, three significant figures but no more than two decimals. */
export function moment(kNm: number): string {
    return amount({ value: Math.abs(kNm) < 10 && !isImperial() ? Number(kNm.toFixed(2)) : kNm, unit: 'kNm' });
}

/** `2.0 to 4.2 kN`: the unit once where both have the same. */
export function range(min: string, max: string): string {
    const unit = / \S+$/.exec(max)?.[0];
    return min === max ? max : `${unit !== undefined && min.endsWith(unit) ? min.slice(0, -unit.length) : min} to ${max}`;
}

/** `11.14 MPa against 11.08 MPa`: as many figures as tell one from the other, so that a failure does not look like a draw. */
export function against(demand: Amount, capacity: Amount): string {
    const print = (digits: number): readonly [string, string] => [amount(demand, digits), amount(capacity, digits)];
    const [one, other] = [3, 4, 5, 6].map(print).find(([a, b]) => a !== b) ?? print(3);
    return `${one} against ${other}`;
}

/** A value with its unit; section moduli and the like in cm, as tables print them. */
export function amount(given: Amount, digits = 3): string {
    if (isImperial()) {
        return given.unit === 'm' ? station(given.value * 1000) : inFormula(imperial(given) ?? given, digits);
    }
    return inFormula(given, digits);
}

/** A value in a formula: always SI, which the formulas of the Eurocodes and the numbers in them are made for. */
export function inFormula(given: Amount, digits = 3): string {
    const { number, unit } = amountParts(given, digits);
    return unit === '' ? number : `${number} ${unit}`;
}

/** A value of a calculation: as it stands in the formula, and in the units of the reader where those are others. */
export function inCalculation(given: Amount): string {
    const [own, readers] = [inFormula(given), amount(given)];
    return own === readers ? own : `${own} (${readers})`;
}

/** The parts of `inFormula`, for mathematics; what is not finite or has no dimension has no unit. */
export function amountParts({ value, unit }: Amount, digits = 3): { readonly number: string; readonly unit: string } {
    const larger = inCentimetres[unit];
    return larger
        ? amountParts({ value: value * larger.factor, unit: larger.unit }, digits)
        : { number: significant(value, digits), unit: Number.isFinite(value) ? unitAsPrinted(unit) : '' };
}

/** A quantity in base units with the unit that a person would choose. */
export function quantity(given: Quantity): string {
    const unit = naturalUnit(given);
    return amount({ value: given.value / (units.get(unit)?.factor ?? 1), unit });
}

const inCentimetres: Readonly<Record<string, { readonly factor: number; readonly unit: string }>> = {
    mm3: { factor: 1e-3, unit: 'cm3' },
    mm4: { factor: 1e-4, unit: 'cm4' }
};

/** `kNm/m2` → `kN·m/m²`, `lbfft` → `lbf·ft`. */
function unitAsPrinted(unit: string): string {
    return unit.replace(/N(?=[ms])|(?:lbf|kip)(?=ft|in)/g, '$&·').replace(/(?<=[a-z])([234])/g, digit => superscript(digit));
}

/** A fixed number of decimals, but never a nought for what is not nought. */
function fixed(value: number, decimals: number): string {
    if (Math.abs(value) >= 1e7) {
        return significant(value);
    }
    const text = value.toFixed(decimals);
    if (Number(text) !== 0) {
        return signed(text);
    }
    return Math.abs(value) < 1e-3 ? signed((0).toFixed(decimals)) : signed(String(Number(value.toPrecision(1))));
}

function unlessMissing(value: number, print: (value: number) => string, endless = () => infinite(value)): string {
    return Number.isFinite(value) ? print(value) : Number.isNaN(value) ? notComputed : endless();
}

function infinite(value: number): string {
    return value < 0 ? '−∞' : '∞';
}

/** A minus that is one, and the reader's decimal sign. */
function signed(text: string): string {
    return decimal(text.replace(/^-/, '−'));
}

/** A number as it is written in a formula or a text, with the reader's decimal sign. */
export function decimal(text: string): string {
    return hasComma() ? text.replace('.', ',') : text;
}

function superscript(text: string): string {
    return [...text].map(digit => digit === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)]).join('');
}
