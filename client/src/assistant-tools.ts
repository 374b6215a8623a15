import { LanguageModelTextPart, LanguageModelToolResult, lm, Uri, window, workspace, type Disposable, type LanguageModelTool, type LanguageModelToolInvocationOptions } from 'vscode';
import type { Server } from './server.js';

interface ResultsInput {
    /** Relative to the workspace; the active editor's where it is absent. */
    readonly file?: string;
}
interface CalculationInput extends ResultsInput {
    readonly check: string;
}

/** For an assistant: it may read what came out. There is none that changes a file. */
export function registerAssistantTools(server: Server): Disposable[] {
    const tool = <Input extends ResultsInput>(read: (uri: Uri, input: Input) => Promise<string>): LanguageModelTool<Input> => ({
        invoke: async ({ input }: LanguageModelToolInvocationOptions<Input>) => {
            const uri = fileOf(input.file);
            const text = uri ? await read(uri, input) : 'There is no such calculation: name a .padstone file of the workspace.';
            return new LanguageModelToolResult([new LanguageModelTextPart(text)]);
        }
    });
    return [
        lm.registerTool('padstone_results', tool(async uri => JSON.stringify(await server.overview(uri)))),
        lm.registerTool('padstone_calculation', tool<CalculationInput>(async (uri, { check }) => await server.calculation(uri, check) ?? `There is no check ${check}.`))
    ];
}

/** In a folder of the workspace, and nowhere else. */
function fileOf(file: string | undefined): Uri | undefined {
    const active = window.activeTextEditor?.document;
    if (file === undefined) {
        return active?.languageId === 'padstone' ? active.uri : undefined;
    }
    const folder = workspace.workspaceFolders?.[0]?.uri;
    return folder && file.endsWith('.padstone') && !file.split('/').includes('..') ? Uri.joinPath(folder, file) : undefined;
}
