import { delayNextTick, interruptAndCheck, type DocumentValidator, type LangiumDocument, type ValidationOptions } from 'langium';
import { CancellationToken, type Diagnostic } from 'vscode-languageserver';
import type { TextDocuments } from 'langium/lsp';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Results } from '../results.js';
import { computeDocument } from './compute-document.js';
import type { Broken, ComputedDocuments } from './computed-documents.js';
import { diagnosticsOf } from './diagnostics.js';
import type { IncludedFiles } from './included-files.js';
import type { KnownWholes } from './later/known-wholes.js';
import type { LaterResults } from './later/later-results.js';

/** The last phase of a build: a document is valid when its results are there, and they are what there is to say about it. */
export class ResultsValidator implements DocumentValidator {
    constructor(
        private readonly computed: ComputedDocuments,
        private readonly open: TextDocuments<TextDocument>,
        private readonly included: IncludedFiles,
        private readonly wholes: KnownWholes,
        private readonly later: LaterResults
    ) { }

    async validateDocument(document: LangiumDocument, _options?: ValidationOptions, cancellation = CancellationToken.None): Promise<Diagnostic[]> {
        if (!this.open.get(document.uri)) {
            return [];
        }
        // Lets in what has arrived meanwhile: a change among it gives this build up before its longest step.
        await delayNextTick();
        await interruptAndCheck(cancellation);
        const { results, sources, later } = await computeDocument(document, this.included, this.wholes);
        const computed = { text: document.textDocument, results, sources, broken: brokenBy(document, results) };
        this.computed.set(document.uri, computed);
        if (later) {
            this.later.add(computed, later);
        }
        return diagnosticsOf(computed);
    }
}

const unreadIncludes: ReadonlySet<string> = new Set(['include-missing', 'include-refused', 'include-circle', 'not-read']);
const unparsed: ReadonlySet<string> = new Set(['syntax', 'unknown-unit', 'decimal-comma']);

/** What keeps the text or a file that it includes from being read whole. */
function brokenBy({ parseResult: { lexerErrors, parserErrors } }: LangiumDocument, { file, findings }: Results): Broken | undefined {
    const own = lexerErrors[0] ?? parserErrors[0];
    if (own) {
        return { what: 'text', reason: `The text does not parse: ${own.message}` };
    }
    const unread = findings.find(({ code }) => unreadIncludes.has(code));
    if (unread) {
        return { what: 'include', reason: `An included file is not read: ${unread.message}` };
    }
    const included = findings.find(({ code, source }) => unparsed.has(code) && source.file !== file);
    return included && { what: 'include', reason: `${included.source.file} does not parse, line ${included.source.line}: ${included.message}` };
}
