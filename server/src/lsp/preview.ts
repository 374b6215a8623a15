import { DocumentState, URI } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import type { CancellationToken, Connection } from 'vscode-languageserver';
import { previewRequest, sheetRequest, type Preview, type PreviewParams, type Sheet, type SheetParams } from '../protocol.js';
import { sheetMeta } from '../sheet-meta.js';
import { renderPreview, renderSheet } from '../sheet/index.js';
import type { Computed, ComputedDocuments } from './computed-documents.js';

/** Answers the preview pane and the export of the sheet. */
export function addPreviewHandlers(connection: Connection, shared: LangiumSharedServices, computed: ComputedDocuments): void {
    const builder = shared.workspace.DocumentBuilder;

    connection.onRequest(previewRequest, async ({ uri }: PreviewParams, cancellation: CancellationToken): Promise<Preview | null> => {
        if (!computed.get(uri)) {
            await builder.waitUntil(DocumentState.Validated, URI.parse(uri), cancellation);
        }
        const newest = computed.get(uri);
        return newest ? previewOf(uri, newest, computed.lastGood(uri)) : null;
    });

    connection.onRequest(sheetRequest, async ({ uri }: SheetParams, cancellation: CancellationToken): Promise<Sheet | null> => {
        await builder.waitUntil(DocumentState.Validated, URI.parse(uri), cancellation);
        const newest = computed.get(uri);
        return newest ? { html: renderSheet(newest.results, await sheetMeta(newest.sources, new Date())) } : null;
    });
}

/** While the text or what it includes cannot be read whole, the last that could is shown, and says so. */
export function previewOf(uri: string, newest: Computed, shown = newest): Preview {
    const { html, css } = renderPreview(shown.results);
    return {
        uri,
        version: shown.text.version,
        title: shown.results.job?.title ?? 'Padstone',
        html,
        css,
        stale: shown === newest ? undefined : newest.broken?.reason
    };
}
