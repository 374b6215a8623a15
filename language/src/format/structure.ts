import type { AstNode, LeafCstNode } from 'langium';
import { AstUtils, GrammarUtils } from 'langium';

export interface Blocks {
    /** For each leaf, the blocks that are open where a line would begin with it. */
    readonly depth: readonly number[];
    /** Braces of blocks that span lines. */
    readonly long: ReadonlySet<LeafCstNode>;
}

export function openBlocks(leaves: readonly LeafCstNode[]): Blocks {
    const open: LeafCstNode[] = [];
    const long = new Set<LeafCstNode>();
    const depth = leaves.map(leaf => {
        const opener = leaf.text === '}' ? open.pop() : undefined;
        if (opener !== undefined && opener.range.start.line !== leaf.range.start.line) {
            long.add(opener).add(leaf);
        }
        const own = open.length;
        if (leaf.text === '{') {
            open.push(leaf);
        }
        return own;
    });
    return { depth, long };
}

/** Offsets at which a statement of the file or of a block begins. */
export function statementStarts(root: AstNode): ReadonlySet<number> {
    const starts = new Set<number>();
    for (const node of AstUtils.streamAllContents(root)) {
        const offset = node.$cstNode?.offset;
        const brace = GrammarUtils.findNodeForKeyword(node.$container?.$cstNode, '{');
        if (offset !== undefined && (node.$container === root || (brace !== undefined && brace.offset < offset))) {
            starts.add(offset);
        }
    }
    return starts;
}

const unit = '  ';

/** A line that goes on with what an earlier one began is set in once more. */
export function indentation(leaf: LeafCstNode, depth: number, starts: ReadonlySet<number>): string {
    const begins = leaf.hidden || starts.has(leaf.offset) || '{})'.includes(leaf.text);
    return unit.repeat(depth + (begins ? 0 : 1));
}
