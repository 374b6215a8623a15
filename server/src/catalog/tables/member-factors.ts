/** Factors of EN 1995-1-1 section 6, recommended values, all from memory. */

/** 6.1.7(2): cracks leave this part of the breadth to carry shear. */
export const kcrDefault = { name: 'k_cr', value: 0.67, origin: 'EN 1995-1-1 6.1.7(2) recommended, from memory' } as const;

/** 6.6: equal members side by side that share load. */
export const ksysShared = 1.1;

/** 6.1.6(2), rectangular sections of solid timber and glulam. */
export const kmRectangle = 0.7;

/** Straightness factor, (6.29). */
export const betaC: Readonly<Record<'solid' | 'glulam', number>> = { solid: 0.2, glulam: 0.1 };

/** (6.63). */
export const notchKn: Readonly<Record<'solid' | 'glulam', number>> = { solid: 5, glulam: 6.5 };

/** 6.1.5(4) as amended by A1:2008: softwood on discrete supports. */
export const kc90Discrete: Readonly<Record<'solid' | 'glulam', number>> = { solid: 1.5, glulam: 1.75 };
