/** What every check of a steel member reads. */
import type { SteelSection } from '../../catalog/section-geometry.js';
import type { SteelParameters } from '../../catalog/steel-parameters.js';
import type { SteelStrength } from '../../catalog/steel.js';
import type { TermRow } from '../steps.js';

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
