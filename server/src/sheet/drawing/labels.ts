/** Room for text in drawings, in units of the view box. There is no font to ask, so widths are generous. */

export const fontSize = 11;
/** Between the middles of neighbouring lines of text, level or upright. */
export const rowHeight = 13;

const wideCharacter = /[\u1100-\u115f\u2e80-\u9fff\uac00-\ud7af\uf900-\ufaff\uff00-\uff60]|\p{Extended_Pictographic}/u;

export function textWidth(text: string): number {
    return [...text].reduce((width, character) => width + (wideCharacter.test(character) ? 1.1 : 0.6) * fontSize, 0);
}

const controls = /[\u0000-\u001f\u007f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;
const rightToLeft = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/;

/** A name for a label: short, and unable to turn the direction of the numbers beside it. */
export function labelName(name: string): string {
    const safe = clip(name.slice(0, 200).replace(controls, ''), 24);
    return rightToLeft.test(safe) ? `\u2068${safe}\u2069` : safe;
}

/** At most `most` characters, the last of them an ellipsis where something is left out. */
export function clip(text: string, most: number): string {
    const characters = [...text.slice(0, 4 * most)];
    return characters.length > most ? `${characters.slice(0, most - 1).join('').trimEnd()}…` : text;
}

/** Positions moved as little as can be (least squares) so that neighbours are `gap` apart; sorted in, sorted out. */
export function spread(positions: readonly number[], gap: number, from: number, to: number): number[] {
    const pools: { sum: number; count: number }[] = [];
    positions.forEach((position, i) => {
        pools.push({ sum: position - i * gap, count: 1 });
        for (let last = pools.length - 1; last > 0 && mean(pools[last]!) < mean(pools[last - 1]!); last -= 1) {
            const pool = pools.pop()!;
            pools[last - 1] = { sum: pools[last - 1]!.sum + pool.sum, count: pools[last - 1]!.count + pool.count };
        }
    });
    const most = Math.max(from, to - (positions.length - 1) * gap);
    return pools
        .flatMap(pool => Array.from({ length: pool.count }, () => Math.min(Math.max(mean(pool), from), most)))
        .map((offset, i) => offset + i * gap);
}

const mean = ({ sum, count }: { readonly sum: number; readonly count: number }): number => sum / count;

interface Extent { readonly from: number; readonly to: number }

const overlap = (a: Extent, b: Extent): boolean => a.from < b.to && b.from < a.to;

/** A row for each extent, from 0, so that none overlap within a row. */
export function stack(extents: readonly Extent[]): number[] {
    const rows: Extent[][] = [];
    return extents.map(extent => {
        const free = rows.findIndex(row => !row.some(other => overlap(other, extent)));
        const row = free < 0 ? rows.push([]) - 1 : free;
        rows[row]!.push(extent);
        return row;
    });
}

export interface Flag {
    /** Where its stem stands. */
    readonly x: number;
    readonly width: number;
}

export interface PlacedFlag {
    readonly row: number;
    readonly side: 'left' | 'right';
}

interface Occupied extends Extent, PlacedFlag { readonly x: number }

/**
 * Labels beside their stems, so that no label covers another label or stands on another's stem.
 * Rows count from the stems' feet. Where there is no such place a stem may cross a label, but still no label another.
 */
export function placeFlags(flags: readonly Flag[], within: Extent): PlacedFlag[] {
    const fitsRight = (flag: Flag): boolean => flag.x + flag.width + 3 <= within.to;
    const inTurn = [
        ...flags.filter(fitsRight).sort((a, b) => b.x - a.x),
        ...flags.filter(flag => !fitsRight(flag)).sort((a, b) => a.x - b.x)
    ];
    const occupied = new Map<Flag, Occupied>();
    for (const flag of inTurn) {
        const candidates = sidesOf(flag, within).flatMap(side => Array.from({ length: flags.length + 1 }, (_, row) => occupy(flag, row, side)));
        const without = (meets: (a: Occupied, b: Occupied) => boolean) =>
            candidates.find(candidate => ![...occupied.values()].some(other => meets(candidate, other)));
        occupied.set(flag, without(clash) ?? without(covers)!);
    }
    return flags.map(flag => occupied.get(flag)!);
}

function sidesOf({ x, width }: Flag, within: Extent): readonly ('left' | 'right')[] {
    const right = x + width + 3 <= within.to;
    const left = x - width - 3 >= within.from;
    return right && left ? ['right', 'left'] : right || !left ? ['right'] : ['left'];
}

function occupy({ x, width }: Flag, row: number, side: 'left' | 'right'): Occupied {
    return side === 'right' ? { x, row, side, from: x + 1, to: x + width + 3 } : { x, row, side, from: x - width - 3, to: x - 1 };
}

function covers(a: Occupied, b: Occupied): boolean {
    return a.row === b.row && overlap(a, b);
}

function clash(a: Occupied, b: Occupied): boolean {
    const standsIn = (stem: number, { from, to }: Extent): boolean => stem > from - 1 && stem < to + 1;
    return a.row === b.row ? overlap(a, b) || standsIn(a.x, b) || standsIn(b.x, a)
        : a.row > b.row ? standsIn(a.x, b) && a.x !== b.x
        : standsIn(b.x, a) && a.x !== b.x;
}
