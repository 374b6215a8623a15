import { StatusBarAlignment, ThemeColor, window, workspace, type Disposable, type StatusBarItem, type TextDocument } from 'vscode';
import type { ResultsNotice } from '../../server/src/protocol.js';
import { sameUri } from './uri.js';

const icons = { pass: '$(pass)', fail: '$(error)', incomplete: '$(question)' } as const;
const backgrounds = {
    pass: undefined,
    fail: new ThemeColor('statusBarItem.errorBackground'),
    incomplete: new ThemeColor('statusBarItem.warningBackground')
} as const;
/** ms that a verdict may lag behind the text before the status bar says so. */
const lag = 500;

/** The verdict of the active document, in the status bar. */
export class VerdictStatus implements Disposable {
    private readonly item: StatusBarItem = window.createStatusBarItem('padstone.verdict', StatusBarAlignment.Left);
    private readonly notices = new Map<string, ResultsNotice>();
    private document: TextDocument | undefined;
    private timer: ReturnType<typeof setTimeout> | undefined;
    private readonly subscriptions: readonly Disposable[];

    constructor() {
        this.item.name = 'Padstone verdict';
        this.item.command = 'padstone.openPreview';
        this.subscriptions = [
            this.item,
            window.onDidChangeActiveTextEditor(editor => {
                // None is active while the preview has the focus: the last document stays the subject.
                if (editor !== undefined) {
                    this.follow(editor.document);
                }
            }),
            workspace.onDidChangeTextDocument(change => {
                if (change.document === this.document) {
                    clearTimeout(this.timer);
                    this.timer = setTimeout(() => this.update(), lag);
                }
            }),
            workspace.onDidCloseTextDocument(document => {
                this.notices.delete(document.uri.toString());
                if (document === this.document) {
                    this.follow(undefined);
                }
            })
        ];
        this.follow(window.activeTextEditor?.document);
    }

    notice(notice: ResultsNotice): void {
        if (this.document !== undefined && sameUri(notice.uri, this.document.uri)) {
            this.notices.set(this.document.uri.toString(), notice);
            this.update();
            return;
        }
        const other = workspace.textDocuments.find(document => sameUri(notice.uri, document.uri));
        if (other !== undefined) {
            this.notices.set(other.uri.toString(), notice);
        }
    }

    dispose(): void {
        clearTimeout(this.timer);
        this.subscriptions.forEach(subscription => subscription.dispose());
    }

    private follow(document: TextDocument | undefined): void {
        this.document = document?.languageId === 'padstone' ? document : undefined;
        this.update();
    }

    private update(): void {
        if (this.document === undefined) {
            this.item.hide();
            return;
        }
        const notice = this.notices.get(this.document.uri.toString());
        const current = notice?.version === this.document.version;
        this.item.text = notice && current ? `${icons[notice.verdict]} ${notice.summary}` : '$(loading~spin) calculating';
        this.item.tooltip = notice && current ? `Padstone: ${notice.summary}\nClick to open the preview.` : 'Padstone is calculating.';
        this.item.backgroundColor = notice && current ? backgrounds[notice.verdict] : undefined;
        this.item.show();
    }
}
