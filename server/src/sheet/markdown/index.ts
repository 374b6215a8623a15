/** The sheet as Markdown for a pull request, as GitHub shows it. Pure; everything from the text is escaped. */
import type { Results } from '../../results.js';
import type { Block, Text } from '../document/blocks.js';
import { sheetBlocks } from '../document/index.js';
import { linksIn } from '../document/links.js';
import { plainDisplay } from '../display.js';
import type { Meta } from '../head.js';
import { escapeLineStart, escapeMarkdown } from './escape.js';
import { markdownTable } from './table.js';
import { htmlText, markdownText } from './text.js';

export function renderMarkdown(results: Results, meta: Meta, display = plainDisplay): string {
    return writeMarkdown(sheetBlocks(results, meta, display));
}

export function writeMarkdown(blocks: readonly Block[]): string {
    const linked = linksIn(blocks);
    /** Places that nothing links to need no name. */
    const anchorsOf = (ids: readonly string[]): string => ids.filter(id => linked.has(id)).map(id => `<a id="${id}"></a>`).join('');

    const write = (given: readonly Block[]): string =>
        grouped(given).map(group => 'kind' in group ? one(group) : inWords(group)).join('\n\n');

    function one(block: Block): string {
        const anchors = anchorsOf(block.ids);
        switch (block.kind) {
            case 'heading': return `${'#'.repeat(block.level)} ${anchors}${oneLine(block.text)}`;
            case 'paragraph':
            case 'formula': return anchors + lines(block.text);
            case 'list': return above(anchors, block.items.map((item, i) => indented(block.ordered ? `${i + 1}.` : '-', write(item))).join('\n'));
            case 'table': return above(anchors, markdownTable(block, anchorsOf));
            case 'definitions': return above(anchors, block.entries.map(({ ids, term, text }) =>
                `- ${anchorsOf(ids)}${oneLine(term)}: ${text.length === 0 ? '…'.repeat(8) : oneLine(text)}`).join('\n'));
            case 'fold': return folded(anchors, htmlText(block.summary), write(block.blocks));
            case 'box': return write(block.blocks).split('\n').map(line => `> ${line}`.trimEnd()).join('\n');
            case 'drawing': return `${anchors}**${escapeMarkdown(block.title)}.** ${escapeMarkdown(block.description)}`;
            case 'row': return above(anchors, write(block.blocks));
        }
    }

    /** Markdown holds no drawing: what each says, in words. */
    const inWords = (drawings: readonly Block[]): string => folded('', 'Drawings and diagrams in words', drawings.map(one).join('\n\n'));

    return `${write(blocks)}\n`;
}

/** Drawings that follow each other together. */
function grouped(blocks: readonly Block[]): (Block | readonly Block[])[] {
    const groups: (Block | Block[])[] = [];
    for (const block of blocks.flatMap(given => given.kind === 'row' ? given.blocks : [given])) {
        const last = groups.at(-1);
        if (block.kind !== 'drawing') {
            groups.push(block);
        } else if (Array.isArray(last)) {
            last.push(block);
        } else {
            groups.push([block]);
        }
    }
    return groups;
}

const folded = (anchors: string, summary: string, body: string): string =>
    `${anchors === '' ? '' : `${anchors}\n`}<details>\n<summary>${summary}</summary>\n\n${body}\n\n</details>`;
const lines = (text: Text): string => markdownText(text).split('\n').map(escapeLineStart).join('\n');
const oneLine = (text: Text): string => markdownText(text, ' ');
const above = (anchors: string, text: string): string => anchors === '' ? text : `${anchors}\n\n${text}`;

function indented(marker: string, text: string): string {
    return text.split('\n').map((line, i) => i === 0 ? `${marker} ${line}` : line === '' ? '' : ' '.repeat(marker.length + 1) + line).join('\n');
}
