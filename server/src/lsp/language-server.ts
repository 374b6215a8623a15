import { eagerLoad } from 'langium';
import { DefaultLanguageServer } from 'langium/lsp';
import { CodeActionKind, type InitializeParams, type InitializeResult } from 'vscode-languageserver';
import { version } from '../../../package.json';

/** Starts with less than Langium's own, and says more exactly what it can do. */
export class PadstoneLanguageServer extends DefaultLanguageServer {
    /** Only what listens to the start; the services of the language are made when they are needed. */
    protected override eagerLoadServices(): void {
        eagerLoad(this.services);
    }

    protected override buildInitializeResult(params: InitializeParams): InitializeResult {
        const { capabilities } = super.buildInitializeResult(params);
        return {
            capabilities: {
                ...capabilities,
                codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix] },
                completionProvider: { ...capabilities.completionProvider, resolveProvider: true },
                callHierarchyProvider: true,
                diagnosticProvider: { identifier: 'padstone', interFileDependencies: true, workspaceDiagnostics: true },
                selectionRangeProvider: true,
                linkedEditingRangeProvider: true,
                workspaceSymbolProvider: true,
                workspace: { ...capabilities.workspace, workspaceFolders: { supported: true, changeNotifications: true } }
            },
            serverInfo: { name: 'padstone', version }
        };
    }
}
