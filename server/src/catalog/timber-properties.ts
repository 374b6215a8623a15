import type { Given } from '../../../language/src/model.js';
import type { TimberStrength } from './timber-strength.js';

/** Names that a `properties { … }` block may use. */
export const propertyNames = [
    'fm_k', 'ft0_k', 'ft90_k', 'fc0_k', 'fc90_k', 'fv_k', 'E0_mean', 'E0_05', 'E90_mean', 'G_mean', 'rho_k', 'rho_mean'
] as const;

export type PropertyName = (typeof propertyNames)[number];

export type OwnValues = Readonly<Partial<Pick<TimberStrength, PropertyName>>>;

const kilogramsPerCubicMetre = 1e9;

/** Own values in the units of `TimberStrength`; the model has densities in kg/mm³. */
export function ownValues(properties: Readonly<Record<string, Given>>): { readonly values: OwnValues } | { readonly problem: string } {
    const values: Partial<Record<PropertyName, number>> = {};
    for (const [written, given] of Object.entries(properties)) {
        const name = propertyNames.find(candidate => candidate === written);
        if (!name) {
            return { problem: `${written} is no property of timber; known are ${propertyNames.join(', ')}` };
        }
        if (!(given.value > 0 && Number.isFinite(given.value))) {
            return { problem: `${written} has to be more than nought` };
        }
        values[name] = name.startsWith('rho') ? given.value * kilogramsPerCubicMetre : given.value;
    }
    return { values };
}
