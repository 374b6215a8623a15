import type { Given, Model, Timber } from '../../../language/src/model.js';
import { density, stress } from '../../../language/src/quantity.js';
import { timberStrength } from '../catalog/timber.js';
import { propertyNames, type PropertyName } from '../catalog/timber-properties.js';

const kilogramsPerCubicMetre = 1e9;

/** A property that a timber has from its class, e.g. `oldPine.fm_k`: as sure as its grade, and varied as an own value before the class's. */
export function classProperty(model: Model, path: string): { readonly given: Given; readonly withValue: (value: number | string) => Model } | undefined {
    const name: PropertyName | undefined = propertyNames.find((candidate) => path.endsWith(`.${candidate}`));
    const timber = model.materials.find((material): material is Timber => material.kind === 'timber' && path === `${material.name}.${name}`);
    if (name === undefined || timber?.grade === undefined) return undefined;
    const found = timberStrength(timber);
    if ('problem' in found) return undefined;
    const { evidence, source } = timber.grade;
    const given: Given = name.startsWith('rho') ? { value: found.strength[name] / kilogramsPerCubicMetre, dimension: density, evidence, source, path }
        : { value: found.strength[name], dimension: stress, evidence, source, path };
    return {
        given,
        withValue: (value) => {
            const own: Timber = { ...timber, properties: { ...timber.properties, [name]: { ...given, value: Number(value) } } };
            return { ...model, materials: model.materials.map((material) => (material === timber ? own : material)) };
        }
    };
}
