import type { LeafCstNode } from 'langium';
import * as ast from '../generated/ast.js';

/** What parts two words of one line. */
export function spaceBetween(before: LeafCstNode, leaf: LeafCstNode, text: string): string {
    const gap = text.slice(before.end, leaf.offset);
    return touches(before, leaf, text) ? '' : ' '.repeat(Math.max(1, gap.length));
}

function touches(before: LeafCstNode, leaf: LeafCstNode, text: string): boolean {
    if (before.hidden || leaf.hidden) {
        return false;
    }
    return before.text === '(' || ['.', ',', ':', ')'].includes(leaf.text) || before.text === '.'
        || (leaf.text === '(' && ast.isCall(leaf.astNode))
        || (before.text === '-' && ast.isNegation(before.astNode))
        || isTight(before, text) || (!ast.isNegation(leaf.astNode) && isTight(leaf, text));
}

/** An operator, or the hyphen in a hazard's code, that the writer has set close on both sides: `span/300`. */
function isTight({ text: sign, offset, end }: LeafCstNode, text: string): boolean {
    return ['+', '-', '*', '/'].includes(sign) && /\S/.test(text[offset - 1] ?? ' ') && /\S/.test(text[end] ?? ' ');
}
