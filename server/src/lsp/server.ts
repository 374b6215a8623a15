/** The language server, the same in Node and in a web worker: its entry files bring the connection and the files. */
import type { Module } from 'langium';
import { DocumentState } from 'langium';
import {
    addCodeActionHandler, addCompletionHandler, addConfigurationChangeHandler, addDocumentHighlightHandler, addDocumentSymbolHandler,
    addDocumentUpdateHandler, addFindReferencesHandler, addFoldingRangeHandler, addFormattingHandler, addGotoDefinitionHandler, addHoverHandler,
    addInlayHintHandler, addRenameHandler,
    type DefaultSharedModuleContext, type LangiumServices, type LangiumSharedServices, type PartialLangiumServices, type PartialLangiumSharedServices
} from 'langium/lsp';
import type { Connection } from 'vscode-languageserver';
import { createPadstoneServices } from '../../../language/src/index.js';
import { BuildScheduler } from './build-scheduler.js';
import { ComputedDocuments } from './computed-documents.js';
import { TextFormatter } from './formatting.js';
import { ResultHovers } from './hover/index.js';
import { IncludedFiles } from './included-files.js';
import { ResultHints } from './inlay-hints.js';
import { PadstoneLanguageServer } from './language-server.js';
import { LateCompletion } from './late-completion.js';
import { NoWorkspaceManager } from './no-workspace.js';
import { buildDocuments, OpenDocumentsHandler } from './open-documents.js';
import { addPreviewHandlers } from './preview.js';
import { publishResults } from './publish.js';
import { QuickFixes } from './quick-fixes.js';
import { ResultsValidator } from './results-validator.js';
import { SettledDocumentBuilder } from './settled-builder.js';
import { SnapshotDocumentFactory } from './snapshot-factory.js';

type Files = Pick<DefaultSharedModuleContext, 'fileSystemProvider'>;

export function startServer(connection: Connection, files: Files): void {
    const computed = new ComputedDocuments();
    const scheduler: BuildScheduler = new BuildScheduler(
        uris => buildDocuments(shared, uris),
        () => shared.workspace.WorkspaceLock.cancelWrite()
    );
    const included: IncludedFiles = new IncludedFiles(() => shared);
    const { shared } = createPadstoneServices({ connection, ...files }, languageModule(computed, included), sharedModule(scheduler, included));
    publishResults(connection, shared, computed);
    addHandlers(connection, shared, computed);
    connection.listen();
}

/** What the server knows about one document. */
function languageModule(computed: ComputedDocuments, included: IncludedFiles): Module<LangiumServices, PartialLangiumServices> {
    return {
        validation: {
            DocumentValidator: services => new ResultsValidator(computed, services.shared.workspace.TextDocuments, included)
        },
        lsp: {
            InlayHintProvider: () => new ResultHints(computed),
            HoverProvider: () => new ResultHovers(computed),
            CodeActionProvider: () => new QuickFixes(computed),
            Formatter: () => new TextFormatter(),
            CompletionProvider: services => new LateCompletion(services)
        }
    };
}

/** When documents are built, and from what. */
function sharedModule(scheduler: BuildScheduler, included: IncludedFiles): Module<LangiumSharedServices, PartialLangiumSharedServices> {
    return {
        lsp: {
            DocumentUpdateHandler: services => new OpenDocumentsHandler(services, scheduler, included),
            LanguageServer: services => new PadstoneLanguageServer(services),
            WorkspaceSymbolProvider: () => undefined
        },
        workspace: {
            DocumentBuilder: services => new SettledDocumentBuilder(services, scheduler),
            LangiumDocumentFactory: services => new SnapshotDocumentFactory(services),
            WorkspaceManager: services => new NoWorkspaceManager(services)
        }
    };
}

function addHandlers(connection: Connection, shared: LangiumSharedServices, computed: ComputedDocuments): void {
    addDocumentUpdateHandler(connection, shared);
    addConfigurationChangeHandler(connection, shared);
    addInlayHintHandler(connection, shared, DocumentState.Validated);
    addHoverHandler(connection, shared, DocumentState.Validated);
    addCodeActionHandler(connection, shared, DocumentState.Validated);
    addPreviewHandlers(connection, shared, computed);
    addCompletionHandler(connection, shared);
    addDocumentSymbolHandler(connection, shared);
    addGotoDefinitionHandler(connection, shared);
    // Langium would wait for the state of the workspace here, and answer about an older text.
    addFindReferencesHandler(connection, shared, DocumentState.IndexedReferences);
    addDocumentHighlightHandler(connection, shared, DocumentState.IndexedReferences);
    addRenameHandler(connection, shared, DocumentState.IndexedReferences);
    addFoldingRangeHandler(connection, shared);
    addFormattingHandler(connection, shared);
    connection.onInitialize(params => shared.lsp.LanguageServer.initialize(params));
    connection.onInitialized(params => shared.lsp.LanguageServer.initialized(params));
    shared.workspace.TextDocuments.listen(connection);
}
