import type { Given } from '../../../language/src/model.js';
import type { TimberStrength } from './timber-strength.js';

export type PropertyName = 'fm_k' | 'ft0_k' | 'ft90_k' | 'fc0_k' | 'fc90_k' | 'fv_k' | 'E0_mean' | 'E0_05' | 'E90_mean' | 'G_mean' | 'rho_k' | 'rho_mean';

export type OwnValues = Readonly<Partial<Pick<TimberStrength, PropertyName>>>;

/** Names that a `properties { … }` block may use, with the property each stands for. */
const names: Readonly<Record<string, PropertyName>> = {
    fm_k: 'fm_k', ft0_k: 'ft0_k', ft90_k: 'ft90_k', fc0_k: 'fc0_k', fc90_k: 'fc90_k', fv_k: 'fv_k',
    ft_0_k: 'ft0_k', ft_90_k: 'ft90_k', fc_0_k: 'fc0_k', fc_90_k: 'fc90_k',
    E0_mean: 'E0_mean', E_0_mean: 'E0_mean', E_mean: 'E0_mean',
    E0_05: 'E0_05', E_0_05: 'E0_05', E90_mean: 'E90_mean', E_90_mean: 'E90_mean',
    G_mean: 'G_mean', rho_k: 'rho_k', rho_mean: 'rho_mean'
};

export const propertyNames: readonly string[] = Object.keys(names);

const kilogramsPerCubicMetre = 1e9;

/** Own values in the units of `TimberStrength`; the model has densities in kg/mm³. */
export function ownValues(properties: Readonly<Record<string, Given>>): { readonly values: OwnValues } | { readonly problem: string } {
    const values: Partial<Record<PropertyName, number>> = {};
    for (const [written, given] of Object.entries(properties)) {
        const name = Object.hasOwn(names, written) ? names[written] : undefined;
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
