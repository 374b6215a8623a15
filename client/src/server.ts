import { EventEmitter, Uri, workspace, type Disposable, type OutputChannel } from 'vscode';
import { InlayHintRequest, type BaseLanguageClient, type LanguageClientOptions } from 'vscode-languageclient';
import { previewRequest, resultsNotification, sheetRequest, type Preview, type ResultsNotice, type Sheet } from '../../server/src/protocol.js';

/** ms. */
const answerLimit = 10_000;

export type CreateClient = (options: LanguageClientOptions) => BaseLanguageClient;

/** The connection to the language server, which may be started anew. */
export class Server implements Disposable {
    private client: BaseLanguageClient | undefined;
    private readonly results = new EventEmitter<ResultsNotice>();
    readonly onResults = this.results.event;
    private readonly files = workspace.createFileSystemWatcher('**/*.padstone');
    private readonly settings = workspace.onDidChangeConfiguration(change => {
        if (change.affectsConfiguration('padstone.hints.enabled')) {
            this.refreshHints();
        }
    });

    constructor(private readonly createClient: CreateClient, private readonly output: OutputChannel) {}

    async start(): Promise<void> {
        this.client = this.createClient({
            documentSelector: [{ language: 'padstone' }],
            outputChannel: this.output,
            synchronize: { fileEvents: this.files },
            middleware: {
                provideInlayHints: (document, range, token, next) => hintsWanted() ? next(document, range, token) : []
            }
        });
        this.client.onNotification(resultsNotification, (notice: ResultsNotice) => this.results.fire(notice));
        await this.client.start();
    }

    async stop(): Promise<void> {
        const client = this.client;
        this.client = undefined;
        await client?.stop();
    }

    async restart(): Promise<void> {
        try {
            await this.stop();
        } catch (error) {
            // A server that hangs or has crashed cannot be stopped in order: that is why it is started anew.
            this.output.appendLine(`The server did not stop in order: ${String(error)}`);
        }
        await this.start();
    }

    /** @throws where the server does not answer, or does not know the file */
    preview(uri: Uri): Promise<Preview> {
        return this.request<Preview>(previewRequest, uri);
    }

    /** @throws where the server does not answer, or does not know the file */
    sheet(uri: Uri): Promise<Sheet> {
        return this.request<Sheet>(sheetRequest, uri);
    }

    dispose(): void {
        this.files.dispose();
        this.settings.dispose();
        this.results.dispose();
    }

    private async request<Answer>(method: string, uri: Uri): Promise<Answer> {
        if (this.client === undefined) {
            throw new Error('The Padstone server is not running.');
        }
        const params = { uri: this.client.code2ProtocolConverter.asUri(uri) };
        const answer = await withinLimit(this.client.sendRequest<Answer | null>(method, params));
        if (answer === null) {
            throw new Error('The Padstone server does not know this file.');
        }
        return answer;
    }

    private refreshHints(): void {
        const feature = this.client?.getFeature(InlayHintRequest.method);
        for (const document of workspace.textDocuments) {
            feature?.getProvider(document)?.onDidChangeInlayHints.fire();
        }
    }
}

/** A server that hangs must not make the views wait for ever. */
async function withinLimit<Answer>(request: Promise<Answer>): Promise<Answer> {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const limit = new Promise<never>((_resolve, reject) => {
        timer = setTimeout(() => reject(new Error('The Padstone server does not answer.')), answerLimit);
    });
    try {
        return await Promise.race([request, limit]);
    } finally {
        clearTimeout(timer);
    }
}

function hintsWanted(): boolean {
    return workspace.getConfiguration('padstone').get('hints.enabled', true);
}
