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
    /** Why what was computed is only what is left. */
    readonly broken?: Broken;
}

/** The text itself does not parse, or a file that it includes cannot be read whole. */
export interface Broken {
    readonly what: 'text' | 'include';
    /** A sentence. */
    readonly reason: string;
}

/** What was computed of the open documents: the newest, and the newest of those that were read most nearly whole. */
export class ComputedDocuments {
    private readonly newest = new Map<string, Computed>();
    private readonly good = new Map<string, Computed>();

    set(uri: URI | string, computed: Computed): void {
        const key = UriUtils.normalize(uri);
        this.newest.set(key, computed);
        const good = this.good.get(key);
        if (!good || lackOf(computed) <= lackOf(good)) {
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

/** A missing include leaves out what it would have said; a text that does not parse leaves out what nobody knows. */
function lackOf({ broken }: Computed): number {
    return broken === undefined ? 0 : broken.what === 'include' ? 1 : 2;
}
