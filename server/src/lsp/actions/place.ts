import type { LangiumDocument } from 'langium';
import type { Range } from 'vscode-languageserver';
import type { Finding } from '../../../../language/src/model.js';
import type { Computed } from '../computed-documents.js';

/** A finding at the cursor, in the file at hand. */
export interface FindingPlace {
    readonly document: LangiumDocument;
    readonly computed: Computed;
    readonly finding: Finding;
    readonly at: Range;
}

/** What an editor may do about it: a title, and what is put where. */
export interface Mending {
    readonly title: string;
    readonly at: number;
    /** Of what it replaces; it replaces nothing unless said. */
    readonly until?: number;
    readonly text: string;
}

export type MendingOf = (place: FindingPlace) => readonly Mending[];
