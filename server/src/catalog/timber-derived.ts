/** Properties that follow from others by EN 384:2016 (relations from memory, they fit every row of EN 338:2016). */
import type { TimberStrength } from './timber-strength.js';
import type { OwnValues } from './timber-properties.js';

/** Softwood's and glulam's ratios; hardwood's 0.84 would be the better one for oak. */
const lowModulus = { softwood: 0.67, hardwood: 0.84, glulam: 5 / 6 } as const;

/** E_0,05 from the mean: 0.67 softwood, 0.84 hardwood, 5/6 glulam (EN 14080:2013). */
export function fifthPercentileModulus(E0_mean: number, kind: keyof typeof lowModulus): number {
    return lowModulus[kind] * E0_mean;
}

/**
 * A class with own values before its own. Where the own mean modulus stands without its 5 % value,
 * that is the lower of the class's and the one derived from the mean.
 */
export function withOwnStiffness(base: TimberStrength, own: OwnValues): TimberStrength {
    const ownNames = Object.keys(own);
    if (ownNames.length === 0) {
        return base;
    }
    const kind = base.product === 'glulam' ? 'glulam' : base.softwood ? 'softwood' : 'hardwood';
    const derives = own.E0_mean !== undefined && own.E0_05 === undefined;
    const E0_05 = derives ? Math.min(base.E0_05, fifthPercentileModulus(own.E0_mean, kind)) : base.E0_05;
    const derived = derives ? '; E0_05 is the lower of the class and EN 384 on the own mean' : '';
    return { ...base, E0_05, ...own, origin: `${base.origin}; own values: ${ownNames.join(', ')}${derived}` };
}

/**
 * A timber without a class. The species is not known, so the lower of the softwood and the hardwood
 * relation is taken, and it counts as a hardwood where a clause favours softwood (6.1.5).
 * @param own has at least fm_k, fv_k, fc90_k, E0_mean and rho_k
 */
export function derivedProperties(name: string, own: OwnValues): TimberStrength {
    const { fm_k = NaN, fv_k = NaN, fc90_k = NaN, E0_mean = NaN, rho_k = NaN } = own;
    const derived = {
        ft0_k: Math.max(0, Math.min(0.73 * fm_k - 3.07, 0.6 * fm_k)),
        ft90_k: 0.4,
        fc0_k: 4.3 * Math.sqrt(fm_k),
        E0_05: fifthPercentileModulus(E0_mean, 'softwood'),
        E90_mean: E0_mean / 30,
        G_mean: E0_mean / 16,
        rho_mean: 1.2 * rho_k
    };
    const left = Object.keys(derived).filter(property => !(property in own));
    return {
        name, product: 'solid', softwood: false, fm_k, fv_k, fc90_k, E0_mean, rho_k, ...derived, ...own,
        origin: `own values${left.length > 0 ? `; derived by EN 384:2016 (from memory), the lower of softwood and hardwood: ${left.join(', ')}` : ''}`
    };
}
