import { steelFactors } from './tables/steel-factors.js';

/** The nationally determined parameters of EN 1993 that the checks use. */
export interface SteelParameters {
    readonly gammaM0: number;
    readonly gammaM1: number;
    readonly gammaM2: number;
    /**
     * 6.3.2.3 (rolled I and H, default) or 6.3.2.2 (general). Channels and plates always go by the general
     * case: 6.3.2.3 is written for rolled I and H.
     */
    readonly lateralTorsional: 'rolled' | 'general';
    /** λ̄_LT,0 and β of 6.3.2.3(1). */
    readonly lambdaLT0: number;
    readonly betaLT: number;
    /** Divide χ_LT by f of 6.3.2.3(2), which favours uneven moments; off is on the safe side. */
    readonly momentShapeFactor: boolean;
    /** η of EN 1993-1-5 5.1(2), recommended 1.2; 1.0 is on the safe side and the section tables' shear areas go with it. */
    readonly eta: number;
}

/** @param named gives a parameter by its name, and remembers that it was used */
export function steelParameters(named: (name: string) => number): SteelParameters {
    return {
        get gammaM0() { return named(steelFactors.gammaM0.name); },
        get gammaM1() { return named(steelFactors.gammaM1.name); },
        get gammaM2() { return named(steelFactors.gammaM2.name); },
        get lateralTorsional() { return named(steelFactors.general.name) > 0 ? 'general' : 'rolled'; },
        get lambdaLT0() { return named(steelFactors.lambdaLT0.name); },
        get betaLT() { return named(steelFactors.betaLT.name); },
        get momentShapeFactor() { return named(steelFactors.shapeFactor.name) > 0; },
        get eta() { return named(steelFactors.eta.name); }
    };
}
