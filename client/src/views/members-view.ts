import { EventEmitter, l10n, ThemeColor, ThemeIcon, TreeItem, TreeItemCollapsibleState, type TreeDataProvider } from 'vscode';
import type { OverviewSubject } from '../../../server/src/protocol.js';
import type { ActiveJob } from '../active-job.js';
import { goTo, holdsIcon } from './places.js';

type Check = OverviewSubject['checks'][number];
type Node = OverviewSubject | { readonly subject: OverviewSubject; readonly check: Check };

const icons: Readonly<Record<OverviewSubject['state'], ThemeIcon>> = {
    holds: holdsIcon(true),
    fails: holdsIcon(false),
    incomplete: new ThemeIcon('question', new ThemeColor('list.warningForeground')),
    'not computed': new ThemeIcon('circle-slash', new ThemeColor('list.warningForeground'))
};

/** Members and hangers of the calculation with their worst checks, and below each all of its checks. */
export class MembersView implements TreeDataProvider<Node> {
    private readonly changed = new EventEmitter<void>();
    readonly onDidChangeTreeData = this.changed.event;

    constructor(private readonly job: ActiveJob) {
        job.onChange(() => this.changed.fire());
    }

    getChildren(node?: Node): Node[] {
        if (node === undefined) {
            return [...this.job.overview?.subjects ?? []];
        }
        return 'check' in node ? [] : node.checks.map(check => ({ subject: node, check }));
    }

    getTreeItem(node: Node): TreeItem {
        return 'check' in node ? this.checkItem(node.subject, node.check) : this.subjectItem(node);
    }

    private subjectItem(subject: OverviewSubject): TreeItem {
        const item = new TreeItem(subject.name, subject.checks.length > 0 ? TreeItemCollapsibleState.Collapsed : TreeItemCollapsibleState.None);
        item.id = subject.name;
        item.description = subject.headline;
        item.tooltip = [subject.description, subject.headline].filter(Boolean).join('\n');
        item.iconPath = icons[subject.state];
        item.command = goTo(this.job.overview!.uri, subject.line);
        item.accessibilityInformation = { label: `${subject.name}, ${subject.state}, ${subject.headline}` };
        return item;
    }

    private checkItem(subject: OverviewSubject, check: Check): TreeItem {
        const item = new TreeItem(check.check);
        item.id = check.id;
        item.description = check.pass ? check.use : l10n.t('{0} fails', check.use);
        item.tooltip = `${check.clause}\n${check.governs}`;
        item.iconPath = holdsIcon(check.pass);
        item.command = goTo(this.job.overview!.uri, subject.line);
        return item;
    }
}
