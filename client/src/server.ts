import { EventEmitter, l10n, Uri, workspace, type Disposable, type OutputChannel } from 'vscode';
import { InlayHintRequest, type BaseLanguageClient, type LanguageClientOptions } from 'vscode-languageclient';
import {
    calculationRequest, jobsRequest, overviewRequest, previewRequest, readDirectoryRequest, readFileRequest, resultsNotification, sheetRequest,
    type EditorOffer, type Overview, type Preview, type ReadParams, type ResultsNotice, type Sheet
} from '../../server/src/protocol.js';
import { readDirectory, readFile } from './editor-files.js';
import { explanation } from './explanations.js';

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
        if (change.affectsConfiguration('padstone.lenses.enabled') || change.affectsConfiguration('padstone.diagnostics.wholeFolder')) {
            void this.restart();
        }
    });

    /** `commands` are those that lenses and hints of the server may lead to. */
    constructor(private readonly createClient: CreateClient, private readonly output: OutputChannel, private readonly commands: readonly string[]) {}

    async start(): Promise<void> {
        this.client = this.createClient({
            documentSelector: [{ language: 'padstone' }],
            outputChannel: this.output,
            synchronize: { fileEvents: this.files },
            initializationOptions: this.offer(),
            middleware: {
                provideInlayHints: (document, range, token, next) => hintsWanted() ? next(document, range, token) : []
            }
        });
        this.client.onNotification(resultsNotification, (notice: ResultsNotice) => this.results.fire(notice));
        this.client.onRequest(readFileRequest, ({ uri }: ReadParams) => readFile(uri));
        this.client.onRequest(readDirectoryRequest, ({ uri }: ReadParams) => readDirectory(uri));
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

    /** @throws where the server does not answer, or cannot read the file */
    overview(uri: Uri): Promise<Overview> {
        return this.request<Overview>(overviewRequest, uri);
    }

    /** One check as Markdown; undefined where there is none of this id. */
    async calculation(uri: Uri, id: string): Promise<string | undefined> {
        const params = { uri: this.running.code2ProtocolConverter.asUri(uri), id };
        return await withinLimit(this.running.sendRequest<string | null>(calculationRequest, params)) ?? undefined;
    }

    /** Addresses of the calculations in the folders of the workspace. */
    jobs(): Promise<readonly string[]> {
        return withinLimit(this.running.sendRequest<readonly string[]>(jobsRequest));
    }

    dispose(): void {
        this.files.dispose();
        this.settings.dispose();
        this.results.dispose();
    }

    private async request<Answer>(method: string, uri: Uri): Promise<Answer> {
        const params = { uri: this.running.code2ProtocolConverter.asUri(uri) };
        const answer = await withinLimit(this.running.sendRequest<Answer | null>(method, params));
        if (answer === null) {
            throw new Error(l10n.t('The Padstone server does not know this file.'));
        }
        return answer;
    }

    /** @throws where there is none */
    private get running(): BaseLanguageClient {
        if (this.client === undefined) {
            throw new Error(l10n.t('The Padstone server is not running.'));
        }
        return this.client;
    }

    private offer(): EditorOffer {
        const settings = workspace.getConfiguration('padstone');
        return {
            files: true,
            commands: this.commands,
            lenses: settings.get('lenses.enabled', true),
            documentation: explanation,
            wholeFolder: settings.get('diagnostics.wholeFolder', true)
        };
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
        timer = setTimeout(() => reject(new Error(l10n.t('The Padstone server does not answer.'))), answerLimit);
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
