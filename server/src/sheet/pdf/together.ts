/** What may not be parted by the end of a page. */
import type { Content } from 'pdfmake';

export interface Piece {
    readonly content: Content;
    /** A heading or an introduction, which stays with what follows. */
    readonly leads?: boolean;
    /** Runs over pages by itself: only its beginning can be kept with anything. */
    readonly isLong?: boolean;
}

/** What leads set in one block with the piece that follows; before a long one it only keeps away from the foot of the page. */
export function together(pieces: readonly Piece[]): Content[] {
    const content: Content[] = [];
    let leads: Content[] = [];
    for (const piece of pieces) {
        if (piece.leads) {
            leads.push(piece.content);
        } else if (leads.length > 0 && !piece.isLong) {
            content.push({ stack: [...leads, piece.content], unbreakable: true });
            leads = [];
        } else {
            content.push(...beforeLong(leads), piece.content);
            leads = [];
        }
    }
    return [...content, ...beforeLong(leads)];
}

/** Marked for `nearFoot`. */
function beforeLong(leads: readonly Content[]): Content[] {
    return leads.length === 0 ? [] : [{ stack: [...leads], unbreakable: true, headlineLevel: 1 }];
}

/** Part of the height of the page below which nothing that leads begins. */
const foot = 0.84;

export function nearFoot(node: { readonly headlineLevel?: number; readonly startPosition?: { readonly verticalRatio: number } }): boolean {
    return Boolean(node.headlineLevel) && (node.startPosition?.verticalRatio ?? 0) > foot;
}
