/** Names in the colour of what they mean; words and numbers are coloured by the grammar of the editor. */
import type { AstNode } from 'langium';
import { AbstractSemanticTokenProvider, type SemanticTokenAcceptor } from 'langium/lsp';
import { SemanticTokenModifiers, SemanticTokenTypes } from 'vscode-languageserver';
import * as ast from '../../../../language/src/generated/ast.js';

const types: Readonly<Record<string, string>> = {
    Member: SemanticTokenTypes.struct, Wall: SemanticTokenTypes.struct, Timber: SemanticTokenTypes.class, Steel: SemanticTokenTypes.class, Masonry: SemanticTokenTypes.class,
    Let: SemanticTokenTypes.variable, Load: SemanticTokenTypes.event, Hanger: SemanticTokenTypes.interface, Use: SemanticTokenTypes.interface,
    Detail: SemanticTokenTypes.function, Parameter: SemanticTokenTypes.parameter, Stage: SemanticTokenTypes.enum, Option: SemanticTokenTypes.enum, LoadTest: SemanticTokenTypes.method
};

export class NameColours extends AbstractSemanticTokenProvider {
    protected override highlightElement(node: AstNode, acceptor: SemanticTokenAcceptor): void {
        const declared = types[node.$type];
        if (declared !== undefined && 'name' in node && node.name !== undefined) {
            acceptor({ node: node as ast.Member, property: 'name', type: declared, modifier: SemanticTokenModifiers.declaration });
        }
        if (ast.isUse(node)) {
            acceptor({ node, property: 'detail', type: SemanticTokenTypes.function });
        } else if (ast.isOfMaterial(node)) {
            acceptor({ node, property: 'material', type: node.material?.ref ? SemanticTokenTypes.class : SemanticTokenTypes.enumMember });
        } else if (ast.isGrade(node)) {
            acceptor({ node, property: 'name', type: SemanticTokenTypes.enumMember });
        } else if (ast.isBearing(node)) {
            acceptor({ node, property: 'on', type: SemanticTokenTypes.struct });
        } else if (ast.isLoadOn(node) || ast.isProp(node) || ast.isReplace(node) || ast.isTestPiece(node)) {
            acceptor({ node: node as ast.Prop, property: 'member', type: SemanticTokenTypes.struct });
        } else if (ast.isHanger(node)) {
            this.each(node, 'carried', [node.carried?.ref], acceptor);
            this.each(node, 'carrier', [node.carrier?.ref], acceptor);
        } else if (ast.isAdd(node) || ast.isRemove(node)) {
            this.each(node, 'elements', node.elements.map(({ ref }) => ref), acceptor);
        } else if (ast.isTighten(node)) {
            this.each(node, 'hangers', node.hangers.map(({ ref }) => ref), acceptor);
        } else if (ast.isArgument(node)) {
            acceptor({ node, property: 'parameter', type: SemanticTokenTypes.parameter });
        } else if (ast.isReference(node)) {
            this.each(node, 'subject', [node.subject?.ref], acceptor);
            node.path.forEach((_, index) => acceptor({ node, property: 'path', index, type: SemanticTokenTypes.property }));
        }
    }

    /** Of a thing in another file that is not open nothing is known but that it is called. */
    private each(node: AstNode, property: string, things: readonly (AstNode | undefined)[], acceptor: SemanticTokenAcceptor): void {
        things.forEach((thing, index) => acceptor({
            node: node as ast.Add, property: property as 'elements', index: things.length > 1 ? index : undefined,
            type: types[thing?.$type ?? ''] ?? SemanticTokenTypes.variable
        }));
    }
}
