export type FactoredProduct = 'solid' | 'glulam' | 'connection' | 'masonry';

const seen = 'EN 1995-1-1 Table 2.3 recommended, seen in an open textbook (TU Delft)';

/**
 * Partial factors γM. Old masonry has no declared unit category and no supervised execution, so it
 * takes the upper end of EN 1996-1-1 2.4.3(1), category II units of class 5.
 */
export const materialFactors: Readonly<Record<FactoredProduct, { readonly value: number; readonly origin: string }>> = {
    solid: { value: 1.3, origin: seen },
    glulam: { value: 1.25, origin: seen },
    connection: { value: 1.3, origin: seen },
    masonry: { value: 3.0, origin: 'EN 1996-1-1 2.4.3(1), upper end of the table (1.5 to 3.0), from memory' }
};
