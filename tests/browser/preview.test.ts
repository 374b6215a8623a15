/** The preview's page as the editor shows it, with the bundled script and the real content policy: only the editor is a stand-in. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { FromPage, PageState, ToPage } from '../../client/preview/messages.js';
import { newNonce, previewPage } from '../../client/src/preview-page.js';
import type { Results } from '../../server/src/results.js';
import { renderPreview } from '../../server/src/sheet/index.js';
import { hostile } from '../sheet/hostile.js';
import { results as granary } from '../sheet/fixture.js';
import { barriers, findBrowser, launch, show, type Shown } from './browser.js';
import { samples } from './samples.js';

const executable = findBrowser();
const script = readFileSync(fileURLToPath(new URL('../../dist/preview.js', import.meta.url)), 'utf8');
const uri = 'file:///jobs/"loft"%20<b>.padstone';
const [, loft] = samples.find(([name]) => name.includes('sail-loft'))!;

/** As VS Code's default themes set them; high contrast has borders. */
const themes = {
    'vscode-light': { 'editor-foreground': '#3b3b3b', 'editor-background': '#ffffff', 'descriptionForeground': '#3b3b3b', 'textLink-foreground': '#005fb8', 'errorForeground': '#c72e0f', 'focusBorder': '#005fb8' },
    'vscode-dark': { 'editor-foreground': '#cccccc', 'editor-background': '#1f1f1f', 'descriptionForeground': '#9d9d9d', 'textLink-foreground': '#4daafc', 'errorForeground': '#f85149', 'focusBorder': '#0078d4' },
    'vscode-high-contrast': { 'editor-foreground': '#ffffff', 'editor-background': '#000000', 'descriptionForeground': '#ffffffb3', 'textLink-foreground': '#21a6ff', 'errorForeground': '#f48771', 'focusBorder': '#f38518', 'contrastBorder': '#6fc3df' },
    'vscode-high-contrast-light': { 'editor-foreground': '#292929', 'editor-background': '#ffffff', 'descriptionForeground': '#292929b3', 'textLink-foreground': '#0f4a85', 'errorForeground': '#b5200d', 'focusBorder': '#006bbd', 'contrastBorder': '#0f4a85' }
} as const;

interface Stage { readonly sent: FromPage[]; state?: PageState }
type Staged = typeof globalThis & { editor: Stage; acquireVsCodeApi: () => unknown };

describe.runIf(executable !== undefined)('the page of the preview', () => {
    let browser: Browser;
    beforeAll(async () => { browser = await launch(executable!); });
    afterAll(() => browser?.close());

    const open = async (state?: PageState): Promise<Shown> => show(browser, previewPage({ nonce: newNonce(), script: 'preview.js', uri }), { viewport: { width: 600, height: 800 } }, { 'preview.js': script }, page =>
        page.addInitScript(kept => {
            const stage = globalThis as Staged;
            stage.editor = { sent: [], state: kept };
            stage.acquireVsCodeApi = () => ({
                postMessage: (message: FromPage) => stage.editor.sent.push(message),
                getState: () => stage.editor.state,
                setState: (next: PageState) => { stage.editor.state = next; }
            });
        }, state).then(() => undefined));
    const post = (page: Page, message: ToPage) => page.evaluate(given => window.postMessage(given), message);
    const stageOf = (page: Page): Promise<Stage> => page.evaluate(() => (globalThis as Staged).editor);
    const render = async (page: Page, results: Results, more: { readonly stale?: string } = {}) => {
        await post(page, { type: 'render', ...renderPreview(results), current: true, ...more });
        await page.locator('#sheet h1').waitFor();
    };
    const close = async ({ page, complaints }: Shown) => {
        expect(complaints).toEqual([]);
        await page.context().close();
    };
    const lineOf = (name: string): number => loft.members.find(member => member.name === name)!.nameSource.line;

    it('asks for its content, and says so when that is long in coming', async () => {
        const shown = await open();
        expect((await stageOf(shown.page)).sent).toEqual([{ type: 'ready' }]);
        await shown.page.locator('#banner', { hasText: 'The sheet is being calculated.' }).waitFor();
        await render(shown.page, loft);
        expect(await shown.page.locator('#banner').isHidden()).toBe(true);
        await close(shown);
    });

    it.each(Object.keys(themes) as (keyof typeof themes)[])('has no barrier in %s', async theme => {
        const shown = await open();
        await shown.page.evaluate(([name, colours]) => {
            document.body.className = name.startsWith('vscode-high-contrast-') ? `vscode-high-contrast ${name}` : name;
            Object.entries(colours).forEach(([key, value]) => document.documentElement.style.setProperty(`--vscode-${key}`, value));
            document.body.style.background = 'var(--vscode-editor-background)';
        }, [theme, themes[theme]] as const);
        await render(shown.page, granary);
        expect(await barriers(shown.page)).toEqual([]);
        await close(shown);
    });

    it('is repainted without flicker: what is there stays, with scroll, open blocks and focus', async () => {
        const shown = await open();
        const { page } = shown;
        await render(page, loft);
        const check = page.locator('details.calculation').nth(2);
        await check.locator('summary').click();
        await check.locator('.worked').focus();
        const place = () => check.evaluate(element => Math.round(element.getBoundingClientRect().top));
        await page.evaluate(() => {
            window.scrollTo(0, 900);
            document.querySelectorAll('#sheet *').forEach(element => Object.assign(element, { stayed: true }));
        });
        const before = await place();
        await render(page, { ...loft, verdictReason: 'changed by a key', checks: loft.checks.map(one => ({ ...one, utilisation: one.utilisation * 1.01 })) });
        await page.locator('.verdict', { hasText: 'Changed by a key' }).waitFor();
        const { stayed, all, focus } = await page.evaluate(() => {
            const elements = [...document.querySelectorAll('#sheet *')];
            return { stayed: elements.filter(element => 'stayed' in element).length, all: elements.length, focus: document.activeElement?.className };
        });
        expect(stayed / all).toBeGreaterThan(0.98);
        // Other digits are not as wide to a fraction of a pixel.
        expect(Math.abs(await place() - before)).toBeLessThanOrEqual(1);
        expect([focus, await check.getAttribute('open')]).toEqual(['worked', '']);
        await close(shown);
    });

    it('comes back after a reload with what was scrolled to and opened', async () => {
        const first = await open();
        await render(first.page, loft);
        await first.page.locator('details.calculation summary').nth(1).click();
        await first.page.evaluate(() => window.scrollTo(0, 700));
        await expect.poll(async () => (await stageOf(first.page)).state?.scroll).toBe(700);
        const { state } = await stageOf(first.page);
        await close(first);
        const second = await open(state);
        await render(second.page, loft);
        expect(await second.page.evaluate(() => window.scrollY)).toBe(700);
        expect(await second.page.locator('details.calculation[open]').count()).toBe(1);
        await close(second);
        const other = await open({ ...state!, uri: 'file:///another.padstone' });
        await render(other.page, loft);
        expect(await other.page.evaluate(() => window.scrollY)).toBe(0);
        await close(other);
    });

    it('follows the cursor, and a click or a key leads back to the text', async () => {
        const shown = await open();
        const { page } = shown;
        await render(page, loft);
        await post(page, { type: 'cursor', line: lineOf('R1') });
        const marked = page.locator('.at-cursor');
        await marked.waitFor();
        expect(await marked.evaluate(block => [block.id, block.getBoundingClientRect().top >= 0])).toEqual(['member-R1', true]);
        await page.locator('#row-member-T2 td').first().click();
        await expect.poll(async () => (await stageOf(page)).sent.at(-1)).toEqual({ type: 'reveal', line: lineOf('T2') });
        await page.locator('#member-R1 h3 button.line').focus();
        await page.keyboard.press('Enter');
        await expect.poll(async () => (await stageOf(page)).sent.at(-1)).toEqual({ type: 'reveal', line: lineOf('R1') });
        await close(shown);
    });

    it('is reached by keyboard: from block to block, and each opens', async () => {
        const shown = await open();
        const { page } = shown;
        await render(page, granary);
        const summary = page.locator('details.calculation summary').first();
        for (let i = 0; i < 60 && !await summary.evaluate(element => element === document.activeElement); i += 1) {
            await page.keyboard.press('Tab');
        }
        await page.keyboard.press('Space');
        expect(await page.locator('details.calculation').first().getAttribute('open')).toBe('');
        await close(shown);
    });

    it('greys out what is out of date and says why, in the verdict too, until it is current', async () => {
        const shown = await open();
        const { page } = shown;
        const sheet = page.locator('#sheet');
        await render(page, granary);
        await post(page, { type: 'changed' });
        await page.locator('#banner', { hasText: 'Out of date. The newest text is being calculated.' }).waitFor();
        expect(await sheet.getAttribute('class')).toBe('stale');
        await render(page, granary, { stale: 'The text does not parse: a } is missing' });
        await page.locator('#banner', { hasText: 'Out of date. The text does not parse: a } is missing' }).waitFor();
        expect(await page.locator('.verdict').evaluate(verdict => getComputedStyle(verdict, '::before').content)).toContain('Out of date');
        await post(page, { type: 'failed', reason: 'The Padstone server does not answer.' });
        await page.locator('#banner', { hasText: 'does not answer' }).waitFor();
        await render(page, granary);
        await page.locator('#banner').waitFor({ state: 'hidden' });
        expect(await sheet.getAttribute('class')).toBe('');
        await close(shown);
    });

    it('takes hostile names for text', async () => {
        const shown = await open();
        await render(shown.page, hostile);
        await shown.page.waitForTimeout(100);
        expect(await shown.page.locator('#sheet').evaluate(sheet => [
            sheet.querySelectorAll('img, script, iframe').length,
            [...sheet.querySelectorAll('*')].filter(element => element.getAttributeNames().some(name => name.startsWith('on') || name === 'style')).length,
            document.documentElement.scrollWidth <= innerWidth
        ])).toEqual([0, 0, true]);
        expect(await shown.page.locator('h1').innerText()).toContain('<script>alert(1)</script>');
        await close(shown);
    });

    it('shows its lines and words in the system\'s colours where those are forced', async () => {
        const shown = await open();
        await shown.page.emulateMedia({ forcedColors: 'active' });
        await render(shown.page, granary);
        const [ink, line] = await shown.page.evaluate(() => [document.querySelector('#sheet h1')!, document.querySelector('#sheet svg .outline')!].map((element, i) => getComputedStyle(element)[i === 0 ? 'color' : 'stroke']));
        expect(line).toBe(ink);
        await close(shown);
    });
});
