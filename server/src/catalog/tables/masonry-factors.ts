export interface MasonryUnit {
    /** EN 1996-1-1 Table 3.1: Group 1 units are solid or nearly so. */
    readonly group: 1 | 2 | 3 | 4;
    /** Table 3.3, general purpose mortar. */
    readonly K: number;
}

export const masonryFactorOrigin = 'EN 1996-1-1 Table 3.3, from memory';

/** K by kind of unit, for f_k = K f_b^0.7 f_m^0.3. */
export const masonryUnits: Readonly<Record<string, MasonryUnit>> = {
    'clay': { group: 1, K: 0.55 },
    'clay group 2': { group: 2, K: 0.45 },
    'clay group 3': { group: 3, K: 0.35 },
    'clay group 4': { group: 4, K: 0.35 },
    'calcium silicate': { group: 1, K: 0.55 },
    'calcium silicate group 2': { group: 2, K: 0.45 },
    'concrete': { group: 1, K: 0.55 },
    'concrete group 2': { group: 2, K: 0.45 },
    'aerated concrete': { group: 1, K: 0.55 },
    'manufactured stone': { group: 1, K: 0.45 },
    'natural stone': { group: 1, K: 0.45 }
};
