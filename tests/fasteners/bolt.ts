import { boltGrades, threads } from '../../server/src/catalog/bolts.js';
import { axialCapacity } from '../../server/src/checks/en1995/fasteners/axial.js';
import type { BoltThroughLeaves } from '../../server/src/checks/en1995/fasteners/bolt-through-leaves.js';
import { boltFastener, type Fastener } from '../../server/src/checks/en1995/fasteners/fastener.js';
import type { Leaf, TimberLeaf } from '../../server/src/checks/en1995/fasteners/leaf.js';
import { sound } from './sound.js';

/** Factors of 1: what is verified is the characteristic capacity. */
export const unfactored = { kmod: 1, gammaM: 1 };

export function leaf(thickness: number, changes: Partial<TimberLeaf> = {}): TimberLeaf {
    return { kind: 'timber', thickness, rho_k: 350, wood: 'softwood', grain: 0, ...changes };
}

export function bolt(size: string, grade: string): Fastener {
    return boltFastener(threads.get(size)!, boltGrades.get(grade)!);
}

/** With the standard's own least washers, 3 d wide, at both ends. */
export function bolted(fastener: Fastener, leaves: readonly Leaf[], fc90_k = 2.5): BoltThroughLeaves {
    const washer = { kind: 'washer', outer: 3 * fastener.d, hole: fastener.d + 1, fc90_k } as const;
    return { fastener, leaves, Fax_Rk: sound(axialCapacity({ ...fastener, ends: [washer, washer] })).Fax_Rk };
}
