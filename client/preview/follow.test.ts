import { describe, expect, it } from 'vitest';
import { blockAt, inView, type Block } from './follow.js';

const block = (line: number, top: number, height: number): Block => ({ line, top, bottom: top + height });

describe('blockAt', () => {
    const blocks = [block(10, 0, 20), block(30, 20, 20), block(20, 40, 20)];

    it.each([[9, undefined], [10, 0], [19, 0], [20, 2], [29, 2], [30, 1], [999, 1]])('finds for line %i block %s', (line, index) => {
        expect(blockAt(blocks, line, 500)).toBe(index);
    });

    it('prefers a block in view to a taller one out of it', () => {
        expect(blockAt([block(10, 900, 400), block(10, 100, 20)], 12, 500)).toBe(1);
    });

    it('prefers the tallest where none is in view', () => {
        expect(blockAt([block(10, 900, 20), block(10, 1000, 400), block(10, 1500, 30)], 12, 500)).toBe(1);
    });

    it('passes over what is folded away', () => {
        expect(blockAt([block(10, 0, 20), block(11, 0, 0)], 12, 500)).toBe(0);
    });
});

describe('inView', () => {
    it.each([[-1, false], [0, true], [399, true], [400, false]])('at %i px: %s', (top, expected) => {
        expect(inView(block(1, top, 10), 500)).toBe(expected);
    });
});
