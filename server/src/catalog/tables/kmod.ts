import type { Duration } from '../../../../language/src/model.js';

/** EN 1995-1-1 Table 3.1, solid timber and glulam alike, by service class. */
export const kmodTable: Readonly<Record<1 | 2 | 3, Readonly<Record<Duration, number>>>> = {
    1: { permanent: 0.6, 'long-term': 0.7, 'medium-term': 0.8, 'short-term': 0.9, instantaneous: 1.1 },
    2: { permanent: 0.6, 'long-term': 0.7, 'medium-term': 0.8, 'short-term': 0.9, instantaneous: 1.1 },
    3: { permanent: 0.5, 'long-term': 0.55, 'medium-term': 0.65, 'short-term': 0.7, instantaneous: 0.9 }
};

export const kmodOrigin = 'EN 1995-1-1 Table 3.1, seen in an open textbook (TU Delft)';
