import type { Block, Text } from './blocks.js';

/** The ids of all places that something links to. */
export function linksIn(blocks: readonly Block[]): ReadonlySet<string> {
    return new Set(blocks.flatMap(textsOf).flat().flatMap(({ target }) => target ?? []));
}

function textsOf(block: Block): readonly Text[] {
    switch (block.kind) {
        case 'heading':
        case 'paragraph':
        case 'formula': return [block.text];
        case 'list': return block.items.flat().flatMap(textsOf);
        case 'table': return [...block.head, ...block.rows.flatMap(({ cells }) => cells.map(({ text }) => text))];
        case 'definitions': return block.entries.flatMap(({ term, text }) => [term, text]);
        case 'fold': return [block.summary, ...block.blocks.flatMap(textsOf)];
        case 'box':
        case 'row': return block.blocks.flatMap(textsOf);
        case 'drawing': return [block.caption];
    }
}
