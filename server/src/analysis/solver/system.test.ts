import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { factorise, springBlock, type Block } from './system.js';

/** Springs in a random net: grounded by the first, joined at will. */
const nets = fc.record({
    size: fc.integer({ min: 1, max: 25 }),
    springs: fc.array(fc.tuple(fc.nat(), fc.nat(), fc.double({ min: 0.1, max: 1000, noNaN: true })), { maxLength: 60 }),
    loads: fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 25, maxLength: 25 })
});

function blocksOf(size: number, springs: readonly (readonly [number, number, number])[]): Block[] {
    const chain = Array.from({ length: size - 1 }, (_, i) => springBlock(10, i, i + 1));
    const others = springs.flatMap(([a, b, k]) => (a % size === b % size ? [] : [springBlock(k, a % size, b % size)]));
    return [...chain, ...others];
}

/** K·u of all blocks, dof by dof. */
function resistance(size: number, blocks: readonly Block[], u: Float64Array): number[] {
    const sum = new Array<number>(size).fill(0);
    for (const { dofs, matrix } of blocks) {
        dofs.forEach((row, a) => dofs.forEach((column, b) => { sum[row]! += matrix[a * dofs.length + b]! * u[column]!; }));
    }
    return sum;
}

describe('a net of springs', () => {
    test('balances every load', () => {
        fc.assert(fc.property(nets, ({ size, springs, loads }) => {
            const blocks = [springBlock(5, 0), ...blocksOf(size, springs)];
            const system = factorise(size, new Uint8Array(size), blocks);
            expect(system.mechanisms).toEqual([]);
            const load = Float64Array.from(loads.slice(0, size));
            resistance(size, blocks, system.solve(load)).forEach((force, i) => expect(force).toBeCloseTo(load[i]!, 5));
        }));
    });
    test('follows held ends that are moved', () => {
        fc.assert(fc.property(nets, ({ size, springs, loads }) => {
            const blocks = blocksOf(size, springs);
            const held = new Uint8Array(size);
            held[0] = 1;
            const moved = new Float64Array(size);
            moved[0] = 3;
            const load = Float64Array.from(loads.slice(0, size));
            const u = factorise(size, held, blocks).solve(load, moved);
            expect(u[0]).toBe(3);
            resistance(size, blocks, u).slice(1).forEach((force, i) => expect(force).toBeCloseTo(load[i + 1]!, 5));
        }));
    });
    test('moves as one when nothing grounds it', () => {
        fc.assert(fc.property(nets, ({ size, springs }) => {
            const { mechanisms } = factorise(size, new Uint8Array(size), blocksOf(size, springs));
            expect(mechanisms).toHaveLength(1);
            for (const movement of mechanisms[0]!) expect(movement).toBeCloseTo(1, 6);
        }));
    });
});

test('two springs in series share a movement by their stiffness', () => {
    const held = Uint8Array.of(1, 0, 1);
    const { solve } = factorise(3, held, [springBlock(100, 0, 1), springBlock(300, 1, 2)]);
    expect([...solve(new Float64Array(3), Float64Array.of(0, 0, 4))]).toEqual([0, 3, 4]);
});

test('separate parts are each found loose', () => {
    const { mechanisms } = factorise(4, new Uint8Array(4), [springBlock(1, 0, 1), springBlock(1, 2, 3)]);
    expect(mechanisms.map((motion) => [...motion])).toEqual(expect.arrayContaining([[1, 1, 0, 0], [0, 0, 1, 1]]));
});
