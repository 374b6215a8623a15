import type { LangiumDocument } from 'langium';
import type { CodeActionProvider } from 'langium/lsp';
import { CodeActionKind, type CancellationToken, type CodeAction, type CodeActionParams, type Range } from 'vscode-languageserver';
import type { Finding } from '../../../language/src/model.js';
import { answerHazard } from './actions/answer-hazard.js';
import { insertSupport } from './actions/insert-support.js';
import type { NextSizes } from './actions/next-sizes.js';
import type { Mending, MendingOf } from './actions/place.js';
import { sayEvidence } from './actions/say-evidence.js';
import { sayProbed } from './actions/say-probed.js';
import { tieUplift } from './actions/tie-uplift.js';
import type { Computed, ComputedDocuments } from './computed-documents.js';
import { diagnosticOf, rangeOf } from './diagnostics.js';

/** What a writer may want to say about a finding, by its code. */
const mendings: readonly MendingOf[] = [insertSupport, tieUplift, sayProbed, answerHazard];

/** What mends a finding where that is plain, e.g. the missing unit; what may be said of the input at the cursor. */
export class QuickFixes implements CodeActionProvider {
    constructor(private readonly computed: ComputedDocuments, private readonly sizes: NextSizes) { }

    async getCodeActions(document: LangiumDocument, { range, context }: CodeActionParams, cancellation?: CancellationToken): Promise<CodeAction[]> {
        const computed = this.computed.get(document.uri);
        if (!computed || (context.only && !context.only.some(kind => CodeActionKind.QuickFix.startsWith(kind)))) {
            return [];
        }
        const { text, results } = computed;
        const here = results.findings.filter(finding => finding.source.file === results.file && touches(range, rangeOf(finding.source, text)));
        const mended = here.flatMap(finding => mendings.flatMap(mendingOf => mendingOf({ document, computed, finding, at: rangeOf(finding.source, text) }))
            .map(mending => actionOf(computed, mending, finding)));
        const plain = here.flatMap(finding => finding.fix?.at.file === results.file
            ? [{ ...actionOf(computed, { title: finding.fix.title, at: finding.fix.at.start, until: finding.fix.at.end, text: finding.fix.text }, finding), isPreferred: true }] : []);
        const evidence = sayEvidence(computed, (start, end) => touches(range, { start: text.positionAt(start), end: text.positionAt(end) })).map(mending => actionOf(computed, mending));
        return [...mended, ...plain, ...await this.largerSizes(document, computed, here, cancellation), ...evidence];
    }

    private async largerSizes(document: LangiumDocument, computed: Computed, here: readonly Finding[], cancellation?: CancellationToken): Promise<CodeAction[]> {
        const failing = here.find(({ code, source }) => code === 'check-fails' && computed.results.members.some(({ nameSource }) => nameSource.start === source.start));
        const member = failing && computed.results.members.find(({ nameSource }) => nameSource.start === failing.source.start);
        const sizes = member ? await this.sizes.of(document, computed, member.name, () => cancellation?.isCancellationRequested === true) : [];
        return sizes.map(mending => actionOf(computed, mending, failing));
    }
}

function actionOf({ text }: Computed, { title, at, until = at, text: newText }: Mending, finding?: Finding): CodeAction {
    const range = { start: text.positionAt(at), end: text.positionAt(until) };
    return { title, kind: CodeActionKind.QuickFix, ...finding && { diagnostics: [diagnosticOf(finding, text)] }, edit: { changes: { [text.uri]: [{ range, newText }] } } };
}

function touches(a: Range, b: Range): boolean {
    return !after(a, b) && !after(b, a);
}

function after(a: Range, b: Range): boolean {
    return a.start.line > b.end.line || (a.start.line === b.end.line && a.start.character > b.end.character);
}
