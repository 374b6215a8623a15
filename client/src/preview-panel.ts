import { Uri, ViewColumn, window, workspace, Range, type Disposable, type WebviewPanel } from 'vscode';
import type { FromPage, ToPage } from '../preview/messages.js';
import { Freshness } from './freshness.js';
import { previewPage } from './preview-page.js';
import type { Server } from './server.js';
import { Throttle } from './throttle.js';

/** ms between two refreshes while the text changes. */
const refreshInterval = 300;

/** One document in one webview panel. The page is thrown away while it is hidden, and asks anew when it is shown. */
export class PreviewPanel implements Disposable {
    private freshness = new Freshness();
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

    textChanged(): void {
        this.post({ type: 'changed' });
        this.throttle.request();
    }

    /** The server has results for this version of the text. */
    resultsChanged(version: number): void {
        this.freshness.notice(version);
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
        this.panel.webview.html = previewPage(this.panel.webview, this.extensionUri, this.document);
    }

    private receive(message: FromPage): void {
        switch (message.type) {
            case 'ready':
                this.freshness = new Freshness();
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
            viewColumn: open?.viewColumn ?? ViewColumn.One,
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
            const asked = document.version;
            if (this.freshness.has(asked)) {
                return;
            }
            const preview = await this.server.preview(uri);
            if (uri !== this.document) {
                return;
            }
            // An older version without a reason: the server has not read the newest text yet; its notice follows.
            const answered = preview.version === asked || preview.stale !== undefined;
            if (answered) {
                this.freshness.showing(asked);
            }
            const current = answered && document.version === asked;
            this.post({ type: 'render', html: preview.html, css: preview.css, stale: preview.stale, current });
        } catch (error) {
            this.freshness = new Freshness();
            this.post({ type: 'failed', reason: error instanceof Error ? error.message : String(error) });
        }
    }

    private post(message: ToPage): void {
        void this.panel.webview.postMessage(message);
    }
}
