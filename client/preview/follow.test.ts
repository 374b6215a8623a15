import { describe, expect, it } from 'vitest';
import { blockAt } from './follow.js';

describe('blockAt', () => {
    const blocks = [{ line: 10, height: 20 }, { line: 30, height: 20 }, { line: 20, height: 20 }];

    it.each([[9, undefined], [10, 0], [19, 0], [20, 2], [29, 2], [30, 1], [999, 1]])('finds for line %i block %s', (line, index) => {
        expect(blockAt(blocks, line)).toBe(index);
    });

    it('prefers the tallest of one line', () => {
        expect(blockAt([{ line: 10, height: 20 }, { line: 10, height: 400 }, { line: 10, height: 30 }], 12)).toBe(1);
    });
});
