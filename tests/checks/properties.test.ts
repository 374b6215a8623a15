/** What holds for any numbers: written down here, not taken from a source. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bucklingFactor } from '../../server/src/checks/en1995/buckling.js';
import { effectiveContactLength } from '../../server/src/checks/en1995/contact.js';
import { kcrit } from '../../server/src/checks/en1995/lateral-buckling.js';
import { notchFactor } from '../../server/src/checks/en1995/notch-factor.js';
import { loadSpread } from '../../server/src/checks/en1996/concentrated-load.js';
import { memberChecks } from '../../server/src/checks/index.js';
import { runChecks } from '../../server/src/checks/runner.js';
import { beam, deflection, given, lineLoad, segment, state, strengthOf, support } from './fixture.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('factors', () => {
    it('k_c and k_crit reduce, and the more the slenderer', () => {
        fc.assert(fc.property(between(0.01, 5), between(0.01, 2), fc.constantFrom(0.1, 0.2), (slenderness, more, betaC) => {
            const [kc, slenderer] = [bucklingFactor(slenderness, betaC), bucklingFactor(slenderness + more, betaC)];
            expect(kc).toBeGreaterThan(0);
            expect(kc).toBeLessThanOrEqual(1);
            expect(slenderer).toBeLessThanOrEqual(kc);
            expect(kcrit(slenderness)).toBeLessThanOrEqual(1);
            // The branches of (6.34) meet to within 0.0003.
            expect(kcrit(slenderness + more)).toBeLessThanOrEqual(kcrit(slenderness) + 3e-4);
        }));
    });
    it('k_c never exceeds the elastic limit 1/λ²', () => {
        fc.assert(fc.property(between(0.31, 8), slenderness => {
            expect(bucklingFactor(slenderness, 0.1)).toBeLessThan(1 / slenderness ** 2);
        }));
    });
    it('a contact grows by 60 mm at most', () => {
        fc.assert(fc.property(between(1, 500), between(-50, 500), between(0, 500), (length, toEnd, toNext) => {
            const effective = effectiveContactLength(length, [{ toEnd, toNext: Infinity }, { toEnd: 1e4, toNext }]);
            expect(effective).toBeGreaterThanOrEqual(length);
            expect(effective).toBeLessThanOrEqual(length + 60);
        }));
    });
    it('a deeper notch, further out, is worse', () => {
        fc.assert(fc.property(between(100, 400), between(0.5, 0.95), between(0.02, 0.4), between(0, 200), between(1, 100), (h, alpha, cut, x, out) => {
            const kv = notchFactor({ h, hef: alpha * h, x, i: 0 }, 5);
            expect(notchFactor({ h, hef: alpha * h, x: x + out, i: 0 }, 5)).toBeLessThanOrEqual(kv);
            expect(notchFactor({ h, hef: alpha * h, x, i: 2 }, 5)).toBeGreaterThanOrEqual(kv);
            const capacity = (part: number): number => part * notchFactor({ h, hef: part * h, x, i: 0 }, 5);
            expect(capacity(alpha * (1 - cut))).toBeLessThan(capacity(alpha));
        }));
    });
    it('β lies between 1 and 1.5', () => {
        fc.assert(fc.property(between(50, 500), between(50, 400), between(500, 5000), between(0, 3000), (along, across, hc, a1) => {
            const { beta } = loadSpread({ along, across, thickness: 400, hc, a1 });
            expect(beta).toBeGreaterThanOrEqual(1);
            expect(beta).toBeLessThanOrEqual(1.5);
        }));
    });
});

describe('any member', () => {
    const number = fc.oneof({ weight: 6, arbitrary: between(-1e7, 1e7) }, fc.constantFrom(0, NaN, Infinity, -Infinity, 1e308));
    const size = fc.oneof({ weight: 6, arbitrary: between(10, 400) }, fc.constantFrom(0, -50, NaN, Infinity));
    const job = fc.record({ b: size, h: size, M: number, V: number, N: number, R: number, w: number, cut: size, notch: size, grade: fc.constantFrom('C24', 'D30', 'GL24h') });

    it('whatever its numbers, is explained, and passes nothing that is not a number of at most 1', () => {
        fc.assert(fc.property(job, ({ b, h, M, V, N, R, w, cut, notch, grade }) => {
            const context = beam({
                b, h, length: 3000, strength: strengthOf(grade),
                member: { notches: [{ face: 'bottom', from: given(0), to: given(200), depth: given(notch), taper: given(0), source: given(0).source }], restraint: given(cut) },
                actions: {
                    segments: [segment(0, 1500, b, h), segment(1500, 3000, b - cut, h - cut, { shiftRight: cut / 2, weakened: true })],
                    supports: [support('west', 50, 100, [R]), support('east', 2950, cut, [R, -R])],
                    instant: [deflection(w, 0, 3000)], final: [deflection(-w, 0, 3000)]
                },
                context: { loads: [lineLoad(0, 3000)] },
                states: [[0, state({ V, N })], [100, state({ V })], [1400, state({ M, N })], [2900, state({ M: -M, V, N: -N })]]
            });
            const { results } = runChecks(context, memberChecks);
            expect(results.length).toBeGreaterThanOrEqual(7);
            for (const { utilisation, pass, steps } of results) {
                expect(utilisation).not.toBeNaN();
                expect(utilisation).toBeGreaterThanOrEqual(0);
                expect(pass).toBe(utilisation <= 1);
                expect(steps.length).toBeGreaterThan(0);
            }
        }), { numRuns: 400 });
    });

    it('twice the load is twice the utilisation of bending, shear and bearing', () => {
        fc.assert(fc.property(between(1, 1e7), between(1, 1e5), (M, V) => {
            const at = (factor: number) => runChecks(beam({
                b: 75, h: 225, length: 3000, states: [[0, state({ V: factor * V })], [1500, state({ M: factor * M })]],
                actions: { supports: [support('west', 50, 100, [factor * V])] }
            }), memberChecks).results.filter(({ check }) => ['bending', 'shear', 'bearing', 'stability', 'masonry'].includes(check));
            at(1).forEach(({ utilisation }, i) => expect(at(2)[i]?.utilisation).toBeCloseTo(2 * utilisation, 6));
        }));
    });
});
