import { DefaultLanguageServer } from 'langium/lsp';
import { CodeActionKind, type InitializeParams, type InitializeResult } from 'vscode-languageserver';
import { version } from '../../../package.json';

/** Says more exactly than Langium what the server can do. */
export class PadstoneLanguageServer extends DefaultLanguageServer {
    protected override buildInitializeResult(params: InitializeParams): InitializeResult {
        const { capabilities } = super.buildInitializeResult(params);
        return {
            capabilities: { ...capabilities, codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix] } },
            serverInfo: { name: 'padstone', version }
        };
    }
}
