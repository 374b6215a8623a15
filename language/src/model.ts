/**
 * What a calculation says, as plain readonly data that can be written to JSON.
 *
 * Units: mm, N, kg, rad, MPa (= N/mm²); see quantity.ts. A moment is in N·mm.
 * Stations are measured in mm along a member from its own start.
 */
import type { Answer, BreakEvenLine, LoadTest, Option, Requirement } from './asked.js';
import type { Dimension } from './quantity.js';

export type * from './asked.js';

/** Where something stands in the text. Opaque to all but the views. */
export interface SourceRef {
    readonly file: string;
    readonly start: number;
    readonly end: number;
    /** From 1. */
    readonly line: number;
    /** From 1. */
    readonly column: number;
}

export const evidenceWords = ['measured', 'probed', 'tested', 'graded', 'documented', 'judged', 'assumed'] as const;
export type EvidenceWord = (typeof evidenceWords)[number];

export interface Evidence {
    readonly word: EvidenceWord;
    readonly note?: string;
    /** False when the file says nothing and `assumed` is what that counts as. */
    readonly stated: boolean;
}

/** An input: a value with how it is known and where it stands. */
export interface Given<T = number> {
    readonly value: T;
    readonly evidence: Evidence;
    readonly source: SourceRef;
    /** The input's name as `breakeven` would call it, e.g. `T2.loss.top`. */
    readonly path: string;
    /** Of a number: without it the ledger cannot print the unit. Absent of a word. */
    readonly dimension?: Dimension;
    /** Where only a band is known, `25 mm .. 45 mm`: `value` is its middle. */
    readonly band?: { readonly low: number; readonly high: number };
}

export type Severity = 'error' | 'warning' | 'info' | 'hazard';

/** Something to tell the writer at a place in the text. */
export interface Finding {
    readonly severity: Severity;
    /** Kebab-case, stable: diagnostics and quick fixes are keyed by it. */
    readonly code: string;
    readonly message: string;
    readonly source: SourceRef;
    /** A replacement for the text of `source` that mends it, where one is plain. */
    readonly fix?: Fix;
    readonly related?: readonly { readonly message: string; readonly source: SourceRef }[];
}

export interface Fix {
    readonly title: string;
    readonly at: SourceRef;
    readonly text: string;
}

export interface Job {
    readonly title: string;
    readonly revision?: { readonly mark: string; readonly note?: string };
    readonly basis: string;
    readonly serviceClass: 1 | 2 | 3;
    /** Whether the file says which service class; 1 is never assumed (2 is). */
    readonly serviceClassStated: boolean;
    /** How EN 1990 equations are combined. */
    readonly combinations: '6.10' | '6.10a/b';
    readonly source: SourceRef;
}

/** A nationally determined parameter set by the file, e.g. `gamma_M solid` → 1.3. */
export interface ValueOverride {
    readonly name: string;
    readonly value: number;
    readonly dimension: Dimension;
    readonly source: SourceRef;
}

export interface Timber {
    readonly kind: 'timber';
    readonly name: string;
    /** A strength class, e.g. `C24`; absent where only own properties are given. */
    readonly grade?: Given<string>;
    /** Own values that stand before the class's, e.g. `fm_k` → 44 MPa. */
    readonly properties: Readonly<Record<string, Given>>;
    /** Ratio: 17 % is 0.17. */
    readonly moisture?: Given;
    readonly source: SourceRef;
}

export interface Masonry {
    readonly kind: 'masonry';
    readonly name: string;
    readonly fk?: Given;
    readonly unit?: { readonly strength: Given; readonly mortar: Given; readonly kind: string };
    readonly source: SourceRef;
}

export interface Steel {
    readonly kind: 'steel';
    readonly name: string;
    readonly grade?: Given<string>;
    readonly properties: Readonly<Record<string, Given>>;
    readonly source: SourceRef;
}

export type Material = Timber | Masonry | Steel;

export interface Wall {
    readonly name: string;
    /** Name of a masonry, or undefined where the file does not say. */
    readonly material?: string;
    readonly thickness?: Given;
    /** Height of the wall below the bearing, for the spread of a concentrated load. */
    readonly height?: Given;
    readonly source: SourceRef;
}

export interface RectangularSection {
    readonly shape: 'rectangle';
    readonly breadth: Given;
    readonly depth: Given;
}

export type Section = RectangularSection | PliesSection | FlitchSection | RolledSection;

export type SupportKind = 'wall' | 'member' | 'spring' | 'pinned' | 'fixed';

export interface Support {
    readonly kind: SupportKind;
    /** Name of the wall, or member that carries; `spring`, `pin`, `fixed` else. */
    readonly on: string;
    readonly at: Given;
    /** Length of contact along the member. */
    readonly bearing?: Given;
    /** N/mm, for a spring. */
    readonly stiffness?: Given;
    /** Holds down as well as up. */
    readonly tied: boolean;
    /** Station on the carrying member (crossing), where it is one. */
    readonly stationOnCarrier?: Given;
    /** Distance from the edge of the bearing to the nearest end of the wall or opening. */
    readonly fromWallEnd?: Given;
    /** The leaves that bear here; every one where it is absent. */
    readonly leaves?: readonly number[];
    readonly source: SourceRef;
}

export type Face = 'top' | 'bottom' | 'left' | 'right';

export interface Loss {
    readonly from: Given;
    readonly to: Given;
    readonly faces: Readonly<Partial<Record<Face, Given>>>;
    readonly evidence: Evidence;
    readonly source: SourceRef;
}

export interface Notch {
    readonly face: 'top' | 'bottom';
    readonly from: Given;
    readonly to: Given;
    readonly depth: Given;
    /** Length of the tapered end of the notch; 0 for a square one. */
    readonly taper: Given;
    readonly source: SourceRef;
}

export interface FloorVibration {
    /** Width of the floor across the joists. */
    readonly width: Given;
    /** Spacing of the joists. */
    readonly spacing: Given;
    /** kg/mm², permanent mass that swings with the floor. */
    readonly massPerArea: Given;
    /** N·mm²/mm: stiffness of the deck across the joists for a unit width. */
    readonly transverseStiffness: Given;
    /** Ratio of critical; 0.01 by EN 1995-1-1 7.3.1(3) unless said. */
    readonly damping: Given;
    readonly source: SourceRef;
}

export interface Member {
    readonly name: string;
    readonly title?: string;
    readonly kind: 'beam' | 'post';
    /** Radians from the horizontal, rising from the start; π/2 for a post. */
    readonly slope: number;
    /** Name of a material, or of a strength class used directly. */
    readonly material: string;
    readonly section: Section;
    readonly length: Given;
    readonly supports: readonly Support[];
    readonly losses: readonly Loss[];
    readonly notches: readonly Notch[];
    readonly holes: readonly Hole[];
    readonly splices: readonly Splice[];
    /** Spacing of lateral restraints to the compression edge. */
    readonly restraint?: Given;
    readonly precamber?: Given;
    readonly selfWeight: boolean;
    /** `system strength` is said: EN 1995-1-1 6.6. */
    readonly systemStrength: boolean;
    readonly floor?: FloorVibration;
    readonly source: SourceRef;
    readonly nameSource: SourceRef;
}

export const imposedCategories = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'] as const;
export type ImposedCategory = (typeof imposedCategories)[number];
export type Action =
    | { readonly kind: 'permanent' }
    | { readonly kind: 'imposed'; readonly category: ImposedCategory }
    | { readonly kind: 'snow' }
    | { readonly kind: 'wind' }
    | { readonly kind: 'construction' };

export const durations = ['permanent', 'long-term', 'medium-term', 'short-term', 'instantaneous'] as const;
export type Duration = (typeof durations)[number];

export interface Load {
    readonly name: string;
    readonly action: Action;
    readonly member: string;
    /** The one leaf of a built-up member that carries it; by breadth on all where it is absent. */
    readonly leaf?: number;
    /** The amount as written (N, N/mm or N/mm²; a mass already times g), downwards positive. */
    readonly amount: Given;
    /** Width that an area load is collected from. */
    readonly strip?: Given;
    /** Where a force stands. */
    readonly at?: Given;
    /** Where a spread load begins and ends; from end to end of the member where they are absent. */
    readonly from?: Given;
    readonly to?: Given;
    /** What follows from the inputs above. Exactly one of `point` (N) and `line` (N/mm of the member's length, strip applied) is there. */
    readonly point?: { readonly force: number; readonly at: number };
    readonly line?: { readonly perLength: number; readonly from: number; readonly to: number };
    /** True where the amount was written as a mass. */
    readonly fromMass: boolean;
    readonly lasting?: Duration;
    readonly source: SourceRef;
}

export interface SurveyItem {
    /** `services`, `asbestos`, `lead`, `damp source`, `heritage consent`, … */
    readonly subject: string;
    /** `not checked`, `checked`, `fixed`, `not found`, `pending`, `granted`, `not needed`, … */
    readonly state: string;
    readonly note?: string;
    readonly source: SourceRef;
}

export interface Access {
    readonly piece?: Given;
    /** kg. */
    readonly carry?: Given;
    readonly source: SourceRef;
}

/** A hole for one bolt: station along the member and height above its axis, mm. */
export interface BoltPlace {
    readonly x: number;
    readonly height: number;
    readonly source: SourceRef;
}

/** Bolts of one size that go through every leaf. */
export interface BoltRow {
    /** `M12`. */
    readonly size: string;
    readonly diameter: number;
    readonly grade: Given<string>;
    /** From `at …`, or from `every … ends … zigzag …` (evenly, with a pitch of at most `every`). */
    readonly places: readonly BoltPlace[];
    readonly spacing?: Given;
    readonly zigzag?: Given;
    readonly ends?: Given;
    readonly source: SourceRef;
}

/** Where a leaf is broken; leaves count from 1, from the left seen from the start. */
export interface Butt {
    readonly leaf: number;
    readonly at: Given;
    readonly source: SourceRef;
}

export interface PliesSection {
    readonly shape: 'plies';
    readonly count: number;
    /** Of one leaf. */
    readonly breadth: Given;
    readonly depth: Given;
    readonly butts: readonly Butt[];
    readonly bolts: readonly BoltRow[];
    readonly source: SourceRef;
}

export interface FlitchSection {
    readonly shape: 'flitch';
    readonly leaves: number;
    /** Of one timber leaf. */
    readonly breadth: Given;
    readonly depth: Given;
    readonly plates: number;
    readonly thickness: Given;
    readonly plateDepth: Given;
    readonly steel: Given<string>;
    readonly bolts: readonly BoltRow[];
    readonly source: SourceRef;
}

/** A rolled shape by its designation, `HEA 140`, or a flat, `12 x 200`. */
export interface RolledSection {
    readonly shape: 'rolled';
    readonly designation: string;
    readonly given: Given<string>;
    readonly source: SourceRef;
}

export interface Hole {
    readonly diameter: Given;
    readonly at: Given;
    /** Above the axis. */
    readonly height: Given;
    readonly source: SourceRef;
}

export interface PlatePart {
    readonly width: Given;
    readonly thickness: Given;
    readonly length: Given;
    /** Grade, or the name of a steel. */
    readonly steel: string;
    readonly source: SourceRef;
}

export interface BoltGroup {
    readonly count: number;
    readonly size: string;
    readonly diameter: number;
    readonly grade: Given<string>;
}

export interface Splice {
    readonly at: Given;
    /** An end plate may leave out its length: it is as long as the section is deep. */
    readonly plates: readonly (Omit<PlatePart, 'length'> & { readonly length?: Given; readonly where: 'end' | 'cover' | 'web' | 'flange' })[];
    readonly bolts: readonly BoltGroup[];
    readonly source: SourceRef;
}

/** Rods that hang one member from another. */
export interface Hanger {
    readonly name: string;
    readonly carries: string;
    readonly carriesAt: Given;
    readonly from: string;
    readonly fromAt: Given;
    readonly rods: BoltGroup;
    readonly headPlate?: PlatePart;
    readonly footPlate?: PlatePart;
    readonly washers?: { readonly size: Given; readonly thickness: Given };
    /** Clear between the two timbers along the rods; 0 unless said. The grip is both depths and this. */
    readonly gap: Given;
    readonly source: SourceRef;
    /** Where a detail was used, when it came from one: messages point at both. */
    readonly usedAt?: SourceRef;
}

export type StageStep =
    | { readonly kind: 'add'; readonly elements: readonly string[]; readonly source: SourceRef }
    | { readonly kind: 'prop'; readonly member: string; readonly at: Given; readonly lift: Given; readonly source: SourceRef }
    | { readonly kind: 'tighten'; readonly hangers: readonly string[]; readonly force: Given; readonly source: SourceRef }
    | { readonly kind: 'release'; readonly members: readonly string[] | 'all'; readonly source: SourceRef }
    | { readonly kind: 'remove'; readonly elements: readonly string[]; readonly source: SourceRef };

/** Stages run in the order of writing; what no stage adds is there from the first. */
export interface Stage {
    readonly name: string;
    readonly title?: string;
    readonly steps: readonly StageStep[];
    readonly source: SourceRef;
}

/** A construct that is understood, but that this version does not compute. */
export interface NotComputed {
    /** E.g. `hanger H1`, `stage hung`, `T2.hole at 1.20 m`. */
    readonly what: string;
    readonly why: string;
    /** Members whose own results leave this out. */
    readonly members: readonly string[];
    readonly source: SourceRef;
}

export interface Model {
    readonly file: string;
    /** This file, and those that it includes. */
    readonly files: readonly string[];
    readonly job: Job;
    readonly values: readonly ValueOverride[];
    readonly materials: readonly Material[];
    readonly walls: readonly Wall[];
    readonly members: readonly Member[];
    readonly loads: readonly Load[];
    readonly hangers: readonly Hanger[];
    readonly stages: readonly Stage[];
    readonly requirements: readonly Requirement[];
    readonly breakEvens: readonly BreakEvenLine[];
    readonly loadTests: readonly LoadTest[];
    readonly options: readonly Option[];
    readonly answers: readonly Answer[];
    readonly survey?: { readonly items: readonly SurveyItem[]; readonly source: SourceRef };
    readonly access?: Access;
    readonly notComputed: readonly NotComputed[];
    /** Every input of consequence, and every other that says how it is known or that is a band, for the ledger. */
    readonly inputs: readonly Given<number | string>[];
}

/** Evaluation never throws on bad input: the model of what is sound, and what is wrong with the rest. */
export interface Evaluation {
    readonly model: Model;
    readonly findings: readonly Finding[];
    /** Members that are named in the text but could not be evaluated. */
    readonly broken: readonly { readonly name: string; readonly source: SourceRef }[];
}
