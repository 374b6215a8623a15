/** Parts of a model in words, as a person would say them. */
import type { Evidence, Given } from '../../../language/src/model.js';
import { quantity } from '../sheet/numbers.js';

/** Where something stands in the text and what only follows from other inputs is no input. */
const notSaid = new Set(['source', 'nameSource', 'usedAt', 'path', 'dimension', 'name', 'point', 'line', 'diameter', 'model', 'serviceClassStated']);

export type Part = { readonly [key: string]: unknown };

export const isPart = (value: unknown): value is Part => typeof value === 'object' && value !== null && !Array.isArray(value);
const isEvidence = (value: unknown): value is Evidence => isPart(value) && 'word' in value && 'stated' in value;
const isGiven = (value: unknown): value is Given<number | string> => isPart(value) && isEvidence(value['evidence']) && 'value' in value;

/** What is said in one breath: a number, a word, an input with how it is known, a list of such. */
export const isLeaf = (value: unknown): boolean => !isPart(value) && !(Array.isArray(value) && value.some(isPart)) || isGiven(value) || isEvidence(value);

export function keysOf(part: Part): readonly string[] {
    // Bolts that are spread evenly stand where their spacing puts them.
    const spread = part['spacing'] !== undefined && 'places' in part;
    return Object.keys(part).filter(key => !notSaid.has(key) && !(spread && key === 'places') && part[key] !== undefined);
}

/** All of a part that counts, for telling whether two are the same. */
export function canonical(value: unknown): unknown {
    if (Array.isArray(value)) {
        return value.map(canonical);
    }
    if (isGiven(value)) {
        return [value.value, value.dimension, value.band, canonical(value.evidence)];
    }
    return isPart(value) ? Object.fromEntries([...keysOf(value)].sort().map(key => [key, canonical(value[key])])) : value;
}

export const same = (a: unknown, b: unknown): boolean => JSON.stringify(canonical(a)) === JSON.stringify(canonical(b));

/** `60 × 180 mm (measured "tape")`; of a part with parts `at 1.90 m, bearing 150 mm`. */
export function inWords(value: unknown, key = ''): string {
    if (isGiven(value)) {
        return `${numberInWords(value)} (${evidenceInWords(value.evidence)})`;
    }
    if (isEvidence(value)) {
        return evidenceInWords(value);
    }
    if (Array.isArray(value)) {
        return value.map(item => inWords(item)).join(isLeaf(value) ? ', ' : '; ');
    }
    if (isPart(value)) {
        const parts = keysOf(value).filter(part => value[part] !== false).map(part => `${part === 'kind' ? '' : `${keyInWords(part)} `}${inWords(value[part], part)}`);
        return parts.join(', ');
    }
    return typeof value === 'boolean' ? (value ? 'yes' : 'no') : typeof value === 'number' ? plainNumber(value, key) : String(value);
}

/** `stationOnCarrier` → `station on carrier`. */
export const keyInWords = (key: string): string => key.replace(/[A-Z]/g, letter => ` ${letter.toLowerCase()}`);

function numberInWords({ value, dimension, band }: Given<number | string>): string {
    const print = (number: number) => dimension ? quantity({ value: number, dimension }) : plainNumber(number, '');
    return typeof value === 'string' ? value : band ? `${print(band.low)} .. ${print(band.high)}` : print(value);
}

const evidenceInWords = ({ word, note, stated }: Evidence): string => `${stated ? word : 'assumed, nothing is said'}${note ? ` "${note}"` : ''}`;

/** Numbers that are no inputs of their own: angles in rad, bolt places in mm, counts. */
function plainNumber(value: number, key: string): string {
    const rounded = (number: number) => String(Number(number.toPrecision(6)));
    return key === 'slope' ? `${rounded(value * 180 / Math.PI)} deg` : key === 'x' || key === 'height' ? `${rounded(value)} mm` : rounded(value);
}
