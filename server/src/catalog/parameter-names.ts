/** The names that a `values { … }` block may set, with their recommended values. */
import { flexibility, ratio, type Dimension } from '../../../language/src/quantity.js';
import { deflectionLimits, vibrationLimits } from './tables/service-limits.js';
import { kcrDefault } from './tables/member-factors.js';
import { loadFactors } from './tables/load-factors.js';
import { materialFactors } from './tables/material-factors.js';
import { psiTable } from './tables/psi.js';
import { steelFactors } from './tables/steel-factors.js';

export interface ParameterDefault {
    readonly name: string;
    readonly value: number;
    readonly origin: string;
    readonly dimension: Dimension;
    readonly least: number;
    readonly most: number;
}

const plain = (least: number, most: number, entry: { name: string; value: number; origin: string }): ParameterDefault =>
    ({ ...entry, dimension: ratio, least, most });

export const parameterDefaults: ReadonlyMap<string, ParameterDefault> = new Map([
    ...Object.values(loadFactors).map(entry => plain(0, 10, entry)),
    ...Object.entries(materialFactors).map(([product, entry]) => plain(0.5, 10, { name: `gamma_M ${product}`, ...entry })),
    ...Object.entries(psiTable).flatMap(([action, { psi, origin }]) =>
        psi.map((value, i) => plain(0, 1, { name: `psi${i} ${action}`, value, origin }))),
    plain(0.1, 1, kcrDefault),
    ...Object.values(steelFactors).map(({ least, most, ...entry }) => plain(least, most, entry)),
    ...Object.values(deflectionLimits).map(entry => plain(1, 10_000, entry)),
    { ...plain(0.1, 10, vibrationLimits.a), dimension: flexibility },
    plain(1, 1000, vibrationLimits.b)
].map(entry => [entry.name, entry]));

export const parameterNames: readonly string[] = [...parameterDefaults.keys()];
