import { delayNextTick, interruptAndCheck, UriUtils, type DocumentValidator, type LangiumDocument, type ValidationOptions } from 'langium';
import { CancellationToken, type Diagnostic } from 'vscode-languageserver';
import type { TextDocuments } from 'langium/lsp';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { evaluate } from '../../../language/src/index.js';
import { compute } from '../compute.js';
import { noResults } from '../no-results.js';
import type { Results } from '../results.js';
import type { ComputedDocuments } from './computed-documents.js';
import { diagnosticsOf } from './diagnostics.js';

/** The last phase of a build: a document is valid when its results are there, and they are what there is to say about it. */
export class ResultsValidator implements DocumentValidator {
    constructor(private readonly computed: ComputedDocuments, private readonly open: TextDocuments<TextDocument>) { }

    async validateDocument(document: LangiumDocument, _options?: ValidationOptions, cancellation = CancellationToken.None): Promise<Diagnostic[]> {
        if (!this.open.get(document.uri)) {
            return [];
        }
        // Lets in what has arrived meanwhile: a change among it gives this build up before its longest step.
        await delayNextTick();
        await interruptAndCheck(cancellation);
        const { lexerErrors, parserErrors } = document.parseResult;
        const results = resultsOf(document);
        const computed = { text: document.textDocument, results, syntaxError: (lexerErrors[0] ?? parserErrors[0])?.message };
        this.computed.set(document.uri, computed);
        return diagnosticsOf(computed);
    }
}

/** A defect of ours in one file takes neither the server nor the other files with it. */
function resultsOf(document: LangiumDocument): Results {
    const file = UriUtils.basename(document.uri);
    try {
        return compute(evaluate(document, { file }));
    } catch (error) {
        const message = error instanceof Error ? error.message : String(error);
        return noResults(file, 'program-failed', `Padstone itself failed on this text, which is a defect of Padstone: ${message}`);
    }
}
