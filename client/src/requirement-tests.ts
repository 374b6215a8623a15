import { l10n, Location, Position, Range, TestMessage, TestRunProfileKind, tests, Uri, workspace, type CancellationToken, type Disposable, type TestItem, type TestRunRequest } from 'vscode';
import type { Overview } from '../../server/src/protocol.js';
import type { Server } from './server.js';

/** The `require` lines of every calculation as tests: they pass where they hold. */
export class RequirementTests implements Disposable {
    private readonly controller = tests.createTestController('padstone.requirements', 'Padstone');
    private readonly subscriptions: readonly Disposable[];

    constructor(private readonly server: Server) {
        this.controller.resolveHandler = async file => {
            await (file ? this.readFile(file) : this.listFiles());
        };
        this.controller.refreshHandler = () => this.listFiles();
        this.controller.createRunProfile(l10n.t('Calculate'), TestRunProfileKind.Run, (request, cancellation) => this.run(request, cancellation), true);
        this.subscriptions = [
            server.onResults(async ({ uri }) => {
                const file = this.fileOf(uri);
                await this.readFile(file);
            }),
            workspace.onDidDeleteFiles(({ files }) => files.forEach(uri => this.controller.items.delete(uri.toString())))
        ];
    }

    dispose(): void {
        this.controller.dispose();
        this.subscriptions.forEach(subscription => subscription.dispose());
    }

    private async listFiles(): Promise<void> {
        for (const uri of await this.server.jobs()) {
            this.fileOf(uri);
        }
    }

    private fileOf(address: string): TestItem {
        const uri = Uri.parse(address);
        const known = this.controller.items.get(uri.toString());
        const file = known ?? this.controller.createTestItem(uri.toString(), workspace.asRelativePath(uri), uri);
        if (!known) {
            file.canResolveChildren = true;
            this.controller.items.add(file);
        }
        return file;
    }

    private async readFile(file: TestItem): Promise<Overview | undefined> {
        const overview = await this.server.overview(file.uri!).catch(() => undefined);
        file.children.replace((overview?.requirements ?? []).map(({ text, line }, index) => {
            const item = this.controller.createTestItem(`${index} ${text}`, `require ${text}`, file.uri);
            item.range = new Range(line - 1, 0, line - 1, 0);
            return item;
        }));
        return overview;
    }

    private async run(request: TestRunRequest, cancellation: CancellationToken): Promise<void> {
        const run = this.controller.createTestRun(request);
        const wanted = request.include ?? [...this.controller.items].map(([, file]) => file);
        const files = new Set(wanted.map(item => item.parent ?? item));
        for (const file of files) {
            if (cancellation.isCancellationRequested) {
                break;
            }
            const ids = new Set(wanted.filter(({ parent }) => parent === file).map(({ id }) => id));
            const overview = await this.readFile(file);
            for (const [id, item] of file.children) {
                const requirement = overview?.requirements[Number(id.split(' ')[0])];
                if (requirement && (ids.size === 0 || ids.has(id)) && !request.exclude?.includes(item)) {
                    if (requirement.holds === true) {
                        run.passed(item);
                    } else {
                        const message = new TestMessage(requirement.reason ?? l10n.t('does not hold'));
                        message.location = new Location(item.uri!, new Position(requirement.line - 1, 0));
                        requirement.holds === false ? run.failed(item, message) : run.errored(item, message);
                    }
                }
            }
        }
        run.end();
    }
}
