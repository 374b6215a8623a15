import type { LangiumDocument } from 'langium';
import type { CodeActionProvider } from 'langium/lsp';
import { CodeActionKind, type CodeAction, type CodeActionParams, type Range } from 'vscode-languageserver';
import { insertSupport } from './actions/insert-support.js';
import type { MendingOf } from './actions/place.js';
import { tieUplift } from './actions/tie-uplift.js';
import type { ComputedDocuments } from './computed-documents.js';
import { diagnosticOf, rangeOf } from './diagnostics.js';

/** What a writer may want to say about a finding, by its code. */
const mendings: readonly MendingOf[] = [insertSupport, tieUplift];

/** What mends a finding where that is plain, e.g. the missing unit. */
export class QuickFixes implements CodeActionProvider {
    constructor(private readonly computed: ComputedDocuments) { }

    getCodeActions(document: LangiumDocument, { range, context }: CodeActionParams): CodeAction[] {
        const computed = this.computed.get(document.uri);
        if (!computed || (context.only && !context.only.some(kind => CodeActionKind.QuickFix.startsWith(kind)))) {
            return [];
        }
        const { text, results } = computed;
        const here = results.findings.filter(finding => finding.source.file === results.file && touches(range, rangeOf(finding.source, text)));
        return [...here.flatMap(finding => mendings.flatMap(mendingOf => mendingOf({ document, computed, finding, at: rangeOf(finding.source, text) })).map(({ title, at, text: newText }) => {
            const place = text.positionAt(at);
            return { title, kind: CodeActionKind.QuickFix, diagnostics: [diagnosticOf(finding, text)], edit: { changes: { [text.uri]: [{ range: { start: place, end: place }, newText }] } } };
        })), ...results.findings.flatMap(finding => finding.fix && finding.fix.at.file === results.file && finding.source.file === results.file && touches(range, rangeOf(finding.source, text)) ? [{
            title: finding.fix.title,
            kind: CodeActionKind.QuickFix,
            diagnostics: [diagnosticOf(finding, text)],
            isPreferred: true,
            edit: { changes: { [text.uri]: [{ range: rangeOf(finding.fix.at, text), newText: finding.fix.text }] } }
        }] : [])];
    }
}

function touches(a: Range, b: Range): boolean {
    return !after(a, b) && !after(b, a);
}

function after(a: Range, b: Range): boolean {
    return a.start.line > b.end.line || (a.start.line === b.end.line && a.start.character > b.end.character);
}
