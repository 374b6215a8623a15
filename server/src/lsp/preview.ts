import { DocumentState, URI } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import type { CancellationToken, Connection } from 'vscode-languageserver';
import { previewRequest, sheetRequest, type Preview, type PreviewParams, type Sheet, type SheetParams } from '../protocol.js';
import { sheetMeta } from '../sheet-meta.js';
import { plainDisplay, renderPreview, renderSheet } from '../sheet/index.js';
import type { Computed, ComputedDocuments } from './computed-documents.js';
import type { DisplaySetting } from './display-setting.js';
import type { LaterResults } from './later/later-results.js';

/** Answers the preview pane and the export of the sheet. */
export function addPreviewHandlers(connection: Connection, shared: LangiumSharedServices, computed: ComputedDocuments, later: LaterResults, display: DisplaySetting): void {
    const builder = shared.workspace.DocumentBuilder;

    connection.onRequest(previewRequest, async ({ uri }: PreviewParams, cancellation: CancellationToken): Promise<Preview | null> => {
        if (!computed.get(uri)) {
            await builder.waitUntil(DocumentState.Validated, URI.parse(uri), cancellation);
        }
        const newest = computed.get(uri);
        return newest ? previewOf(uri, newest, computed.lastGood(uri), display.current) : null;
    });

    connection.onRequest(sheetRequest, async ({ uri }: SheetParams, cancellation: CancellationToken): Promise<Sheet | null> => {
        await builder.waitUntil(DocumentState.Validated, URI.parse(uri), cancellation);
        await later.settled(uri);
        const newest = computed.get(uri);
        return newest ? { html: renderSheet(newest.results, await sheetMeta(newest.sources, new Date()), display.current) } : null;
    });
}

/** While the text or what it includes cannot be read whole, the last that could is shown, and says so. */
export function previewOf(uri: string, newest: Computed, shown = newest, display = plainDisplay): Preview {
    const { html, css } = renderPreview(shown.results, display);
    return {
        uri,
        version: shown.text.version,
        title: shown.results.job?.title ?? 'Padstone',
        html,
        css,
        stale: shown === newest ? undefined : newest.broken?.reason
    };
}
