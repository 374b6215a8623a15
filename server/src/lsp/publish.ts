import { DocumentState } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import type { Connection } from 'vscode-languageserver';
import { resultsNotification, type ResultsNotice } from '../protocol.js';
import type { Results } from '../results.js';
import { percentUp } from '../sheet/numbers.js';
import type { ComputedDocuments } from './computed-documents.js';

/** Sends what a build found, with the version of the text that it was built from. */
export function publishResults(connection: Connection, shared: LangiumSharedServices, computed: ComputedDocuments): void {
    const builder = shared.workspace.DocumentBuilder;
    builder.onDocumentPhase(DocumentState.Validated, async document => {
        const found = computed.get(document.uri);
        if (!found) {
            return;
        }
        const { uri, version } = found.text;
        await connection.sendDiagnostics({ uri, version, diagnostics: document.diagnostics ?? [] });
        const notice: ResultsNotice = { uri, version, verdict: found.results.verdict, summary: summaryOf(found.results) };
        await connection.sendNotification(resultsNotification, notice);
    });
    builder.onUpdate(async (_changed, deleted) => {
        for (const uri of deleted) {
            computed.delete(uri);
            await connection.sendDiagnostics({ uri: uri.toString(), diagnostics: [] });
        }
    });
}

/** `fail: T2.bending 112 %`, else the verdict with its reason. */
export function summaryOf({ verdict, verdictReason, checks }: Results): string {
    const failing = checks.filter(check => !check.pass).map(check => `${check.id} ${percentUp(check.utilisation)}`);
    return `${verdict}: ${failing.length > 0 ? failing.join(', ') : verdictReason}`;
}
