import type { Curve } from './peaks.js';

/** Least and greatest of all curves and nought; undefined where one has a value that is no finite number. */
export interface Extent { readonly least: number; readonly greatest: number }

export function extentOf(curves: readonly Curve[]): Extent | undefined {
    let [least, greatest] = [0, 0];
    for (const { points } of curves) {
        for (const { min, max } of points) {
            if (!Number.isFinite(min) || !Number.isFinite(max)) {
                return undefined;
            }
            least = Math.min(least, min, max);
            greatest = Math.max(greatest, min, max);
        }
    }
    return { least, greatest };
}
