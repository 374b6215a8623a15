/** The ordinary analysis, with every load at its characteristic value. */
import type { Model, ValueOverride } from '../../../language/src/model.js';
import { ratio } from '../../../language/src/quantity.js';
import { propertiesOf } from '../assemble/properties.js';
import { subjectsOf } from '../assemble/subjects.js';
import type { Actions, DiagramPoint, MemberActions } from '../analysis/actions.js';
import { analyse } from '../analysis/index.js';
import { createParameters } from '../catalog/parameters.js';

/** With these the ultimate combinations (6.10) of EN 1990 are its characteristic ones (6.14b): G + Q1 + ψ0 Qi. */
const unfactored = ['gamma_G', 'gamma_G favourable', 'gamma_Q'];

export function solveUnfactored(model: Model): Actions {
    const { source } = model.job;
    const ones = unfactored.map((name): ValueOverride => ({ name, value: 1, dimension: ratio, source }));
    const { parameters } = createParameters([...model.values.filter(({ name }) => !unfactored.includes(name)), ...ones]);
    const plain: Model = { ...model, job: { ...model.job, combinations: '6.10' } };
    const { properties } = propertiesOf(plain, subjectsOf(plain, parameters).of, parameters);
    return analyse(plain, properties, parameters);
}

/** N·mm and N, of all leaves together. */
export interface Peak { readonly M: number; readonly V: number }

/** The greatest in any stage; undefined where there is nothing of that member. */
export function peakOf(members: readonly MemberActions[], name: string): Peak | undefined {
    const own = members.filter(({ member }) => member === name);
    return own.length === 0 ? undefined : {
        M: Math.max(...own.map(({ diagrams }) => greatest(diagrams.M))),
        V: Math.max(...own.map(({ diagrams }) => greatest(diagrams.V)))
    };
}

function greatest(points: readonly DiagramPoint[]): number {
    return points.reduce((most, { min, max }) => Math.max(most, Math.abs(min), Math.abs(max)), 0);
}

/** mm at a station of the greatest leaf, below the blocks; undefined where the analysis has none there. */
export function sagAt({ diagrams }: MemberActions, x: number): number | undefined {
    const here = diagrams.instant.filter(point => Math.abs(point.x - x) < 0.01);
    return here.length === 0 ? undefined : Math.max(...here.map(({ max }) => max));
}
