import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { length } from '../../language/src/quantity.js';
import { units } from '../../language/src/units.js';
import { shownAs, type Display } from '../../server/src/sheet/display.js';
import { feetAndInches, imperial } from '../../server/src/sheet/imperial.js';
import { renderSheet } from '../../server/src/sheet/index.js';
import { renderMarkdown } from '../../server/src/sheet/markdown/index.js';
import * as numbers from '../../server/src/sheet/numbers.js';
import { stepToText } from '../../server/src/sheet/plain-math.js';
import { combinationLabel, prose } from '../../server/src/sheet/prose.js';
import { meta, results } from './fixture.js';

const display = { imperial: { units: 'imperial', decimal: 'point' }, comma: { units: 'si', decimal: 'comma' } } as const satisfies Record<string, Display>;
const inImperial = <T>(print: () => T): T => shownAs(display.imperial, print);
const withComma = <T>(print: () => T): T => shownAs(display.comma, print);
/** A fraction never leaves its inches. */
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('imperial', () => {
    it.each([
        [0, '0"'], [25.4, '1"'], [12.7, '1/2"'], [304.8, `1'-0"`], [2219.325, `7'-3 3/8"`], [311.15, `1'-0 1/4"`], [-50.8, '−2"'], [0.5, '0"'], [304.7, `1'-0"`], [4900, `16'-0 15/16"`]
    ])('%d mm is %s', (mm, text) => expect(plain(feetAndInches(mm, 16))).toBe(text));

    // Factors by definition; products worked out by hand: 1 lbf = 4.4482216152605 N, 1 psi = 0.00689475729 MPa, 1 psf = 47.88025898 Pa.
    it.each([
        [{ value: 1, unit: 'kN' }, '225 lbf'], [{ value: 44.482216152605, unit: 'kN' }, '10 kip'], [{ value: 6.894757293, unit: 'MPa' }, '1000 psi'],
        [{ value: 11000, unit: 'MPa' }, '1600 ksi'], [{ value: 1.3558179483, unit: 'kNm' }, '1000 lbf·ft'], [{ value: 16.387064, unit: 'cm3' }, '1 in³'],
        [{ value: 632812.5, unit: 'mm3' }, '38.6 in³'], [{ value: 1, unit: 'kN/m2' }, '20.9 psf'], [{ value: 1, unit: 'kN/m' }, '68.5 lbf/ft'], [{ value: 50, unit: 'kg' }, '110 lb'],
        [{ value: 350, unit: 'kg/m³' }, '21.8 lb/ft³'], [{ value: 1, unit: 'mm/kN' }, '0.175 in/kip'], [{ value: 83, unit: '%' }, '83 %'], [{ value: 8, unit: 'Hz' }, '8 Hz'],
        [{ value: 2.21, unit: 'm' }, `7'-3"`], [{ value: 35, unit: 'mm' }, '1.38 in'], [{ value: NaN, unit: 'MPa' }, 'not computed']
    ])('%j is %s', (given, text) => expect(plain(inImperial(() => numbers.amount(given)))).toBe(text));

    it('has lengths, places, deflections and forces as the trade writes them', () => {
        expect(plain(inImperial(() => [numbers.size(190, 240), numbers.station(2210), numbers.deflection(9.9), numbers.force(5.2), numbers.moment(3.48), numbers.setOut(4900)].join('; '))))
            .toBe(`7 1/2" × 9 7/16"; 7'-3"; 0.39 in; 1170 lbf; 2570 lbf·ft; 16'-0 15/16"`);
        expect(plain(inImperial(() => numbers.quantity({ value: 4900, dimension: length })))).toBe(`16'-1"`);
        expect(inImperial(() => numbers.range(numbers.force(2), numbers.force(3.7)))).toBe('450 to 832 lbf');
    });

    it('is the same amount, and never turns a pass into a failure or the other way round', () => {
        const unit = fc.constantFrom('mm', 'mm2', 'mm3', 'mm4', 'N', 'kN', 'kNm', 'MPa', 'kN/m', 'kN/m2', 'kg');
        fc.assert(fc.property(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), unit, (value, from) => {
            const to = imperial({ value, unit: from })!;
            const back = to.value * units.get(to.unit)!.factor / units.get(from)!.factor;
            return Math.abs(back - value) <= 1e-9 * value;
        }));
        fc.assert(fc.property(fc.double({ min: 0, max: 2, noNaN: true }), utilisation => inImperial(() => numbers.percentUp(utilisation)) === numbers.percentUp(utilisation)));
    });

    it('is within a thirty-second of an inch where lengths are set out', () => {
        fc.assert(fc.property(fc.double({ min: -2e4, max: 2e4, noNaN: true }), mm => {
            const [, minus, feet = '0', inches = '0', over = '0', under = '1'] = /^(−?)(?:(\d+)'-)?(?:(\d+)(?= |"))? ?(?:(\d+)\/(\d+))?"$/.exec(plain(feetAndInches(mm, 16)))!;
            const read = (minus ? -1 : 1) * 25.4 * (12 * Number(feet) + Number(inches) + Number(over) / Number(under));
            return Math.abs(read - mm) <= 25.4 / 32 + 1e-6;
        }));
    });

    it('leaves formulas in SI and gives their results in both', () => {
        const step = results.checks[0]!.steps.find(({ result }) => result.unit === 'MPa')!;
        expect(inImperial(() => stepToText(step))).toMatch(/MPa \([\d.]+ psi\)$/);
        expect(stepToText(step)).not.toContain('psi');
    });
});

describe('sentences', () => {
    it.each([
        ['lift it 3 mm at 2.15 m', `lift it 1/8" at 7'-0 3/4"`], ['190 × 240 mm C18', `7 1/2" × 9 7/16" C18`], ['from 1.600 to 2.700 m', `from 5'-3" to 8'-10 1/4"`],
        ['0.75 kN/m² × 2.2 m = 1.65 kN/m', `15.7 psf × 7'-2 1/2" = 113 lbf/ft`], ['EN 1995-1-1 6.1.6 and Table 3.1', 'EN 1995-1-1 6.1.6 and Table 3.1'], ['3 mmx, M12 4.6', '3 mmx, M12 4.6']
    ])('%s in imperial: %s', (text, shown) => expect(plain(inImperial(() => prose(text)))).toBe(shown));

    it.each([
        ['at 2.15 m, 83.5 %', 'at 2,15 m, 83,5 %'], ['from 1.600 to 2.700 m', 'from 1,600 to 2,700 m'], ['EN 1995-1-1 6.1.6', 'EN 1995-1-1 6.1.6'], ['granary.padstone line 3', 'granary.padstone line 3']
    ])('%s with a comma: %s', (text, shown) => expect(withComma(() => prose(text))).toBe(shown));

    it('has the factors of a combination with a comma', () => expect(withComma(() => combinationLabel('1.35 G + 1.5 storage (span 2)'))).toBe('1,35 G + 1,5 storage (span 2)'));
});

describe('a decimal comma', () => {
    it('is only another sign', () => {
        const prints = [numbers.significant, numbers.deflection, numbers.station, numbers.force, numbers.moment, numbers.percentUp, numbers.ratioUp, numbers.setOut];
        fc.assert(fc.property(fc.double({ noNaN: true }), fc.constantFrom(...prints), (value, print: (value: number) => string) => withComma(() => print(value)).replace(',', '.') === print(value)));
    });

    it('stands in formulas, where it is no list', () => {
        const html = shownAs(display.comma, () => renderSheet(results, meta, display.comma));
        expect(html).toMatch(/<mn>\d+,\d+<\/mn>/);
        expect(renderMarkdown(results, meta, display.comma)).toMatch(/= \d+,\d+ MPa/);
    });
});

it('a display ends with what was printed in it, also where that fails', () => {
    expect(() => inImperial(() => { throw new Error('no'); })).toThrow();
    expect(numbers.deflection(9.9)).toBe('9.9 mm');
});
