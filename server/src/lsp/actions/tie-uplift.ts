import { AstUtils, CstUtils } from 'langium';
import * as ast from '../../../../language/src/generated/ast.js';
import type { MendingOf } from './place.js';

/** A bearing that lifts: that it is tied, which the writer then has to see to. */
export const tieUplift: MendingOf = ({ document, finding }) => {
    const root = document.parseResult.value.$cstNode;
    const leaf = finding.code === 'uplift-not-tied' && root ? CstUtils.findLeafNodeAtOffset(root, finding.source.start) : undefined;
    const bearing = leaf && AstUtils.getContainerOfType(leaf.astNode, ast.isBearing);
    return bearing?.$cstNode && !bearing.parts.some(ast.isTied)
        ? [{ title: `Say that it is tied to ${bearing.on?.$refText ?? 'its support'}`, at: bearing.$cstNode.end, text: ' tied' }] : [];
};
