/**
 * What the members have to bear: the outcome of the analysis, plain data.
 *
 * Units N, mm, N·mm, rad. Signs, for a member drawn from its start (left) to its end (right):
 * N tension positive; M sagging positive (tension at the bottom face); V = dM/dx, so that it is
 * positive at the left end of a simply supported beam under gravity; w downwards positive
 * (normal to the member's axis for a sloping one); a reaction that pushes the member up is positive.
 */
import type { Duration, Finding, SourceRef } from '../../../language/src/model.js';

/** One load, or one span's part of a free load, solved by itself at its characteristic value. */
export interface UnitCase {
    /** Index among the cases of its connected group. */
    readonly id: number;
    /** The load's name, `self weight`, or with its span: `storage (span 2)`. */
    readonly name: string;
    readonly load: string;
    /** Loads of one action vary together: `G`, `imposed A`, `snow`, … */
    readonly action: string;
    readonly permanent: boolean;
    readonly duration: Duration;
    readonly psi: readonly [psi0: number, psi1: number, psi2: number];
}

export type CombinationKind = 'ultimate' | 'characteristic' | 'quasi-permanent';

/** A governing set of factors, one for each unit case of the member's group (same order as its `cases`). */
export interface Combination {
    readonly kind: CombinationKind;
    readonly factors: readonly number[];
    /** The shortest of the durations whose factor is not zero: it sets kmod (EN 1995-1-1 3.1.3(2)). */
    readonly duration: Duration;
    /** E.g. `1.35 G + 1.0 tightening + 1.5 storage + 0.75 valley`; with `, after creep` where found on the stiffness that creep leaves. */
    readonly label: string;
}

/** Forces that act together at one station in one combination. */
export interface ActionState {
    readonly combination: Combination;
    readonly N: number;
    readonly V: number;
    readonly M: number;
}

/** A run of a member with one residual section. */
export interface Segment {
    readonly from: number;
    readonly to: number;
    /** Residual breadth and depth, mm. */
    readonly b: number;
    readonly h: number;
    /** Centroid of the residual section from that of the whole one: up positive, right positive. */
    readonly shiftUp: number;
    readonly shiftRight: number;
    readonly weakened: boolean;
    /** From 1, of a member of leaves: b is then this leaf's breadth. */
    readonly leaf?: number;
}

export interface Station {
    readonly x: number;
    /** Index into `segments`. A station at a step or a jump appears twice, once for either side. */
    readonly segment: number;
    /**
     * Candidate states: for each ultimate combination of leading action, load duration and favourable
     * or unfavourable permanent loads, those with the greatest and least M, V and N here
     * (free loads placed on the spans where they are unfavourable), with what goes along.
     * The worst of any check over its own kmod is among them.
     */
    readonly states: readonly ActionState[];
    /** From 1, of a member of leaves. */
    readonly leaf?: number;
}

export interface Range { readonly min: number; readonly max: number }

export interface DiagramPoint { readonly x: number; readonly min: number; readonly max: number }

export interface Diagrams {
    /** Envelopes over the ultimate combinations. */
    readonly N: readonly DiagramPoint[];
    readonly V: readonly DiagramPoint[];
    readonly M: readonly DiagramPoint[];
    /** Envelope of the deflection in the characteristic combination, instantaneous. */
    readonly instant: readonly DiagramPoint[];
    /** Envelope of the deflection in the quasi-permanent combination with creep. */
    readonly final: readonly DiagramPoint[];
}

/** A clear length between supports, or past the last one. */
export interface Span {
    readonly from: number;
    readonly to: number;
    readonly overhang: boolean;
}

export interface SupportActions {
    /** Name as in the model: the wall, member, `spring`, … */
    readonly support: string;
    readonly kind: string;
    readonly at: number;
    readonly bearing?: number;
    readonly tied: boolean;
    readonly source: SourceRef;
    /** Design reactions normal to the bearing, ultimate combinations of STR (set B). */
    readonly design: Range;
    /** Those states of it that may be the worst of a check, by their durations and kmod. */
    readonly states: readonly { readonly combination: Combination; readonly R: number }[];
    /** Horizontal force of the support on the member, to the right positive, where there is one. */
    readonly horizontal?: Range;
    /** Least reaction in EQU (set A): 0.9 G where it helps, 1.1 G where it does not, 1.5 Q. Negative is uplift. */
    readonly equilibriumMin: number;
}

/** The greatest deflection of one kind, with where and by what. */
export interface Deflection {
    /** mm, signed: downwards positive. */
    readonly value: number;
    readonly at: number;
    /** Length the limit is a fraction of: the span, or the overhang. */
    readonly span: Span;
    readonly combination: Combination;
}

/** One leaf of a built-up member: its pieces between ends and butts, and what it takes. */
export interface LeafActions {
    readonly leaf: number;
    readonly pieces: readonly { readonly from: number; readonly to: number }[];
    readonly diagrams: Diagrams;
    readonly moment: Range;
    readonly shear: Range;
}

/** What one bolt carries in the plane between leaf `plane` and leaf `plane + 1`. */
export interface BoltActions {
    /** Index of the bolt row in the section, and of the place in that row. */
    readonly row: number;
    readonly place: number;
    readonly x: number;
    /** Above the axis. */
    readonly height: number;
    readonly plane: number;
    /** Force on the left leaf of the plane: along the grain and upwards. */
    readonly states: readonly { readonly combination: Combination; readonly along: number; readonly across: number }[];
}

/** What a hanger carries, tension positive. */
export interface HangerActions {
    readonly hanger: string;
    readonly stage: string | null;
    /** Those that may be the worst of a check. */
    readonly states: readonly { readonly combination: Combination; readonly N: number }[];
    readonly range: Range;
    /** In some combination it would push: it hangs slack then. */
    readonly slack: boolean;
}

export interface PropActions {
    readonly member: string;
    readonly at: number;
    readonly stage: string;
    /** Those that may be the worst of a check. */
    readonly states: readonly { readonly combination: Combination; readonly R: number }[];
    readonly range: Range;
    /** In some combination it would pull: the member lifts off it then. */
    readonly slack: boolean;
}

export interface MemberActions {
    readonly member: string;
    readonly stage: string | null;
    /** Unit cases of the member's connected group: the order of its combinations' factors. */
    readonly cases: readonly UnitCase[];
    readonly segments: readonly Segment[];
    readonly stations: readonly Station[];
    readonly spans: readonly Span[];
    readonly supports: readonly SupportActions[];
    /** Loads from members that bear on this one (crossings): station, contact length, states. */
    readonly crossings: readonly SupportActions[];
    readonly diagrams: Diagrams;
    /** Worst of each kind, over span length (the one that uses most of span/limit). */
    readonly instant: readonly Deflection[];
    readonly final: readonly Deflection[];
    /** instant + kdef · quasi-permanent: EN 1995-1-1 2.2.3(5), equations (2.2) to (2.5). */
    readonly total: readonly Deflection[];
    /** Self weight of the whole member, N. */
    readonly weight: number;
    /** Of a member of leaves; its `stations` and `segments` are then the leaves'. */
    readonly leaves?: readonly LeafActions[];
    readonly bolts?: readonly BoltActions[];
    /** Of a member of leaves: what it is worth in unbroken leaves, by its greatest deflection. */
    readonly stiffnessRatio?: number;
}

export interface Actions {
    /** All groups' cases, one group after the other. */
    readonly cases: readonly UnitCase[];
    readonly members: readonly MemberActions[];
    readonly hangers?: readonly HangerActions[];
    readonly props?: readonly PropActions[];
    /** Mechanisms, missing supports and the like: the members named here have no actions. */
    readonly findings: readonly Finding[];
}
