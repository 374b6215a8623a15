import { Uri, type ExtensionContext } from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node.js';
import { startExtension, stopExtension } from './extension.shared.js';

/** A keystroke's numbers die young: with room for them the collector is seldom in its way. */
const roomy = ['--min-semi-space-size=64', '--max-semi-space-size=64'];

/** On the desktop and in a remote: the server is a process of its own. */
export function activate(context: ExtensionContext): Promise<void> {
    const module = Uri.joinPath(context.extensionUri, 'dist', 'server.cjs').fsPath;
    const transport = TransportKind.ipc;
    return startExtension(context, options => new LanguageClient('padstone', 'Padstone', {
        run: { module, transport, options: { execArgv: roomy } },
        debug: { module, transport, options: { execArgv: [...roomy, '--nolazy', '--inspect=6009'] } }
    }, options), {
        executable: process.execPath,
        // The desktop's own runtime is Node only when it is told to be.
        env: { ELECTRON_RUN_AS_NODE: '1' },
        script: Uri.joinPath(context.extensionUri, 'dist', 'padstone.cjs').fsPath
    });
}

export const deactivate = stopExtension;
