import { ViewColumn, window, workspace, type Disposable, type TextDocument, type Uri, type WebviewPanel, type WebviewPanelSerializer } from 'vscode';
import type { ResultsNotice } from '../../server/src/protocol.js';
import type { PageState } from '../preview/messages.js';
import { PreviewPanel } from './preview-panel.js';
import type { Server } from './server.js';
import { parseUri, sameUri } from './uri.js';

const viewType = 'padstone.preview';

/** The preview pane: one for the window, of the job last worked at, back again after a reload of the window. */
export class PreviewPane implements Disposable, WebviewPanelSerializer<PageState> {
    private shown: PreviewPanel | undefined;
    private readonly subscriptions: readonly Disposable[];

    constructor(private readonly extensionUri: Uri, private readonly server: Server) {
        this.subscriptions = [
            window.registerWebviewPanelSerializer(viewType, this),
            workspace.onDidChangeTextDocument(change => this.panelOf(change.document)?.textChanged()),
            workspace.onDidCloseTextDocument(document => this.closed(document)),
            window.onDidChangeTextEditorSelection(change => {
                this.panelOf(change.textEditor.document)?.cursorMoved(change.textEditor.selection.active.line + 1);
            }),
            window.onDidChangeActiveTextEditor(editor => {
                if (editor?.document.languageId === 'padstone') {
                    this.shown?.follow(editor.document.uri);
                }
            })
        ];
    }

    /** The document shown while the pane itself has the focus. */
    get focused(): Uri | undefined {
        return this.shown?.panel.active ? this.shown.uri : undefined;
    }

    open(uri: Uri): void {
        if (this.shown !== undefined) {
            this.shown.follow(uri);
            this.shown.panel.reveal(undefined, true);
            return;
        }
        const place = { viewColumn: ViewColumn.Beside, preserveFocus: true };
        this.adopt(window.createWebviewPanel(viewType, 'Preview', place), uri);
    }

    notice(notice: ResultsNotice): void {
        if (this.shown !== undefined && sameUri(notice.uri, this.shown.uri)) {
            this.shown.resultsChanged();
        }
    }

    async deserializeWebviewPanel(panel: WebviewPanel, state: PageState | undefined): Promise<void> {
        const uri = state?.uri === undefined ? undefined : parseUri(state.uri);
        if (uri === undefined || this.shown !== undefined) {
            panel.dispose();
            return;
        }
        this.adopt(panel, uri);
    }

    dispose(): void {
        this.shown?.panel.dispose();
        this.subscriptions.forEach(subscription => subscription.dispose());
    }

    private adopt(panel: WebviewPanel, uri: Uri): void {
        const preview = new PreviewPanel(panel, this.extensionUri, this.server, uri);
        this.shown = preview;
        panel.onDidDispose(() => {
            preview.dispose();
            this.shown = undefined;
        });
    }

    private panelOf(document: TextDocument): PreviewPanel | undefined {
        return this.shown?.uri.toString() === document.uri.toString() ? this.shown : undefined;
    }

    private closed(document: TextDocument): void {
        const panel = this.panelOf(document);
        if (document.isUntitled) {
            panel?.panel.dispose();   // its text is gone
        } else {
            panel?.resultsChanged();  // what is on the disk may be another text
        }
    }
}
