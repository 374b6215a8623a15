/** A block of the sheet that says which line it comes from. */
export interface Block {
    readonly line: number;
    /** px. */
    readonly height: number;
}

/** The index of the block that a cursor at `line` is about: the greatest line not beyond it; of equals the tallest, which says most. */
export function blockAt(blocks: readonly Block[], line: number): number | undefined {
    let best: number | undefined;
    blocks.forEach((block, index) => {
        const rival = best === undefined ? undefined : blocks[best];
        if (block.line <= line && (rival === undefined || preferred(block, rival))) {
            best = index;
        }
    });
    return best;
}

function preferred(block: Block, rival: Block): boolean {
    return block.line === rival.line ? block.height > rival.height : block.line > rival.line;
}
