import type { Block, Row } from '../document/blocks.js';
import { markdownCell } from './text.js';

/** A table of GitHub's Markdown: numbers to the right, a cell over several columns in the first of them. */
export function markdownTable({ head, rows }: Block & { kind: 'table' }, anchorsOf: (ids: readonly string[]) => string): string {
    const columns = Math.max(head.length, ...rows.map(({ cells }) => cells.reduce((sum, { span }) => sum + span, 0)));
    const isNumber = Array.from({ length: columns }, (_, i) => rows.length > 0 && rows.every(({ cells }) => cells[i]?.isNumber ?? false));
    return [
        line(Array.from({ length: columns }, (_, i) => markdownCell(head[i] ?? []))),
        line(isNumber.map(right => right ? '--:' : '---')),
        ...rows.map(row => line(cellsOf(row, anchorsOf)))
    ].join('\n');
}

const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

function cellsOf({ ids, cells }: Row, anchorsOf: (ids: readonly string[]) => string): string[] {
    return cells.flatMap(({ text, span }, i) => [(i === 0 ? anchorsOf(ids) : '') + markdownCell(text), ...Array.from({ length: span - 1 }, () => '')]);
}
