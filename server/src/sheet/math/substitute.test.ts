import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Term } from '../../results.js';
import { substitute } from './substitute.js';
import { parseTex, printTex } from './tex.js';

const term = (symbol: string, value: number, unit = ''): Term => ({ symbol, amount: { value, unit } });
const filled = (formula: string, terms: readonly Term[] = []): string =>
    printTex(substitute(parseTex(formula), terms), ({ value, unit }) => `⟨${value}${unit && ` ${unit}`}⟩`).replace(/\s+/g, ' ');

describe('a symbol with a subscript that no term has', () => {
    it.each([
        ['k_{mod}', 'k_{m o d}'],
        ['k_{mod}^2', 'k_{m o d}^{2}'],
        ['\\frac{f_{m,k}}{\\gamma_M}', '\\frac{f_{m , k}}{\\gamma_{M}}'],
        ['\\sqrt{a_{1} + b^2}', '\\sqrt{a_{1} + b^{2}}'],
        ['\\left(x_1\\right)_{y}', '\\left( x_{1} \\right)_{y}']
    ])('stands whole in %s', (formula, expected) => expect(filled(formula)).toBe(expected));

    it('does not take the number of the symbol without it', () => expect(filled('h_{ef}^2 h', [term('h', 240, 'mm')])).toBe('h_{e f}^{2} \\cdot ⟨240 mm⟩'));
    it('is still filled under its power', () => expect(filled('h_{ef}^{n}', [term('n', 2)])).toBe('h_{e f}^{⟨2⟩}'));
});

it('ends on any formula, with or without its terms', () => {
    const { formula } = fc.letrec(tie => ({
        formula: fc.oneof({ maxDepth: 4 },
            fc.constantFrom('a', 'k_{mod}', '\\gamma_M', '150', 'f_{m,k}^2', 'x_1^{n_2}', '^', '_', '{'),
            fc.tuple(tie('formula'), tie('formula')).map(([a, b]) => `\\frac{${a as string}}{${b as string}}`),
            fc.tuple(tie('formula'), tie('formula')).map(([a, b]) => `\\left(${a as string}\\right)_{${b as string}}^{2}`),
            fc.tuple(tie('formula'), tie('formula')).map(([a, b]) => `${a as string} + ${b as string}`))
    }));
    fc.assert(fc.property(formula as fc.Arbitrary<string>, fc.subarray([term('a', -1, 'mm'), term('\\gamma_M', 1.3), term('x_1', 2, 'kN')]),
        (text, terms) => filled(text, terms).length >= 0));
});
