/** Names of the classes that a grade may say; their values are the server's catalogue's. */

const names = (prefix: string, values: readonly number[], suffix = '') => values.map(value => `${prefix}${value}${suffix}`);
const glulam = [20, 22, 24, 26, 28, 30, 32];

/** EN 338:2016 and EN 14080:2013. */
export const timberClasses: readonly string[] = [
    ...names('C', [14, 16, 18, 20, 22, 24, 27, 30, 35, 40, 45, 50]),
    ...names('D', [18, 24, 27, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80]),
    ...names('GL', glulam, 'h'), ...names('GL', glulam, 'c')
];

/** EN 1993-1-1 Table 3.1. */
export const steelClasses: readonly string[] = ['S235', 'S275', 'S355'];

/** EN 1993-1-8 Table 3.1. */
export const boltClasses: readonly string[] = ['4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '10.9'];

/** Coarse threads, ISO 261 (from memory). */
export const threadSizes: readonly string[] = [6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 27, 30].map(diameter => `M${diameter}`);
