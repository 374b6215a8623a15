import { DocumentState } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import type { Connection } from 'vscode-languageserver';
import { resultsNotification, type ResultsNotice } from '../protocol.js';
import type { Results } from '../results.js';
import { percentUp } from '../sheet/numbers.js';
import type { Computed, ComputedDocuments } from './computed-documents.js';
import { diagnosticsOf } from './diagnostics.js';

/** Sends what was found, with the version of the text that it was found from. */
export class Publisher {
    /** Versions of the texts whose results were sent last. */
    private readonly published = new Map<string, number>();
    private pulls = false;
    private readonly refreshes = { hints: false, diagnostics: false };
    private refreshing = false;

    constructor(private readonly connection: Connection, private readonly computed: ComputedDocuments) { }

    /** Sends after each build. */
    listen(shared: LangiumSharedServices): void {
        const builder = shared.workspace.DocumentBuilder;
        shared.lsp.LanguageServer.onInitialize(({ capabilities: { textDocument, workspace } }) => {
            this.pulls = textDocument?.diagnostic !== undefined;
            this.refreshes.hints = workspace?.inlayHint?.refreshSupport === true;
            this.refreshes.diagnostics = this.pulls && workspace?.diagnostics?.refreshSupport === true;
        });
        builder.onDocumentPhase(DocumentState.Validated, ({ uri }) => this.send(uri.toString()));
        builder.onUpdate(async (_changed, deleted) => {
            for (const uri of deleted) {
                this.computed.delete(uri);
                this.published.delete(uri.toString());
                if (!this.pulls) {
                    await this.connection.sendDiagnostics({ uri: uri.toString(), diagnostics: [] });
                }
            }
        });
    }

    /** What is known of a document now. */
    async send(document: string): Promise<void> {
        const found = this.computed.get(document);
        if (!found) {
            return;
        }
        const { uri, version } = found.text;
        if (!this.pulls) {
            await this.connection.sendDiagnostics({ uri, version, diagnostics: diagnosticsOf(found) });
        }
        await this.connection.sendNotification(resultsNotification, noticeOf(found));
        // The text is the same and what is known of it is not: the editor has no cause of its own to ask again.
        if (this.published.get(uri) === version) {
            this.refresh();
        }
        this.published.set(uri, version);
    }

    /** Once for all that comes at the same time. */
    private refresh(): void {
        if (this.refreshing) {
            return;
        }
        this.refreshing = true;
        setTimeout(() => {
            this.refreshing = false;
            const { inlayHint, diagnostics } = this.connection.languages;
            const asked = [this.refreshes.hints && inlayHint.refresh(), this.refreshes.diagnostics && diagnostics.refresh()];
            // An editor that has gone needs nothing any more.
            void Promise.allSettled(asked);
        }, 0);
    }

    /** Has everything that is shown of these documents shown anew, where its numbers are to look otherwise. */
    async again(documents: readonly string[]): Promise<void> {
        for (const found of documents.flatMap(uri => this.computed.get(uri) ?? [])) {
            await this.connection.sendNotification(resultsNotification, noticeOf(found));
        }
        this.refresh();
    }
}

function noticeOf({ text: { uri, version }, results }: Computed): ResultsNotice {
    return { uri, version, verdict: results.verdict, summary: summaryOf(results), whole: results.certainty !== undefined };
}

/** `fail: T2.bending 112 %`, else the verdict with its reason. */
export function summaryOf({ verdict, verdictReason, checks }: Results): string {
    const failing = checks.filter(check => !check.pass).map(check => `${check.id} ${percentUp(check.utilisation)}`);
    return `${verdict}: ${failing.length > 0 ? failing.join(', ') : verdictReason}`;
}
