/** A block of the sheet that says which line it comes from; heights in px from the top of the view. */
export interface Block {
    readonly line: number;
    readonly top: number;
    readonly bottom: number;
}

/**
 * The index of the block that a cursor at `line` is about: the one with the greatest line not beyond it.
 * Of several from the same line, one that is in view already, else the tallest, which says most.
 */
export function blockAt(blocks: readonly Block[], line: number, viewHeight: number): number | undefined {
    let best: number | undefined;
    blocks.forEach((block, index) => {
        const rival = best === undefined ? undefined : blocks[best];
        if (block.bottom > block.top && block.line <= line && (rival === undefined || preferred(block, rival, viewHeight))) {
            best = index;
        }
    });
    return best;
}

/** True where nothing needs scrolling to read the block's beginning. */
export function inView(block: Block, viewHeight: number): boolean {
    return block.top >= 0 && block.top < viewHeight * 0.8;
}

function preferred(block: Block, rival: Block, viewHeight: number): boolean {
    if (block.line !== rival.line) {
        return block.line > rival.line;
    }
    if (inView(block, viewHeight) !== inView(rival, viewHeight)) {
        return inView(block, viewHeight);
    }
    return block.bottom - block.top > rival.bottom - rival.top;
}
