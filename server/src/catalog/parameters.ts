/**
 * The nationally determined parameters of the basis, with the recommended values as default
 * and the file's `values { … }` before them.
 */
import type { Duration, Finding, ValueOverride } from '../../../language/src/model.js';
import type { ParameterUse } from '../results.js';
import { parameterDefaults } from './parameter-names.js';
import { settledValues } from './parameter-values.js';
import { steelParameters, type SteelParameters } from './steel-parameters.js';
import { kdefOrigin, kdefTable } from './tables/kdef.js';
import { kmodOrigin, kmodTable } from './tables/kmod.js';

export { parameterNames } from './parameter-names.js';

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
    /** EN 1993. */
    readonly steel: SteelParameters;
    /** Span over limit: 300 means L/300. An overhang is measured against twice its length. */
    readonly instantLimit: number;
    readonly finalLimit: number;
    /** mm/kN and dimensionless, EN 1995-1-1 7.3.3(2). */
    readonly vibrationA: number;
    readonly vibrationB: number;
    /** What was used so far is listed here for the sheet. */
    readonly uses: () => readonly ParameterUse[];
    /** What is used while something is made. */
    readonly usedBy: <T>(make: () => T) => { readonly made: T; readonly uses: readonly ParameterUse[] };
    /** Counts as used what something that is known already was made with. */
    readonly useAgain: (uses: readonly ParameterUse[]) => void;
}

/** The recommended values with the file's own before them. What the file sets amiss is found, and the recommended value stays. */
export function createParameters(overrides: readonly ValueOverride[]): { readonly parameters: Parameters; readonly findings: readonly Finding[] } {
    const { set, findings } = settledValues(overrides);
    let used = new Map<string, ParameterUse>();

    const use = (name: string, value: number, origin: string): number => {
        if (!used.has(name)) {
            used.set(name, { name, value, origin });
        }
        return value;
    };
    const useAgain = (uses: readonly ParameterUse[]): void => {
        for (const { name, value, origin } of uses) use(name, value, origin);
    };
    const named = (name: string): number => {
        const own = set.get(name);
        if (own !== undefined) {
            return use(name, own, 'set in this file');
        }
        const recommended = parameterDefaults.get(name);
        return use(name, recommended?.value ?? NaN, recommended?.origin ?? 'not known');
    };

    const parameters: Parameters = {
        get gammaG() { return named('gamma_G'); },
        get gammaGfavourable() { return named('gamma_G favourable'); },
        get gammaQ() { return named('gamma_Q'); },
        get xi() { return named('xi'); },
        get gammaGequilibrium() { return named('gamma_G equilibrium'); },
        get gammaGequilibriumFavourable() { return named('gamma_G equilibrium favourable'); },
        gammaM: product => named(`gamma_M ${product}`),
        kmod: (_product, serviceClass, duration) =>
            use(`k_mod ${duration}, service class ${serviceClass}`, kmodTable[serviceClass][duration], kmodOrigin),
        kdef: (_product, serviceClass) => use(`k_def service class ${serviceClass}`, kdefTable[serviceClass], kdefOrigin),
        psi: action => [named(`psi0 ${action}`), named(`psi1 ${action}`), named(`psi2 ${action}`)],
        get kcr() { return named('k_cr'); },
        steel: steelParameters(named),
        get instantLimit() { return named('limit instant'); },
        get finalLimit() { return named('limit final'); },
        get vibrationA() { return named('vibration a'); },
        get vibrationB() { return named('vibration b'); },
        uses: () => [...used.values()],
        usedBy: make => {
            const before = used;
            used = new Map();
            try {
                const made = make();
                return { made, uses: [...used.values()] };
            } finally {
                const own = [...used.values()];
                used = before;
                useAgain(own);
            }
        },
        useAgain
    };
    return { parameters, findings };
}
