import type { AstNode, CstNode } from 'langium';
import type { SourceRef } from '../model.js';

export function sourceOfCst(cst: CstNode, file: string): SourceRef {
    const { offset, end, range } = cst;
    return { file, start: offset, end, line: range.start.line + 1, column: range.start.character + 1 };
}

/** Where a node stands; of one that a syntax error left without text, where what contains it stands. */
export function sourceOf(node: AstNode, file: string): SourceRef {
    for (let at: AstNode | undefined = node; at !== undefined; at = at.$container) {
        if (at.$cstNode !== undefined && at.$cstNode.length > 0) {
            return sourceOfCst(at.$cstNode, file);
        }
    }
    return { file, start: 0, end: 0, line: 1, column: 1 };
}

/** The empty place right after something on one line, for an insertion. */
export function behind(at: SourceRef): SourceRef {
    return { ...at, start: at.end, column: at.column + at.end - at.start };
}
