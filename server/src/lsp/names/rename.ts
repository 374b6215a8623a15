/** Renames a thing in every file that names it. */
import type { GrammarAST, LangiumDocument } from 'langium';
import type { RenameProvider } from 'langium/lsp';
import { LSPErrorCodes, ResponseError, type LinkedEditingRanges, type Position, type Range, type RenameParams, type TextDocumentPositionParams, type TextEdit, type WorkspaceEdit } from 'vscode-languageserver';
import { isName, namePattern } from './words.js';
import { uriOf, type WorkspaceNames } from './workspace-names.js';

export class Renaming implements RenameProvider {
    constructor(private readonly names: WorkspaceNames, private readonly grammar: GrammarAST.Grammar) { }

    async prepareRename(document: LangiumDocument, { position }: TextDocumentPositionParams): Promise<Range | undefined> {
        return (await this.names.declaredAt(document, document.textDocument.offsetAt(position)))?.at.range;
    }

    /** @throws ResponseError where the new name is no name, or is taken */
    async rename(document: LangiumDocument, { position, newName }: RenameParams): Promise<WorkspaceEdit | undefined> {
        const found = await this.names.declaredAt(document, document.textDocument.offsetAt(position));
        if (!found) {
            return undefined;
        }
        const { declared } = found;
        if (!isName(newName, this.grammar)) {
            throw refused(`'${newName}' cannot be a name: it is a word of the language, or has something other than letters, digits and _ in it.`);
        }
        const uses = await this.names.usesOf(declared);
        const files = new Map([declared, ...uses].map(({ file }) => [file.uri, file]));
        for (const file of files.values()) {
            const taken = (await this.names.visible(file, declared.owner)).find(({ name, node }) => name === newName && node !== declared.node);
            if (taken) {
                throw refused(`'${newName}' is already the name of something else.`);
            }
        }
        const changes: Record<string, TextEdit[]> = {};
        for (const { file, at } of [declared, ...uses]) {
            (changes[uriOf(file)] ??= []).push({ range: at.range, newText: newName });
        }
        return { changes };
    }

    /** What is named in this file alone changes all together as it is typed. */
    async getLinkedEditingRanges(document: LangiumDocument, position: Position): Promise<LinkedEditingRanges | undefined> {
        const found = await this.names.declaredAt(document, document.textDocument.offsetAt(position));
        if (!found) {
            return undefined;
        }
        const places = [found.declared, ...await this.names.usesOf(found.declared)];
        const here = this.names.of(document).uri;
        return places.length > 1 && places.every(({ file }) => file.uri === here)
            ? { ranges: places.map(({ at }) => at.range), wordPattern: namePattern } : undefined;
    }
}

function refused(message: string): ResponseError<void> {
    return new ResponseError(LSPErrorCodes.RequestFailed, message);
}
