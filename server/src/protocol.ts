/**
 * What the extension and the server say to each other beyond the Language Server Protocol.
 * Types and method names alone: the client may import this and nothing else of the server.
 */

/** Request: the preview's content for an open document. */
export const previewRequest = 'padstone/preview';
export interface PreviewParams {
    readonly uri: string;
}
export interface Preview {
    readonly uri: string;
    /** Version of the document that the content was computed from. */
    readonly version: number;
    readonly title: string;
    /** A fragment of HTML, everything escaped, blocks marked with `data-line` (from 1). */
    readonly html: string;
    /** Rules for the fragment. */
    readonly css: string;
    /** Why the content is not that of the newest text, where it is not: it is greyed out with this reason. */
    readonly stale?: string;
}

/** Notification, server to client: results of a document have changed. */
export const resultsNotification = 'padstone/results';
export interface ResultsNotice {
    readonly uri: string;
    readonly version: number;
    readonly verdict: 'pass' | 'fail' | 'incomplete';
    /** `fail: T2.bending 112 %`. */
    readonly summary: string;
    /** Break-evens, proof loads and options are in it: a first notice without them comes before. */
    readonly whole: boolean;
}

/** Request: the whole standalone sheet, for export. */
export const sheetRequest = 'padstone/sheet';
export interface SheetParams {
    readonly uri: string;
}
export interface Sheet {
    readonly html: string;
}

/** Initialization options: what an editor does beyond the protocol. */
export interface EditorOffer {
    /** It answers the two requests below, so that files which are not on the server's disk can be read. */
    readonly files?: boolean;
    /** Those of the commands below that it has, for lenses and hints. */
    readonly commands?: readonly string[];
    /** False where lenses are not wanted. */
    readonly lenses?: boolean;
    /** The address of what is written about a finding, with `{code}` in the place of its code. */
    readonly documentation?: string;
    /** False where only what is open is to be computed. */
    readonly wholeFolder?: boolean;
}

/** Commands of the editor: both take the address of a document and a line, from 1. */
export const openSheetCommand = 'padstone.openPreview';
export const breakEvenCommand = 'padstone.runBreakEven';

/** Request, server to client: the text of a file; null where there is none. */
export const readFileRequest = 'padstone/readFile';
/** Request, server to client: what is in a folder; empty where there is none. */
export const readDirectoryRequest = 'padstone/readDirectory';
export interface ReadParams {
    readonly uri: string;
}
export type ReadDirectoryAnswer = readonly { readonly uri: string; readonly folder: boolean }[];

/** Request: the calculations in the folders that the editor has open, as addresses. */
export const jobsRequest = 'padstone/jobs';

/** Request: what came out of a calculation, in words; also of one that is not open. Null where there is none. */
export const overviewRequest = 'padstone/overview';
export interface OverviewParams {
    readonly uri: string;
}
export interface Overview {
    readonly uri: string;
    readonly title: string;
    readonly verdict: 'pass' | 'fail' | 'incomplete';
    readonly verdictReason: string;
    /** Members and hangers. */
    readonly subjects: readonly OverviewSubject[];
    readonly hazards: readonly OverviewHazard[];
    readonly requirements: readonly OverviewRequirement[];
    readonly unchecked: readonly string[];
    /** Errors of the text. */
    readonly errors: readonly { readonly message: string; readonly line: number }[];
}
export interface OverviewSubject {
    readonly name: string;
    readonly description: string;
    readonly state: 'holds' | 'fails' | 'incomplete' | 'not computed';
    /** `bending 83 % · 9.9 mm = L/475` */
    readonly headline: string;
    /** From 1; of the calculation's own file, where an included one declares it. */
    readonly line: number;
    /** Each in its worst stage, worst first. */
    readonly checks: readonly { readonly id: string; readonly check: string; readonly use: string; readonly pass: boolean; readonly clause: string; readonly governs: string }[];
}
export interface OverviewHazard {
    readonly code: string;
    readonly severity: 'stop' | 'warn' | 'note';
    readonly subject: string;
    readonly message: string;
    readonly action: string;
    readonly decider: string;
    /** What was done about it. */
    readonly answer?: string;
    readonly line: number;
}
export interface OverviewRequirement {
    readonly text: string;
    /** Undefined where it is not known. */
    readonly holds?: boolean;
    readonly reason?: string;
    readonly line: number;
}

/** Request: one check with its formulas and numbers, as Markdown; null where there is none of this id. */
export const calculationRequest = 'padstone/calculation';
export interface CalculationParams {
    readonly uri: string;
    /** `T2.bending` */
    readonly id: string;
}
