import Table from 'cli-table3';
import stringWidth from 'string-width';

export interface Column {
    readonly head: string;
    readonly align?: 'left' | 'right';
    /** May be clipped with … where the page is too narrow; the columns that may not be are never cut. */
    readonly clips?: boolean;
}

export interface Cell {
    readonly text: string;
    readonly paint?: (text: string) => string;
}

const indent = '  ';
const gap = '  ';
const narrowest = 8;

/** Columns side by side without rules, so that the same table reads in a terminal, a pipe and a log. */
export function table(columns: readonly Column[], rows: readonly (readonly (Cell | string)[])[], width: number): string {
    const cells: Cell[][] = rows.map(row => row.map(cell => typeof cell === 'string' ? { text: plain(cell) } : { ...cell, text: plain(cell.text) }));
    const widths = fit(columns, columns.map((column, i) => Math.max(...[column.head, ...cells.map(row => row[i]?.text ?? '')].map(stringWidth))), width);
    const layout = new Table({
        chars: { top: '', 'top-mid': '', 'top-left': '', 'top-right': '', bottom: '', 'bottom-mid': '', 'bottom-left': '', 'bottom-right': '',
            left: indent, 'left-mid': '', mid: '', 'mid-mid': '', right: '', 'right-mid': '', middle: gap },
        style: { head: [], border: [], 'padding-left': 0, 'padding-right': 0 },
        colAligns: columns.map(column => column.align ?? 'left'),
        colWidths: widths
    });
    layout.push(columns.map((column, i) => clip(column.head, widths[i]!)));
    for (const row of cells) {
        layout.push(row.map((cell, i) => painted({ ...cell, text: clip(cell.text, widths[i]!) })));
    }
    return layout.toString().split('\n').map(line => line.trimEnd()).join('\n');
}

/** Takes what is too wide from the widest columns that may be clipped. */
function fit(columns: readonly Column[], natural: readonly number[], width: number): number[] {
    const widths = [...natural];
    let surplus = widths.reduce((sum, w) => sum + w, indent.length + gap.length * (widths.length - 1)) - width;
    while (surplus > 0) {
        const widest = columns.reduce((best, column, i) => column.clips && widths[i]! > narrowest && widths[i]! > (widths[best] ?? 0) ? i : best, -1);
        if (widest < 0) {
            break;
        }
        widths[widest]! -= 1;
        surplus -= 1;
    }
    return widths;
}

const graphemes = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

/** At most `width` columns of a terminal, never half a character. */
export function clip(text: string, width: number): string {
    if (stringWidth(text) <= width) {
        return text;
    }
    let clipped = '';
    for (const { segment } of graphemes.segment(text)) {
        if (stringWidth(clipped + segment) > width - 1) {
            break;
        }
        clipped += segment;
    }
    return `${clipped}…`;
}

/** A file's text cannot move the cursor or colour the terminal. */
export function plain(text: string): string {
    return text.replace(/\s+/g, ' ').replace(/\p{Cc}/gu, '');
}

export function painted({ text, paint }: Cell): string {
    return paint ? paint(text) : text;
}
