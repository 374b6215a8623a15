/** A client of the built server over a real pipe, as an editor is one. */
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
    createProtocolConnection, DidChangeTextDocumentNotification, DidCloseTextDocumentNotification, DidOpenTextDocumentNotification,
    ExitNotification, InitializedNotification, InitializeRequest, InlayHintRequest, PublishDiagnosticsNotification, RegistrationRequest, ShutdownRequest,
    StreamMessageReader, StreamMessageWriter,
    type ClientCapabilities, type InitializeParams, type InitializeResult, type InlayHint, type MessageReader, type MessageWriter, type ProtocolConnection, type PublishDiagnosticsParams, type Registration, type TextDocumentContentChangeEvent
} from 'vscode-languageserver/node';
import { resultsNotification, type ResultsNotice } from '../../server/src/protocol.js';

const bundle = fileURLToPath(new URL('../../dist/server.cjs', import.meta.url));

export class Client {
    readonly diagnostics: PublishDiagnosticsParams[] = [];
    readonly notices: ResultsNotice[] = [];
    /** What the server asked to be told of. */
    readonly registrations: Registration[] = [];
    private readonly waiters = new Set<() => void>();

    private constructor(readonly connection: ProtocolConnection, private readonly exit: Promise<number | null>, readonly initialized: InitializeResult) {
        connection.onRequest(RegistrationRequest.type, ({ registrations }) => registrations.forEach(registration => this.record(this.registrations, registration)));
        connection.onNotification(PublishDiagnosticsNotification.type, params => this.record(this.diagnostics, params));
        connection.onNotification(resultsNotification, (notice: ResultsNotice) => this.record(this.notices, notice));
    }

    /** The server as a process of its own, over its standard input and output, started as the extension does. */
    static start(capabilities: ClientCapabilities = {}, program = bundle, more: Partial<InitializeParams> = {}): Promise<Client> {
        if (!existsSync(program)) {
            throw new Error(`${program} is missing: run \`npm run build\` first`);
        }
        const server = spawn(process.execPath, ['--min-semi-space-size=64', '--max-semi-space-size=64', program, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
        const exit = new Promise<number | null>(resolve => server.once('exit', resolve));
        return Client.connect(new StreamMessageReader(server.stdout), new StreamMessageWriter(server.stdin), exit, capabilities, more);
    }

    static async connect(reader: MessageReader, writer: MessageWriter, exit: Promise<number | null>, capabilities: ClientCapabilities = {}, more: Partial<InitializeParams> = {}): Promise<Client> {
        const connection = createProtocolConnection(reader, writer);
        connection.listen();
        const initialized = await connection.sendRequest(InitializeRequest.type, { processId: process.pid, rootUri: null, capabilities, ...more });
        const client = new Client(connection, exit, initialized);
        await connection.sendNotification(InitializedNotification.type, {});
        return client;
    }

    /** Asks the server to end, and gives its exit code. */
    async stop(): Promise<number | null> {
        await this.connection.sendRequest(ShutdownRequest.type);
        await this.connection.sendNotification(ExitNotification.type);
        const code = await this.exit;
        this.connection.dispose();
        return code;
    }

    open(uri: string, text: string, version = 1): Promise<void> {
        return this.connection.sendNotification(DidOpenTextDocumentNotification.type, { textDocument: { uri, languageId: 'padstone', version, text } });
    }

    change(uri: string, version: number, ...contentChanges: TextDocumentContentChangeEvent[]): Promise<void> {
        return this.connection.sendNotification(DidChangeTextDocumentNotification.type, { textDocument: { uri, version }, contentChanges });
    }

    close(uri: string): Promise<void> {
        return this.connection.sendNotification(DidCloseTextDocumentNotification.type, { textDocument: { uri } });
    }

    async hints(uri: string): Promise<InlayHint[]> {
        const range = { start: { line: 0, character: 0 }, end: { line: 100_000, character: 0 } };
        return await this.connection.sendRequest(InlayHintRequest.type, { textDocument: { uri }, range }) ?? [];
    }

    /** Hints as `line: label`, lines from 0. */
    async hintLabels(uri: string): Promise<string[]> {
        return (await this.hints(uri)).map(({ position, label }) => `${position.line}: ${String(label)}`);
    }

    diagnosticsOf(uri: string, version: number): Promise<PublishDiagnosticsParams> {
        return this.when(() => this.diagnostics.find(params => params.uri === uri && params.version === version));
    }

    noticeOf(uri: string, version: number): Promise<ResultsNotice> {
        return this.when(() => this.notices.find(notice => notice.uri === uri && notice.version === version));
    }

    /** What the server has sent, or will have. */
    when<T>(find: () => T | undefined): Promise<T> {
        return new Promise(resolve => {
            const look = (): void => {
                const found = find();
                if (found !== undefined) {
                    this.waiters.delete(look);
                    resolve(found);
                }
            };
            this.waiters.add(look);
            look();
        });
    }

    private record<T>(list: T[], item: T): void {
        list.push(item);
        [...this.waiters].forEach(look => look());
    }
}
