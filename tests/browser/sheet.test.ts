/** The sheet by itself in a real browser: readable by everybody, with no script, no network and nothing to complain of. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { renderSheet } from '../../server/src/sheet/index.js';
import { hostile } from '../sheet/hostile.js';
import { meta, results as granary } from '../sheet/fixture.js';
import { retrofit } from '../sheet/retrofit-fixture.js';
import { barriers, findBrowser, launch, show } from './browser.js';
import { samples } from './samples.js';

const executable = findBrowser();
const sheets = [...samples, ['a granary', granary], ['a retrofit', retrofit], ['hostile names', hostile]] as const;

describe.runIf(executable !== undefined)('the sheet in a browser', () => {
    let browser: Browser;
    beforeAll(async () => { browser = await launch(executable!); });
    afterAll(() => browser?.close());

    it('is of at least two samples', () => expect(samples.length).toBeGreaterThan(1));

    describe.each(sheets)('of %s', (_, results) => {
        const html = renderSheet(results, meta);

        it('has no barrier, light or dark, wide or narrow, and nothing to complain of', async () => {
            const { page, complaints } = await show(browser, html);
            expect(await barriers(page)).toEqual([]);
            await page.emulateMedia({ colorScheme: 'dark' });
            expect(await barriers(page, ['color-contrast', 'link-in-text-block'])).toEqual([]);
            await page.setViewportSize({ width: 400, height: 800 });
            expect(await barriers(page, ['scrollable-region-focusable'])).toEqual([]);
            expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
            expect(complaints).toEqual([]);
            await page.context().close();
        });

        it('gives every table a caption and headers, and every drawing its words', async () => {
            const { page } = await show(browser, html);
            const lacking = await page.evaluate(() => [
                ...[...document.querySelectorAll('table')].filter(table => !table.caption?.textContent || table.querySelectorAll('thead th[scope=col]').length === 0),
                ...[...document.querySelectorAll('tbody tr')].filter(row => row.querySelector('th[scope=row]') === null),
                ...[...document.querySelectorAll('svg[role=img]')].filter(svg => !svg.querySelector('title')?.textContent || !svg.querySelector('desc')?.textContent)
            ].map(element => element.outerHTML.slice(0, 200)));
            expect(lacking).toEqual([]);
            await page.context().close();
        });
    });

    it('lets no text of a drawing run over its edge or lie on another', async () => {
        for (const [name, results] of sheets) {
            const { page } = await show(browser, renderSheet(results, meta));
            expect(await page.evaluate(collisions), name).toEqual([]);
            await page.context().close();
        }
    });
});

/** Runs in the page. */
function collisions(): string[] {
    const slack = 1.5;
    return [...document.querySelectorAll('svg.drawing')].flatMap(svg => {
        const frame = svg.getBoundingClientRect();
        const texts = [...svg.querySelectorAll('text')].map(text => ({ words: `${svg.querySelector('title')?.textContent}: ${text.textContent}`, box: text.getBoundingClientRect() }));
        const out = texts.filter(({ box }) => box.left < frame.left - slack || box.right > frame.right + slack || box.top < frame.top - slack || box.bottom > frame.bottom + slack);
        const over = texts.flatMap((a, i) => texts.slice(i + 1).filter(b =>
            a.box.left < b.box.right - slack && b.box.left < a.box.right - slack && a.box.top < b.box.bottom - 2 * slack && b.box.top < a.box.bottom - 2 * slack).map(b => `${a.words} on ${b.words}`));
        return [...out.map(({ words }) => `${words} runs over the edge`), ...over];
    });
}
