/** How sure we are, proof loads and options, from the text to the sheet. */
import { describe, expect, it } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import { computeWhole } from '../../server/src/whole.js';
import { renderPreview, renderSheet } from '../../server/src/sheet/index.js';
import { beam, option, sunk, wholeOf, yard } from '../whole/job.js';
import { meta } from './fixture.js';
import { attribute, byId, parseHtml, textOf } from './html.js';

const answer = 'answer proof-load "barriers and catch props stand" (documented "method statement")\n';
const results = wholeOf(`breakeven B.section.depth\n${yard(sunk)}${option}${answer}`);
const sheet = parseHtml(renderSheet(results, meta));
const preview = parseHtml(`<!DOCTYPE html><html><head><title>x</title></head><body>${renderPreview(results).html}</body></html>`);
const sure = textOf(byId(sheet, 'ledger'));

it.each([['sheet', sheet], ['preview', preview]])('is well formed in the %s, with every id once and every reference answered', (_, parsed) => {
    expect(parsed.errors).toEqual([]);
    const ids = parsed.elements.flatMap(element => attribute(element, 'id') ?? []);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    const targets = parsed.elements.flatMap(element => [attribute(element, 'href')?.slice(1), attribute(element, 'aria-labelledby'), attribute(element, 'aria-describedby')].filter(id => id !== undefined));
    expect(targets.filter(target => !ids.includes(target))).toEqual([]);
    expect(textOf(parsed.elements[0]!)).not.toMatch(/NaN|Infinity|undefined|\[object/);
});

describe('the ledger', () => {
    it('has each input once, guesses and what is varied first, each with the value at which a check fails', () => {
        const rows = sheet.elements.filter(element => attribute(element, 'id')?.startsWith('input-'));
        expect(rows.map(row => attribute(row, 'id'))).toHaveLength(results.ledger.length);
        expect(rows.slice(0, 3).map(row => attribute(row, 'id')).sort()).toEqual(['input-B.loss.top', 'input-B.section', 'input-pine.grade']);
        for (const { input, breakEvens } of results.certainty!.ledger) {
            for (const { sentence } of breakEvens) {
                expect(textOf(byId(sheet, `input-${input.path}`))).toContain(sentence.slice(1));
            }
        }
        expect(textOf(byId(sheet, 'input-B.loss.top'))).toMatch(/20 mm line \d+ probed: awl Passes until the top loss is \d+ mm; 20 mm was probed/);
    });

    it('tells what a guessed grade one class lower does, and E₀,₀₅', () => {
        const { lowerClass, lowModulus } = results.certainty!.sensitivities[0]!;
        for (const { worst: { check, utilisation } } of [lowerClass!, lowModulus!]) {
            expect(sure).toContain(`${check} ${Math.ceil(100 * utilisation - 1e-9)} %`);
        }
        expect(sure).toContain('C22 : ');
        expect(sure).not.toContain('changes the verdict');
    });

    it('says where a lower grade changes the verdict', () => {
        const limit = Number(wholeOf('breakeven deck').certainty!.asked[0]!.limit);
        const close = computeWhole(evaluateText(beam.replace('1.5 kN/m on B', `${(0.99 * limit).toFixed(3)} kN/m on B`), 'ferry.padstone'));
        expect(close.checks.every(({ pass }) => pass)).toBe(true);
        expect(textOf(byId(parseHtml(renderSheet(close, meta)), 'ledger'))).toMatch(/C22 : B\.\w+ 1\d\d %: changes the verdict/);
    });

    it('without limits, while they are being found, has inputs by how they are known', () => {
        const { certainty: _, loadTests: _tests, options: _options, ...early } = results;
        const text = textOf(byId(parseHtml(renderSheet(early, meta)), 'ledger'));
        expect(text).toContain('pine.grade');
        expect(text).not.toContain('Passes until');
    });
});

describe('a proof load', () => {
    it('has its verdict, readings and figures, and what it does not prove', () => {
        const [test] = results.loadTests!;
        expect(sure).toContain(test!.verdict);
        expect(sure).toMatch(/200 kg 2 m [\d.]+ mm [\d.]+ mm and [\d.]+ mm [\d.]+ mm/);
        expect(sure).toMatch(/Modulus 1[01]\d{3} MPa ± 0 MPa/);
        expect(sure).toContain('the test reached');
        for (const line of test!.doesNotProve) expect(sure).toContain(line.slice(1));
    });

    it('is plotted, and the plot says in words what it shows', () => {
        const said = textOf(byId(sheet, 'load-test-yard-desc'));
        const two = (value: number) => value.toFixed(1);
        const point = results.loadTests![0]!.points[1]!;
        expect(said).toContain(`200 kg: predicted ${two(point.predicted.value)} mm, between ${two(point.low.value)} mm and ${two(point.high.value)} mm, read ${two(sunk)} mm`);
        expect(said).toContain('after unloading: 0.1 mm');
        const plot = sheet.elements.find(element => attribute(element, 'aria-labelledby') === 'load-test-yard-title')!;
        expect(textOf(plot)).toContain('after unloading');
    });
});

describe('options', () => {
    it('stand side by side with their numbers', () => {
        const text = textOf(byId(sheet, 'options'));
        // What a file without stages says is all carried in: 420 kg/m³ × 0.1 × 0.24 × 4 m, and × 0.3.
        expect(text).toMatch(/as drawn ✓ holds B\.\w+ \d+ % [\d.]+ mm = L\/\d+ B 40\.3 kg 40\.3 kg B 4 m B 1 none to settle/);
        expect(text).toMatch(/deep a new one line \d+ ✓ holds .* 50\.4 kg 50\.4 kg B 4 m B 1 /);
    });
});

it('an answered hazard stays, with its answer and how that is known', () => {
    expect(textOf(byId(sheet, 'hazards'))).toMatch(/it may break without warning.*Answered: Barriers and catch props stand\. documented: method statement\./);
});
