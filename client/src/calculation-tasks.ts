import { ProcessExecution, Task, TaskGroup, tasks, TaskScope, Uri, workspace, type Disposable, type TaskDefinition, type TaskProvider } from 'vscode';

export interface CommandLine {
    /** What runs JavaScript. */
    readonly executable: string;
    readonly env: Readonly<Record<string, string>>;
    readonly script: string;
}

interface Definition extends TaskDefinition {
    readonly command: 'check' | 'breakeven';
    readonly file: string;
}

/** The command of the extension as tasks: what it finds goes to the Problems panel. */
export class CalculationTasks implements TaskProvider, Disposable {
    private readonly registration = tasks.registerTaskProvider('padstone', this);

    constructor(private readonly line: CommandLine) { }

    async provideTasks(): Promise<Task[]> {
        const files = await workspace.findFiles('**/*.padstone', '**/node_modules/**', 500);
        return files.filter(({ scheme }) => scheme === 'file').map(uri => this.taskOf({ type: 'padstone', command: 'check', file: workspace.asRelativePath(uri, false) }, uri));
    }

    resolveTask(task: Task): Task | undefined {
        const definition = task.definition as Definition;
        const folder = workspace.workspaceFolders?.[0]?.uri;
        return folder && definition.file ? this.taskOf(definition, Uri.joinPath(folder, definition.file)) : undefined;
    }

    breakEvens(uri: Uri): Thenable<unknown> {
        return tasks.executeTask(this.taskOf({ type: 'padstone', command: 'breakeven', file: workspace.asRelativePath(uri, false) }, uri));
    }

    dispose(): void {
        this.registration.dispose();
    }

    private taskOf(definition: Definition, uri: Uri): Task {
        const folder = workspace.getWorkspaceFolder(uri);
        const { executable, env, script } = this.line;
        const execution = new ProcessExecution(executable, [script, definition.command ?? 'check', uri.fsPath], { cwd: folder?.uri.fsPath, env: { ...env } });
        const task = new Task(definition, folder ?? TaskScope.Workspace, `${definition.command ?? 'check'} ${definition.file}`, 'padstone', execution, '$padstone');
        task.group = TaskGroup.Test;
        return task;
    }
}
