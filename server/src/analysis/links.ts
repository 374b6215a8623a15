/** Springs between degrees of freedom: force = stiffness × elongation, elongation = Σ row · displacement. */
import type { Block } from './solver/system.js';

export interface Link {
    readonly dofs: readonly number[];
    readonly row: readonly number[];
    readonly stiffness: number;
    /** The nodes that a positive force pulls at, each in this direction; none where it stands for a support. */
    readonly pulls: readonly { readonly node: number; readonly right: number; readonly up: number }[];
    /** Index of the piece or of the hanger that it belongs to. */
    readonly piece?: number;
    readonly hanger?: number;
}

export function linkBlock({ dofs, row, stiffness }: Link): Block {
    const n = dofs.length;
    const matrix = new Float64Array(n * n);
    for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) matrix[i * n + j] = stiffness * row[i]! * row[j]!;
    return { dofs, matrix };
}

export function elongation({ dofs, row }: Link, moved: Float64Array): number {
    let sum = 0;
    for (let i = 0; i < dofs.length; i++) sum += row[i]! * moved[dofs[i]!]!;
    return sum;
}
