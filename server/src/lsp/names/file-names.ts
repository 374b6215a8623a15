/** What one file declares and what it calls by name: enough to find names over files, without Langium's index of them. */
import { AstUtils, CstUtils, GrammarUtils, UriUtils, type AstNode, type CstNode, type LangiumDocument } from 'langium';
import type { Range } from 'vscode-languageserver';
import * as ast from '../../../../language/src/generated/ast.js';

export interface Declared {
    readonly file: FileNames;
    readonly name: string;
    readonly node: AstNode;
    readonly at: Place;
    /** The detail that it is a part of. */
    readonly owner: ast.Detail | undefined;
}

export interface Used {
    readonly file: FileNames;
    readonly name: string;
    readonly node: AstNode;
    readonly at: Place;
    /** The detail that it stands in. */
    readonly owner: ast.Detail | undefined;
    /** `old` in `use HANGER H1 (old: T2)` is of the detail HANGER; `left` in `P.left` is of the detail that P uses. */
    readonly of?: Used;
}

export interface Place {
    readonly start: number;
    readonly end: number;
    readonly range: Range;
}

export interface FileNames {
    readonly uri: string;
    readonly document: LangiumDocument;
    readonly root: ast.Calculation;
    readonly declared: readonly Declared[];
    readonly used: readonly Used[];
    readonly includes: readonly { readonly uri: string; readonly path: string; readonly at: Place }[];
}

export function fileNames(document: LangiumDocument): FileNames {
    const root = document.parseResult.value as ast.Calculation;
    const declared: Declared[] = [];
    const used: Used[] = [];
    const includes: { uri: string; path: string; at: Place }[] = [];
    const file: FileNames = { uri: UriUtils.normalize(document.uri), document, root, declared, used, includes };
    const ownerOf = (node: AstNode): ast.Detail | undefined => node.$container && AstUtils.getContainerOfType(node.$container, ast.isDetail);
    for (const node of AstUtils.streamAllContents(root)) {
        const owner = ownerOf(node);
        const name = isNamed(node) ? placeOf(node, 'name') : undefined;
        if (name !== undefined) {
            declared.push({ file, name: (node as ast.Member).name, node, at: name, owner });
        }
        const references = AstUtils.streamReferences(node).toArray().flatMap(({ reference }): Used[] => reference.$refNode
            ? [{ file, name: reference.$refText, node, at: placeOfCst(reference.$refNode), owner }] : []);
        used.push(...references);
        if ((ast.isRods(node) || ast.isBolts(node)) && owner?.parameters.some(({ name }) => name === node.thread)) {
            const at = placeOf(node, 'thread');
            used.push(...at ? [{ file, name: node.thread, node, at, owner }] : []);
        }
        if (ast.isArgument(node)) {
            const detail = used.find(candidate => candidate.node === node.$container);
            const parameter = placeOf(node, 'parameter');
            if (detail && parameter) {
                used.push({ file, name: node.parameter, node, at: parameter, owner, of: detail });
            }
        }
        if (ast.isReference(node) && references[0] && node.path[0] !== undefined) {
            const part = placeOf(node, 'path');
            if (part) {
                used.push({ file, name: node.path[0], node, at: part, owner, of: references[0] });
            }
        }
        if (ast.isInclude(node) && node.path !== undefined && !/^[a-z][a-z0-9+.-]*:|^\//i.test(node.path)) {
            const at = placeOf(node, 'path');
            if (at) {
                includes.push({ uri: UriUtils.normalize(UriUtils.resolvePath(UriUtils.dirname(document.uri), node.path)), path: node.path, at });
            }
        }
    }
    return file;
}

/** What can be pointed at, and what has a name of its own. A property or a setting has one, but is not a thing of the file. */
function isNamed(node: AstNode): boolean {
    return ast.isNamed(node) || ast.isDetail(node) || ast.isStage(node) || ast.isOption(node);
}

function placeOf(node: AstNode, property: string): Place | undefined {
    const cst = GrammarUtils.findNodeForProperty(node.$cstNode, property);
    return cst && placeOfCst(cst);
}

export function placeOfCst(cst: CstNode): Place {
    return { start: cst.offset, end: cst.end, range: CstUtils.toDocumentSegment(cst).range };
}
