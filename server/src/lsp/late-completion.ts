import type { LangiumDocument } from 'langium';
import { DefaultCompletionProvider, type CompletionProvider, type LangiumServices } from 'langium/lsp';
import type { CancellationToken, CompletionList, CompletionParams } from 'vscode-languageserver';

/** Completion needs a second parser, which takes as long to make as the first: it is made when it is first asked for. */
export class LateCompletion implements CompletionProvider {
    private provider: DefaultCompletionProvider | undefined;

    constructor(private readonly services: LangiumServices) { }

    async getCompletion(document: LangiumDocument, params: CompletionParams, cancellation?: CancellationToken): Promise<CompletionList | undefined> {
        this.provider ??= new DefaultCompletionProvider(this.services);
        return this.provider.getCompletion(document, params, cancellation);
    }
}
