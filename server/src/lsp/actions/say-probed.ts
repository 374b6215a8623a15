import { AstUtils, CstUtils } from 'langium';
import * as ast from '../../../../language/src/generated/ast.js';
import type { MendingOf } from './place.js';

/** A loss that was not probed: that it was, once it has been; in the place of what it says now. */
export const sayProbed: MendingOf = ({ document, finding }) => {
    const root = document.parseResult.value.$cstNode;
    const leaf = finding.code === 'loss-not-probed' && root ? CstUtils.findLeafNodeAtOffset(root, finding.source.start) : undefined;
    const loss = leaf && AstUtils.getContainerOfType(leaf.astNode, ast.isLoss)?.$cstNode;
    const brace = loss?.text.lastIndexOf('}') ?? -1;
    return loss && brace >= 0 ? [{ title: 'Say that it was probed, and how', at: loss.offset + brace + 1, until: loss.end, text: ' (probed "…")' }] : [];
};
