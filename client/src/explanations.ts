import { commands, Uri, type Disposable } from 'vscode';

/** The code of a finding leads to what is written about it. */
export function registerExplanations(extensionUri: Uri): Disposable {
    const page = Uri.joinPath(extensionUri, 'client', 'documentation', 'findings.md');
    return commands.registerCommand('padstone.explain', (code?: unknown) =>
        commands.executeCommand('markdown.showPreview', typeof code === 'string' ? page.with({ fragment: code }) : page));
}

/** What the server puts the code of a finding into. */
export const explanation = 'command:padstone.explain?%22{code}%22';
