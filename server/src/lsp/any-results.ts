/** Results of any calculation: as they stand of one that is open, computed when they are asked for of another. */
import { DocumentState, URI } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import type { CancellationToken } from 'vscode-languageserver';
import { computeDocument } from './compute-document.js';
import type { Computed, ComputedDocuments } from './computed-documents.js';
import type { IncludedFiles } from './included-files.js';

export class AnyResults {
    constructor(private readonly shared: LangiumSharedServices, private readonly computed: ComputedDocuments, private readonly included: IncludedFiles) { }

    isOpen(uri: string): boolean {
        return this.shared.workspace.TextDocuments.get(uri) !== undefined;
    }

    /** Undefined where the file cannot be read. */
    async of(uri: string, cancellation?: CancellationToken): Promise<Computed | undefined> {
        if (this.isOpen(uri)) {
            await this.shared.workspace.DocumentBuilder.waitUntil(DocumentState.Validated, URI.parse(uri), cancellation);
            return this.computed.get(uri);
        }
        const document = await this.included.document(URI.parse(uri));
        return document && { text: document.textDocument, ...await computeDocument(document, this.included) };
    }
}
