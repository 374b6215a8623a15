/** The outline: every declaration with what it is about, and its parts that one would jump to. */
import { AstUtils, CstUtils, GrammarUtils, type AstNode, type CstNode, type LangiumDocument } from 'langium';
import type { DocumentSymbolProvider } from 'langium/lsp';
import type { DocumentSymbol } from 'vscode-languageserver';
import * as ast from '../../../../language/src/generated/ast.js';
import { parameterList } from '../names/details-hierarchy.js';
import { symbolKind } from './symbol-kinds.js';

export class Outline implements DocumentSymbolProvider {
    getSymbols(document: LangiumDocument): DocumentSymbol[] {
        const root = document.parseResult.value;
        return ast.isCalculation(root) ? root.declarations.flatMap(symbolOf) : [];
    }
}

function symbolOf(node: AstNode): DocumentSymbol[] {
    const cst = node.$cstNode;
    const name = cst && nameOf(node);
    if (!name) {
        return [];
    }
    const at = GrammarUtils.findNodeForProperty(cst, 'name') ?? cst;
    return [{
        name,
        detail: about(node),
        kind: symbolKind(node),
        range: rangeOf(cst),
        selectionRange: rangeOf(at === cst ? firstLeaf(cst) : at),
        children: AstUtils.streamContents(node).filter(isPart).toArray().flatMap(symbolOf)
    }];
}

const isPart = (node: AstNode): boolean => ast.isParameter(node) || ast.isHanger(node) || ast.isUse(node) || ast.isLet(node) || ast.isReplace(node);

function nameOf(node: AstNode): string | undefined {
    switch (node.$type) {
        case 'Job': return 'job';
        case 'Replace': return `replace ${(node as ast.Replace).member?.$refText ?? ''}`;
        case 'Include': return `include ${(node as ast.Include).path ?? ''}`;
        case 'Require': case 'BreakEven': case 'Answer': return firstLine(node);
        case 'Access': case 'Survey': case 'Values': return node.$type.toLowerCase();
        default: return 'name' in node && typeof node.name === 'string' && node.name !== '' ? node.name : node.$type.toLowerCase();
    }
}

/** What is said of it beside its name. */
function about(node: AstNode): string | undefined {
    if (ast.isDetail(node)) {
        return parameterList(node);
    }
    if (ast.isUse(node)) {
        return node.detail?.$refText;
    }
    if (ast.isParameter(node)) {
        return node.type;
    }
    if (ast.isLoad(node)) {
        return [node.action, node.category].filter(Boolean).join(' ');
    }
    if (ast.isTimber(node) || ast.isSteel(node)) {
        return (node.facts as readonly ast.Timber['facts'][number][]).find(ast.isGrade)?.name;
    }
    return 'title' in node && typeof node.title === 'string' ? node.title : undefined;
}

function firstLine(node: AstNode): string {
    return node.$cstNode!.text.split('\n')[0]!.trim();
}

function firstLeaf(cst: CstNode): CstNode {
    return CstUtils.findLeafNodeAtOffset(cst, cst.offset) ?? cst;
}

const rangeOf = (cst: CstNode) => CstUtils.toDocumentSegment(cst).range;
