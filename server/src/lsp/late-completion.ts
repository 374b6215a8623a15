import type { LangiumDocument } from 'langium';
import type { CompletionProvider, CompletionProviderOptions, LangiumServices } from 'langium/lsp';
import type { CancellationToken, CompletionList, CompletionParams } from 'vscode-languageserver';
import { Completion } from './completion/provider.js';
import type { ComputedDocuments } from './computed-documents.js';
import type { WorkspaceNames } from './names/workspace-names.js';

/** Completion needs a second parser, which takes as long to make as the first: it is made when it is first asked for. */
export class LateCompletion implements CompletionProvider {
    readonly completionOptions: CompletionProviderOptions = { triggerCharacters: [' ', '.', '('] };
    private provider: Completion | undefined;

    constructor(private readonly services: LangiumServices, private readonly names: WorkspaceNames, private readonly computed: ComputedDocuments) { }

    async getCompletion(document: LangiumDocument, params: CompletionParams, cancellation?: CancellationToken): Promise<CompletionList | undefined> {
        this.provider ??= new Completion(this.services, this.names, this.computed);
        return this.provider.getCompletion(document, params, cancellation);
    }
}
