import stringWidth from 'string-width';

export interface Column {
    readonly head: string;
    readonly align?: 'left' | 'right';
    /** May be clipped with … where the page is too narrow, the lowest number first; without one, never. */
    readonly clips?: number;
}

export interface Cell {
    readonly text: string;
    readonly paint?: (text: string) => string;
}

const indent = '  ';
const gap = '  ';
const narrowest = 10;

/** Columns side by side without rules, so that the same table reads in a terminal, a pipe and a log. */
export function table(columns: readonly Column[], rows: readonly (readonly (Cell | string)[])[], width: number): string {
    const head: Cell[] = columns.map(column => ({ text: column.head }));
    const lines = [head, ...rows.map(row => row.map(cell => typeof cell === 'string' ? { text: plain(cell) } : { ...cell, text: plain(cell.text) }))];
    const widths = fit(columns, columns.map((_, i) => Math.max(...lines.map(line => stringWidth(line[i]?.text ?? '')))), width);
    return lines
        .map(line => line.map((cell, i) => fill(cell, widths[i]!, columns[i]!.align)).join(gap))
        .map(line => `${indent}${line}`.trimEnd())
        .join('\n');
}

/** A cell as wide as its column; colour takes no room. */
function fill(cell: Cell, width: number, align: Column['align']): string {
    const text = clip(cell.text, width);
    const padding = ' '.repeat(width - stringWidth(text));
    const shown = painted({ ...cell, text });
    return align === 'right' ? padding + shown : shown + padding;
}

/** Takes what is too wide from the columns that may be clipped. */
function fit(columns: readonly Column[], natural: readonly number[], width: number): number[] {
    const widths = [...natural];
    let surplus = widths.reduce((sum, w) => sum + w, indent.length + gap.length * (widths.length - 1)) - width;
    const yielding = columns.flatMap(({ clips }, i) => clips === undefined ? [] : [{ clips, i }]).sort((a, b) => a.clips - b.clips);
    for (const { i } of yielding) {
        const taken = Math.max(0, Math.min(surplus, widths[i]! - narrowest));
        widths[i]! -= taken;
        surplus -= taken;
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
