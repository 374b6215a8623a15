import { window, type ExtensionContext } from 'vscode';
import { registerCommands } from './commands.js';
import { PreviewPane } from './preview-pane.js';
import { Server, type CreateClient } from './server.js';
import { VerdictStatus } from './status.js';

let server: Server | undefined;

/** Everything that the desktop and the browser share; they differ in how the server is started. */
export async function startExtension(context: ExtensionContext, createClient: CreateClient): Promise<void> {
    const output = window.createOutputChannel('Padstone', { log: true });
    server = new Server(createClient, output);
    const status = new VerdictStatus();
    const preview = new PreviewPane(context.extensionUri, server);
    context.subscriptions.push(
        output, server, status, preview,
        server.onResults(notice => {
            status.notice(notice);
            preview.notice(notice);
        }),
        ...registerCommands(context.extensionUri, server, preview, output)
    );
    await server.start();
}

export async function stopExtension(): Promise<void> {
    await server?.stop();
}
