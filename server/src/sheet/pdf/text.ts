/** Runs of text as a PDF's. */
import type { Content } from 'pdfmake';
import { plainText, type Run, type Text } from '../document/blocks.js';
import { printable } from '../document/plain-text.js';
import { clip } from '../drawing/labels.js';
import { colours, outcomeColours } from './colours.js';

/** Characters of one run, where thousands would fill pages with a name. */
const longest = { inText: 1500, inCell: 200 };

export type Where = keyof typeof longest;

/** @param defined ids of the places that a link may lead to */
export function pdfText(text: Text, defined: ReadonlySet<string>, where: Where = 'inText'): Content[] {
    return text.map(run => ({ text: (run.breaks ? '\n' : '') + breakable(clip(printable(run.text), longest[where])), ...styleOf(run, defined) }));
}

/** For a bookmark, or where there is room for one line. */
export function lineOf(text: Text, most = 90): string {
    return clip(printable(plainText(text)), most);
}

function styleOf({ bold, small, code, script, target, outcome }: Run, defined: ReadonlySet<string>) {
    const linked = target !== undefined && defined.has(target);
    return {
        ...(bold && { bold }),
        ...((small || code) && { fontSize: 7.5 }),
        ...(small && { color: colours.soft }),
        ...(script === 'sub' && { sub: true }),
        ...(script === 'sup' && { sup: true }),
        ...(outcome && { color: outcomeColours[outcome], bold: outcome !== 'pass' }),
        ...(linked && { linkToDestination: target, color: colours.link })
    };
}

/** A word that no line holds may be broken anywhere; a number never leaves its unit. */
function breakable(text: string): string {
    return text.replace(/(\d) (?=[%°a-zA-Z]{1,3}(?:[·/²³⁴),.;:\s]|$))/gu, '$1\u00A0').replace(/\S{24}(?=\S)/gu, '$&\u200B');
}
