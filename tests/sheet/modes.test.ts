import { describe, expect, it } from 'vitest';
import type { Step } from '../../server/src/results.js';
import { modesOf } from '../../server/src/sheet/modes.js';

const line = (symbol: string, value: number, note?: string): Step => ({ symbol, formula: 'x', terms: [], result: { value, unit: 'N' }, note, clause: 'EN 1995-1-1 (8.6)' });
const least = (formula: string, ...terms: readonly (readonly [symbol: string, value: number, meaning?: string])[]): Step =>
    ({ symbol: 'F', formula, terms: terms.map(([symbol, value, meaning]) => ({ symbol, amount: { value, unit: 'N' }, meaning })), result: { value: 1, unit: 'N' } });

describe('the ways to fail', () => {
    const earlier = [line('F_a', 9, 'of another plane'), line('F_a', 5, 'timber crushed'), line('F_{b,Rd}', 3, 'bolt bends')];

    it('are those that the least is taken of, each as its own last line says it', () => {
        const modes = modesOf(least('\\min\\left\\{F_a;\\;F_{b,Rd}\\right\\}', ['F_a', 5], ['F_{b,Rd}', 3]), earlier);
        expect(modes.map(({ term, how, clause }) => [term.symbol, how, clause])).toEqual([['F_a', 'timber crushed', 'EN 1995-1-1 (8.6)'], ['F_{b,Rd}', 'bolt bends', 'EN 1995-1-1 (8.6)']]);
        expect(modesOf(least('\\min(F_a, F_{c})', ['F_a', 5], ['F_{c}', 2, 'plate yields']), earlier).map(({ how }) => how)).toEqual(['timber crushed', 'plate yields']);
    });

    it('are none where the least is of something that is no mode', () => {
        expect(modesOf(least('\\min(1, F_a)', ['F_a', 5]), earlier)).toEqual([]);
        expect(modesOf(least('\\min(F_a, F_{c})', ['F_a', 5], ['F_{c}', 2]), earlier)).toEqual([]);
        expect(modesOf(least('n \\min(F_a, F_{b,Rd})', ['F_a', 5], ['F_{b,Rd}', 3]), earlier)).toEqual([]);
        expect(modesOf(line('F', 1), earlier)).toEqual([]);
    });
});
