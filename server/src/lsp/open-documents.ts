import { URI, UriUtils } from 'langium';
import { DefaultDocumentUpdateHandler, type LangiumSharedServices } from 'langium/lsp';
import type { DidChangeWatchedFilesParams, FileSystemWatcher, TextDocumentChangeEvent } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { BuildScheduler } from './build-scheduler.js';
import type { IncludedFiles } from './included-files.js';
import type { WorkspaceFolders } from './workspace-folders.js';

/** Only what is open in the editor is built: again when its text changes, and when a file that it includes does. */
export class OpenDocumentsHandler extends DefaultDocumentUpdateHandler {
    /** Whether the editor tells what changes on the disk. */
    private watches = false;

    constructor(services: LangiumSharedServices, private readonly scheduler: BuildScheduler, private readonly included: IncludedFiles, private readonly folders: WorkspaceFolders) {
        super(services);
        services.lsp.LanguageServer.onInitialize(({ capabilities }) => {
            this.watches = capabilities.workspace?.didChangeWatchedFiles?.dynamicRegistration === true;
        });
    }

    override didChangeContent({ document }: TextDocumentChangeEvent<TextDocument>): void {
        if (!this.watches) {
            this.included.allChanged();
        }
        this.scheduler.change(UriUtils.normalize(document.uri));
        this.buildWhatIncludes(document.uri);
    }

    didCloseDocument({ document }: TextDocumentChangeEvent<TextDocument>): void {
        this.scheduler.forget(UriUtils.normalize(document.uri));
        this.included.closed(document.uri);
        this.fireDocumentUpdate([], [URI.parse(document.uri)]);
        this.buildWhatIncludes(document.uri);
    }

    override didChangeWatchedFiles({ changes }: DidChangeWatchedFilesParams): void {
        this.folders.filesChanged(changes);
        for (const { uri } of changes) {
            this.included.changed(uri);
            this.buildWhatIncludes(uri);
        }
    }

    protected override getWatchers(): FileSystemWatcher[] {
        return [{ globPattern: '**/*.padstone' }];
    }

    private buildWhatIncludes(uri: string): void {
        this.included.whatIncludes(uri).forEach(document => this.scheduler.change(document));
    }
}

/** False where a newer change cancelled the build. */
export async function buildDocuments(shared: LangiumSharedServices, uris: readonly string[]): Promise<boolean> {
    const { WorkspaceManager, WorkspaceLock, DocumentBuilder } = shared.workspace;
    let finished = false;
    try {
        await WorkspaceManager.ready;
        await WorkspaceLock.write(async cancellation => {
            await DocumentBuilder.update(uris.map(uri => URI.parse(uri)), [], cancellation);
            finished = true;
        });
    } catch (error) {
        // A defect of ours: the next change tries again, and the connection lives on.
        shared.lsp.Connection?.console.error(`Could not build ${uris.join(', ')}: ${String(error)}`);
        finished = true;
    }
    return finished;
}
