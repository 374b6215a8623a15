import { UriUtils, type URI } from 'langium';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Results } from '../results.js';
import type { Source } from '../sheet-meta.js';

/** Results of one version of one open document. */
export interface Computed {
    /** The text that was computed: it does not change while the reader types on. */
    readonly text: TextDocument;
    readonly results: Results;
    /** All texts that were computed: this one first, then what it includes. */
    readonly sources: readonly Source[];
    /** The first thing that does not parse; what is computed then is only what is left of the text. */
    readonly syntaxError?: string;
}

/** What was computed of the open documents: the newest, and the newest of a text that parses. */
export class ComputedDocuments {
    private readonly newest = new Map<string, Computed>();
    private readonly good = new Map<string, Computed>();

    set(uri: URI | string, computed: Computed): void {
        const key = UriUtils.normalize(uri);
        this.newest.set(key, computed);
        if (computed.syntaxError === undefined) {
            this.good.set(key, computed);
        }
    }

    get(uri: URI | string): Computed | undefined {
        return this.newest.get(UriUtils.normalize(uri));
    }

    lastGood(uri: URI | string): Computed | undefined {
        return this.good.get(UriUtils.normalize(uri));
    }

    delete(uri: URI | string): void {
        const key = UriUtils.normalize(uri);
        this.newest.delete(key);
        this.good.delete(key);
    }
}
