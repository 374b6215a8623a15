import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { execFileSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findEditor, startEditor, type Editor } from './host.js';
import { Workbench } from './workbench.js';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '../..');
const screenshots = join(here, '.screenshots');
const installation = findEditor();
if (installation === undefined) {
    console.warn('NOT RUN: the test of a real editor. `. .ci/editor-host.sh` installs what it needs.');
}

const places = ['process', 'worker'] as const;

describe.runIf(installation !== undefined).each(places)('the packaged extension in a real workbench, on the sail loft, in a %s', place => {
    const text = readFileSync(join(root, 'samples/sail-loft/sail-loft.padstone'), 'utf8').split('\n');
    let folder: string;
    let editor: Editor;
    let workbench: Workbench;

    beforeAll(async () => {
        if (!existsSync(join(root, 'dist/server.cjs'))) {
            throw new Error('The bundles are not there: npm run build');
        }
        folder = mkdtempSync(join(tmpdir(), 'padstone-job-'));
        cpSync(join(root, 'samples/sail-loft'), folder, { recursive: true });
        const vsix = `${folder}.vsix`;
        execFileSync('npm', ['run', '-s', 'vsix', '--', '--out', vsix], { cwd: root });
        editor = await startEditor(installation!, vsix, folder, place);
        mkdirSync(screenshots, { recursive: true });
        workbench = new Workbench(editor.page);
        await workbench.ready();
    });

    afterAll(async () => {
        await keep('last');
        await editor?.close();
        rmSync(folder, { recursive: true, force: true });
        rmSync(`${folder}.vsix`, { force: true });
    });

    const keep = (name: string) => editor?.page.screenshot({ path: join(screenshots, `${place} ${name}.png`) });
    const hint = async (member: string) => /(\d+)\s%/.exec(await workbench.line(`member ${member}`).innerText())?.[1];
    const row = (member: string) => workbench.preview.locator('tr', { hasText: member }).first().innerText();

    const soon = <Value>(read: () => Value) => expect.poll(read, { timeout: 15_000 });

    it('shows the worst check and the deflection after the name of T2, and a verdict', async () => {
        await workbench.open('sail-loft.padstone');
        await soon(() => workbench.line('member T2').innerText()).toMatch(/member\sT2.*[a-z]+\s\d+\s%.*\d\smm\s=\sL\/\d+/);
        await soon(() => workbench.verdict.innerText()).toMatch(/pass|fail|incomplete/);
        await keep('1 hints');
    });

    it('shows the head, the table and a drawing of the sheet in the preview', async () => {
        await workbench.run('Padstone: Open Preview to the Side');
        await workbench.preview.locator('h1', { hasText: 'Sail loft' }).waitFor();
        expect(await row('T2')).toContain(`${await hint('T2')} %`);
        await workbench.preview.locator('figure svg').first().waitFor();
        await keep('2 preview');
    });

    it('lets the preview follow the cursor, and the cursor a click in the preview', async () => {
        const load = text.findIndex(line => line.startsWith('load storage')) + 1;
        await workbench.goTo(load);
        const marked = workbench.preview.locator('.at-cursor');
        await soon(() => marked.locator(`[data-line="${load}"]`).count()).toBeGreaterThan(0);
        expect(await marked.evaluate(block => block.getBoundingClientRect().top)).toBeGreaterThanOrEqual(0);

        const member = text.findIndex(line => line.startsWith('member T2')) + 1;
        await workbench.preview.locator(`tr[data-line="${member}"]`).first().click();
        await workbench.cursorAt(member, 1);
    });

    it('brings the preview back after a reload of the window, with what was open and scrolled to', async () => {
        const calculation = workbench.preview.locator('details.calculation').nth(1);
        await calculation.locator('summary').click();
        await workbench.preview.locator('body').evaluate(() => window.scrollTo(0, 300));
        await soon(() => calculation.getAttribute('open')).toBe('');
        await editor.page.waitForTimeout(200);   // the page keeps its scroll 50 ms late
        await workbench.reload();
        await workbench.preview.locator('h1', { hasText: 'Sail loft' }).waitFor();
        await soon(() => workbench.preview.locator('body').evaluate(() => window.scrollY)).toBe(300);
        expect(await calculation.getAttribute('open')).toBe('');
        expect(await workbench.preview.locator('details.calculation').first().getAttribute('open')).toBeNull();
        await workbench.press('Control+1');   // the first group of editors
    });

    it('follows a change of the text in the hint and in the preview', async () => {
        const line = text.findIndex(line => line.includes('190 x 240 mm'));
        await soon(() => hint('T2')).toBeDefined();
        const before = Number(await hint('T2'));
        await workbench.goTo(line + 1, text[line]!.indexOf('240') + 1);
        await workbench.press('Shift+ArrowRight', 3);
        await workbench.type('300');
        await soon(async () => Number(await hint('T2'))).toBeLessThan(before);
        await soon(() => row('T2')).toContain(`${await hint('T2')} %`);
        await keep('3 changed');
    });

    it('marks a broken line, keeps the hints of the members and greys the sheet', async () => {
        const before = await hint('T2');
        const blank = text.findIndex((line, index) => line === '' && index > text.findIndex(line => line.startsWith('member T2')));
        await workbench.goTo(blank + 1);
        await workbench.type('wall broken {{');
        await soon(() => workbench.errorsUnder('wall broken')).toBeGreaterThan(0);
        await soon(() => workbench.preview.locator('#banner').innerText()).toMatch(/^Out of date\..*'\{'/);
        // While the braces are typed there is a moment at which the text parses.
        await soon(() => workbench.preview.locator('#sheet').getAttribute('class')).toBe('stale');
        await soon(() => hint('T2')).toBe(before);
        await soon(() => workbench.verdict.innerText()).toMatch(/fail|incomplete/);
        await keep('4 broken');
    });

    it('writes the sheet to a file and starts a job from a template', async () => {
        await workbench.run('Padstone: Export Sheet as HTML');
        await editor.page.locator('.quick-input-widget:visible', { hasText: 'Export the sheet as HTML' }).waitFor();
        await workbench.press('Enter');
        await soon(() => existsSync(join(folder, 'sail-loft.html'))).toBe(true);
        await soon(() => readFileSync(join(folder, 'sail-loft.html'), 'utf8')).toMatch(/^<!DOCTYPE html>.*Sail loft, relief of tie T2.*<\/html>\s*$/is);

        await workbench.run('Padstone: New Job from a Template');
        await editor.page.locator('.quick-input-list .monaco-list-row', { hasText: 'Floor joist between two walls' }).click();
        await soon(() => workbench.line('member J1').innerText()).toMatch(/\d+\s%/);
        await workbench.preview.locator('h1', { hasText: 'New floor joist between two walls' }).waitFor();
        await keep('5 new job');
    });

    it('has the extension of this package, running where it shall', async () => {
        const { publisher, name, version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
        expect(editor.extensions).toEqual([`${publisher}.${name}@${version}`]);
        await workbench.run('Developer: Show Running Extensions');
        const running = editor.page.locator('.runtime-extensions-editor .monaco-list-row', { hasText: 'Padstone' });
        await soon(() => running.innerText()).toContain(version);
        expect((await running.innerText()).includes('web worker')).toBe(place === 'worker');
    });
});
