import type { Step } from '../../../results.js';
import { problem, unsound, type Problem } from '../../verdict.js';
import { embedmentAt, embedmentSteps, tooThick, type EmbedmentInput, type Wood } from './embedment.js';
import type { Fastener } from './fastener.js';
import { angleToGrain, type Force } from './force.js';
import type { Side } from './plane-reading.js';

/** A part that a bolt goes through. Lengths mm, densities kg/m³, angles rad. */
export type Leaf = TimberLeaf | SteelLeaf;

export interface TimberLeaf {
    readonly kind: 'timber';
    readonly thickness: number;
    readonly rho_k: number;
    readonly wood: Wood;
    /** Direction of the grain from x; nought along the member. */
    readonly grain: number;
}

export interface SteelLeaf {
    readonly kind: 'steel';
    readonly thickness: number;
    /** Diameter of the hole. */
    readonly hole: number;
}

/** How much of a leaf a shear plane may count on. */
export interface Hold {
    /** Part of the thickness, 0 to 1. */
    readonly share: number;
    readonly held: boolean;
}

export const alone: Hold = { share: 1, held: false };

export function badLeaf(leaf: Leaf, { d, d_ef }: Fastener): Problem | undefined {
    if (leaf.kind === 'steel') {
        return unsound('positive', { 'the plate thickness': leaf.thickness }) ?? unsound('not negative', { 'the hole clearance': leaf.hole - d });
    }
    return unsound('positive', { 'the leaf thickness': leaf.thickness, 'the density': leaf.rho_k })
        ?? unsound('finite', { 'the direction of the grain': leaf.grain })
        ?? tooThick(d_ef)
        ?? (d >= leaf.thickness ? problem(`a bolt of ${d} mm is larger than a leaf of ${leaf.thickness} mm`) : undefined);
}

/** The leaf as one side of a shear plane that carries `force`. */
export function sideOf(leaf: Leaf, fastener: Fastener, force: Force, { share, held }: Hold): Side {
    return leaf.kind === 'timber'
        ? { kind: 'timber', thickness: share * leaf.thickness, fh_k: embedmentAt(bearing(leaf, fastener, force)), held }
        : { kind: 'steel', thickness: leaf.thickness, clearance: leaf.hole - fastener.d, held };
}

export function leafSteps(leaf: Leaf, fastener: Fastener, force: Force, index: string): readonly Step[] {
    return leaf.kind === 'timber' ? embedmentSteps(bearing(leaf, fastener, force), index) : [];
}

function bearing(leaf: TimberLeaf, { d_ef }: Fastener, force: Force): EmbedmentInput {
    return { d: d_ef, rho_k: leaf.rho_k, wood: leaf.wood, angle: angleToGrain(force, leaf.grain) };
}
