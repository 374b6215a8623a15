/** Everything that has a name, in every calculation of the editor's folders. */
import type { FuzzyMatcher, WorkspaceSymbolProvider } from 'langium/lsp';
import type { CancellationToken, WorkspaceSymbol, WorkspaceSymbolParams } from 'vscode-languageserver';
import * as ast from '../../../../language/src/generated/ast.js';
import { symbolKind } from '../structure/symbol-kinds.js';
import { uriOf, type WorkspaceNames } from './workspace-names.js';

/** An editor shows no more. */
const most = 500;

export class WorkspaceSymbols implements WorkspaceSymbolProvider {
    constructor(private readonly names: WorkspaceNames, private readonly matcher: FuzzyMatcher) { }

    async getSymbols({ query }: WorkspaceSymbolParams, cancellation?: CancellationToken): Promise<WorkspaceSymbol[]> {
        const found: WorkspaceSymbol[] = [];
        for (const file of cancellation?.isCancellationRequested ? [] : await this.names.all()) {
            const job = file.root.declarations.find(ast.isJob)?.title;
            for (const { name, node, at, owner } of file.declared) {
                if (owner === undefined && this.matcher.match(query, name)) {
                    found.push({ name, kind: symbolKind(node), containerName: job, location: { uri: uriOf(file), range: at.range } });
                }
            }
            if (found.length >= most) {
                break;
            }
        }
        return found.slice(0, most);
    }
}
