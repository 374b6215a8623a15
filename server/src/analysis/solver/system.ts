/**
 * K·u = f from symmetric blocks (elements, or springs between any degrees of freedom), factored once.
 * A release is a degree of freedom of its own; a held one may be given a displacement.
 */
import { reverseCuthillMcKee, type Order } from './order.js';
import { emptySkyline, factor, freeMotion, substitute } from './skyline.js';

export interface Block {
    readonly dofs: readonly number[];
    /** Row by row. */
    readonly matrix: Float64Array;
}

export interface System {
    readonly order: Order;
    /** What can move without resistance, by degree of freedom; empty where everything is held. */
    readonly mechanisms: readonly Float64Array[];
    /** Displacements under a load; `held` gives those of the held degrees of freedom (else zero). */
    readonly solve: (load: Float64Array, held?: Float64Array) => Float64Array;
}

export function springBlock(stiffness: number, from: number, to?: number): Block {
    return to === undefined
        ? { dofs: [from], matrix: Float64Array.of(stiffness) }
        : { dofs: [from, to], matrix: Float64Array.of(stiffness, -stiffness, -stiffness, stiffness) };
}

/** `known` is the order of a system with the same blocks and holds. */
export function factorise(size: number, held: Uint8Array, blocks: readonly Block[], known?: Order): System {
    const order = known ?? reverseCuthillMcKee(size, held, blocks);
    const { position, free } = order;
    const first = Int32Array.from({ length: free }, (_, j) => j);
    for (const { dofs } of blocks) {
        let lowest = free;
        for (const dof of dofs) if (position[dof]! >= 0) lowest = Math.min(lowest, position[dof]!);
        for (const dof of dofs) {
            const p = position[dof]!;
            if (p >= 0) first[p] = Math.min(first[p]!, lowest);
        }
    }
    const skyline = emptySkyline(first);
    for (const { dofs, matrix } of blocks) {
        for (let a = 0; a < dofs.length; a++) {
            const row = position[dofs[a]!]!;
            if (row < 0) continue;
            for (let b = 0; b < dofs.length; b++) {
                const column = position[dofs[b]!]!;
                if (column >= row) skyline.values[skyline.start[column]! + row - first[column]!]! += matrix[a * dofs.length + b]!;
            }
        }
    }
    const singular = factor(skyline);
    const spread = (x: Float64Array): Float64Array => {
        const all = new Float64Array(size);
        for (let dof = 0; dof < size; dof++) if (position[dof]! >= 0) all[dof] = x[position[dof]!]!;
        return all;
    };

    return {
        order,
        mechanisms: singular.map((column) => spread(freeMotion(skyline, column))),
        solve: (load, displaced) => {
            const x = new Float64Array(free);
            for (let dof = 0; dof < size; dof++) if (position[dof]! >= 0) x[position[dof]!] = load[dof]!;
            const moved = displaced?.some((value) => value !== 0) ? displaced : undefined;
            if (moved) moveHeld(blocks, position, moved, x);
            substitute(skyline, x);
            const solution = spread(x);
            if (moved) for (let dof = 0; dof < size; dof++) if (held[dof]) solution[dof] = moved[dof]!;
            return solution;
        }
    };
}

function moveHeld(blocks: readonly Block[], position: Int32Array, displaced: Float64Array, x: Float64Array): void {
    for (const { dofs, matrix } of blocks) {
        dofs.forEach((row, a) => {
            if (position[row]! < 0) return;
            dofs.forEach((column, b) => {
                if (position[column]! < 0) x[position[row]!]! -= matrix[a * dofs.length + b]! * displaced[column]!;
            });
        });
    }
}
