export interface MasonryUnit {
    /** EN 1996-1-1 Table 3.1: Group 1 units are solid or nearly so. */
    readonly group: 1 | 2 | 3 | 4;
    /** Table 3.3, general purpose mortar. */
    readonly K: number;
}

export const masonryFactorOrigin = 'EN 1996-1-1 Table 3.3, from memory';

/** K by kind of unit as the file names it, for f_k = K f_b^0.7 f_m^0.3. Units of Group 1 unless a figure says else. */
export const masonryUnits: Readonly<Record<string, MasonryUnit>> = {
    clay: { group: 1, K: 0.55 },
    clay2: { group: 2, K: 0.45 },
    clay3: { group: 3, K: 0.35 },
    clay4: { group: 4, K: 0.35 },
    silicate: { group: 1, K: 0.55 },
    silicate2: { group: 2, K: 0.45 },
    concrete: { group: 1, K: 0.55 },
    concrete2: { group: 2, K: 0.45 },
    aerated: { group: 1, K: 0.55 },
    cast: { group: 1, K: 0.45 },
    stone: { group: 1, K: 0.45 }
};
