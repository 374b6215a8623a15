/** Who uses a detail, and which details it uses. */
import type { LangiumDocument } from 'langium';
import {
    SymbolKind, type CallHierarchyIncomingCall, type CallHierarchyIncomingCallsParams, type CallHierarchyItem, type CallHierarchyOutgoingCall, type CallHierarchyOutgoingCallsParams,
    type CallHierarchyPrepareParams, type Range
} from 'vscode-languageserver';
import * as ast from '../../../../language/src/generated/ast.js';
import type { Declared, FileNames, Used } from './file-names.js';
import { wholeOf } from './navigation.js';
import { uriOf, type WorkspaceNames } from './workspace-names.js';

export class DetailsHierarchy {
    constructor(private readonly names: WorkspaceNames) { }

    async prepareCallHierarchy(document: LangiumDocument, { position }: CallHierarchyPrepareParams): Promise<CallHierarchyItem[] | undefined> {
        const found = await this.names.declaredAt(document, document.textDocument.offsetAt(position));
        return found && ast.isDetail(found.declared.node) ? [detailItem(found.declared)] : undefined;
    }

    /** Details that use it, and jobs. */
    async incomingCalls({ item }: CallHierarchyIncomingCallsParams): Promise<CallHierarchyIncomingCall[]> {
        const detail = await this.detailOf(item);
        const uses = detail ? await this.names.usesOf(detail) : [];
        const users = new Map<object, { readonly from: CallHierarchyItem; readonly fromRanges: Range[] }>();
        for (const use of uses) {
            const key = use.owner ?? use.file;
            const user = users.get(key) ?? { from: userItem(use), fromRanges: [] };
            user.fromRanges.push(use.at.range);
            users.set(key, user);
        }
        return [...users.values()];
    }

    async outgoingCalls({ item }: CallHierarchyOutgoingCallsParams): Promise<CallHierarchyOutgoingCall[]> {
        const file = await this.names.at(item.uri);
        const detail = await this.detailOf(item);
        const found = new Map<object, CallHierarchyOutgoingCall>();
        for (const used of file?.used ?? []) {
            // Of a whole file, what it uses itself.
            if (ast.isUse(used.node) && used.owner === detail?.node && used.of === undefined) {
                const target = await this.names.resolve(used);
                if (target) {
                    const call = found.get(target.node) ?? { to: detailItem(target), fromRanges: [] };
                    call.fromRanges.push(used.at.range);
                    found.set(target.node, call);
                }
            }
        }
        return [...found.values()];
    }

    /** Undefined for a whole file. */
    private async detailOf({ uri, name, selectionRange }: CallHierarchyItem): Promise<Declared | undefined> {
        const file = await this.names.at(uri);
        return file?.declared.find(declared => ast.isDetail(declared.node) && declared.name === name && declared.at.range.start.line === selectionRange.start.line);
    }
}

function userItem({ file, owner }: Used): CallHierarchyItem {
    const detail = owner && file.declared.find(({ node }) => node === owner);
    return detail ? detailItem(detail) : fileItem(file);
}

function detailItem(declared: Declared): CallHierarchyItem {
    return {
        name: declared.name,
        kind: SymbolKind.Function,
        detail: ast.isDetail(declared.node) ? parameterList(declared.node) : undefined,
        uri: uriOf(declared.file),
        range: wholeOf(declared),
        selectionRange: declared.at.range
    };
}

function fileItem(file: FileNames): CallHierarchyItem {
    const start = { line: 0, character: 0 };
    const { textDocument } = file.document;
    return {
        name: file.root.declarations.find(ast.isJob)?.title ?? uriOf(file).split('/').at(-1)!,
        kind: SymbolKind.File,
        uri: uriOf(file),
        range: { start, end: textDocument.positionAt(textDocument.getText().length) },
        selectionRange: { start, end: start }
    };
}

/** `(old: member, new: member, at: length, rod: thread = M12)` */
export function parameterList({ parameters }: ast.Detail): string {
    return `(${parameters.map(parameterText).join(', ')})`;
}

export function parameterText(parameter: ast.Parameter): string {
    return parameter.$cstNode?.text ?? `${parameter.name}: ${parameter.type}`;
}
