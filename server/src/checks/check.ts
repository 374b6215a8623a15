/** What a check is: a file that says what to look at, and what the clause says about it. */
import type { Given, Hanger, Job, Load, Material, Member, SourceRef } from '../../../language/src/model.js';
import type { Actions, Combination, HangerActions, MemberActions } from '../analysis/actions.js';
import type { Parameters } from '../catalog/parameters.js';
import type { TimberStrength } from '../catalog/timber.js';
import type { SteelMember } from './en1993/steel-member.js';
import type { Verdict } from './verdict.js';

/** What checks of members of any material read. */
export interface AnyMember {
    readonly member: Member;
    readonly job: Job;
    readonly actions: MemberActions;
    readonly all: Actions;
    /** Loads that stand on this member itself. */
    readonly loads: readonly Load[];
    /** All members of the file, for those that this one meets. */
    readonly members: readonly Member[];
    /** The hangers at this member that are there in this stage. */
    readonly hangers: readonly Hanger[];
    /** All materials of the file, for plates. */
    readonly materials: readonly Material[];
    readonly parameters: Parameters;
    /** The walls' masonry where a support stands on one. */
    readonly masonryOf: (wall: string) => MasonryBearing | undefined;
}

/** All that a check of a timber member may read: in one piece, of leaves, or a flitch beam. */
export interface MemberContext extends AnyMember {
    readonly strength: TimberStrength;
}

export interface SteelMemberContext extends AnyMember {
    readonly steel: SteelMember;
}

/** A hanger with the two members that it joins. */
export interface HangerContext {
    readonly hanger: Hanger;
    readonly actions: HangerActions;
    /** What it carries: the old timber, which the foot plate bears on from below. */
    readonly carried: MemberContext | SteelMemberContext;
    /** What it hangs from: the head plate lies on it. */
    readonly carrier: MemberContext | SteelMemberContext;
    readonly job: Job;
    readonly parameters: Parameters;
    readonly materials: readonly Material[];
    /** Tension of all rods that a stage sets, N. */
    readonly tightening?: number;
}

export interface MasonryBearing {
    /** Characteristic compressive strength, MPa. */
    readonly fk: number;
    /** Units known to be of Group 1, EN 1996-1-1 Table 3.1. */
    readonly group1?: boolean;
    readonly thickness: number;
    readonly height?: number;
    readonly source: SourceRef;
    readonly input?: Given;
}

/** One candidate: what was computed at one station in one combination. */
export interface Outcome extends Omit<Verdict, 'clause'> {
    /** Where it is not the check's own. */
    readonly clause?: string;
    /** Combinations that govern; the sheet prints the label and duration. */
    readonly combination: Combination;
    /** mm along the member. */
    readonly at: number;
    /** Of a member of leaves, from 1. */
    readonly leaf?: number;
}

/** A check of the subjects that a context of this kind tells of. */
export interface Check<Context> {
    /** As in the language: `bending`. */
    readonly name: string;
    /** E.g. `EN 1995-1-1 6.1.6`. */
    readonly clause: string;
    /**
     * Candidate outcomes, the worst among them; none where the check does not concern this subject.
     * A utilisation that is not a number of nought or more counts as the worst.
     */
    readonly outcomes: (context: Context) => readonly Outcome[];
    /** What of this check could not be done and why, e.g. for want of an input: each is said in `unchecked`. */
    readonly lacking?: (context: Context) => readonly string[];
}

export type MemberCheck = Check<MemberContext>;
export type SteelMemberCheck = Check<SteelMemberContext>;
export type HangerCheck = Check<HangerContext>;
/** A check of members of any material, e.g. of the wall under one. */
export type AnyMemberCheck = Check<AnyMember>;
