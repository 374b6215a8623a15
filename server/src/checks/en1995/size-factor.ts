import type { TimberStrength } from '../../catalog/timber.js';

/**
 * Factor k_h for small sizes, EN 1995-1-1 3.2(3) and 3.3(3).
 * @param size depth in bending, or the larger dimension in tension, mm
 */
export function sizeFactor({ product, rho_k }: Pick<TimberStrength, 'product' | 'rho_k'>, size: number): number {
    if (product === 'glulam') {
        return size < 600 ? sizeFactorBy(size, 600, 0.1, 1.1) : 1;
    }
    return size < 150 && rho_k <= 700 ? sizeFactorBy(size, 150, 0.2, 1.3) : 1;
}

/** min((reference/size)^exponent, limit): EN 1995-1-1 (3.1), (3.2) and (3.3). */
export function sizeFactorBy(size: number, reference: number, exponent: number, limit: number): number {
    return Math.min((reference / size) ** exponent, limit);
}
