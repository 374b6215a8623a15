/** How hazards say places, forces and several subjects. */

export const metres = (mm: number): string => `${(mm / 1000).toFixed(2)} m`;

/** Rounded up: a force is never told smaller than it is. */
export const kilonewtons = (newtons: number): string => `${(Math.ceil(newtons / 100 - 1e-9) / 10).toFixed(1)} kN`;

export const millimetres = (mm: number): string => `${Number(mm.toPrecision(3))} mm`;

/** Each once. One hazard of several subjects names them in this way, and answers are matched by it. */
export const joined = (names: readonly string[]): string => [...new Set(names)].join(separator);

export const subjectsIn = (subject: string): readonly string[] => subject.split(separator);

const separator = ', ';
