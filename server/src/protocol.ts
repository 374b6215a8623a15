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
}

/** Request: the whole standalone sheet, for export. */
export const sheetRequest = 'padstone/sheet';
export interface SheetParams {
    readonly uri: string;
}
export interface Sheet {
    readonly html: string;
}

/** In the initialization options: the editor answers the two requests below, so that files which are not on the server's disk can be read. */
export interface FileOffer {
    readonly files?: boolean;
}

/** Request, server to client: the text of a file; null where there is none. */
export const readFileRequest = 'padstone/readFile';
/** Request, server to client: what is in a folder; empty where there is none. */
export const readDirectoryRequest = 'padstone/readDirectory';
export interface ReadParams {
    readonly uri: string;
}
export type ReadDirectoryAnswer = readonly { readonly uri: string; readonly folder: boolean }[];
