import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Results } from '../../server/src/results.js';
import { plainDisplay } from '../../server/src/sheet/display.js';
import { percentUp } from '../../server/src/sheet/numbers.js';
import { renderPdf, type Paper } from '../../server/src/sheet/pdf/index.js';
import { worstOfEach } from '../../server/src/summary.js';
import { meta as made, results as granary } from './fixture.js';
import { hostile } from './hostile.js';
import { retrofit } from './retrofit-fixture.js';

const run = promisify(execFile);
const fonts = join(dirname(fileURLToPath(import.meta.url)), '../../node_modules/dejavu-fonts-ttf/ttf');
let folder = '';
beforeAll(async () => { folder = await mkdtemp(join(tmpdir(), 'padstone-pdf-')); });
afterAll(() => rm(folder, { recursive: true }));

interface Read {
    readonly pages: readonly string[];
    readonly size: string;
    readonly bookmarks: readonly string[];
    readonly images: number;
    readonly fonts: string;
}

/** What other programs see in it. */
async function read(results: Results, paper: Paper): Promise<Read> {
    const file = join(folder, 'sheet.pdf');
    await writeFile(file, await renderPdf(results, made, plainDisplay, { paper, fonts }));
    const say = async (program: string, ...args: string[]): Promise<string> => (await run(program, args, { maxBuffer: 1e8 })).stdout;
    const outline = await say('pdftohtml', '-xml', '-i', '-q', '-stdout', file);
    return {
        pages: (await say('pdftotext', '-layout', file, '-')).split('\f').slice(0, -1),
        size: /Page size: +(.*)/.exec(await say('pdfinfo', file))![1]!,
        bookmarks: [...outline.matchAll(/<item page="\d+">(.*?)<\/item>/g)].map(match => match[1]!),
        images: (await say('pdfimages', '-list', file)).trim().split('\n').length - 2,
        fonts: await say('pdffonts', file)
    };
}

describe.each(Object.entries({ granary, retrofit }))('the sheet of %s as PDF', (_, results) => {
    let pdf: Read;
    beforeAll(async () => { pdf = await read(results, 'A4'); });

    it('has the job, its revision and the number of the page on every page', () => {
        expect(pdf.pages.length).toBeGreaterThan(2);
        pdf.pages.forEach((page, i) => {
            expect(page).toContain(`${results.job!.title!.slice(0, 30)}`);
            expect(page).toContain(results.job!.revision ? `revision ${results.job!.revision.mark}` : 'no revision');
            expect(page).toContain(`page ${i + 1} of ${pdf.pages.length}`);
        });
    });

    it('is on A4, with vectors only, its letters in it', () => {
        expect(pdf.size).toContain('(A4)');
        expect(pdf.images).toBe(0);
        expect(pdf.fonts).toMatch(/DejaVuSans .* yes yes yes/);
    });

    it('has a bookmark for every part and every check', () => {
        expect(pdf.bookmarks).toEqual(expect.arrayContaining(['Members', 'Hazards', 'Calculation', 'What was not checked', 'Reviewed by']));
        for (const { id } of worstOfEach(results.checks)) {
            expect(pdf.bookmarks.some(bookmark => bookmark.startsWith(id))).toBe(true);
        }
    });

    it('says of each check what it uses, in real symbols', () => {
        const text = pdf.pages.join('\n').replace(/\s+/g, ' ');
        for (const check of worstOfEach(results.checks)) {
            expect(text).toContain(`${check.id} ${percentUp(check.utilisation)} ${check.pass ? '✓ holds' : '✗ FAILS'}`);
        }
        expect(text).toMatch(/η = σ/);
        expect(text).not.toMatch(/NaN|undefined|\[object|\ufffd/);
    });

    it('ends no page with a heading', () => {
        for (const page of pdf.pages) {
            const lines = page.split('\n').map(line => line.trim()).filter(line => line !== '');
            expect(pdf.bookmarks).not.toContain(lines.at(-2));
        }
    });
});

describe('PDF', () => {
    it('is on Letter where that is asked for', async () => expect((await read(granary, 'Letter')).size).toContain('612 x 792 pts (letter)'));

    it('stands hostile names, which fill no page and turn nothing round', async () => {
        const { pages } = await read(hostile, 'A4');
        expect(pages.join('\n')).toContain('<img src=x onerror=alert(1)>');
        expect(pages.join('\n')).not.toMatch(/[\u202d\u202e]/);
        expect(pages.length).toBeLessThan(30);
    });
});
