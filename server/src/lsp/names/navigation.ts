/** Definition, references and highlights of names, over all files. */
import type { LangiumDocument } from 'langium';
import type { DefinitionProvider, DocumentHighlightProvider, ReferencesProvider } from 'langium/lsp';
import {
    DocumentHighlightKind, LocationLink, type DefinitionParams, type DocumentHighlight, type DocumentHighlightParams, type Location, type Range, type ReferenceParams
} from 'vscode-languageserver';
import { placeOfCst, type Declared } from './file-names.js';
import { holds, uriOf, type WorkspaceNames } from './workspace-names.js';

const top: Range = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

export class Definitions implements DefinitionProvider {
    constructor(private readonly names: WorkspaceNames) { }

    async getDefinition(document: LangiumDocument, { position }: DefinitionParams): Promise<LocationLink[] | undefined> {
        const offset = document.textDocument.offsetAt(position);
        const include = this.names.of(document).includes.find(({ at }) => holds(at, offset));
        if (include) {
            const included = await this.names.at(include.uri);
            return included && [LocationLink.create(uriOf(included), top, top, include.at.range)];
        }
        const found = await this.names.declaredAt(document, offset);
        return found && [LocationLink.create(uriOf(found.declared.file), wholeOf(found.declared), found.declared.at.range, found.at.range)];
    }
}

export class References implements ReferencesProvider {
    constructor(private readonly names: WorkspaceNames) { }

    async findReferences(document: LangiumDocument, { position, context }: ReferenceParams): Promise<Location[]> {
        const found = await this.names.declaredAt(document, document.textDocument.offsetAt(position));
        if (!found) {
            return [];
        }
        const uses = await this.names.usesOf(found.declared);
        return [...(context.includeDeclaration ? [found.declared] : []), ...uses].map(({ file, at }) => ({ uri: uriOf(file), range: at.range }));
    }
}

export class Highlights implements DocumentHighlightProvider {
    constructor(private readonly names: WorkspaceNames) { }

    async getDocumentHighlight(document: LangiumDocument, { position }: DocumentHighlightParams): Promise<DocumentHighlight[] | undefined> {
        const found = await this.names.declaredAt(document, document.textDocument.offsetAt(position));
        if (!found) {
            return undefined;
        }
        const { declared } = found;
        const here = this.names.of(document);
        const uses = (await this.names.usesIn(here, declared)).map(({ at }) => ({ range: at.range, kind: DocumentHighlightKind.Read }));
        return declared.file.uri === here.uri ? [{ range: declared.at.range, kind: DocumentHighlightKind.Write }, ...uses] : uses;
    }
}

export function wholeOf({ node, at }: Declared): Range {
    return node.$cstNode ? placeOfCst(node.$cstNode).range : at.range;
}
