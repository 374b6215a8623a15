import { EventEmitter, l10n, MarkdownString, ThemeColor, ThemeIcon, TreeItem, type TreeDataProvider } from 'vscode';
import type { OverviewHazard } from '../../../server/src/protocol.js';
import type { ActiveJob } from '../active-job.js';
import { goTo } from './places.js';

const icons: Readonly<Record<OverviewHazard['severity'], ThemeIcon>> = {
    stop: new ThemeIcon('stop-circle', new ThemeColor('list.errorForeground')),
    warn: new ThemeIcon('warning', new ThemeColor('list.warningForeground')),
    note: new ThemeIcon('info')
};
const answered = new ThemeIcon('check');

/** What can hurt someone or the building, the worst first; what was not checked after it. */
export class HazardsView implements TreeDataProvider<OverviewHazard | string> {
    private readonly changed = new EventEmitter<void>();
    readonly onDidChangeTreeData = this.changed.event;

    constructor(private readonly job: ActiveJob) {
        job.onChange(() => this.changed.fire());
    }

    getChildren(node?: OverviewHazard | string): (OverviewHazard | string)[] {
        return node === undefined && this.job.overview ? [...this.job.overview.hazards, ...this.job.overview.unchecked] : [];
    }

    getTreeItem(node: OverviewHazard | string): TreeItem {
        if (typeof node === 'string') {
            const item = new TreeItem(node);
            item.description = l10n.t('not checked');
            item.iconPath = new ThemeIcon('circle-slash');
            return item;
        }
        const { severity, subject, message, action, decider, answer, line } = node;
        const item = new TreeItem(message);
        item.description = answer === undefined ? l10n.t('decides: {0}', decider) : l10n.t('answered: {0}', answer);
        item.tooltip = new MarkdownString().appendText([subject, message, action, item.description].join('\n'));
        item.iconPath = answer === undefined ? icons[severity] : answered;
        item.command = goTo(this.job.overview!.uri, line);
        item.accessibilityInformation = { label: `${severity}: ${message}. ${action} ${String(item.description)}` };
        return item;
    }
}
