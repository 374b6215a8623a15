/** What the checks of a splice with covers read. */
import type { CoverSplice } from '../../../analysis/splice-covers.js';
import type { Bolt } from '../bolts/bolt.js';
import type { SteelMember } from '../steel-member.js';

export interface CoverCheck {
    readonly beam: SteelMember;
    /** fu of the beam's steel, MPa: bolts bear on it. */
    readonly beamFu: number;
    readonly splice: CoverSplice;
    readonly bolt: Bolt;
    /** Covers. */
    readonly coverSteel: { readonly fy: number; readonly fu: number };
}

/** What flange covers and web covers each take. */
export interface SplitForces {
    /** Greatest pull and greatest push of a flange, N. */
    readonly pull: number;
    readonly push: number;
    /** N, N, N mm on the web's bolts of one side. */
    readonly web: { readonly N: number; readonly V: number; readonly M: number };
}
