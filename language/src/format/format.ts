/**
 * How a text should look: white space alone changes, and in a line nothing but that line decides.
 *
 * Lines stay as they are broken, save that a block over several lines has its braces at line ends; each line is
 * indented by its block, words are one space apart at least, and columns that the writer has lined up stay.
 */
import type { LangiumDocument, LeafCstNode } from 'langium';
import { CstUtils } from 'langium';
import { refusal } from '../lexing/lexer.js';
import { spaceBetween } from './spacing.js';
import { indentation, openBlocks, statementStarts } from './structure.js';

/** Offsets into the text. */
export interface TextChange {
    readonly start: number;
    readonly end: number;
    readonly text: string;
}

/** In the order of the text; none of a text that does not parse: it is left as it is. */
export function formatChanges({ parseResult, textDocument }: LangiumDocument): readonly TextChange[] {
    const text = textDocument.getText();
    const root = parseResult.value.$cstNode;
    if (root === undefined || parseResult.lexerErrors.length > 0 || parseResult.parserErrors.length > 0 || refusal(text) !== undefined) {
        return [];
    }
    const leaves = CstUtils.flattenCst(root).toArray();
    const lineEnd = text.includes('\r\n') ? '\r\n' : '\n';
    const starts = statementStarts(parseResult.value);
    const blocks = openBlocks(leaves);
    const changes: TextChange[] = [];
    const set = (start: number, end: number, wanted: string) => {
        if (text.slice(start, end) !== wanted) {
            changes.push({ start, end, text: wanted });
        }
    };
    set(0, leaves[0]?.offset ?? text.length, '');
    leaves.slice(1).forEach((leaf, i) => {
        const before = leaves[i]!;
        const gap = text.slice(endOf(before), leaf.offset);
        const lines = Math.max(gap.split('\n').length - 1, breaks(before, leaf, blocks.long) ? 1 : 0);
        set(endOf(before), leaf.offset, lines === 0 ? spaceBetween(before, leaf, text)
            : lineEnd.repeat(lines > 1 && mayBeApart(before, leaf) ? 2 : 1) + indentation(leaf, blocks.depth[i + 1]!, starts));
    });
    const last = leaves.at(-1);
    if (last !== undefined) {
        set(endOf(last), text.length, lineEnd);
    }
    return changes;
}

/** A text as it looks with some changes. */
export function applyChanges(text: string, changes: readonly TextChange[]): string {
    let [result, at] = ['', 0];
    for (const change of changes) {
        result += text.slice(at, change.start) + change.text;
        at = change.end;
    }
    return result + text.slice(at);
}

/** White space behind a remark is none of its own. */
const endOf = ({ offset, text }: LeafCstNode): number => offset + text.trimEnd().length;

/** At the braces of a block that spans lines; a remark may stay behind the brace. */
function breaks(before: LeafCstNode, leaf: LeafCstNode, long: ReadonlySet<LeafCstNode>): boolean {
    return (long.has(before) && before.text === '{' && !leaf.hidden) || (long.has(leaf) && leaf.text === '}');
}

/** No empty line stands at the braces of a block. */
const mayBeApart = (before: LeafCstNode, leaf: LeafCstNode): boolean => before.text !== '{' && leaf.text !== '}';
