/**
 * The nationally determined parameters of the basis, with the recommended values as default
 * and the file's `values { … }` before them.
 */
import type { Duration } from '../../../language/src/model.js';
import type { ParameterUse } from '../results.js';

export interface Parameters {
    readonly gammaG: number;
    readonly gammaGfavourable: number;
    readonly gammaQ: number;
    readonly xi: number;
    /** EQU, set A. */
    readonly gammaGequilibrium: number;
    readonly gammaGequilibriumFavourable: number;
    readonly gammaM: (product: 'solid' | 'glulam' | 'connection' | 'masonry') => number;
    readonly kmod: (product: 'solid' | 'glulam', serviceClass: 1 | 2 | 3, duration: Duration) => number;
    readonly kdef: (product: 'solid' | 'glulam', serviceClass: 1 | 2 | 3) => number;
    /** ψ0, ψ1, ψ2 by action name: `imposed A`, `snow`, `wind`, `construction`. */
    readonly psi: (action: string) => readonly [number, number, number];
    readonly kcr: number;
    /** Span over limit: 300 means L/300. An overhang is measured against twice its length. */
    readonly instantLimit: number;
    readonly finalLimit: number;
    /** mm/kN and dimensionless, EN 1995-1-1 7.3.3(2). */
    readonly vibrationA: number;
    readonly vibrationB: number;
    /** What was used so far is listed here for the sheet. */
    readonly uses: () => readonly ParameterUse[];
}
