import { URI, UriUtils, type LangiumDocument, type TextDocument } from 'langium';
import type { LangiumSharedServices, TextDocuments } from 'langium/lsp';
import { evaluate, type Evaluation } from '../../../language/src/index.js';
import type { Source } from '../sheet-meta.js';
import type { OfferedFiles } from './offered-files.js';

/** Undefined where there is no such file. */
type Parsed = LangiumDocument | undefined;

export interface Evaluated {
    readonly evaluation: Evaluation;
    /** What it was made from: the document first, then what it includes. */
    readonly sources: readonly Source[];
}

/**
 * The files that open calculations include: as they stand in the editor where they are open there, else as they
 * are saved. Each is read once, until it is told that it has changed.
 */
export class IncludedFiles {
    private readonly saved = new Map<string, Parsed>();
    /** By the version of the text in the editor. */
    private readonly open = new Map<string, { readonly version: number; readonly parsed: LangiumDocument }>();
    private readonly includedBy = new Map<string, ReadonlySet<string>>();
    /** Counts what is told to have changed, for what is being read meanwhile. */
    private changes = 0;

    constructor(private readonly services: () => LangiumSharedServices, private readonly files: OfferedFiles) { }

    /** Evaluates a document; what it turns out to need is read, and it is evaluated again, until nothing is missing. */
    async evaluate(document: LangiumDocument, file: string): Promise<Evaluated> {
        for (;;) {
            const needed = new Set<string>();
            const found = new Map<string, LangiumDocument>();
            const evaluation = evaluate(document, {
                file,
                include: (path, fromFile) => {
                    const from = UriUtils.resolvePath(UriUtils.dirname(document.uri), fromFile);
                    const uri = UriUtils.resolvePath(UriUtils.dirname(from), path);
                    const included = this.get(uri);
                    needed.add(UriUtils.normalize(uri));
                    if (included && 'parseResult' in included) {
                        found.set(UriUtils.normalize(uri), included);
                    }
                    return included;
                }
            });
            if (this.editor.get(document.uri)) {
                this.includedBy.set(UriUtils.normalize(document.uri), needed);
            }
            const missing = [...needed].filter(uri => !this.isKnown(uri));
            if (missing.length === 0) {
                const sources = [...found].map(([uri, { textDocument }]) => ({ file: UriUtils.relative(UriUtils.dirname(document.uri), uri), text: textDocument.getText() }));
                return { evaluation, sources: [{ file, text: document.textDocument.getText() }, ...sources] };
            }
            await Promise.all(missing.map(uri => this.read(uri)));
        }
    }

    /** A file as it stands: in the editor where it is open there, else as it is saved; undefined where there is none. */
    async document(uri: URI): Promise<LangiumDocument | undefined> {
        const built = this.services().workspace.LangiumDocuments.getDocument(uri);
        if (built && built.textDocument.version === this.editor.get(uri)?.version) {
            return built;
        }
        const key = UriUtils.normalize(uri);
        if (!this.isKnown(key)) {
            await this.read(key);
        }
        const found = this.get(uri);
        return found && 'parseResult' in found ? found : undefined;
    }

    openUris(): string[] {
        return this.editor.keys().map(uri => UriUtils.normalize(uri));
    }

    /** Open documents that include this one. */
    whatIncludes(uri: URI | string): string[] {
        const key = UriUtils.normalize(uri);
        return [...this.includedBy].filter(([, needed]) => needed.has(key)).map(([document]) => document);
    }

    /** It may have changed where it is saved. */
    changed(uri: URI | string): void {
        this.changes += 1;
        this.saved.delete(UriUtils.normalize(uri));
    }

    /** All may have: nobody tells. */
    allChanged(): void {
        this.changes += 1;
        this.saved.clear();
    }

    closed(uri: URI | string): void {
        const key = UriUtils.normalize(uri);
        this.includedBy.delete(key);
        this.open.delete(key);
        this.changed(key);
    }

    private get(uri: URI): LangiumDocument | { readonly refused: string } | undefined {
        const key = UriUtils.normalize(uri);
        const live = this.editor.get(uri);
        if (live) {
            const kept = this.open.get(key);
            const parsed = kept?.version === live.version ? kept.parsed : this.parse(live.getText(), uri);
            this.open.set(key, { version: live.version, parsed });
            return parsed;
        }
        return this.canRead(uri) ? this.saved.get(key) : { refused: 'no files can be read here: open it in the editor too' };
    }

    private canRead(uri: URI): boolean {
        return this.files.canRead(uri);
    }

    private get editor(): TextDocuments<TextDocument> {
        return this.services().workspace.TextDocuments;
    }

    private parse(text: string, uri: URI): LangiumDocument {
        return this.services().workspace.LangiumDocumentFactory.fromString(text, uri);
    }

    private isKnown(key: string): boolean {
        return !this.canRead(URI.parse(key)) || this.saved.has(key) || this.editor.get(key) !== undefined;
    }

    private async read(key: string): Promise<void> {
        const uri = URI.parse(key);
        let text: string | undefined;
        let changes: number;
        do {
            changes = this.changes;
            text = await this.textOf(uri);
        } while (changes !== this.changes);
        this.saved.set(key, text === undefined ? undefined : this.parse(text.replace(/^\uFEFF/, ''), uri));
    }

    private async textOf(uri: URI): Promise<string | undefined> {
        try {
            return await this.files.readFile(uri);
        } catch {
            // No such file, or none that may be read: the evaluation says so where it is included.
            return undefined;
        }
    }
}
