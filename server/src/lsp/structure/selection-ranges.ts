/** What is selected as a selection grows: a word, a value with its unit, a statement, a block, a declaration, the file. */
import { CstUtils, type CstNode, type LangiumDocument } from 'langium';
import type { Position, SelectionRange } from 'vscode-languageserver';

export function selectionRanges(document: LangiumDocument, positions: readonly Position[]): SelectionRange[] {
    const root = document.parseResult.value.$cstNode;
    return positions.map(position => {
        const offset = document.textDocument.offsetAt(position);
        const leaf = root && (CstUtils.findLeafNodeAtOffset(root, offset) ?? CstUtils.findLeafNodeBeforeOffset(root, offset));
        return (leaf && growing(leaf)) ?? { range: { start: position, end: position } };
    });
}

/** The widest has no parent; a node that is as wide as what it holds is passed over. */
function growing(node: CstNode): SelectionRange {
    const { container } = node;
    const { range } = CstUtils.toDocumentSegment(node);
    if (!container) {
        return { range };
    }
    const parent = growing(container);
    return container.offset === node.offset && container.end === node.end ? parent : { range, parent };
}
