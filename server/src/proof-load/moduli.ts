/** The stiffness that a timber may have: its class's mean, and what one piece in twenty falls below or goes beyond. */
import type { TimberStrength } from '../catalog/timber.js';

/** MPa. */
export interface Moduli { readonly E: number; readonly G: number }

export interface ModuliBand { readonly mean: Moduli; readonly low: Moduli; readonly high: Moduli }

/** 5 % of a normal distribution lie below the mean less so many standard deviations. */
const fifth = 1.6449;

/**
 * E_0,95 of a lognormal distribution with this mean and this 5 % value. Classes give no upper value; that the bending
 * modulus is lognormal is the JCSS Probabilistic Model Code, part 3.5 (from memory).
 * From ln(mean/low) = s²/2 + 1.645 s: E_0,95 = low · exp(2 · 1.645 s).
 * @param low less than the mean, else the mean is returned: no spread is known
 */
export function upperModulus(mean: number, low: number): number {
    if (!(low > 0 && low < mean)) {
        return mean;
    }
    const s = Math.sqrt(fifth ** 2 + 2 * Math.log(mean / low)) - fifth;
    return low * Math.exp(2 * fifth * s);
}

/** G goes with E, as EN 384 has it (E / 16, from memory): a piece soft in bending is soft in shear. */
export function moduliBand({ E0_mean, E0_05, G_mean }: TimberStrength): ModuliBand {
    const at = (E: number): Moduli => ({ E, G: G_mean * E / E0_mean });
    return { mean: at(E0_mean), low: at(E0_05), high: at(upperModulus(E0_mean, E0_05)) };
}
