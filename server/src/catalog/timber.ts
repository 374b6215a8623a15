/** What a timber can bear: its class, with its own measured or tested values before the class's. */
import { closest } from 'fastest-levenshtein';
import type { Timber } from '../../../language/src/model.js';
import { derivedProperties, withOwnStiffness } from './timber-derived.js';
import type { TimberStrength } from './timber-strength.js';
import { ownValues, type PropertyName } from './timber-properties.js';
import { timberClasses } from './tables/timber-classes.js';

export type { TimberStrength } from './timber-strength.js';

export const timberClassNames: readonly string[] = [...timberClasses.keys()];

/** Without a class these have to be given; the rest follows from them by EN 384:2016. */
const neededWithoutClass = ['fm_k', 'fv_k', 'fc90_k', 'E0_mean', 'rho_k'] as const satisfies readonly PropertyName[];

/**
 * The strength of a timber of the file, or of a class by its name. Stresses MPa, densities kg/m³.
 * What the file's own values leave open is the class's; without a class it is derived by the
 * relations of EN 384:2016, and `origin` says which values are.
 */
export function timberStrength(timber: Timber | string): { readonly strength: TimberStrength } | { readonly problem: string } {
    if (typeof timber === 'string') {
        return classNamed(timber);
    }
    const own = ownValues(timber.properties);
    if ('problem' in own) {
        return { problem: `${timber.name}: ${own.problem}` };
    }
    if (timber.grade) {
        const found = classNamed(timber.grade.value);
        return 'problem' in found ? found : { strength: withOwnStiffness(found.strength, own.values) };
    }
    const missing = neededWithoutClass.filter(name => own.values[name] === undefined);
    if (missing.length > 0) {
        return { problem: `${timber.name} has no grade, and lacks the ${missing.length === 1 ? 'property' : 'properties'} ${missing.join(', ')}` };
    }
    return { strength: derivedProperties(timber.name, own.values) };
}

function classNamed(name: string): { readonly strength: TimberStrength } | { readonly problem: string } {
    const strength = timberClasses.get(name);
    return strength ? { strength } : { problem: `${name} is no strength class of EN 338 or EN 14080; the nearest name is ${closest(name, [...timberClassNames])}` };
}
