/** Members as the analysis sees them: one or more strands side by side, and what joins them. */
import type { Hanger, Load, Member, Support } from '../../../language/src/model.js';
import type { Segment } from './actions.js';
import type { ElasticProperties, HangerElasticity } from './elastic.js';

/** A line of elements along a member: the whole of it, or one of its leaves. */
export interface Strand {
    /** From 1; absent of a member in one piece. */
    readonly leaf?: number;
    readonly segments: readonly Segment[];
    /** Share of a load on the member, by breadth. */
    readonly share: number;
    /** Stations where it is broken: no moment, no contact. */
    readonly butts: readonly number[];
    /** Stations where it turns against a stiffness, N·mm/rad. */
    readonly splices: readonly { readonly at: number; readonly stiffness: number }[];
    /** Runs between butts that too little holds: they carry nothing and are not loaded. */
    readonly loose: readonly { readonly from: number; readonly to: number }[];
}

/** One bolt through all leaves. */
export interface Bolt {
    readonly row: number;
    readonly place: number;
    readonly x: number;
    /** Above the axis, mm. */
    readonly height: number;
    /** K_ser in each plane, N/mm. */
    readonly slip: number;
}

/** A sound member with all that the analysis needs of it. */
export interface Piece {
    readonly member: Member;
    readonly elastic: ElasticProperties;
    readonly strands: readonly Strand[];
    readonly bolts: readonly Bolt[];
    readonly loads: readonly Load[];
    /** Stations where loads begin and end or stand, where it hangs, is hung from or is propped. */
    readonly places: readonly number[];
    /** Stations of plates and props, which hold its leaves level. */
    readonly levels: readonly number[];
    /** Members that rest on this one: index in the group and station here. */
    readonly bearers: readonly { readonly piece: number; readonly support: Support; readonly at: number }[];
}

/** Joins two members, by index in the group, at their stations. */
export interface HungPair {
    readonly hanger: Hanger;
    readonly lower: number;
    readonly upper: number;
    readonly elastic: HangerElasticity;
}

/** A support from below for some stages, by index of its member. */
export interface Prop {
    readonly piece: number;
    readonly at: number;
}

/** A connected group. */
export interface Frame {
    readonly pieces: readonly Piece[];
    readonly hangers: readonly HungPair[];
    readonly props: readonly Prop[];
}
