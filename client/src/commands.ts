import { commands, env, Uri, window, workspace, type Disposable, type OutputChannel } from 'vscode';
import type { PreviewPane } from './preview-pane.js';
import type { Server } from './server.js';
import { templates } from './templates.js';

export function registerCommands(extensionUri: Uri, server: Server, preview: PreviewPane, output: OutputChannel): Disposable[] {
    /** Menus hand over the file that they stand at; from the palette it is the active one. */
    const withJob = (action: (job: Uri) => unknown) => (clicked?: Uri) => {
        const editor = window.activeTextEditor?.document;
        const job = clicked instanceof Uri && clicked.path.endsWith('.padstone') ? clicked
            : preview.focused ?? (editor?.languageId === 'padstone' ? editor.uri : undefined);
        return job === undefined ? window.showInformationMessage('Open a .padstone file first.') : action(job);
    };
    return [
        commands.registerCommand('padstone.openPreview', withJob(job => preview.open(job))),
        commands.registerCommand('padstone.exportHtml', withJob(job => exportHtml(server, job))),
        commands.registerCommand('padstone.newJob', () => newJob(extensionUri)),
        commands.registerCommand('padstone.restartServer', () => server.restart()),
        commands.registerCommand('padstone.showOutput', () => output.show())
    ];
}

async function exportHtml(server: Server, job: Uri): Promise<void> {
    const folder = job.scheme === 'untitled' ? workspace.workspaceFolders?.[0]?.uri : Uri.joinPath(job, '..');
    const name = `${(job.path.split('/').at(-1) ?? 'sheet').replace(/\.padstone$/, '')}.html`;
    const target = await window.showSaveDialog({
        title: 'Export the sheet as HTML',
        defaultUri: folder && Uri.joinPath(folder, name),
        filters: { 'HTML page': ['html'] }
    });
    if (target === undefined) {
        return;
    }
    // Opened so that the server has the text, even when no editor shows it.
    const document = await workspace.openTextDocument(job);
    const { html } = await server.sheet(document.uri);
    await workspace.fs.writeFile(target, new TextEncoder().encode(html));
    const answer = await window.showInformationMessage(`The sheet is in ${target.path.split('/').at(-1)}.`, 'Open');
    if (answer === 'Open') {
        await env.openExternal(target);
    }
}

async function newJob(extensionUri: Uri): Promise<void> {
    const template = await window.showQuickPick(templates, { title: 'New job', placeHolder: 'What is it about?', matchOnDetail: true });
    if (template !== undefined) {
        const bytes = await workspace.fs.readFile(Uri.joinPath(extensionUri, 'client', 'templates', template.file));
        const content = new TextDecoder().decode(bytes);
        await window.showTextDocument(await workspace.openTextDocument({ language: 'padstone', content }));
    }
}
