/**
 * Quantities and their dimensions.
 *
 * Base units: mm (length), N (force), kg (mass), day (time), rad (angle). Every number in
 * a Model is in these, so stress is N/mm² = MPa, a line load N/mm, density kg/mm³.
 * Force and mass are separate dimensions: a mass becomes a load only where g is applied.
 */

/** Exponents of length, force, mass, time and angle. */
export type Dimension = readonly [length: number, force: number, mass: number, time: number, angle: number];

export interface Quantity {
    readonly value: number;
    readonly dimension: Dimension;
}

export const ratio: Dimension = [0, 0, 0, 0, 0];
export const length: Dimension = [1, 0, 0, 0, 0];
export const area: Dimension = [2, 0, 0, 0, 0];
export const volume: Dimension = [3, 0, 0, 0, 0];
export const secondMoment: Dimension = [4, 0, 0, 0, 0];
export const force: Dimension = [0, 1, 0, 0, 0];
export const mass: Dimension = [0, 0, 1, 0, 0];
export const moment: Dimension = [1, 1, 0, 0, 0];
/** Also an area load: 1 kN/m² = 0.001 N/mm². */
export const stress: Dimension = [-2, 1, 0, 0, 0];
/** Also a spring's stiffness: N/mm. */
export const lineLoad: Dimension = [-1, 1, 0, 0, 0];
export const density: Dimension = [-3, 0, 1, 0, 0];
export const massPerArea: Dimension = [-2, 0, 1, 0, 0];
export const massPerLength: Dimension = [-1, 0, 1, 0, 0];
export const bendingStiffness: Dimension = [2, 1, 0, 0, 0];
export const weightDensity: Dimension = [-3, 1, 0, 0, 0];
export const flexibility: Dimension = [1, -1, 0, 0, 0];
export const time: Dimension = [0, 0, 0, 1, 0];
export const angle: Dimension = [0, 0, 0, 0, 1];

export function sameDimension(a: Dimension, b: Dimension): boolean {
    return a.every((exponent, i) => exponent === b[i]);
}

/** Standard gravity, m/s² = N/kg. Source: ISO 80000-3 (9.80665 exactly). */
export const standardGravity = 9.80665;
