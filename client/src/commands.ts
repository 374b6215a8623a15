import { commands, env, l10n, Range, Uri, window, workspace, type Disposable, type OutputChannel } from 'vscode';
import type { CalculationTasks } from './calculation-tasks.js';
import type { PreviewPane } from './preview-pane.js';
import type { Server } from './server.js';
import { templates } from './templates.js';
import { parseUri } from './uri.js';

export function registerCommands(extensionUri: Uri, server: Server, preview: PreviewPane, output: OutputChannel, tasks?: CalculationTasks): Disposable[] {
    /** Menus hand over the file that they stand at; from the palette it is the active one. */
    const withJob = (action: (job: Uri, line?: number) => unknown) => (from?: Uri | string, line?: unknown) => {
        // A lens or a hint hands over an address and a line.
        const clicked = typeof from === 'string' ? parseUri(from) : from;
        const editor = window.activeTextEditor?.document;
        const job = clicked instanceof Uri && (clicked.scheme === 'untitled' || clicked.path.endsWith('.padstone')) ? clicked
            : preview.focused ?? (editor?.languageId === 'padstone' ? editor.uri : undefined);
        return job === undefined ? window.showInformationMessage(l10n.t('Open a .padstone file first.')) : action(job, typeof line === 'number' ? line : undefined);
    };
    return [
        commands.registerCommand('padstone.openPreview', withJob((job, line) => openPreview(preview, job, line))),
        commands.registerCommand('padstone.exportHtml', withJob(job => exportHtml(server, job))),
        ...tasks ? [commands.registerCommand('padstone.runBreakEven', withJob(job => tasks.breakEvens(job)))] : [],
        commands.registerCommand('padstone.newJob', () => newJob(extensionUri)),
        commands.registerCommand('padstone.restartServer', () => server.restart()),
        commands.registerCommand('padstone.showOutput', () => output.show())
    ];
}

/** The pane follows the cursor: to a line it is led by it. */
async function openPreview(preview: PreviewPane, job: Uri, line: number | undefined): Promise<void> {
    preview.open(job);
    const editor = window.visibleTextEditors.find(({ document }) => document.uri.toString() === job.toString());
    if (line !== undefined && editor !== undefined) {
        await window.showTextDocument(editor.document, { viewColumn: editor.viewColumn, selection: new Range(line - 1, 0, line - 1, 0) });
    }
}

async function exportHtml(server: Server, job: Uri): Promise<void> {
    const folder = job.scheme === 'untitled' ? workspace.workspaceFolders?.[0]?.uri : Uri.joinPath(job, '..');
    const name = `${(job.path.split('/').at(-1) ?? 'sheet').replace(/\.padstone$/, '')}.html`;
    const target = await window.showSaveDialog({
        title: l10n.t('Export the sheet as HTML'),
        defaultUri: folder && Uri.joinPath(folder, name),
        filters: { [l10n.t('HTML page')]: ['html'] }
    });
    if (target === undefined) {
        return;
    }
    // Opened so that the server has the text, even when no editor shows it.
    const document = await workspace.openTextDocument(job);
    const { html } = await server.sheet(document.uri);
    await workspace.fs.writeFile(target, new TextEncoder().encode(html));
    const open = l10n.t('Open');
    const answer = await window.showInformationMessage(l10n.t('The sheet is in {0}.', target.path.split('/').at(-1) ?? ''), open);
    if (answer === open) {
        await env.openExternal(target);
    }
}

async function newJob(extensionUri: Uri): Promise<void> {
    const template = await window.showQuickPick(templates.map(template => ({ ...template, label: l10n.t(template.label), detail: l10n.t(template.detail) })), { title: l10n.t('New job'), placeHolder: l10n.t('What is it about?'), matchOnDetail: true });
    if (template !== undefined) {
        const bytes = await workspace.fs.readFile(Uri.joinPath(extensionUri, 'client', 'templates', template.file));
        const content = new TextDecoder().decode(bytes);
        await window.showTextDocument(await workspace.openTextDocument({ language: 'padstone', content }));
    }
}
