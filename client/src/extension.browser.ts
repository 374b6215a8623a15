import { Uri, type ExtensionContext } from 'vscode';
import { LanguageClient, State } from 'vscode-languageclient/browser.js';
import { startExtension, stopExtension } from './extension.shared.js';

/** In a VS Code that is a web page: the server is a worker. */
export function activate(context: ExtensionContext): Promise<void> {
    const script = Uri.joinPath(context.extensionUri, 'dist', 'server.web.js').toString(true);
    return startExtension(context, options => {
        const worker = new Worker(script);
        const client = new LanguageClient('padstone', 'Padstone', options, worker);
        client.onDidChangeState(change => {
            if (change.newState === State.Stopped) {
                worker.terminate();
            }
        });
        return client;
    });
}

export const deactivate = stopExtension;
