import { closest } from 'fastest-levenshtein';
import type { Finding, ValueOverride } from '../../../language/src/model.js';
import { ratio, sameDimension } from '../../../language/src/quantity.js';
import { parameterDefaults, parameterNames, type ParameterDefault } from './parameter-names.js';

export interface ParameterValue { readonly value: number; readonly origin: string }

/** What the file sets, by name; what it sets amiss is found and the recommended value stays. */
export function settledValues(overrides: readonly ValueOverride[]): { set: ReadonlyMap<string, number>; findings: readonly Finding[] } {
    const set = new Map<string, number>();
    const findings: Finding[] = [];
    for (const override of overrides) {
        const read = readOverride(override);
        if (typeof read === 'number') {
            set.set(override.name, read);
        } else {
            findings.push(read);
        }
    }
    return { set, findings };
}

function readOverride(override: ValueOverride): number | Finding {
    const { name, source } = override;
    const known = parameterDefaults.get(name);
    if (!known) {
        return { severity: 'error', code: 'unknown-value', message: `there is no value ${name}; the nearest name is ${closest(name, [...parameterNames])}`, source };
    }
    if (!sameDimension(override.dimension, known.dimension)) {
        const wanted = sameDimension(known.dimension, ratio) ? 'a plain number' : 'a length per force such as 1.5 mm/kN';
        return { severity: 'error', code: 'wrong-dimension', message: `${name} is ${wanted}`, source };
    }
    const value = inOwnUnit(override.value, known);
    return value >= known.least && value <= known.most
        ? value
        : { severity: 'error', code: 'value-out-of-range', message: `${name} has to be from ${known.least} to ${known.most}`, source };
}

/** A limit may be written as 1/300 too; the model has mm/N where the figure has mm/kN. */
function inOwnUnit(value: number, { name, dimension }: ParameterDefault): number {
    if (name.startsWith('limit') && value > 0 && value < 1) {
        return 1 / value;
    }
    return sameDimension(dimension, ratio) ? value : value * 1000;
}
