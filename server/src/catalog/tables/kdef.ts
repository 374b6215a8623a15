/** EN 1995-1-1 Table 3.2, solid timber and glulam alike, by service class. */
export const kdefTable: Readonly<Record<1 | 2 | 3, number>> = { 1: 0.6, 2: 0.8, 3: 2.0 };

export const kdefOrigin = 'EN 1995-1-1 Table 3.2, seen in an open textbook (TU Delft)';
