import { EventEmitter, window, workspace, type Disposable, type TextDocument } from 'vscode';
import type { Overview, ResultsNotice } from '../../server/src/protocol.js';
import type { Server } from './server.js';
import { Throttle } from './throttle.js';
import { sameUri } from './uri.js';

/** ms between two questions while the text changes. */
const interval = 500;

/** What came out of the calculation that was last looked at: the trees show it. */
export class ActiveJob implements Disposable {
    private current: TextDocument | undefined;
    private known: Overview | undefined;
    private readonly changed = new EventEmitter<Overview | undefined>();
    readonly onChange = this.changed.event;
    private readonly throttle = new Throttle(() => this.refresh(), interval);
    private readonly subscriptions: readonly Disposable[];

    constructor(private readonly server: Server) {
        this.subscriptions = [
            server.onResults(notice => this.notice(notice)),
            window.onDidChangeActiveTextEditor(editor => editor && this.follow(editor.document)),
            workspace.onDidCloseTextDocument(document => {
                if (document === this.current) {
                    this.current = undefined;
                    this.tell(undefined);
                }
            })
        ];
    }

    get overview(): Overview | undefined {
        return this.known;
    }

    start(): void {
        if (window.activeTextEditor) {
            this.follow(window.activeTextEditor.document);
        }
    }

    dispose(): void {
        this.throttle.dispose();
        this.changed.dispose();
        this.subscriptions.forEach(subscription => subscription.dispose());
    }

    private follow(document: TextDocument): void {
        if (document.languageId === 'padstone' && document !== this.current) {
            this.current = document;
            this.throttle.request();
        }
    }

    private notice({ uri }: ResultsNotice): void {
        if (this.current && sameUri(uri, this.current.uri)) {
            this.throttle.request();
        }
    }

    private async refresh(): Promise<void> {
        const document = this.current;
        const overview = document && await this.server.overview(document.uri).catch(() => undefined);
        if (document === this.current) {
            this.tell(overview);
        }
    }

    private tell(overview: Overview | undefined): void {
        this.known = overview;
        this.changed.fire(overview);
    }
}
