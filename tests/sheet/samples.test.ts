import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import { compute } from '../../server/src/compute.js';
import { renderPreview, renderSheet } from '../../server/src/sheet/index.js';
import { checkAnchor } from '../../server/src/sheet/ids.js';
import { parseTex, printTex } from '../../server/src/sheet/math/tex.js';
import { substitute } from '../../server/src/sheet/math/substitute.js';
import { worstOfEach } from '../../server/src/summary.js';
import { modesOf } from '../../server/src/sheet/modes.js';
import { amount, percentUp } from '../../server/src/sheet/numbers.js';
import { meta as sheetMeta } from './fixture.js';
import { attribute, byId, elementsIn, parseHtml, textOf } from './html.js';

const folder = join(dirname(fileURLToPath(import.meta.url)), '../../samples');
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(name => name.endsWith('.padstone') && !name.includes('details'));

it('finds samples', () => expect(files.length).toBeGreaterThan(0));

describe.each(files)('%s', name => {
    const results = compute(evaluateText(readFileSync(join(folder, name), 'utf8'), name));
    const parsed = parseHtml(renderSheet(results, sheetMeta));

    it('makes a well formed sheet that prints nothing that is not a number', () => {
        expect(parsed.errors).toEqual([]);
        expect(textOf(parsed.elements[0]!)).not.toMatch(/NaN|Infinity|undefined|\[object/);
        const ids = parsed.elements.flatMap(element => attribute(element, 'id') ?? []);
        expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    });

    it('shows each check with its utilisation and never calls one that fails anything else', () => {
        expect(results.checks.length).toBeGreaterThan(0);
        for (const check of worstOfEach(results.checks)) {
            const block = textOf(byId(parsed, checkAnchor(check)));
            expect(block).toContain(`${check.id} ${percentUp(check.utilisation)} ${check.pass ? '✓ holds' : '✗ FAILS'}`);
        }
    });

    it('marks the least of the ways to fail of every connection', () => {
        const listed = parsed.elements.filter(element => attribute(element, 'class') === 'modes');
        const taken = worstOfEach(results.checks).flatMap(({ steps }) => steps.filter((step, i) => modesOf(step, steps.slice(0, i)).length > 0));
        expect(listed.length).toBe(taken.length);
        listed.forEach((table, i) => {
            const governing = modesOf(taken[i]!, worstOfEach(results.checks).find(({ steps }) => steps.includes(taken[i]!))!.steps).find(({ term }) => term.amount.value === taken[i]!.result.value)!;
            const rows = textOf(table).split('EN 19').find(row => row.includes('◀ governs'));
            expect(rows).toContain(governing.how);
            expect(rows).toContain(`${amount(taken[i]!.result)} ◀ governs`);
        });
    });

    it('sets every formula as mathematics, with a number for every term', () => {
        const formulas = parsed.elements.filter(element => attribute(element, 'class') === 'formula');
        expect(formulas.length).toBe(worstOfEach(results.checks).flatMap(check => check.steps).length);
        expect(formulas.map(textOf).filter(text => /\\/.test(text))).toEqual([]);
        for (const { formula, terms } of results.checks.flatMap(check => check.steps)) {
            const filled = printTex(substitute(parseTex(formula), terms), () => '#');
            expect([formula, filled.split('#').length > terms.length]).toEqual([formula, true]);
        }
        expect(renderPreview(results).html).not.toContain('<div class="formula"><code>');
    });

    it('leads from every number in a formula to a line that says the same number, or to an input', () => {
        const formulas = parsed.elements.filter(element => attribute(element, 'class') === 'formula');
        const links = formulas.flatMap(formula => elementsIn(formula)).filter(({ tagName }) => tagName === 'a');
        const terms = worstOfEach(results.checks).flatMap(({ steps }) => steps.flatMap(step => step.terms));
        expect(links.length).toBeGreaterThanOrEqual(terms.length);
        const unsaid = parsed.elements.filter(({ tagName }) => tagName === 'dd').map(textOf).filter(text => /^[−\d.]+( [\w·/²³⁴°%]+)?$/.test(text));
        expect(unsaid).toEqual([]);
        for (const link of links) {
            const id = attribute(link, 'href')!.slice(1);
            const target = textOf(byId(parsed, id));
            expect([id, id.startsWith('input-') || digits(target).includes(digits(textOf(link)))]).toEqual([id, true]);
        }
    });
});

/** A line of the calculation has its number and its unit apart. */
const digits = (text: string): string => text.replace(/[^0-9.∞⁰¹²³⁴⁵⁶⁷⁸⁹]/g, '');
