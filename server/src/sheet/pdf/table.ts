import type { Content, TableCell } from 'pdfmake';
import type { Block, Cell, Row } from '../document/blocks.js';
import { colours } from './colours.js';
import { drawn } from './drawing.js';
import { pdfText } from './text.js';

export interface Places {
    /** Ids that something links to. */
    readonly linked: ReadonlySet<string>;
    /** Ids that a link may lead to. */
    readonly defined: ReadonlySet<string>;
}

const barWidth = 110;

/** Rules under the rows, no row cut, the head again on every page. */
export function pdfTable({ head, rows }: Block & { kind: 'table' }, places: Places): Content {
    const columns = Math.max(head.length, ...rows.map(({ cells }) => cells.reduce((sum, { span }) => sum + span, 0)));
    const cellsAt = (i: number): (Cell | undefined)[] => rows.map(({ cells }) => cells[i]);
    const isNarrow = (i: number): boolean => cellsAt(i).every(cell => (cell?.span ?? 1) === 1 && (cell?.text ?? []).reduce((sum, { text }) => sum + text.length, 0) <= 26);
    return {
        table: {
            headerRows: 1,
            keepWithHeaderRows: 1,
            dontBreakRows: true,
            widths: Array.from({ length: columns }, (_, i) => isNarrow(i) ? 'auto' : '*'),
            body: [
                Array.from({ length: columns }, (_, i) => ({ text: pdfText(head[i] ?? [], places.defined, 'inCell'), color: colours.soft, fontSize: 7.5 })),
                ...rows.map(row => cellsOf(row, columns, places))
            ]
        },
        layout: {
            hLineWidth: i => i === 0 ? 0 : 0.5,
            vLineWidth: () => 0,
            hLineColor: () => colours.rule,
            paddingLeft: i => i === 0 ? 0 : 5,
            paddingRight: () => 5,
            paddingTop: () => 2,
            paddingBottom: () => 2
        },
        fontSize: 8.5,
        margin: [0, 2, 0, 8]
    };
}

function cellsOf({ ids, cells }: Row, columns: number, places: Places): TableCell[] {
    const row = cells.flatMap(({ text, span, bar, isNumber }, i): TableCell[] => {
        const id = i === 0 ? ids.find(candidate => places.linked.has(candidate)) : undefined;
        const shown: Content = { text: pdfText(text, places.defined, 'inCell'), noWrap: isNumber, ...(id && { id }) };
        const cell: Content = bar ? { stack: [shown, { svg: drawn(bar).svg, width: barWidth, height: 6, margin: [0, 2, 0, 1] }] } : shown;
        return [{ ...cell, colSpan: span }, ...Array.from({ length: span - 1 }, (): TableCell => ({}))];
    });
    return [...row, ...Array.from({ length: columns - row.length }, (): TableCell => ({ text: '' }))];
}
