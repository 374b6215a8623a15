import { l10n, StatusBarAlignment, ThemeColor, window, workspace, type Disposable, type StatusBarItem, type TextDocument } from 'vscode';
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
/** Characters. */
const roomInBar = 60;

/** The verdict of the active document, in the status bar. */
export class VerdictStatus implements Disposable {
    private readonly item: StatusBarItem = window.createStatusBarItem('padstone.verdict', StatusBarAlignment.Left);
    private readonly notices = new Map<string, ResultsNotice>();
    private document: TextDocument | undefined;
    private timer: ReturnType<typeof setTimeout> | undefined;
    private readonly subscriptions: readonly Disposable[];

    constructor() {
        this.item.name = l10n.t('Padstone verdict');
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
        const document = workspace.textDocuments.find(({ uri }) => sameUri(notice.uri, uri));
        if (document !== undefined) {
            this.notices.set(document.uri.toString(), notice);
            this.update();
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
        if (notice?.version === this.document.version) {
            this.item.text = `${icons[notice.verdict]} ${shortened(notice.summary)}`;
            this.item.tooltip = `${notice.summary}\n\n${l10n.t('Click to open the sheet to the side.')}`;
            this.item.backgroundColor = backgrounds[notice.verdict];
        } else {
            this.item.text = `$(loading~spin) ${l10n.t('calculating')}`;
            this.item.tooltip = l10n.t('The newest text is being calculated.');
            this.item.backgroundColor = undefined;
        }
        this.item.show();
    }
}

function shortened(summary: string): string {
    return summary.length <= roomInBar ? summary : `${summary.slice(0, roomInBar - 1)}…`;
}
