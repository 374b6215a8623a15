import { DefaultLangiumDocumentFactory, TextDocument, type AstNode, type LangiumDocument } from 'langium';
import type { CancellationToken } from 'vscode-languageserver';

/**
 * Parses a frozen copy of an open document: the editor's own object changes under a build when the reader
 * types on, and positions and versions would then be those of another text.
 */
export class SnapshotDocumentFactory extends DefaultLangiumDocumentFactory {
    override async update<T extends AstNode = AstNode>(document: LangiumDocument<T>, cancellation: CancellationToken): Promise<LangiumDocument<T>> {
        const live = this.textDocuments?.get(document.uri);
        const frozen = live && TextDocument.create(live.uri, live.languageId, live.version, live.getText());
        const updated = await super.update(document, cancellation);
        if (frozen) {
            Object.defineProperty(updated, 'textDocument', { value: frozen, configurable: true });
        }
        return updated;
    }
}
