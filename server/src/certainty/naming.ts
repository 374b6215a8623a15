/** What an input is called in a sentence, and its value with a unit. */
import type { Given, Model } from '../../../language/src/model.js';
import { ratio, sameDimension } from '../../../language/src/quantity.js';
import { naturalUnit, units } from '../../../language/src/units.js';
import type { Amount } from '../results.js';

/** `the top loss`, `the bearing on south`, `storage`, `the grade of oldPine`. */
export function nameOf(model: Model, path: string): string {
    const [subject = path, ...rest] = path.split('.');
    const last = rest.at(-1) ?? '';
    const support = model.members.flatMap(({ supports }) => supports).find(({ at, bearing }) => at.path === path || bearing?.path === path);
    if (rest.length === 0) return subject;
    if (support) return support.bearing?.path === path ? `the bearing on ${support.on}` : `the station of ${support.on}`;
    if (/^loss\d*$/.test(rest[0] ?? '') && rest.length === 2) return `the ${last} loss`;
    if (/^bolts\d*$/.test(rest[0] ?? '') && last === 'every') return `the spacing of the bolts of ${subject}`;
    if (/^bolts\d*$/.test(rest[0] ?? '') && last === 'grade') return `the grade of the bolts of ${subject}`;
    if (/^notch\d*$/.test(last)) return 'the depth of the notch';
    if (/^hole\d*$/.test(last)) return 'the diameter of the hole';
    return rest.length === 1 || /^(section|plies|flitch)$/.test(rest[0] ?? '') ? `the ${last} of ${subject}` : path;
}

/** The unit that the given value is said in; `%` for a ratio. */
export function unitOf({ value, dimension }: Pick<Given<number | string>, 'value' | 'dimension'>): string {
    if (dimension === undefined || typeof value === 'string') return '';
    return sameDimension(dimension, ratio) ? '%' : naturalUnit({ value, dimension });
}

/** A value of an input in the unit that it is said in. */
export function amountOf(value: number, given: Given<number | string>): Amount {
    const unit = unitOf(given);
    return { value: value / (units.get(unit)?.factor ?? 1), unit };
}

/** Rounded so that it stays on the side of `towards`: to whole millimetres from 10 mm on, else to three digits, or as many as it takes. */
export function roundedTowards(value: number, towards: number, unit: string): number {
    const factor = units.get(unit)?.factor ?? 1;
    const [number, aim] = [value / factor, towards / factor];
    const whole = unit === 'mm' && Math.abs(number) >= 10;
    for (let digits = whole ? Math.floor(Math.log10(Math.abs(number))) + 1 : 3; digits < 15; digits++) {
        const step = 10 ** (digits - 1 - Math.floor(Math.log10(Math.abs(number) || 1)));
        const rounded = (number > aim ? Math.floor(number * step + 1e-9) : Math.ceil(number * step - 1e-9)) / step;
        if ((rounded - aim) * (number - aim) > 0) return rounded * factor;
    }
    return value;
}

/** `52 mm`, at most four digits. */
export function written(value: number | string, unit: string): string {
    if (typeof value === 'string') return value;
    const number = Number((value / (units.get(unit)?.factor ?? 1)).toPrecision(4));
    return unit === '' ? String(number) : `${number} ${unit}`;
}
