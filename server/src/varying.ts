import type { Model } from '../../language/src/model.js';
import type { Compute } from './certainty/index.js';
import { findAll, type Found } from './compute.js';

/**
 * What is found of a model with another value of some input. That a piece passes the access, and goes on doing so to the
 * same measure, says nothing of that input and is left out; what does not pass stays.
 * @param drawn what is found of the model as it is
 */
export function varying(drawn: Found): Compute {
    const fits = new Map(drawn.checks.filter(({ check, pass }) => pass && (check === 'piece' || check === 'carry')).map(({ id, utilisation }) => [id, utilisation]));
    return (model: Model) => {
        const found = findAll({ model, findings: [], broken: [] });
        return { ...found, checks: found.checks.filter(({ id, utilisation }) => fits.get(id) !== utilisation) };
    };
}
