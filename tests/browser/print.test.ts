/** The sheet on paper, as the browser prints it: A4 and Letter, read back page by page. */
import { execFileSync } from 'node:child_process';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Results } from '../../server/src/results.js';
import { renderSheet } from '../../server/src/sheet/index.js';
import { meta, results as granary } from '../sheet/fixture.js';
import { findBrowser, launch, show } from './browser.js';
import { samples } from './samples.js';

const executable = findBrowser();
const formats = ['A4', 'Letter'] as const;
/** A job of two members, a hanger detail and four stages: more than this no checker reads. */
const mostPages = 30;

/** A ledger whose rows are long enough to be cut anywhere. */
const many: Results = {
    ...granary,
    ledger: Array.from({ length: 90 }, (_, i) => ({
        ...granary.ledger[0]!, path: `B${i}.section`, evidence: { word: 'judged' as const, stated: true, note: `begin${i}. ${'seen from below by lamp light, '.repeat(1 + i % 7)}end${i}.` }
    }))
};

describe.runIf(executable !== undefined)('the printed sheet', () => {
    let browser: Browser;
    beforeAll(async () => { browser = await launch(executable!); });
    afterAll(() => browser?.close());

    /** Its pages as text, line by line, and what stands above others in it. */
    const print = async (results: Results, format: (typeof formats)[number]) => {
        const { page, complaints } = await show(browser, renderSheet(results, meta));
        const headings = await page.evaluate(() => [...document.querySelectorAll('h2, h3, summary, .of-stages > p, .governs, thead tr')]
            .map(element => (element as HTMLElement).innerText.replace(/\s+/g, ' ').trim()));
        const pdf = await page.pdf({ format, printBackground: true });
        await page.context().close();
        expect(complaints).toEqual([]);
        const text = execFileSync('pdftotext', ['-layout', '-', '-'], { input: pdf, encoding: 'utf8', maxBuffer: 1e8 });
        return { headings, pages: text.split('\f').slice(0, -1).map(one => one.split('\n').map(line => line.replace(/\s+/g, ' ').trim()).filter(line => line !== '')) };
    };

    describe.each(samples)('of %s', (_, results) => {
        it.each(formats)('on %s says on every page which job, which revision, what verdict, and how many pages', async format => {
            const { headings, pages } = await print(results, format);
            expect(pages.length).toBeLessThanOrEqual(mostPages);
            pages.forEach((lines, i) => {
                expect(lines[0]).toContain(`revision ${results.job!.revision!.mark}`);
                expect(lines[0]).toMatch(new RegExp(`${results.verdict}$`));
                expect(lines.at(-1)).toMatch(new RegExp(`^source 3f9a1c77d2e04b55 .* page ${i + 1} of ${pages.length}$`));
                expect(headings.filter(heading => heading.startsWith(lines.at(-2)!)), `the end of page ${i + 1}`).toEqual([]);
            });
        });
    });

    it.each(formats)('on %s cuts no row, and repeats the head of a table that goes on', async format => {
        const { pages } = await print(many, format);
        const marks = (lines: readonly string[], word: string) => [...lines.join(' ').matchAll(new RegExp(`\\b${word}(\\d+)\\b`, 'g'))].map(match => match[1]);
        const filled = pages.filter(lines => marks(lines, 'begin').length > 0);
        expect(filled.length).toBeGreaterThan(2);
        expect(filled.flatMap(lines => marks(lines, 'begin')).length).toBe(many.ledger.length);
        for (const lines of filled) {
            expect(marks(lines, 'end')).toEqual(marks(lines, 'begin'));
            expect(lines).toContainEqual(expect.stringMatching(/^Input Value .*Known by/));
        }
    });
});
