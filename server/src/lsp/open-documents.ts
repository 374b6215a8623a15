import { URI, UriUtils } from 'langium';
import { DefaultDocumentUpdateHandler, type LangiumSharedServices } from 'langium/lsp';
import type { TextDocumentChangeEvent } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { BuildScheduler } from './build-scheduler.js';

/** Only what is open in the editor is built: a job is one file, and what it includes is not read by this version. */
export class OpenDocumentsHandler extends DefaultDocumentUpdateHandler {
    constructor(services: LangiumSharedServices, private readonly scheduler: BuildScheduler) {
        super(services);
    }

    override didChangeContent({ document }: TextDocumentChangeEvent<TextDocument>): void {
        this.scheduler.change(UriUtils.normalize(document.uri));
    }

    didCloseDocument({ document }: TextDocumentChangeEvent<TextDocument>): void {
        this.scheduler.forget(UriUtils.normalize(document.uri));
        this.fireDocumentUpdate([], [URI.parse(document.uri)]);
    }

    override didChangeWatchedFiles(): void { }

    protected override getWatchers(): [] {
        return [];
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
