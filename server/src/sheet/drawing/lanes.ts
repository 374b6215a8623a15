import type { MemberResult } from '../../results.js';
import { partsOf } from './section-parts.js';

/** One piece of the breadth, from the left: a leaf or a plate, mm. */
export interface Lane {
    /** A leaf's number; a plate has none. */
    readonly label: string;
    readonly breadth: number;
    readonly steel: boolean;
    readonly pieces: readonly { readonly from: number; readonly to: number }[];
}

export function lanesOf({ leaves, plates, length }: MemberResult): readonly Lane[] {
    if (leaves) {
        return leaves.map(({ leaf, breadth, pieces }) => ({ label: String(leaf), breadth, steel: false, pieces }));
    }
    return plates ? partsOf(plates).map(({ width, steel }) => ({ label: steel ? 'steel' : '', breadth: width, steel, pieces: [{ from: 0, to: length }] })) : [];
}
