/** Drawings with their captions, as many side by side as the paper is wide. */
import type { Content } from 'pdfmake';
import type { Block, Text } from '../document/blocks.js';
import { colours } from './colours.js';
import { drawn } from './drawing.js';
import { pdfText } from './text.js';

/** Points for a pixel of the screen: an elevation is 118 mm wide, as the printed page has it. */
const scale = 0.563;
const gap = 12;

type Drawing = Block & { kind: 'drawing' };

interface Sized {
    readonly content: Content;
    readonly width: number;
}

/** @param room points from margin to margin */
export function pdfDrawings(drawings: readonly Drawing[], room: number, defined: ReadonlySet<string>): Content[] {
    const lines: Sized[][] = [];
    for (const drawing of drawings.map(block => sized(block, room, defined))) {
        const line = lines.at(-1);
        if (line && line.reduce((sum, { width }) => sum + width + gap, 0) + drawing.width <= room) {
            line.push(drawing);
        } else {
            lines.push([drawing]);
        }
    }
    return lines.map(line => ({
        columns: line.map(({ content, width }) => ({ width, stack: [content] })),
        columnGap: gap, unbreakable: true, margin: [0, 3, 0, 6]
    }));
}

function sized({ svg, caption }: Drawing, room: number, defined: ReadonlySet<string>): Sized {
    const drawing = drawn(svg);
    const width = Math.min(room, drawing.width * scale);
    return {
        width,
        content: {
            stack: [
                { svg: drawing.svg, width, height: drawing.height * width / drawing.width },
                ...(caption.length > 0 ? [captionOf(caption, defined)] : [])
            ]
        }
    };
}

function captionOf(caption: Text, defined: ReadonlySet<string>): Content {
    return { text: pdfText(caption, defined), fontSize: 7, color: colours.soft, margin: [0, 2, 0, 0] };
}
