import { describe, expect, it } from 'vitest';
import { bending, bendingStress, sectionModulus } from '../../server/src/checks/en1995/bending.js';
import { designStrength } from '../../server/src/checks/en1995/design-strength.js';
import { shear, shearStress } from '../../server/src/checks/en1995/shear.js';
import { sizeFactor, sizeFactorBy } from '../../server/src/checks/en1995/size-factor.js';
import { published } from './figures.js';
import { beam, segment, state, strengthOf } from './fixture.js';

describe('published cases', () => {
    published('LVL-01', g => {
        const E = g('gammaG') * g('gk') + g('gammaQ') * g('qk');
        const M = E / 1000 * g('s') * g('L') ** 2 / 8;
        const kh = sizeFactorBy(g('h'), 300, g('s_exp'), 1.2);
        return {
            W: sectionModulus(g('b'), g('h')),
            sigma_md: bendingStress(M, g('b'), g('h')),
            kh,
            fmd: designStrength(g('fmk'), g('kmod'), g('gammaM'), kh)
        };
    });
    published('LVL-02', g => {
        const V = g('Ed') / 1000 * g('s') * g('L') / 2;
        return {
            // The source's A is b h: 45 × 240 mm. LVL takes no k_cr.
            tau_d: shearStress(V, g('b'), g('A') / g('b'), 1),
            fvd: designStrength(g('fvk'), g('kmod'), g('gammaM')),
            fc90d: designStrength(g('fc90k'), g('kmod'), g('gammaM'))
        };
    });
    published('LVL-08', g => ({ tau: shearStress(g('w') * g('L') * 1000 / 2, g('b'), g('h'), 1) }));
    published('BE-01', g => ({ sigma: bendingStress((g('gG') * g('g') + g('gQ') * g('q_snow')) * g('L') ** 2 / 8, g('b'), g('h')) }));
    published('BE-02', g => ({ sigma: bendingStress(g('gQ') * g('q_k') * g('L') ** 2 / 8, g('b'), g('h')) }));
    published('TB-01', g => {
        const load = (g('gG') * g('gk') + g('gQ') * g('qk')) / 1000 * g('s');
        const sigma = bendingStress(load * g('L') ** 2 / 8, g('b'), g('h'));
        const tau = shearStress(load * g('L') / 2, g('b'), g('h'), g('kcr'));
        const fmd = designStrength(g('fmk'), g('kmod'), g('gM'), sizeFactor(strengthOf('C24'), g('h')), g('ksys'));
        const fvd = designStrength(g('fvk'), g('kmod'), g('gM'));
        return { sigma_m: sigma, fmd, util_m: sigma / fmd, tau, fvd, util_v: tau / fvd };
    });
    published('KH-solid_h=30', () => ({ kh: sizeFactor({ product: 'solid', rho_k: 350 }, 30) }));
    published('KH-glulam_h=300', () => ({ kh: sizeFactor({ product: 'glulam', rho_k: 385 }, 300) }));
    published('KH-LVL_h=100_s=0.15', () => ({ kh: sizeFactorBy(100, 300, 0.15, 1.2) }));
    published('AC-02', g => {
        // The two ratios E_d / k_mod that decide which combination governs, by the check itself.
        const M = (load: number) => state({ M: load * 1e6 });
        const design = { permanent: 1.35 * g('Gk'), full: 1.35 * g('Gk') + 1.5 * g('Qk') };
        const both = beam({
            b: 100, h: 200, length: 4000,
            states: [[2000, { ...M(design.permanent), combination: { ...M(0).combination, duration: 'permanent' } }, M(design.full)]]
        });
        const [outcome] = bending.outcomes(both);
        expect(outcome?.combination.duration).toBe('permanent');
        return { perm_ratio: design.permanent / g('kmod_perm'), full_ratio: design.full / g('kmod_med') };
    });
});

describe('k_h, EN 1995-1-1 3.2(3) and 3.3(3)', () => {
    it.each([
        ['solid', 350, 149.9, (150 / 149.9) ** 0.2], ['solid', 350, 150, 1], ['solid', 350, 40, 1.3],
        ['solid', 700, 100, 1.5 ** 0.2], ['solid', 701, 100, 1], ['glulam', 385, 600, 1], ['glulam', 385, 200, 1.1]
    ] as const)('%s of %d kg/m³, %d mm', (product, rho_k, size, expected) => {
        expect(sizeFactor({ product, rho_k }, size)).toBeCloseTo(expected, 12);
    });
});

describe('what governs bending', () => {
    it('is the weakened segment, though the moment there is less', () => {
        const weak = beam({
            b: 100, h: 200, length: 4000,
            actions: { segments: [segment(0, 1000, 100, 120, { weakened: true }), segment(1000, 4000, 100, 200)] },
            states: [[900, state({ M: 4e6 })], [2000, state({ M: 6e6 })]]
        });
        const [outcome] = bending.outcomes(weak);
        expect(outcome?.at).toBe(900);
        expect(outcome?.demand.value).toBeCloseTo(4e6 * 6 / (100 * 120 ** 2), 9);
        expect(outcome?.explain()[0]?.note).toContain('residual section from 0.000 to 1.000 m');
    });

    it('takes k_sys only where system strength is said, 6.6', () => {
        const shared = (systemStrength: boolean) => bending.outcomes(beam({
            b: 100, h: 200, length: 4000, member: { systemStrength }, states: [[2000, state({ M: 6e6 })]]
        }))[0]?.utilisation ?? NaN;
        expect(shared(false) / shared(true)).toBeCloseTo(1.1, 12);
    });

    it('takes k_cr 0.67 for the breadth in shear, 6.1.7(2)', () => {
        const [outcome] = shear.outcomes(beam({ b: 100, h: 200, length: 4000, states: [[0, state({ V: -6000 })]] }));
        expect(outcome?.demand.value).toBeCloseTo(1.5 * 6000 / (0.67 * 100 * 200), 12);
    });
});
