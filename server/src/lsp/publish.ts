import { DocumentState } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import type { Connection } from 'vscode-languageserver';
import { resultsNotification, type ResultsNotice } from '../protocol.js';
import type { Results } from '../results.js';
import { percentUp } from '../sheet/numbers.js';
import type { Computed, ComputedDocuments } from './computed-documents.js';

/**
 * Sends what a build found, with the version of the text that it was built from.
 * @returns has everything that is shown of the open documents shown anew, where its numbers are to look otherwise
 */
export function publishResults(connection: Connection, shared: LangiumSharedServices, computed: ComputedDocuments): () => Promise<void> {
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
        await connection.sendNotification(resultsNotification, noticeOf(found));
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
    return async () => {
        for (const found of shared.workspace.TextDocuments.all().flatMap(({ uri }) => computed.get(uri) ?? [])) {
            await connection.sendNotification(resultsNotification, noticeOf(found));
        }
        if (refreshes) {
            await connection.languages.inlayHint.refresh();
        }
    };
}

function noticeOf({ text: { uri, version }, results }: Computed): ResultsNotice {
    return { uri, version, verdict: results.verdict, summary: summaryOf(results) };
}

/** `fail: T2.bending 112 %`, else the verdict with its reason. */
export function summaryOf({ verdict, verdictReason, checks }: Results): string {
    const failing = checks.filter(check => !check.pass).map(check => `${check.id} ${percentUp(check.utilisation)}`);
    return `${verdict}: ${failing.length > 0 ? failing.join(', ') : verdictReason}`;
}
