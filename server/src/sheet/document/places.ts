import type { Block } from './blocks.js';

/** The ids of all places of a document. */
export function idsIn(blocks: readonly Block[]): ReadonlySet<string> {
    return new Set(blocks.flatMap(idsOf));
}

function idsOf(block: Block): string[] {
    switch (block.kind) {
        case 'list': return [...block.ids, ...block.items.flat().flatMap(idsOf)];
        case 'table': return [...block.ids, ...block.rows.flatMap(({ ids }) => ids)];
        case 'definitions': return [...block.ids, ...block.entries.flatMap(({ ids }) => ids)];
        case 'fold':
        case 'box':
        case 'row': return [...block.ids, ...block.blocks.flatMap(idsOf)];
        default: return [...block.ids];
    }
}
