/**
 * Reverse Cuthill–McKee: an order of the free degrees of freedom that keeps the skyline low.
 * Source: A. George, J. W. Liu, Computer Solution of Large Sparse Positive Definite Systems (1981), ch. 4 (from memory).
 */
import type { Block } from './system.js';

/** Positions by degree of freedom, −1 for the held ones; and how many are free. */
export interface Order { readonly position: Int32Array; readonly free: number }

export function reverseCuthillMcKee(size: number, held: Uint8Array, blocks: readonly Block[]): Order {
    const blocksOf: number[][] = Array.from({ length: size }, () => []);
    blocks.forEach((block, b) => block.dofs.forEach((dof) => blocksOf[dof]!.push(b)));
    const degree = (dof: number): number => blocksOf[dof]!.length;

    const seen = new Uint8Array(size);
    /** Breadth first from `root`, each level's newcomers by rising degree. */
    const sweep = (root: number): number[] => {
        const found = [root];
        seen[root] = 1;
        for (let next = 0; next < found.length; next++) {
            const before = found.length;
            for (const b of blocksOf[found[next]!]!) {
                for (const dof of blocks[b]!.dofs) {
                    if (seen[dof] || held[dof]) continue;
                    seen[dof] = 1;
                    found.push(dof);
                }
            }
            const fresh = found.splice(before).sort((a, b) => degree(a) - degree(b));
            found.push(...fresh);
        }
        return found;
    };

    const sequence: number[] = [];
    for (let dof = 0; dof < size; dof++) {
        if (seen[dof] || held[dof]) continue;
        const component = sweep(dof);
        // The last one found lies far out: from there the levels are many and narrow.
        for (const other of component) seen[other] = 0;
        sequence.push(...sweep(component.at(-1)!));
    }
    const position = new Int32Array(size).fill(-1);
    sequence.forEach((dof, i) => { position[dof] = sequence.length - 1 - i; });
    return { position, free: sequence.length };
}
