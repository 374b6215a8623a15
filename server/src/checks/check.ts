/** What a check is: a file that says what to look at, and what the clause says about it. */
import type { Given, Job, Load, Member, SourceRef } from '../../../language/src/model.js';
import type { Actions, Combination, MemberActions } from '../analysis/actions.js';
import type { Parameters } from '../catalog/parameters.js';
import type { TimberStrength } from '../catalog/timber.js';
import type { Verdict } from './verdict.js';

/** All that a member check may read. */
export interface MemberContext {
    readonly member: Member;
    readonly job: Job;
    readonly strength: TimberStrength;
    readonly actions: MemberActions;
    readonly all: Actions;
    /** Loads that stand on this member itself. */
    readonly loads: readonly Load[];
    /** All members of the file, for those that this one meets. */
    readonly members: readonly Member[];
    readonly parameters: Parameters;
    /** The walls' masonry where a support stands on one. */
    readonly masonryOf: (wall: string) => MasonryBearing | undefined;
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
}

export interface MemberCheck {
    /** As in the language: `bending`. */
    readonly name: string;
    /** E.g. `EN 1995-1-1 6.1.6`. */
    readonly clause: string;
    /**
     * Candidate outcomes, the worst among them; none where the check does not concern this member.
     * A utilisation that is not a number of nought or more counts as the worst.
     */
    readonly outcomes: (context: MemberContext) => readonly Outcome[];
    /** What of this check could not be done and why, e.g. for want of an input: each is said in `unchecked`. */
    readonly lacking?: (context: MemberContext) => readonly string[];
}
