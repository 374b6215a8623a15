import { describe, expect, it } from 'vitest';
import {
    bucklingAuxiliary, bucklingFactor, bucklingOf, relativeSlenderness, slenderness
} from '../../server/src/checks/en1995/buckling.js';
import { compression, compressionSums } from '../../server/src/checks/en1995/compression.js';
import { compressionStrengthAtAngle } from '../../server/src/checks/en1995/contact.js';
import { bendingStress } from '../../server/src/checks/en1995/bending.js';
import { designStrength } from '../../server/src/checks/en1995/design-strength.js';
import { sizeFactorBy } from '../../server/src/checks/en1995/size-factor.js';
import { tension, tensionSums } from '../../server/src/checks/en1995/tension.js';
import { published } from './figures.js';
import { beam, given, segment, state, strengthOf } from './fixture.js';

describe('published cases', () => {
    published('CO-01', g => ({ lambda_z: slenderness(g('L'), g('b')) }));
    published('CO-02', g => {
        const lambda_rel = relativeSlenderness(g('lambda_z'), g('fc0k'), g('E005'));
        return { lambda_rel, k: bucklingAuxiliary(lambda_rel, g('beta_c')), kc: bucklingFactor(lambda_rel, g('beta_c')) };
    });
    for (const id of ['CO-C24-140x140', 'CO-C16-75x200', 'CO-D30-200x200']) {
        published(id, g => {
            const { lambda, lambdaRel, k, kc } = bucklingOf(g('L'), g('b'), { fc0_k: g('fc0k'), E0_05: g('E005') }, g('beta_c'));
            return { lam: lambda, lambda_rel: lambdaRel, k, kc, N_Rd: kc * g('b') * g('h') * designStrength(g('fc0k'), g('kmod'), g('gM')) / 1000 };
        });
    }
    published('LVL-09', g => {
        const buckling = bucklingOf(g('lc'), g('h'), { fc0_k: g('fc0k'), E0_05: g('E005') }, g('beta_c'));
        const fc0d = designStrength(g('fc0k'), g('kmod'), g('gammaM'));
        const sigma_c = g('N') * 1000 / (g('b') * g('h'));
        const fmd = designStrength(g('fmk'), g('kmod'), g('gammaM'), sizeFactorBy(g('h'), 300, 0.15, 1.2));
        return {
            lambda_y: buckling.lambda, lambda_rel: buckling.lambdaRel, ky: buckling.k, kcy: buckling.kc, sigma_c, fc0d,
            util_c: compressionSums({ axial: sigma_c, my: 0, mz: 0 }, { fc0: fc0d, fmy: fmd, fmz: fmd }, buckling.kc, 1, true).y,
            sigma_m: bendingStress(g('N') * 1000 * g('e'), g('b'), g('h')), fmd
        };
    });
    for (const id of ['HK-30', 'HK-60']) {
        published(id, g => ({ sigma_limit: compressionStrengthAtAngle(g('fc0d'), g('fc90d'), g('kc90'), g('alpha') * Math.PI / 180) }));
    }
});

const strengths = { fc0: 10, fmy: 12, fmz: 15 };

describe('interaction, EN 1995-1-1 6.2.3, 6.2.4 and 6.3.2', () => {
    const sums = (y: number, z: number) => ({ y: expect.closeTo(y, 12) as number, z: expect.closeTo(z, 12) as number });
    it('squares the axial share of a stocky member, (6.19) and (6.20)', () => {
        expect(compressionSums({ axial: 5, my: 6, mz: 1.5 }, strengths, 1, 1, false)).toEqual(sums(0.25 + 0.5 + 0.7 * 0.1, 0.25 + 0.35 + 0.1));
    });
    it('adds it linearly over k_c for a slender one, (6.23) and (6.24)', () => {
        expect(compressionSums({ axial: 2, my: 6, mz: 1.5 }, strengths, 0.5, 0.2, true)).toEqual(sums(0.4 + 0.5 + 0.07, 1 + 0.35 + 0.1));
    });
    it('adds tension linearly, (6.17) and (6.18)', () => {
        expect(tensionSums({ axial: 2, my: 6, mz: 1.5 }, { ft0: 8, fmy: 12, fmz: 15 })).toEqual(sums(0.25 + 0.5 + 0.07, 0.25 + 0.35 + 0.1));
    });
    it('has k_c = 1 up to λ_rel = 0.3, and no jump there', () => {
        expect(bucklingFactor(0.3, 0.2)).toBe(1);
        expect(bucklingFactor(0.3 + 1e-9, 0.2)).toBeCloseTo(1, 6);
        expect(bucklingFactor(0.1, 0.2)).toBe(1);
    });
});

describe('compression of a member', () => {
    const post = (member = {}, actions = {}, N = -30_000) => beam({
        b: 100, h: 200, length: 3000, member: { kind: 'post', slope: Math.PI / 2, ...member }, actions, states: [[0, state({ N })], [3000, state({ N })]]
    });
    const c24 = strengthOf('C24');
    const kcOver = (length: number, size: number) => bucklingOf(length, size, c24, 0.2).kc;
    const axial = 30_000 / (100 * 200) / (0.8 * 21 / 1.3);

    it('buckles about its weak side over its length, EN 1995-1-1 (6.24)', () => {
        expect(compression.outcomes(post())[0]?.utilisation).toBeCloseTo(axial / kcOver(3000, 100), 9);
    });
    it('buckles in the plane where it is restrained sideways', () => {
        expect(compression.outcomes(post({ restraint: given(500) }))[0]?.utilisation).toBeCloseTo(axial / kcOver(3000, 200), 9);
    });
    it('counts twice the length of a free end', () => {
        const spans = [{ from: 0, to: 3000, overhang: true }];
        expect(compression.outcomes(post({}, { spans }))[0]?.utilisation).toBeCloseTo(axial / kcOver(6000, 100), 9);
    });
    it('bends sideways by a loss on one side', () => {
        const segments = [segment(0, 3000, 80, 200, { shiftRight: 10, weakened: true })];
        const [outcome] = compression.outcomes(post({}, { segments }));
        const kc = kcOver(3000, 80);
        const mz = 6 * 30_000 * 10 / (200 * 80 ** 2) / (1.5 ** 0.2 * 0.8 * 24 / 1.3);
        expect(outcome?.utilisation).toBeCloseTo(30_000 / (80 * 200) / (0.8 * 21 / 1.3) / kc + mz, 9);
        expect(outcome?.explain().map(({ symbol }) => symbol)).toContain('\\sigma_{m,z,d}');
    });
    it('does not concern a member without compression', () => {
        expect(compression.outcomes(post({}, {}, -0.5))).toEqual([]);
        expect(compression.outcomes(post({}, {}, 30_000))).toEqual([]);
    });
    it('tension takes k_h of the larger side and its own strength, 6.1.2', () => {
        expect(tension.outcomes(post({}, {}, 30_000))[0]?.utilisation).toBeCloseTo(1.5 / (0.8 * 14.5 / 1.3), 12);
        expect(tension.outcomes(post({}, {}, -30_000))).toEqual([]);
    });
});
