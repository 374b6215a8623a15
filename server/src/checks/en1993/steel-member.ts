/** What every check of a steel member reads. */
import type { SteelSection } from '../../catalog/section-geometry.js';
import type { SteelStrength } from '../../catalog/steel.js';
import type { TermRow } from '../steps.js';

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

/** EN 1993-1-1 6.1(1), 6.3.2.3(1), EN 1993-1-8 2.2(2), recommended values; η on the safe side. */
export const recommendedSteelParameters: SteelParameters = {
    gammaM0: 1.0, gammaM1: 1.0, gammaM2: 1.25,
    lateralTorsional: 'rolled', lambdaLT0: 0.4, betaLT: 0.75, momentShapeFactor: false, eta: 1.0
};

export interface SteelMember {
    readonly section: SteelSection;
    /** For the thickest part of the section. */
    readonly steel: SteelStrength;
    readonly parameters: SteelParameters;
}

/** Terms that most formulas share. */
export const yieldTerm = ({ steel }: SteelMember): TermRow => ['f_y', steel.fy, 'MPa', steel.name];
export const gammaM0Term = ({ parameters }: SteelMember): TermRow => ['\\gamma_{M0}', parameters.gammaM0, ''];
export const gammaM1Term = ({ parameters }: SteelMember): TermRow => ['\\gamma_{M1}', parameters.gammaM1, ''];

/** ε of EN 1993-1-1 Table 5.2. */
export const epsilon = (fy: number): number => Math.sqrt(235 / fy);

/** Clear depth of the web between the flanges, mm. */
export const webDepth = ({ h, tf }: SteelSection): number => h - 2 * tf;
