import { describe, expect, it } from 'vitest';
import type { Step, Term } from '../../server/src/results.js';
import { stepToText, texToText } from '../../server/src/sheet/plain-math.js';

const term = (symbol: string, value: number, unit = ''): Term => ({ symbol, amount: { value, unit } });

function check(step: Omit<Step, 'result'> & { result: readonly [number, string] }, expected: string): void {
    expect(stepToText({ ...step, result: { value: step.result[0], unit: step.result[1] } })).toBe(expected);
}

describe('a step as text', () => {
    it('gives the formula, the same with numbers, and the result', () => check({
        symbol: '\\sigma_{m,y,d}', formula: '\\frac{M_{y,d}}{W_y}', terms: [term('M_{y,d}', 3.48, 'kNm'), term('W_y', 632812, 'mm3')], result: [5.4992, 'MPa']
    }, 'σ_m,y,d = M_y,d / W_y = 3.48 kN·m / 633 cm³ = 5.50 MPa'));

    it('puts a dot where symbols stood side by side, and brackets where a fraction has sums or products', () => check({
        symbol: '\\tau_d', formula: '\\frac{1.5 V_d}{k_{cr} b h}', terms: [term('V_d', 5.2, 'kN'), term('k_{cr}', 0.67), term('b', 190, 'mm'), term('h', 240, 'mm')], result: [0.2553, 'MPa']
    }, 'τ_d = 1.5 · V_d / (k_cr · b · h) = 1.5 · 5.2 kN / (0.67 · 190 mm · 240 mm) = 0.255 MPa'));

    it('does not take the h of another symbol for h', () => check({
        symbol: 'k_h', formula: '\\min\\left(\\left(\\frac{150}{h}\\right)^{0.2}, 1.3\\right) h_{ef}', terms: [term('h', 120, 'mm'), term('h_{ef}', 100, 'mm')], result: [1.0456, '']
    }, 'k_h = min((150 / h)^0.2, 1.3) · h_ef = min((150 / 120 mm)^0.2, 1.3) · 100 mm = 1.05'));

    it('puts a number with a unit in brackets under a power, and a negative one anywhere', () => check({
        symbol: 'W', formula: '\\frac{b h^2}{6} - e', terms: [term('b', 190, 'mm'), term('h', 240, 'mm'), term('e', -3)], result: [1824000, 'mm3']
    }, 'W = b · h² / 6 − e = 190 mm · (240 mm)² / 6 − (−3) = 1824 cm³'));

    it('leaves out what would only repeat', () => {
        check({ symbol: 'k_{mod}', formula: '', terms: [], result: [0.8, ''] }, 'k_mod = 0.8');
        check({ symbol: 'k_{mod}', formula: '\\text{solid timber, medium-term}', terms: [], result: [0.8, ''] }, 'k_mod = solid timber, medium-term = 0.8');
        check({ symbol: 'x', formula: 'y', terms: [term('y', 2, 'mm')], result: [2, 'mm'] }, 'x = y = 2 mm');
    });

    it('says that a result was not computed, never NaN', () =>
        check({ symbol: 'x', formula: '\\frac{a}{b}', terms: [term('a', 1), term('b', 0)], result: [NaN, 'MPa'] }, 'x = a / b = 1 / 0 = not computed'));
});

describe('TeX as text', () => {
    it.each([
        ['\\sqrt{a^2+b^2}', '√(a² + b²)'],
        ['\\frac{a+b}{c} d', '(a + b) / c · d'],
        ['x/\\frac{a}{b}', 'x / (a / b)'],
        ['\\frac{\\sigma_{m,d}}{k_{crit} f_{m,d}} \\le 1', 'σ_m,d / (k_crit · f_m,d) ≤ 1'],
        ['-\\lambda \\cdot 10^{-3}', '−λ · 10^(−3)'],
        ['2\\,(a - b)\\,c', '2 · (a − b) · c'],
        ['M_d', 'M_d'],
        ['\\frac{', ' / '.trim()],
        ['\\unknown{a}', 'unknown · a']
    ])('%s → %s', (tex, text) => expect(texToText(tex)).toBe(text));
});
