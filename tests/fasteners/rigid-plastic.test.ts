/**
 * The modes of EN 1995-1-1 8.2, and what is made of them for several planes with unlike forces, against the
 * rigid-plastic optimum of a linear programme (SciPy; `oracle/rigid_plastic.py`, its outcome is committed).
 */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { boltShear, twoLeafCapacity, type BoltThroughLeaves } from '../../server/src/checks/en1995/fasteners/bolt-through-leaves.js';
import type { Fastener } from '../../server/src/checks/en1995/fasteners/fastener.js';
import { bendingYieldMoment } from '../../server/src/checks/en1995/fasteners/yield-moment.js';
import { leaf, unfactored } from './bolt.js';
import { sound } from './sound.js';

interface Row {
    readonly name: string;
    readonly d: number;
    readonly fu: number;
    readonly rho: number;
    readonly leaves: readonly { readonly timber?: number; readonly steel?: number }[];
    readonly planes: readonly number[];
    readonly capacity: number;
}

const script = new URL('oracle/rigid_plastic.py', import.meta.url);
const stored = readFileSync(new URL('oracle/rigid-plastic.json', import.meta.url), 'utf8');
const rows = (JSON.parse(stored) as { readonly rows: readonly Row[] }).rows;

/** What EN 1995-1-1 8.2 has on top of the rigid-plastic value, to make up for k_mod and γ_M of the bolt's steel. */
const uplift: Readonly<Record<string, number>> = { d: 1.05, e: 1.05, j: 1.05, f: 1.15, k: 1.15, b: 1.15, m: 1.15 };

function through({ d, fu, rho, leaves }: Row): BoltThroughLeaves {
    const fastener: Fastener = { name: `M${d}`, d, d_ef: d, As: 1, fu_k: fu, My_Rk: bendingYieldMoment(fu, d), diameterSource: 'test' };
    return {
        fastener, Fax_Rk: 0,
        leaves: leaves.map(({ timber, steel }) => timber ? leaf(timber, { rho_k: rho }) : { kind: 'steel', thickness: steel!, hole: d + 1 })
    };
}

function ratioToOptimum(row: Row): number {
    const { utilisation } = sound(boltShear(through(row), row.planes.map(x => ({ x, z: 0 })), unfactored));
    return 1 / utilisation / row.capacity;
}

describe('two timbers: the least mode, its uplift of 1.05 or 1.15 taken off, is the optimum', () => {
    for (const row of rows.filter(({ leaves }) => leaves.length === 2 && leaves.every(({ timber }) => timber))) {
        test(row.name, () => {
            const { modes } = sound(twoLeafCapacity(through(row), { x: 1, z: 0 }));
            // Letters a and b have no uplift between two timbers.
            const plain = Math.min(...modes.map(({ letter, capacity }) => capacity / (letter === 'b' ? 1 : uplift[letter] ?? 1)));
            expect(plain / row.capacity).toBeCloseTo(1, 3);
        });
    }
});

describe('several planes: never above the optimum with the greatest uplift', () => {
    for (const row of rows.filter(({ leaves }) => leaves.length > 2)) {
        test(`${row.name}, forces ${row.planes.join(', ')}`, () => {
            expect(ratioToOptimum(row)).toBeLessThanOrEqual(1.15 * (1 + 1e-3));
        });
    }
    test('four leaves to and fro: the bolt cannot have its yield moment in every leaf (8.1.3(2)), and one hinge with its 1.05 is the most', () => {
        for (const row of rows.filter(({ name }) => name.includes('four leaves 45, to and fro'))) {
            expect(ratioToOptimum(row), row.name).toBeLessThanOrEqual(1.05 * (1 + 1e-3));
        }
    });
    test('and for three timbers no more than 40 % below it in the stored situations', () => {
        for (const row of rows.filter(({ name, leaves }) => !name.includes('random') && leaves.length === 3 && leaves.every(({ timber }) => timber))) {
            expect(ratioToOptimum(row), row.name).toBeGreaterThan(0.6);
        }
    });
});

test('three equal leaves loaded to and fro alike are EN 1995-1-1 (8.7), which is the optimum with its uplift', () => {
    for (const row of rows.filter(({ planes, leaves }) => planes.join() === '1,-1' && leaves.every(({ timber }) => timber === 45 || timber === 63))) {
        const ratio = ratioToOptimum(row);
        expect([1, 1.05, 1.15].some(factor => Math.abs(ratio / factor - 1) < 2e-3), `${row.name}: ${ratio}`).toBe(true);
    }
});

const python = spawnSync('python3', ['-c', 'import scipy']).status === 0;

test.skipIf(!python)('the script still gives the committed outcome', { timeout: 300_000 }, () => {
    const again = spawnSync('python3', [fileURLToPath(script)], { encoding: 'utf8', maxBuffer: 1e7 });
    expect(again.status, again.stderr).toBe(0);
    const fresh = (JSON.parse(again.stdout) as { readonly rows: readonly Row[] }).rows;
    expect(fresh.map(({ name }) => name)).toEqual(rows.map(({ name }) => name));
    for (const [i, { capacity, name }] of rows.entries()) {
        expect(Math.abs(fresh[i]!.capacity - capacity) / capacity, name).toBeLessThan(1e-4);
    }
});
