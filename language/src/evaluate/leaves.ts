import type * as ast from '../generated/ast.js';
import type { SourceRef } from '../model.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';

type Numbered = ast.Ply | ast.Leaves | ast.TestPiece;

/** The leaves that are named, each once; `count` is undefined where the number of leaves is not known. */
export function leafNumbers(context: Context, node: Numbered, count: number | undefined): readonly number[] {
    node.leaves.forEach((leaf, i) => {
        if (!isLeaf(leaf, count)) {
            noSuchLeaf(context, leaf, count, source(context, node, 'leaves', i));
        }
    });
    return [...new Set(node.leaves)].filter(leaf => isLeaf(leaf, count));
}

export const isLeaf = (leaf: number, count: number | undefined): boolean => Number.isInteger(leaf) && leaf >= 1 && leaf <= (count ?? Infinity);

export function noSuchLeaf(context: Context, leaf: number, count: number | undefined, at: SourceRef): undefined {
    const known = count === undefined || count <= 1 ? '' : `: they count from 1 to ${count}, from the left`;
    return fail(context, 'no-such-leaf', `there is no leaf ${leaf}${known}`, at);
}

/** 1 for a member of one piece; undefined where the text does not say. */
export function leafCount(member: ast.Member): number | undefined {
    const node = member.statements.find(statement => statement.$type === 'Plies' || statement.$type === 'Flitch');
    return node === undefined ? 1 : (node as ast.Plies | ast.Flitch).count;
}
