/** Requests that Langium has no handler for, or a handler that waits for a workspace that this server does not build. */
import { DocumentState, URI, type LangiumDocument } from 'langium';
import type { LangiumServices, LangiumSharedServices } from 'langium/lsp';
import type { CancellationToken, Connection, ResponseError } from 'vscode-languageserver';
import { orCancelled } from '../cancelled.js';
import { selectionRanges } from '../structure/selection-ranges.js';
import { DetailsHierarchy } from './details-hierarchy.js';
import { Renaming } from './rename.js';
import { WorkspaceSymbols } from './workspace-symbols.js';
import type { WorkspaceNames } from './workspace-names.js';

export function addNameHandlers(connection: Connection, shared: LangiumSharedServices, services: LangiumServices, names: WorkspaceNames): void {
    const { DocumentBuilder, LangiumDocuments } = shared.workspace;
    const documentOf = async (uri: string, cancellation: CancellationToken): Promise<LangiumDocument | undefined> => {
        const at = URI.parse(uri);
        await DocumentBuilder.waitUntil(DocumentState.Parsed, at, cancellation);
        return LangiumDocuments.getDocument(at);
    };
    const symbols = new WorkspaceSymbols(names, shared.lsp.FuzzyMatcher);
    const renaming = new Renaming(names, services.Grammar);

    const hierarchy = new DetailsHierarchy(names);

    const on = <T>(uri: string, cancellation: CancellationToken, answer: (document: LangiumDocument) => T | Promise<T>): Promise<T | null | ResponseError<never>> =>
        orCancelled(documentOf(uri, cancellation).then(async document => await (document && answer(document)) ?? null));

    connection.languages.callHierarchy.onPrepare(async (params, cancellation) =>
        await on(params.textDocument.uri, cancellation, document => hierarchy.prepareCallHierarchy(document, params)) ?? null);
    // Of these the file may not be open.
    connection.languages.callHierarchy.onIncomingCalls(params => hierarchy.incomingCalls(params));
    connection.languages.callHierarchy.onOutgoingCalls(params => hierarchy.outgoingCalls(params));
    connection.onWorkspaceSymbol((params, cancellation) => symbols.getSymbols(params, cancellation));
    connection.onSelectionRanges(({ textDocument, positions }, cancellation) => on(textDocument.uri, cancellation, document => selectionRanges(document, positions)));
    connection.languages.onLinkedEditingRange(async ({ textDocument, position }, cancellation) =>
        await on(textDocument.uri, cancellation, document => renaming.getLinkedEditingRanges(document, position)) ?? null);
}
