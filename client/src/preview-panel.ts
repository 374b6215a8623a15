import { Uri, ViewColumn, window, workspace, Range, type Disposable, type WebviewPanel } from 'vscode';
import type { FromPage, ToPage } from '../preview/messages.js';
import { newNonce, previewPage } from './preview-page.js';
import type { Server } from './server.js';
import { Throttle } from './throttle.js';

/** ms between two refreshes while the text changes. */
const refreshInterval = 100;

/** One document in one webview panel. The page is thrown away while it is hidden, and asks anew when it is shown. */
export class PreviewPanel implements Disposable {
    /** The line that a click in the page has just sent the cursor to: the page need not follow it. */
    private revealed: number | undefined;
    private readonly throttle = new Throttle(() => this.refresh(), refreshInterval);

    constructor(readonly panel: WebviewPanel, private readonly extensionUri: Uri, private readonly server: Server, private document: Uri) {
        panel.webview.options = { enableScripts: true, localResourceRoots: [Uri.joinPath(extensionUri, 'dist')] };
        panel.iconPath = Uri.joinPath(extensionUri, 'client', 'media', 'padstone.svg');
        panel.webview.onDidReceiveMessage((message: FromPage) => this.receive(message));
        this.load();
    }

    get uri(): Uri {
        return this.document;
    }

    /** Shows another document. */
    follow(uri: Uri): void {
        if (uri.toString() !== this.document.toString()) {
            this.document = uri;
            this.load();
        }
    }

    /** What is shown is out of date from now on; the server says when it has the results. */
    textChanged(): void {
        this.post({ type: 'changed' });
    }

    /** The server has new results: of a new text, or of the same one with an included file that has changed. */
    resultsChanged(): void {
        this.throttle.request();
    }

    cursorMoved(line: number): void {
        if (line !== this.revealed) {
            this.post({ type: 'cursor', line });
        }
        this.revealed = undefined;
    }

    dispose(): void {
        this.throttle.dispose();
    }

    private load(): void {
        this.panel.title = `Preview ${this.document.path.split('/').at(-1) ?? ''}`;
        const script = this.panel.webview.asWebviewUri(Uri.joinPath(this.extensionUri, 'dist', 'preview.js')).toString();
        this.panel.webview.html = previewPage({ nonce: newNonce(), script, uri: this.document.toString() });
    }

    private receive(message: FromPage): void {
        switch (message.type) {
            case 'ready':
                this.throttle.request();
                break;
            case 'reveal':
                void this.reveal(message.line);
                break;
        }
    }

    private async reveal(line: number): Promise<void> {
        this.revealed = line;
        const open = window.visibleTextEditors.find(editor => editor.document.uri.toString() === this.document.toString());
        await window.showTextDocument(this.document, {
            viewColumn: open?.viewColumn ?? (this.panel.viewColumn === ViewColumn.One ? ViewColumn.Beside : ViewColumn.One),
            selection: new Range(line - 1, 0, line - 1, 0)
        });
    }

    private async refresh(): Promise<void> {
        const uri = this.document;
        if (!this.panel.visible) {
            return;
        }
        try {
            const document = await workspace.openTextDocument(uri);
            const { html, css, stale, version } = await this.server.preview(uri);
            if (uri === this.document) {
                this.post({ type: 'render', html, css, stale, current: stale !== undefined || version === document.version });
            }
        } catch (error) {
            this.post({ type: 'failed', reason: error instanceof Error ? error.message : String(error) });
        }
    }

    private post(message: ToPage): void {
        void this.panel.webview.postMessage(message);
    }
}
