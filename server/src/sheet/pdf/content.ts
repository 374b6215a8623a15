/** The sheet's blocks as the content of a PDF. */
import type { Content } from 'pdfmake';
import type { Block, Definition, Text } from '../document/blocks.js';
import { colours, outcomeColours } from './colours.js';
import { together, type Piece } from './together.js';
import { pdfDrawings } from './drawings.js';
import { pdfTable, type Places } from './table.js';
import { lineOf, pdfText } from './text.js';

const fold = 4;
const sizes = { 1: 16, 2: 12.5, 3: 10.5 } as const;
/** Rows of a table that still stands on one page with its heading, characters of a paragraph that only introduces. */
const short = { rows: 8, paragraph: 500 };

/** Bookmarks within bookmarks, by the level of the heading. */
type Outline = readonly { readonly level: number; readonly id: string }[];

export class ContentWriter {
    private outline: Outline = [];
    private bookmarks = 0;

    /** @param room points from margin to margin */
    constructor(private readonly places: Places, private readonly room: number) { }

    write(blocks: readonly Block[]): Content[] {
        return together(this.pieces(blocks));
    }

    private pieces(blocks: readonly Block[]): Piece[] {
        return blocks.flatMap((block, i) => this.piecesOf(block, blocks[i - 1], blocks[i + 1]));
    }

    private piecesOf(block: Block, before: Block | undefined, after: Block | undefined): Piece[] {
        const { defined } = this.places;
        switch (block.kind) {
            case 'heading': return [{ leads: true, content: this.one(block) }];
            case 'paragraph': return isNote(block, before) ? [] : [{ leads: introduces(block, before, after), content: this.one(block) }];
            case 'formula': return [{ content: isNote(after, block) ? { stack: [this.one(block), this.paragraph(after.text, [10, 0, 0, 3])], unbreakable: true } : this.one(block) }];
            case 'table': return [{ isLong: block.rows.length > short.rows, content: this.one(block) }];
            case 'drawing': return pdfDrawings([block], this.room, defined).map(content => ({ content }));
            case 'row': return pdfDrawings(block.blocks.filter(inner => inner.kind === 'drawing'), this.room, defined).map(content => ({ content }));
            case 'fold': return [{ leads: true, content: this.summary(block.summary, this.linkedId(block.ids)) }, ...this.pieces(block.blocks)];
            case 'list': return [{ isLong: true, content: this.one(block) }];
            default: return [{ content: this.one(block) }];
        }
    }

    private readonly linkedId = (ids: readonly string[]): string | undefined => ids.find(id => this.places.linked.has(id));

    private one(block: Block): Content {
        const id = this.linkedId(block.ids);
        switch (block.kind) {
            case 'heading': return this.heading(block.text, block.level, id);
            case 'paragraph': return { ...this.paragraph(block.text), ...(id && { id }) };
            case 'formula': return { text: pdfText(block.text, this.places.defined), margin: [10, 3, 0, 1], ...(id && { id }) };
            case 'list': return this.list(block);
            case 'table': return pdfTable(block, this.places);
            case 'definitions': return this.definitions(block.entries);
            case 'box': return this.box(block);
            default: return { stack: this.write([block]) };
        }
    }

    private paragraph(text: Text, margin: [number, number, number, number] = [0, 2, 0, 3]) {
        return { text: pdfText(text, this.places.defined), margin };
    }

    private heading(text: Text, level: 1 | 2 | 3, id: string | undefined): Content {
        return {
            text: pdfText(text, this.places.defined), ...this.bookmark(lineOf(text), level, id),
            fontSize: sizes[level], bold: level < 3, margin: [0, level === 1 ? 0 : level === 2 ? 14 : 9, 0, 3]
        };
    }

    private summary(text: Text, id: string | undefined): Content {
        return { text: pdfText(text, this.places.defined), ...this.bookmark(lineOf(text), fold, id), margin: [0, 9, 0, 1] };
    }

    /** A place of its own, under the last bookmark of a higher level. */
    private bookmark(text: string, level: number, linked: string | undefined) {
        this.bookmarks += 1;
        const id = linked ?? `bookmark ${this.bookmarks}`;
        const above = this.outline.filter(other => other.level < level);
        this.outline = [...above, { level, id }];
        return { id, outline: true, outlineText: text, outlineExpanded: level === 1, ...(above.length > 0 && { outlineParentId: above.at(-1)!.id }) };
    }

    private list({ ordered, items }: Block & { kind: 'list' }): Content {
        const content = items.map(item => ({ stack: this.write(item), unbreakable: item.length < 4 }));
        return ordered ? { ol: content, margin: [0, 0, 0, 6] } : { ul: content, margin: [0, 0, 0, 6] };
    }

    /** Names in one column and what they are in the other; a line to write on where there is nothing. */
    private definitions(entries: readonly Definition[]): Content {
        const forms = entries.every(({ text }) => text.length === 0);
        return {
            table: {
                dontBreakRows: true,
                widths: ['auto', '*'],
                body: entries.map(({ ids, term, text }) => {
                    const id = this.linkedId(ids);
                    return [
                        { text: pdfText(term, this.places.defined), ...(id && { id }) },
                        { text: pdfText(text, this.places.defined), color: colours.soft, border: [false, false, false, text.length === 0] }
                    ];
                })
            },
            layout: {
                hLineWidth: () => 0.5, vLineWidth: () => 0, paddingTop: () => forms ? 12 : 0.5, paddingBottom: () => 0.5, paddingLeft: () => 0, paddingRight: () => 8,
                hLineColor: () => colours.ink, defaultBorder: false
            },
            fontSize: forms ? 9 : 8, margin: [forms ? 0 : 10, 3, 0, 6]
        };
    }

    private box({ outcome, blocks }: Block & { kind: 'box' }): Content {
        return {
            table: { widths: ['*'], dontBreakRows: true, body: [[{ stack: this.write(blocks), border: [true, false, false, false] }]] },
            layout: { vLineWidth: () => 4, vLineColor: () => outcomeColours[outcome], hLineWidth: () => 0, fillColor: () => '#f4f4f4', paddingLeft: () => 8, defaultBorder: false },
            margin: [0, 4, 0, 6]
        };
    }
}

type Paragraph = Block & { kind: 'paragraph' };

/** The clause or a remark below a formula. */
function isNote(block: Block | undefined, before: Block | undefined): block is Paragraph {
    return before?.kind === 'formula' && block?.kind === 'paragraph' && block.text.every(({ small }) => small);
}

function introduces({ text }: Paragraph, before: Block | undefined, after: Block | undefined): boolean {
    return (before === undefined || before.kind === 'heading' || after?.kind === 'row' || after?.kind === 'drawing')
        && text.reduce((sum, run) => sum + run.text.length, 0) < short.paragraph;
}
