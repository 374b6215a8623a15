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
    /** Versions of the texts whose results were sent last. */
    const published = new Map<string, number>();
    let refreshes = false;
    let pulls = false;
    let refreshesDiagnostics = false;
    shared.lsp.LanguageServer.onInitialize(({ capabilities }) => {
        refreshes = capabilities.workspace?.inlayHint?.refreshSupport === true;
        pulls = capabilities.textDocument?.diagnostic !== undefined;
        refreshesDiagnostics = pulls && capabilities.workspace?.diagnostics?.refreshSupport === true;
    });
    builder.onDocumentPhase(DocumentState.Validated, async document => {
        const found = computed.get(document.uri);
        if (!found) {
            return;
        }
        const { uri, version } = found.text;
        if (!pulls) {
            await connection.sendDiagnostics({ uri, version, diagnostics: document.diagnostics ?? [] });
        }
        const notice: ResultsNotice = { uri, version, verdict: found.results.verdict, summary: summaryOf(found.results) };
        await connection.sendNotification(resultsNotification, notice);
        // The text is the same and what it includes is not: the editor has no cause of its own to ask again.
        if (refreshes && published.get(uri) === version) {
            await connection.languages.inlayHint.refresh();
        }
        if (refreshesDiagnostics && published.get(uri) === version) {
            await connection.languages.diagnostics.refresh();
        }
        published.set(uri, version);
    });
    builder.onUpdate(async (_changed, deleted) => {
        for (const uri of deleted) {
            computed.delete(uri);
            published.delete(uri.toString());
            if (!pulls) {
                await connection.sendDiagnostics({ uri: uri.toString(), diagnostics: [] });
            }
        }
    });
}

/** `fail: T2.bending 112 %`, else the verdict with its reason. */
export function summaryOf({ verdict, verdictReason, checks }: Results): string {
    const failing = checks.filter(check => !check.pass).map(check => `${check.id} ${percentUp(check.utilisation)}`);
    return `${verdict}: ${failing.length > 0 ? failing.join(', ') : verdictReason}`;
}
