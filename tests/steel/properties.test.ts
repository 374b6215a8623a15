import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { endPlateStiffness, type EndPlateSplice } from '../../server/src/analysis/splice.js';
import { coverStiffness, type CoverSplice } from '../../server/src/analysis/splice-covers.js';
import { flitchShares } from '../../server/src/analysis/flitch.js';
import { layeredStiffness } from '../../server/src/analysis/layered.js';
import { boltGrades, threads } from '../../server/src/catalog/bolts.js';
import { rolledNames } from '../../server/src/catalog/rolled-sections.js';
import { ownSteel } from '../../server/src/catalog/steel.js';
import { bending } from '../../server/src/checks/en1993/bending.js';
import { boltOf } from '../../server/src/checks/en1993/bolts/bolt.js';
import { shapeOfDiagram, uniformLoad } from '../../server/src/checks/en1993/critical-moment.js';
import { interaction } from '../../server/src/checks/en1993/interaction.js';
import { shear } from '../../server/src/checks/en1993/shear.js';
import { coverSplice } from '../../server/src/checks/en1993/splice/covers.js';
import { endPlateSplice } from '../../server/src/checks/en1993/splice/end-plate.js';
import { stability } from '../../server/src/checks/en1993/stability.js';
import type { SteelMember } from '../../server/src/checks/en1993/steel-member.js';
import { isProblem, type Problem, type Verdict } from '../../server/src/checks/verdict.js';
import { web } from '../../server/src/checks/en1993/web.js';
import { good, memberOf, sectionOf, term } from './answers.js';

const name = fc.constantFrom(...rolledNames, '200 x 10', '120 x 8', '60 x 30');
const grade = fc.constantFrom('S235', 'S275', 'S355', 'iron');
const amount = (most: number) => fc.double({ min: 0, max: most, noNaN: true });
const signed = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const anything = fc.double();

const member = (named: string, graded: string): SteelMember => graded === 'iron'
    ? { ...memberOf(named), steel: ownSteel('old iron', { fy: 180, E: 190_000 })! } : memberOf(named, graded);
const steelMember = fc.tuple(name, grade).map(([n, g]) => member(n, g));

/** A number or a reason: no NaN, no negative utilisation, and an explanation that can be printed and written to JSON. */
function sound(answer: Verdict | Problem): void {
    if (isProblem(answer)) {
        expect(answer.problem).not.toBe('');
        return;
    }
    expect(answer.utilisation).toBeGreaterThanOrEqual(0);
    for (const step of answer.explain()) {
        expect(step.formula).not.toMatch(/NaN|undefined/);
        expect(`${step.note ?? ''} ${step.clause ?? ''}`).not.toMatch(/NaN|undefined|Infinity/);
        const endless = step.symbol === '\\eta' && answer.utilisation === Infinity;
        expect(Number.isFinite(step.result.value) || endless, `${step.symbol} ${step.result.value}`).toBe(true);
        for (const { symbol, amount: { value } } of step.terms) {
            expect(step.formula).toContain(symbol);
            expect(Number.isFinite(value), `${step.symbol}: ${symbol} ${value}`).toBe(true);
        }
    }
}

const utilisation = (answer: Verdict | Problem): number => isProblem(answer) ? Infinity : answer.utilisation;
const lateral = (length: number, loadHeight = 0) => ({ length, shape: uniformLoad, loadHeight });

describe('members', () => {
    test('every answer is a sound verdict or a problem', () => {
        fc.assert(fc.property(steelMember, signed(3e9), signed(5e6), signed(5e6), amount(20_000), amount(20_000), signed(1000), (one, M, V, N, a, b, z) => {
            sound(bending(one, M));
            sound(shear(one, V));
            sound(interaction(one, { N, V, M }));
            sound(stability(one, { M, N, lateral: lateral(a, z), bucklingLength: { y: a, z: b } }));
            sound(stability(one, { M, N: 0, lateral: lateral(b, z), bucklingLength: { y: 0, z: 0 } }));
            sound(web(one, { F: V, M, stiffBearing: a / 50, place: { kind: 'end', overhang: b / 50 } }));
            sound(web(one, { F: V, stiffBearing: a / 50, place: { kind: 'inner', panel: b + 1 } }));
        }));
    });

    test('any input at all, NaN and infinite among it, gives no NaN and no pass by accident', () => {
        fc.assert(fc.property(steelMember, anything, anything, anything, anything, (one, a, b, c, d) => {
            for (const answer of [
                bending(one, a), shear(one, a), interaction(one, { N: a, V: b, M: c }),
                stability(one, { M: a, N: b, lateral: lateral(c, d), bucklingLength: { y: c, z: d } }),
                web(one, { F: a, stiffBearing: b, place: { kind: 'end', overhang: c } }), web(one, { F: a, stiffBearing: b, place: { kind: 'inner', panel: c }, M: d })
            ]) {
                expect(isProblem(answer) || !Number.isNaN(answer.utilisation)).toBe(true);
            }
            const bad = [a, b, c].some(value => !Number.isFinite(value));
            expect(!bad || isProblem(interaction(one, { N: a, V: b, M: c }))).toBe(true);
        }));
    });

    test('more force is never less used', () => {
        fc.assert(fc.property(steelMember, amount(1e9), amount(1e9), amount(1e6), amount(3e6), (one, M, more, V, N) => {
            const bent = (m: number, v = 0, n = 0) => utilisation(interaction(one, { M: m, V: v, N: n }));
            const slack = 1 - 1e-9;
            expect(bent(M + more, V, N)).toBeGreaterThanOrEqual(bent(M, V, N) * slack);
            expect(bent(M, V * 1.5, N)).toBeGreaterThanOrEqual(bent(M, V, N) * slack);
            expect(bent(M, V, N * 1.5)).toBeGreaterThanOrEqual(bent(M, V, N) * slack);
            expect(bent(M, V, 0)).toBeGreaterThanOrEqual(utilisation(bending(one, M)) * slack);
        }));
    });

    test('longer, higher loaded and more compressed is never safer; steel of a higher grade is never weaker', () => {
        fc.assert(fc.property(name, amount(1e8), amount(5e5), amount(15_000), fc.double({ min: 1, max: 2, noNaN: true }), amount(300), (named, M, N, L, k, z) => {
            // Far beyond failure Annex B's factors fall with N: what counts is that it fails.
            const used = (length: number, height: number, n: number, g = 'S235') => Math.min(3,
                utilisation(stability(member(named, g), { M, N: -n, lateral: lateral(length, height), bucklingLength: { y: length, z: length } })));
            const slack = 1 - 1e-9;
            expect(used(L * k, z, N)).toBeGreaterThanOrEqual(used(L, z, N) * slack);
            expect(used(L, z * k, N)).toBeGreaterThanOrEqual(used(L, z, N) * slack);
            expect(used(L, z, N * k)).toBeGreaterThanOrEqual(used(L, z, N) * slack);
            expect(used(L, z, 0, 'S235')).toBeGreaterThanOrEqual(used(L, z, 0, 'S355') * slack);
            expect(used(L, z, 0)).toBeGreaterThanOrEqual(Math.min(3, utilisation(bending(member(named, 'S235'), M))) * slack);
        }));
    });

    test('a longer bearing, farther from the end, is never worse for the web, m2 being the same', () => {
        // (6.9) drops m2 where the web turns stocky, and the resistance with it: the clause itself jumps there.
        const rolled = fc.constantFrom(...rolledNames).map(named => memberOf(named, 'S275'));
        fc.assert(fc.property(rolled, amount(300), amount(300), amount(100), amount(100), (one, ss, moreBearing, c, moreEnd) => {
            const end = (s: number, overhang: number) => good(web(one, { F: 1e5, stiffBearing: s, place: { kind: 'end', overhang } }));
            const inner = (s: number) => good(web(one, { F: 1e5, stiffBearing: s, place: { kind: 'inner', panel: 4000 } }));
            for (const [better, worse] of [[end(ss + moreBearing, c), end(ss, c)], [end(ss, c + moreEnd), end(ss, c)], [inner(ss + moreBearing), inner(ss)]] as const) {
                if (term(better, 'm_2') === term(worse, 'm_2')) {
                    expect(better.utilisation).toBeLessThanOrEqual(worse.utilisation * (1 + 1e-9));
                }
            }
        }));
    });

    test('shape factors of any diagram: C1 from 1 to 2.3, C2 not negative', () => {
        fc.assert(fc.property(fc.array(signed(1e9), { minLength: 2, maxLength: 30 }), fc.double({ min: 1, max: 1e5, noNaN: true }), (moments, L) => {
            const { C1, C2 } = shapeOfDiagram(moments.map((M, i) => ({ x: i * L / (moments.length - 1), M })));
            expect(C1 >= 1 && C1 <= 2.3 && C2 >= 0 && Number.isFinite(C2)).toBe(true);
        }));
    });
});

describe('splices', () => {
    const M16 = boltOf(threads.get('M16')!, boltGrades.get('8.8')!);
    const beam = memberOf('IPE 300');
    const plate = { fy: 235, fu: 360 };
    const endPlate = fc.record({
        thickness: fc.double({ min: 4, max: 60, noNaN: true }), width: fc.double({ min: 120, max: 260, noNaN: true }), gauge: fc.double({ min: 60, max: 110, noNaN: true }),
        throat: fc.double({ min: 0, max: 8, noNaN: true }), inner: fc.double({ min: 25, max: 120, noNaN: true }), extended: fc.boolean()
    }).map(({ thickness, width, gauge, throat, inner, extended }): EndPlateSplice => ({
        beam: beam.section, plate: { thickness, width, above: 0, below: extended ? 80 : 0 }, gauge, weldThroat: throat,
        rows: extended ? [-inner, inner, -190] : [-inner, inner], bolt: { d: 16, As: 157 }
    }));

    test('end plates: sound, and never better for more force', () => {
        fc.assert(fc.property(endPlate, signed(2e8), signed(5e5), signed(5e5), (splice, M, V, N) => {
            const answer = endPlateSplice({ beam, splice, bolt: M16, plateSteel: plate }, { M, V, N });
            if (isProblem(answer)) {
                return;
            }
            answer.verdicts.forEach(sound);
            const more = good(endPlateSplice({ beam, splice, bolt: M16, plateSteel: plate }, { M: M * 1.2, V: V * 1.2, N: N * 1.2 }));
            answer.verdicts.forEach((verdict, i) => expect(more.verdicts[i]!.utilisation).toBeGreaterThanOrEqual(verdict.utilisation * (1 - 1e-9)));
            const { rotational } = endPlateStiffness(splice);
            expect(rotational > 0 && Number.isFinite(rotational)).toBe(true);
        }));
    });

    test('covers: sound, and never better for more force', () => {
        const covers = fc.record({ thickness: fc.double({ min: 3, max: 30, noNaN: true }), pairs: fc.integer({ min: 1, max: 8 }), pitch: fc.double({ min: 20, max: 150, noNaN: true }), rows: fc.integer({ min: 2, max: 4 }), lines: fc.integer({ min: 1, max: 3 }), end: fc.double({ min: 10, max: 100, noNaN: true }) })
            .map(({ thickness, pairs, pitch, rows, lines, end }): CoverSplice => ({
                beam: beam.section, gap: 5, flange: { width: 150, thickness, pairs, pitch, gauge: 90, coverEnd: end, beamEnd: end },
                web: { depth: 230, thickness, rows, lines, rowPitch: 55, linePitch: pitch, coverEnd: end, beamEnd: end }
            }));
        fc.assert(fc.property(covers, signed(2e8), signed(5e5), signed(5e5), (splice, M, V, N) => {
            const given = { beam, beamFu: 360, splice, bolt: M16, coverSteel: plate };
            const answer = good(coverSplice(given, { M, V, N }));
            answer.verdicts.forEach(sound);
            const more = good(coverSplice(given, { M: M * 1.2, V: V * 1.2, N: N * 1.2 }));
            answer.verdicts.forEach((verdict, i) => expect(more.verdicts[i]!.utilisation).toBeGreaterThanOrEqual(verdict.utilisation * (1 - 1e-9)));
            const { rotational } = coverStiffness(splice, M16, 360);
            expect(rotational > 0 && Number.isFinite(rotational)).toBe(true);
        }));
    });

    test('the splice of the demo, HEA 140 with four M16, holds less than the beam does', () => {
        const hea = memberOf('HEA 140', 'S275');
        const splice: EndPlateSplice = { beam: sectionOf('HEA 140'), plate: { width: 150, thickness: 12, above: 0, below: 0 }, rows: [-32, 32], gauge: 80, bolt: { d: 16, As: 157 }, weldThroat: 0 };
        const M = 20e6;
        expect(good(endPlateSplice({ beam: hea, splice, bolt: M16, plateSteel: { fy: 275, fu: 430 } }, { N: 0, V: 0, M })).verdicts[0]!.utilisation).toBeGreaterThan(good(bending(hea, M)).utilisation);
    });
});

describe('flitch and layers', () => {
    const size = fc.double({ min: 1, max: 1000, noNaN: true });
    const modulus = fc.double({ min: 500, max: 250_000, noNaN: true });

    test('shares add up to the whole, and the stiffness lies above that of the parts', () => {
        fc.assert(fc.property(size, size, size, size, modulus, modulus, signed(500), (b, h, t, d, Et, Es, offset) => {
            const shares = good(flitchShares({ timber: { count: 2, b, h, E: Et }, steel: { count: 1, b: t, h: d, E: Es, offset } }));
            expect(shares.timber + shares.steel + shares.couple).toBeCloseTo(1, 9);
            expect(shares.EI).toBeGreaterThanOrEqual((2 * Et * b * h ** 3 + Es * t * d ** 3) / 12 * (1 - 1e-9));
        }));
    });

    test('stiffness of layers lies between none and rigid connection and grows with it', () => {
        fc.assert(fc.property(size, size, size, size, modulus, modulus, amount(1e6), (b1, h1, b2, h2, E1, E2, K) => {
            const EI = (slip: number) => good(layeredStiffness({ layers: [{ b: b1, h: h1, E: E1 }, { b: b2, h: h2, E: E2 }], joints: [{ K: slip, s: 100 }], span: 4000 })).EIef;
            const steps = [EI(0), EI(K), EI(2 * K), EI(Infinity)];
            steps.forEach((one, i) => expect(one).toBeGreaterThanOrEqual((steps[i - 1] ?? 0) * (1 - 1e-9)));
        }));
    });
});
