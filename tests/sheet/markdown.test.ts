import MarkdownIt from 'markdown-it';
import { describe, expect, it } from 'vitest';
import { escapeMarkdown } from '../../server/src/sheet/markdown/escape.js';
import { renderMarkdown } from '../../server/src/sheet/markdown/index.js';
import { percentUp } from '../../server/src/sheet/numbers.js';
import { worstOfEach } from '../../server/src/summary.js';
import { meta, results as granary } from './fixture.js';
import { hostile } from './hostile.js';
import { attribute, elementsIn, parseHtml, textOf, type Parsed } from './html.js';
import { retrofit } from './retrofit-fixture.js';

/** As GitHub reads it: tables, and HTML that is allowed in Markdown. */
const markdown = new MarkdownIt({ html: true });
const read = (text: string): Parsed => parseHtml(`<!DOCTYPE html><html lang="en"><head><title>t</title></head><body>${markdown.render(text)}</body></html>`);

describe.each(Object.entries({ granary, retrofit, hostile }))('the sheet of %s as Markdown', (_, results) => {
    const text = renderMarkdown(results, meta);
    const parsed = read(text);

    it('is the same every time', () => expect(renderMarkdown(results, meta)).toBe(text));

    it('has a name for every place that it links to, once', () => {
        const ids = parsed.elements.flatMap(element => attribute(element, 'id') ?? []);
        const wanted = parsed.elements.flatMap(element => attribute(element, 'href') ?? []);
        expect(wanted.length).toBeGreaterThan(4);
        expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
        expect(wanted.map(decodeURI).filter(href => !ids.includes(href.replace(/^#/, '')))).toEqual([]);
    });

    it('has tables whose rows are all as long as their heads', () => {
        const tables = parsed.elements.filter(({ tagName }) => tagName === 'table');
        expect(tables.length).toBeGreaterThan(2);
        for (const rows of tables.map(table => elementsIn(table).filter(({ tagName }) => tagName === 'tr'))) {
            expect(new Set(rows.map(row => elementsIn(row).filter(({ tagName }) => tagName === 'td' || tagName === 'th').length)).size).toBe(1);
        }
    });

    it('says of each check what it uses, and calls none that fails anything else', () => {
        const folds = parsed.elements.filter(({ tagName }) => tagName === 'summary').map(textOf);
        for (const check of worstOfEach(results.checks)) {
            expect(folds.filter(fold => fold.includes(`${percentUp(check.utilisation)} ${check.pass ? '✓ holds' : '✗ FAILS'}`)).length).toBeGreaterThan(0);
        }
    });
});

describe('hostile names in Markdown', () => {
    const parsed = read(renderMarkdown(hostile, meta));
    const allowed = new Set('html head title body h1 h2 h3 p br strong em code a ol ul li table thead tbody tr th td blockquote details summary b sub sup'.split(' '));

    it('are only text', () => {
        expect(parsed.elements.filter(({ tagName }) => !allowed.has(tagName)).map(({ tagName }) => tagName)).toEqual([]);
        expect(parsed.elements.flatMap(({ attrs }) => attrs).filter(({ name }) => !['id', 'href', 'lang', 'style', 'open'].includes(name))).toEqual([]);
        expect(textOf(parsed.elements[0]!)).toContain('<img src=x onerror=alert(1)>');
    });

    it('turn nothing round, and fill no row', () => {
        expect(renderMarkdown(hostile, meta)).not.toMatch(/[\u202a-\u202e]/);
        const cells = parsed.elements.filter(({ tagName }) => tagName === 'td' || tagName === 'summary');
        expect(cells.filter(cell => textOf(cell).length > 1500)).toEqual([]);
    });

    it.each([
        ['a|b', 'a\\|b'], ['`x`', '\\`x\\`'], ['*b* _i_ k_mod', '\\*b\\* \\_i\\_ k_mod'], ['[x](y)', '\\[x\\](y)'], ['<img>', '\\<img\\>'], ['$x$', '\\$x\\$'],
        ['@smith #12 :tada:', '@<!-- -->smith #<!-- -->12 :<!-- -->tada:'], ['\u202eevil', 'evil'], ['a مرحبا', '\u2068a مرحبا\u2069'], ['&lt;', '\\&lt;']
    ])('%j is written %j', (text, written) => expect(escapeMarkdown(text)).toBe(written));
});
