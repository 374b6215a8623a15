import { window, type ExtensionContext } from 'vscode';
import { breakEvenCommand, openSheetCommand } from '../../server/src/protocol.js';
import { ActiveJob } from './active-job.js';
import { registerAssistantTools } from './assistant-tools.js';
import { CalculationTasks, type CommandLine } from './calculation-tasks.js';
import { registerCommands } from './commands.js';
import { registerExplanations } from './explanations.js';
import { PreviewPane } from './preview-pane.js';
import { RequirementTests } from './requirement-tests.js';
import { Server, type CreateClient } from './server.js';
import { VerdictStatus } from './status.js';
import { HazardsView } from './views/hazards-view.js';
import { MembersView } from './views/members-view.js';

let server: Server | undefined;

/** Everything that the desktop and the browser share; they differ in how the server is started. */
/** `line` runs the command; a browser has none. */
export async function startExtension(context: ExtensionContext, createClient: CreateClient, line?: CommandLine): Promise<void> {
    const output = window.createOutputChannel('Padstone', { log: true });
    const tasks = line && new CalculationTasks(line);
    server = new Server(createClient, output, [openSheetCommand, ...tasks ? [breakEvenCommand] : []]);
    const job = new ActiveJob(server);
    const status = new VerdictStatus();
    const preview = new PreviewPane(context.extensionUri, server);
    context.subscriptions.push(
        output, server, status, preview,
        server.onResults(notice => {
            status.notice(notice);
            preview.notice(notice);
        }),
        ...registerCommands(context.extensionUri, server, preview, output, tasks),
        registerExplanations(context.extensionUri),
        job, ...tasks ? [tasks] : [],
        window.createTreeView('padstone.members', { treeDataProvider: new MembersView(job), showCollapseAll: true }),
        window.createTreeView('padstone.hazards', { treeDataProvider: new HazardsView(job) }),
        new RequirementTests(server),
        ...registerAssistantTools(server)
    );
    await server.start();
    job.start();
}

export async function stopExtension(): Promise<void> {
    await server?.stop();
}
