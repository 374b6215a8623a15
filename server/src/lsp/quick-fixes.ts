import type { LangiumDocument } from 'langium';
import type { CodeActionProvider } from 'langium/lsp';
import { CodeActionKind, type CodeAction, type CodeActionParams, type Range } from 'vscode-languageserver';
import type { ComputedDocuments } from './computed-documents.js';
import { diagnosticOf, rangeOf } from './diagnostics.js';

/** What mends a finding where that is plain, e.g. the missing unit. */
export class QuickFixes implements CodeActionProvider {
    constructor(private readonly computed: ComputedDocuments) { }

    getCodeActions(document: LangiumDocument, { range, context }: CodeActionParams): CodeAction[] {
        const computed = this.computed.get(document.uri);
        if (!computed || (context.only && !context.only.some(kind => CodeActionKind.QuickFix.startsWith(kind)))) {
            return [];
        }
        const { text, results } = computed;
        return results.findings.flatMap(finding => finding.fix && finding.fix.at.file === results.file && finding.source.file === results.file && touches(range, rangeOf(finding.source, text)) ? [{
            title: finding.fix.title,
            kind: CodeActionKind.QuickFix,
            diagnostics: [diagnosticOf(finding, text)],
            isPreferred: true,
            edit: { changes: { [text.uri]: [{ range: rangeOf(finding.fix.at, text), newText: finding.fix.text }] } }
        }] : []);
    }
}

function touches(a: Range, b: Range): boolean {
    return !after(a, b) && !after(b, a);
}

function after(a: Range, b: Range): boolean {
    return a.start.line > b.end.line || (a.start.line === b.end.line && a.start.character > b.end.character);
}
