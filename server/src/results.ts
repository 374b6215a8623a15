/**
 * What came out: plain readonly data that every view reads (hints, hovers, sheet, command line)
 * and none computes. Written to JSON without loss.
 */
import type { Access, BreakEvenLine, Evidence, Finding, Given, Job, Load, Loss, Notch, Requirement, SourceRef, SurveyItem } from '../../language/src/model.js';
import type { Diagrams, Segment, Span } from './analysis/actions.js';
import type { Certainty } from './certainty/certainty.js';

export type Unit = 'mm' | 'm' | 'N' | 'kN' | 'MPa' | 'kNm' | 'kN/m' | 'kg' | '%' | '' | 'Hz' | 'mm/kN' | 'm/(Ns2)' | 'mm2' | 'mm3' | 'mm4';

export interface Amount {
    readonly value: number;
    readonly unit: Unit | string;
}

/** One symbol in a formula, with the number that stands for it. */
export interface Term {
    /** TeX, exactly as it stands in the formula, e.g. `M_{y,d}`. */
    readonly symbol: string;
    readonly amount: Amount;
    /** What it is, in words. */
    readonly meaning?: string;
    /** Where the number comes from, where that is an input. */
    readonly source?: SourceRef;
}

/** One line of a calculation: `symbol = formula = the same with numbers = result`. */
export interface Step {
    /** TeX, e.g. `\sigma_{m,y,d}`. */
    readonly symbol: string;
    /** TeX, e.g. `\frac{M_{y,d}}{W_y}`; numbers are substituted for the terms by the views. */
    readonly formula: string;
    readonly terms: readonly Term[];
    readonly result: Amount;
    /** E.g. `EN 1995-1-1 6.1.6`, or `Table 3.1`. */
    readonly clause?: string;
    readonly note?: string;
}

export interface CheckResult {
    /** `SUBJECT.CHECK`. */
    readonly id: string;
    readonly subject: string;
    readonly check: string;
    readonly stage: string | null;
    readonly option: string | null;
    /** Demand over capacity, not rounded; Infinity where the capacity is nought. */
    readonly utilisation: number;
    readonly pass: boolean;
    readonly demand: Amount;
    readonly capacity: Amount;
    readonly combination: string;
    readonly duration: string;
    /** Station along the member, m; of a hanger's check, along the member that it is about. */
    readonly at: Amount;
    readonly clause: string;
    readonly steps: readonly Step[];
    readonly source: SourceRef;
    /** Where inputs are bands that this check feels: the corner of them that all of the above is of, its worst one. */
    readonly corner?: Corner;
}

/** Values out of bands, with which a check is worst. */
export interface Corner {
    readonly at: readonly {
        readonly path: string;
        /** In the unit that the input is printed in. */
        readonly value: Amount;
        readonly end: 'low' | 'high' | 'between';
    }[];
    /** `ends`: over the values tried, more of each input only made it better or only worse. `search`: the worst that a search found. */
    readonly by: 'ends' | 'search';
    /** `worst with the top loss 45 mm`. */
    readonly sentence: string;
}

/** How inputs that are bands were gone through. */
export interface BandsResult {
    readonly paths: readonly string[];
    /** Sets of values that the whole was computed with. */
    readonly tried: number;
    /** What was done, in words. */
    readonly sentence: string;
}

export interface Reaction {
    readonly support: string;
    readonly at: Amount;
    readonly min: Amount;
    readonly max: Amount;
}

export interface AmountRange { readonly min: Amount; readonly max: Amount }

/** What a drawing needs of a support, in mm from the member's start. */
export interface SupportSketch {
    readonly name: string;
    readonly kind: string;
    readonly at: number;
    readonly bearing?: number;
    readonly tied: boolean;
    readonly source: SourceRef;
}

export interface LoadSketch {
    readonly name: string;
    readonly action: string;
    /** N at a station, or N/mm over a run. */
    readonly point?: { readonly force: number; readonly at: number };
    readonly line?: { readonly perLength: number; readonly from: number; readonly to: number };
    readonly source: SourceRef;
}

/** One leaf of a built-up member: what it takes by itself. */
export interface LeafResult {
    /** From 1, from the left seen from the start. */
    readonly leaf: number;
    /** mm. */
    readonly breadth: number;
    /** Between ends and butts, mm from the member's start. */
    readonly pieces: readonly { readonly from: number; readonly to: number }[];
    readonly moment: AmountRange;
    readonly shear: AmountRange;
    readonly deflection?: { readonly instant: Amount; readonly final: Amount };
    readonly diagrams: Diagrams;
}

/** Where a leaf is broken, mm from the member's start. */
export interface ButtSketch {
    readonly leaf: number;
    readonly at: number;
    readonly source: SourceRef;
}

export interface BoltResult {
    /** mm from the member's start, and above its axis. */
    readonly x: number;
    readonly height: number;
    /** `M12`. */
    readonly size: string;
    readonly grade?: string;
    /** One for each plane between neighbouring leaves, where forces are computed. */
    readonly planes: readonly {
        /** Between leaf `plane` and leaf `plane + 1`. */
        readonly plane: number;
        /** The greatest resultant of the ultimate combinations. */
        readonly force: Amount;
        /** Of that force to the grain, degrees from 0 to 90. */
        readonly angle: number;
    }[];
    readonly source: SourceRef;
}

/** One distance of a bolt, mm: what EN 1995-1-1 Table 8.4 asks for under the forces that it has, and what is there. */
export interface BoltDistance {
    /** Of the bolt, as in its result. */
    readonly x: number;
    readonly height: number;
    /** The leaf that it is measured in; absent where all are alike. */
    readonly leaf?: number;
    /** As in the table: `a1`, `a3,t`, … */
    readonly rule: string;
    /** Where it is measured to, as a place and in words: `to the butt at 1.90 m`. */
    readonly to: { readonly x: number; readonly height: number };
    readonly towards: string;
    readonly required: number;
    readonly provided: number;
    readonly ok: boolean;
}

/** A hanger where it meets this member, mm from the member's start. */
export interface HangerSketch {
    readonly name: string;
    readonly at: number;
    /** The member at its other end. */
    readonly other: string;
    /** The other member is above: this one is carried. */
    readonly above: boolean;
    readonly source: SourceRef;
}

/** A prop of this stage, mm from the member's start; lift 0 is a snug one. */
export interface PropSketch {
    readonly at: number;
    readonly lift: number;
    readonly source: SourceRef;
}

/** A member that rests on this one, mm from this one's start. */
export interface CrossingSketch {
    readonly name: string;
    readonly at: number;
    readonly bearing?: number;
    readonly source: SourceRef;
}

/** Steel plates between the timber leaves of a flitch beam, mm. */
export interface FlitchPlates {
    readonly leaves: number;
    readonly leafBreadth: number;
    readonly count: number;
    readonly thickness: number;
    readonly depth: number;
    readonly steel: string;
}

/** Outline of a rolled section, mm; of a plate on its edge b = tw is its thickness. */
export interface RolledOutline {
    readonly designation: string;
    readonly form: 'I' | 'channel' | 'plate';
    readonly h: number;
    readonly b: number;
    readonly tw: number;
    readonly tf: number;
    readonly r: number;
}

export type SectionShape = 'rectangle' | 'plies' | 'flitch' | 'rolled';

/** A member in one stage; once, with `stage` null, where the file has no stages. */
export interface MemberResult {
    readonly name: string;
    readonly title?: string;
    readonly kind: 'beam' | 'post';
    /** Radians. */
    readonly slope: number;
    readonly stage: string | null;
    readonly shape: SectionShape;
    readonly material: string;
    /** As a person would say it: `190 × 240 mm C18`. */
    readonly description: string;
    /** mm. */
    readonly length: number;
    /** Whole section, mm. */
    readonly breadth: number;
    readonly depth: number;
    readonly segments: readonly Segment[];
    readonly spans: readonly Span[];
    readonly losses: readonly Loss[];
    readonly notches: readonly Notch[];
    readonly supportSketches: readonly SupportSketch[];
    readonly loadSketches: readonly LoadSketch[];
    readonly hangerSketches: readonly HangerSketch[];
    readonly propSketches: readonly PropSketch[];
    readonly crossingSketches: readonly CrossingSketch[];
    /** Of a member of leaves. */
    readonly leaves?: readonly LeafResult[];
    readonly butts?: readonly ButtSketch[];
    readonly bolts?: readonly BoltResult[];
    /** Of all bolts in all that they go through. */
    readonly distances?: readonly BoltDistance[];
    /** What the leaves are worth together, in unbroken leaves: see `stiffness ratio` in language.md. */
    readonly stiffnessRatio?: number;
    /** Of a flitch beam. */
    readonly plates?: FlitchPlates;
    /** Of a rolled section. */
    readonly rolled?: RolledOutline;
    readonly weight: Amount;
    readonly reactions: readonly Reaction[];
    readonly moment: AmountRange;
    readonly shear: AmountRange;
    readonly deflection: {
        readonly instant: Amount;
        readonly final: Amount;
        /** With the characteristic loads on top of the creep, EN 1995-1-1 (2.2). */
        readonly total: Amount;
        /** Span over the final deflection (L/475 is 475), of the span that uses most of its limit. */
        readonly ratio: number;
    };
    readonly diagrams: Diagrams;
    /** The id of its worst check. */
    readonly worst: string;
    /** Where inputs are bands that it feels: what is drawn is of this corner; amounts and their ranges are of all that were tried. */
    readonly corner?: Corner;
    readonly source: SourceRef;
    readonly nameSource: SourceRef;
}

/** A hanger in one stage, as a member is. */
export interface HangerResult {
    readonly name: string;
    readonly stage: string | null;
    readonly carries: string;
    /** mm from that member's start. */
    readonly carriesAt: number;
    readonly from: string;
    readonly fromAt: number;
    /** Tension of all rods over the ultimate combinations; never less than 0. */
    readonly force: AmountRange;
    /** Set in this stage. */
    readonly tightening?: Amount;
    /** As a person would say it: `2 rods M12 4.6, plates 70 × 10 × 300 mm`. */
    readonly description: string;
    /** The id of its worst check in this stage. */
    readonly worst: string;
    readonly source: SourceRef;
    /** Where a detail was used, when it came from one. */
    readonly usedAt?: SourceRef;
}

/** One step of the work, in the order of writing. */
export interface StageResult {
    readonly name: string;
    readonly title?: string;
    /** What is done, in words: `add R1, H1, H2`, `tighten H1, H2 to 2.5 kN`. */
    readonly lines: readonly string[];
    readonly source: SourceRef;
}

export interface RequirementResult {
    readonly text: string;
    readonly requirement: Requirement;
    /** Undefined where a result it names was not computed; with bands of inputs it has to hold with all values that were tried. */
    readonly holds: boolean | undefined;
    readonly left?: Amount;
    readonly right?: Amount;
    readonly reason?: string;
    readonly source: SourceRef;
}

export interface Hazard {
    readonly code: string;
    readonly severity: 'stop' | 'warn' | 'note';
    readonly subject: string;
    readonly message: string;
    /** What to do about it. */
    readonly action: string;
    /** Who decides: `you`, `structural engineer`, `conservation officer`, … */
    readonly decider: string;
    readonly source: SourceRef;
    /** What the file says was done about it: printed with it, and it stops no longer. */
    readonly answer?: HazardAnswer;
}

export interface HazardAnswer {
    readonly what: string;
    readonly evidence: Evidence;
    readonly source: SourceRef;
}

/** Something that was not checked. `blocking` ones make the verdict incomplete. */
export interface Unchecked {
    readonly text: string;
    readonly blocking: boolean;
    /** Members whose own results leave this out: their hints and rows say `incomplete`. */
    readonly members?: readonly string[];
    readonly source?: SourceRef;
}

export type Verdict = 'pass' | 'fail' | 'incomplete';

export interface LoadResult {
    readonly load: Load;
    readonly duration: string;
    readonly psi: readonly [number, number, number];
    /** How it was made up, e.g. `0.50 kN/m² × 2.20 m = 1.10 kN/m`. */
    readonly account: string;
}

/** One weight of a proof load, and what was read under it. */
export interface LoadTestPoint {
    readonly weight: Amount;
    readonly at: Amount;
    readonly spread?: Amount;
    /** mm of the greatest leaf where the weight stands, below the blocks; low and high with the 95 % and the 5 % modulus. */
    readonly predicted: Amount;
    readonly low: Amount;
    readonly high: Amount;
    readonly read?: Amount;
}

/** A proof load compared with its prediction; see `server/src/proof-load`. */
export interface LoadTestResult {
    readonly name: string;
    readonly title?: string;
    readonly member: string;
    /** Tested, from 1; every one where it is absent. */
    readonly leaves?: readonly number[];
    readonly blocks: readonly Amount[];
    readonly outcome: 'predicted' | 'borne out' | 'stiffer' | 'in doubt' | 'not computed';
    readonly points: readonly LoadTestPoint[];
    /** Back-figured from the readings, with its standard error; of the class in the mean. */
    readonly E?: Amount;
    readonly EScatter?: Amount;
    readonly EMean?: Amount;
    /** mm, after unloading. */
    readonly residual?: Amount;
    /** Of the greatest deflection. */
    readonly recovery?: Amount;
    /** The test's greatest moment and shear over the member's in service (characteristic) and in design: ratios. */
    readonly momentShareService?: number;
    readonly shearShareService?: number;
    readonly momentShareDesign?: number;
    readonly shearShareDesign?: number;
    /** A sentence or two. */
    readonly verdict: string;
    /** That the deflection is too small to be seen, where it is. */
    readonly unseen?: string;
    readonly proves: readonly string[];
    readonly doesNotProve: readonly string[];
    /** What the numbers rest on. */
    readonly assumptions: readonly string[];
    /** For those who do the test. */
    readonly cautions: readonly string[];
    readonly source: SourceRef;
}

/** One way to do it, in full. */
export interface OptionResult {
    /** Null of what the file says first. */
    readonly name: string | null;
    readonly title?: string;
    readonly verdict: Verdict;
    readonly verdictReason: string;
    /** Undefined where nothing was checked. */
    readonly worst?: { readonly id: string; readonly utilisation: number };
    /** The final one that is worst over its span; undefined where no member has results. */
    readonly deflection?: { readonly member: string; readonly final: Amount; readonly ratio: number };
    /** kg of all pieces that are brought in, bolts, rods and small plates left out; undefined where one is not known. */
    readonly mass?: Amount;
    readonly heaviestPiece?: { readonly mark: string; readonly mass: Amount };
    readonly longestPiece?: { readonly mark: string; readonly length: Amount };
    /** Pieces, bolts, plates and rods of what is brought in. */
    readonly parts: number;
    /** That have no answer. */
    readonly hazards: { readonly stop: number; readonly warn: number; readonly note: number };
    /** With the option's name. */
    readonly checks: readonly CheckResult[];
    readonly source: SourceRef;
}

/** A member that has no results, with the reason. */
export interface Missing {
    readonly name: string;
    readonly reason: string;
    readonly source: SourceRef;
}

/** A parameter of the basis that was used, and where it came from. */
export interface ParameterUse {
    readonly name: string;
    readonly value: number;
    /** `EN 1995-1-1 Table 2.3, recommended` or `set in this file`. */
    readonly origin: string;
}

export interface Results {
    readonly file: string;
    /** Undefined where not even that could be read. */
    readonly job: Job | undefined;
    readonly verdict: Verdict;
    /** One sentence. */
    readonly verdictReason: string;
    /** False where the text has errors: exit 2, and never a pass. */
    readonly understood: boolean;
    /** Everything to show at a place: errors of the text, mechanisms, failing checks, hazards. */
    readonly findings: readonly Finding[];
    readonly checks: readonly CheckResult[];
    readonly members: readonly MemberResult[];
    readonly hangers: readonly HangerResult[];
    /** In the order of work; empty where the file has none. */
    readonly stages: readonly StageResult[];
    readonly missing: readonly Missing[];
    readonly requirements: readonly RequirementResult[];
    readonly loads: readonly LoadResult[];
    /** Labels of the combinations that govern anything. */
    readonly parameters: readonly ParameterUse[];
    readonly hazards: readonly Hazard[];
    readonly survey: readonly SurveyItem[];
    readonly access?: Access;
    readonly ledger: readonly Given<number | string>[];
    /** Undefined where no input is a band. */
    readonly bands?: BandsResult;
    readonly unchecked: readonly Unchecked[];
    /** This and what follows is found after the rest (see whole.ts): undefined until then, and where the text has errors. */
    readonly certainty?: Certainty;
    /** The lines of the file that ask for one. */
    readonly breakEvenLines?: readonly BreakEvenLine[];
    readonly loadTests?: readonly LoadTestResult[];
    /** As drawn first; empty where the file has no option. */
    readonly options?: readonly OptionResult[];
}
