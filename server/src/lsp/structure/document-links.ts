/** An include leads to its file. */
import type { LangiumDocument } from 'langium';
import type { DocumentLinkProvider } from 'langium/lsp';
import type { DocumentLink } from 'vscode-languageserver';
import type { WorkspaceNames } from '../names/workspace-names.js';

export class IncludeLinks implements DocumentLinkProvider {
    constructor(private readonly names: WorkspaceNames) { }

    getDocumentLinks(document: LangiumDocument): DocumentLink[] {
        return this.names.of(document).includes.map(({ uri, path, at }) => ({ range: at.range, target: uri, tooltip: `Open ${path}` }));
    }
}
