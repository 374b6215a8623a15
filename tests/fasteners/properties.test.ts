import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boltGrades, threads } from '../../server/src/catalog/bolts.js';
import { boltShear, twoLeafCapacity } from '../../server/src/checks/en1995/fasteners/bolt-through-leaves.js';
import { effectiveNumber } from '../../server/src/checks/en1995/fasteners/effective-number.js';
import type { Leaf } from '../../server/src/checks/en1995/fasteners/leaf.js';
import { bolt, bolted, leaf, unfactored } from './bolt.js';
import { degrees, sound } from './sound.js';

const sizes = [...threads.keys()];
const size = fc.constantFrom(...sizes);
const grade = fc.constantFrom(...boltGrades.keys());
const thickness = fc.integer({ min: 35, max: 200 });
const density = fc.integer({ min: 290, max: 900 });
const angle = fc.integer({ min: 0, max: 90 });
const unit = (alpha: number) => ({ x: Math.cos(degrees(alpha)), z: Math.sin(degrees(alpha)) });
const more = (greater: number, less: number): void => { expect(greater).toBeGreaterThanOrEqual(less * (1 - 1e-9)); };

describe('two leaves of softwood', () => {
    const capacity = (of: string, strength: string, t: readonly [number, number], rho_k: number, alpha: number): number =>
        sound(twoLeafCapacity(bolted(bolt(of, strength), t.map(thick => leaf(thick, { rho_k }))), unit(alpha))).capacity;

    test('the capacity never rises with the angle to the grain', () => {
        fc.assert(fc.property(size, grade, thickness, thickness, density, angle, angle, (of, strength, t1, t2, rho, a, b) =>
            more(capacity(of, strength, [t1, t2], rho, Math.min(a, b)), capacity(of, strength, [t1, t2], rho, Math.max(a, b)))));
    });
    test('it never falls with the density', () => {
        fc.assert(fc.property(size, grade, thickness, thickness, density, density, angle, (of, strength, t1, t2, rho1, rho2, alpha) =>
            more(capacity(of, strength, [t1, t2], Math.max(rho1, rho2), alpha), capacity(of, strength, [t1, t2], Math.min(rho1, rho2), alpha))));
    });
    test('it never falls with the bolt', () => {
        fc.assert(fc.property(fc.integer({ min: 1, max: sizes.length - 1 }), grade, thickness, thickness, density, angle, (i, strength, t1, t2, rho, alpha) =>
            more(capacity(sizes[i]!, strength, [t1, t2], rho, alpha), capacity(sizes[i - 1]!, strength, [t1, t2], rho, alpha))));
    });
    test('it never falls with a thickness', () => {
        fc.assert(fc.property(size, grade, thickness, thickness, fc.integer({ min: 1, max: 50 }), density, angle, (of, strength, t1, t2, extra, rho, alpha) =>
            more(capacity(of, strength, [t1 + extra, t2], rho, alpha), capacity(of, strength, [t1, t2], rho, alpha))));
    });
});

const someLeaf: fc.Arbitrary<Leaf> = fc.oneof(
    { weight: 4, arbitrary: fc.record({ kind: fc.constant('timber' as const), thickness, rho_k: density, wood: fc.constantFrom('softwood' as const, 'hardwood' as const, 'LVL' as const), grain: fc.double({ min: -3, max: 3, noNaN: true }) }) },
    { weight: 1, arbitrary: fc.record({ kind: fc.constant('steel' as const), thickness: fc.integer({ min: 3, max: 25 }), hole: fc.constant(33) }) }
);
const force = fc.record({ x: fc.double({ min: -1e4, max: 1e4, noNaN: true }), z: fc.double({ min: -1e4, max: 1e4, noNaN: true }) });
const joint = fc.array(someLeaf, { minLength: 2, maxLength: 6 }).chain(leaves => fc.record({
    leaves: fc.constant(leaves), forces: fc.array(force, { minLength: leaves.length - 1, maxLength: leaves.length - 1 })
}));

test('any joint gives a number or a problem, never NaN; twice the force is twice the utilisation', () => {
    fc.assert(fc.property(joint, size, grade, ({ leaves, forces }, of, strength) => {
        const through = bolted(bolt(of, strength), leaves);
        const once = boltShear(through, forces, unfactored);
        if ('problem' in once) {
            expect(leaves.some((one, i) => one.kind === 'steel' && leaves[i + 1]?.kind === 'steel')).toBe(true);
            return;
        }
        expect(Number.isFinite(once.utilisation)).toBe(true);
        expect(once.capacity.value).toBeGreaterThan(0);
        const twice = sound(boltShear(through, forces.map(({ x, z }) => ({ x: 2 * x, z: 2 * z })), unfactored));
        expect(Math.abs(twice.utilisation - 2 * once.utilisation)).toBeLessThanOrEqual(1e-9 * twice.utilisation);
        for (const { result } of once.explain()) {
            expect(Number.isNaN(result.value)).toBe(false);
        }
    }));
});

test('a bolt bears the same read from either side, and under forces turned about', () => {
    fc.assert(fc.property(joint, size, ({ leaves, forces }, of) => {
        const through = bolted(bolt(of, '8.8'), leaves);
        const one = boltShear(through, forces, unfactored);
        if ('problem' in one) {
            return;
        }
        const other = sound(boltShear({ ...through, leaves: [...leaves].reverse() }, [...forces].reverse().map(({ x, z }) => ({ x: -x, z: -z })), unfactored));
        expect(Math.abs(other.utilisation - one.utilisation)).toBeLessThanOrEqual(1e-9 * one.utilisation);
    }));
});

test('the effective number lies between 1 and n and never falls with the angle or the spacing', () => {
    const nef = (n: number, a1: number, alpha: number) => sound(effectiveNumber({ n, a1, d: 12, angle: degrees(alpha) })).nef;
    fc.assert(fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 48, max: 400 }), angle, angle, (n, a1, a, b) => {
        more(nef(n, a1, Math.max(a, b)), nef(n, a1, Math.min(a, b)));
        more(nef(n, a1 + 10, a), nef(n, a1, a));
        more(n, nef(n, a1, a));
        more(nef(n, a1, a), 1);
    }));
});
