/** The language server, the same in Node and in a web worker: its entry files bring the connection and the files. */
import type { FileSystemProvider, Module } from 'langium';
import { DocumentState } from 'langium';
import {
    addCodeActionHandler, addCodeLensHandler, addCompletionHandler, addConfigurationChangeHandler, addDocumentHighlightHandler, addDocumentLinkHandler,
    addDocumentSymbolHandler, addDocumentUpdateHandler, addFindReferencesHandler, addFoldingRangeHandler, addFormattingHandler, addGotoDefinitionHandler, addHoverHandler,
    addInlayHintHandler, addRenameHandler, addSemanticTokenHandler, addSignatureHelpHandler,
    type LangiumServices, type LangiumSharedServices, type TextDocuments, type PartialLangiumServices, type PartialLangiumSharedServices
} from 'langium/lsp';
import type { Connection } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { createPadstoneServices } from '../../../language/src/index.js';
import type { EditorOffer } from '../protocol.js';
import { NextSizes } from './actions/next-sizes.js';
import { AnyResults } from './any-results.js';
import { BuildScheduler } from './build-scheduler.js';
import { SheetLenses } from './code-lenses.js';
import { SectionTrial } from './completion/sections.js';
import { ComputedDocuments } from './computed-documents.js';
import { DisplaySetting } from './display-setting.js';
import { EditorCommands } from './editor-commands.js';
import { TextFormatter } from './formatting.js';
import { ResultHovers } from './hover/index.js';
import { IncludedFiles } from './included-files.js';
import { ResultHints } from './inlay-hints.js';
import { PadstoneLanguageServer } from './language-server.js';
import { LateCompletion } from './late-completion.js';
import { addNameHandlers } from './names/handlers.js';
import { Definitions, Highlights, References } from './names/navigation.js';
import { Renaming } from './names/rename.js';
import { WorkspaceNames } from './names/workspace-names.js';
import { NoWorkspaceManager } from './no-workspace.js';
import { OfferedFiles } from './offered-files.js';
import { buildDocuments, OpenDocumentsHandler } from './open-documents.js';
import { addOverviewHandlers } from './overview.js';
import { addPreviewHandlers } from './preview.js';
import { KnownWholes } from './later/known-wholes.js';
import { LaterResults } from './later/later-results.js';
import { progressOf } from './later/progress.js';
import { Publisher } from './publish.js';
import { PullDiagnostics } from './pull-diagnostics.js';
import { QuickFixes } from './quick-fixes.js';
import { ResultsValidator } from './results-validator.js';
import { SettledDocumentBuilder } from './settled-builder.js';
import { Signatures } from './signature-help.js';
import { SnapshotDocumentFactory } from './snapshot-factory.js';
import { IncludeLinks } from './structure/document-links.js';
import { Outline } from './structure/document-symbols.js';
import { Folding } from './structure/folding.js';
import { NameColours } from './structure/semantic-tokens.js';
import { WorkspaceFolders } from './workspace-folders.js';

export function startServer(connection: Connection, disk: FileSystemProvider): void {
    const files = new OfferedFiles(disk, connection);
    const folders = new WorkspaceFolders(files);
    const computed = new ComputedDocuments();
    const commands = new EditorCommands();
    const display = new DisplaySetting();
    const scheduler: BuildScheduler = new BuildScheduler(
        uris => buildDocuments(shared, uris),
        () => shared.workspace.WorkspaceLock.cancelWrite(),
        uri => later.changed(uri)
    );
    const publisher = new Publisher(connection, computed);
    const wholes = new KnownWholes();
    const later = new LaterResults(computed, wholes, uri => publisher.send(uri), progressOf(connection), (uri, error) => {
        connection.console.error(`Break-evens, proof loads and options of ${uri} could not be worked out, which is a defect of Padstone: ${String(error)}`);
    }, () => !scheduler.isIdle);
    const included: IncludedFiles = new IncludedFiles(() => shared, files);
    const names = new WorkspaceNames(included, folders);
    const { shared, padstone } = createPadstoneServices(
        { connection, fileSystemProvider: () => disk }, languageModule(open => new ResultsValidator(computed, open, included, wholes, later), computed, names, commands, display, new NextSizes(() => shared, included)), sharedModule(scheduler, included, folders));
    connection.onInitialize(params => {
        const offer = params.initializationOptions as EditorOffer | undefined;
        files.offer(offer);
        commands.offer(offer);
        pull.start(offer);
        folders.initialize(params);
        return shared.lsp.LanguageServer.initialize(params);
    });
    const results = new AnyResults(shared, computed, included);
    const pull = new PullDiagnostics(results, names, folders);
    publisher.listen(shared);
    display.follow(shared, () => publisher.again(shared.workspace.TextDocuments.all().map(({ uri }) => uri)));
    pull.addTo(connection);
    addOverviewHandlers(connection, results, folders);
    addHandlers(connection, shared, new SectionTrial(shared, included));
    addPreviewHandlers(connection, shared, computed, later, display);
    addNameHandlers(connection, shared, padstone, names);
    connection.onInitialized(params => {
        shared.lsp.LanguageServer.initialized(params);
        connection.workspace.onDidChangeWorkspaceFolders(change => folders.foldersChanged(change));
    });
    connection.listen();
}

/** What the server knows about one document. */
function languageModule(
    validator: (open: TextDocuments<TextDocument>) => ResultsValidator, computed: ComputedDocuments, names: WorkspaceNames, commands: EditorCommands, display: DisplaySetting, sizes: NextSizes
): Module<LangiumServices, PartialLangiumServices> {
    return {
        validation: {
            DocumentValidator: services => validator(services.shared.workspace.TextDocuments)
        },
        lsp: {
            InlayHintProvider: () => new ResultHints(computed, commands, display),
            HoverProvider: () => new ResultHovers(computed, names, display),
            CodeActionProvider: () => new QuickFixes(computed, sizes),
            Formatter: () => new TextFormatter(),
            CompletionProvider: services => new LateCompletion(services, names, computed),
            DefinitionProvider: () => new Definitions(names),
            ReferencesProvider: () => new References(names),
            DocumentHighlightProvider: () => new Highlights(names),
            RenameProvider: services => new Renaming(names, services.Grammar),
            DocumentLinkProvider: () => new IncludeLinks(names),
            DocumentSymbolProvider: () => new Outline(),
            FoldingRangeProvider: services => new Folding(services),
            SemanticTokenProvider: services => new NameColours(services),
            CodeLensProvider: () => new SheetLenses(commands),
            SignatureHelp: services => new Signatures(services, names)
        }
    };
}

/** When documents are built, and from what. */
function sharedModule(scheduler: BuildScheduler, included: IncludedFiles, folders: WorkspaceFolders): Module<LangiumSharedServices, PartialLangiumSharedServices> {
    return {
        lsp: {
            DocumentUpdateHandler: services => new OpenDocumentsHandler(services, scheduler, included, folders),
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

function addHandlers(connection: Connection, shared: LangiumSharedServices, sections: SectionTrial): void {
    addDocumentUpdateHandler(connection, shared);
    addConfigurationChangeHandler(connection, shared);
    addInlayHintHandler(connection, shared, DocumentState.Validated);
    addHoverHandler(connection, shared, DocumentState.Validated);
    addCodeActionHandler(connection, shared, DocumentState.Validated);
    addCompletionHandler(connection, shared);
    connection.onCompletionResolve(item => sections.resolve(item));
    addDocumentSymbolHandler(connection, shared);
    addGotoDefinitionHandler(connection, shared);
    // Langium would wait for the state of the workspace here, and answer about an older text.
    addFindReferencesHandler(connection, shared, DocumentState.IndexedReferences);
    addDocumentHighlightHandler(connection, shared, DocumentState.IndexedReferences);
    addRenameHandler(connection, shared, DocumentState.IndexedReferences);
    addFoldingRangeHandler(connection, shared);
    addFormattingHandler(connection, shared);
    addDocumentLinkHandler(connection, shared);
    addCodeLensHandler(connection, shared, DocumentState.Parsed);
    addSemanticTokenHandler(connection, shared);
    addSignatureHelpHandler(connection, shared, DocumentState.Parsed);
    shared.workspace.TextDocuments.listen(connection);
}
