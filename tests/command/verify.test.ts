/** `padstone verify`: whether a source still makes a sheet. */
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { shed } from '../lsp/jobs.js';
import { padstone, root } from './run.js';

let folder: string;
let loft: string;
let hangers: string;
beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'padstone-verify-'));
    loft = `include "details/hangers.padstone"\n${shed.replace(/\(assumed\)/, '(tested)')}use twinRods H1 (old: B2, new: B1, at: 1.50 m)\n`;
    hangers = 'detail twinRods (old: member, new: member, at: length, rod: thread = M12) {\n  hanger carries old at at from new at at { rods 2 rod grade 4.6  head plate 70 x 10 x 250 mm steel S275  foot plate 70 x 10 x 250 mm steel S275 }\n}\n';
    await mkdir(join(folder, 'details'));
    await put('loft.padstone', loft);
    await put('details/hangers.padstone', hangers);
});
afterEach(() => rm(folder, { recursive: true }));
const put = (name: string, text: string) => writeFile(join(folder, name), text);
const here = (...args: string[]) => padstone(args, { cwd: folder });

describe.each([['sheet.html', []], ['sheet.md', []], ['sheet.html', ['--no-date']]] as const)('%s %j', (sheet, more) => {
    beforeEach(() => here('sheet', 'loft.padstone', '-o', sheet, ...more));

    test('0: is made by the source beside it, also from elsewhere', async () => {
        expect(await here('verify', sheet)).toMatchObject({ code: 0, stdout: expect.stringMatching(new RegExp(`^loft\\.padstone makes ${sheet}, content hash [0-9a-f]{64}\n$`)) });
        expect((await padstone(['verify', join(folder, sheet), join(folder, 'loft.padstone')], { cwd: root })).code).toBe(0);
    });
    test('1: not once the source, or what it includes, has changed', async () => {
        await put('loft.padstone', `${loft}\n`);
        expect(await here('verify', sheet)).toMatchObject({ code: 1, stdout: expect.stringMatching(/^loft\.padstone has changed since/) });
        await put('loft.padstone', loft);
        await put('details/hangers.padstone', hangers.replace('M12', 'M16'));
        expect((await here('verify', sheet)).code).toBe(1);
    });
    test('1: not once a number in it was changed by hand', async () => {
        const text = await readFile(join(folder, sheet), 'utf8');
        await put(sheet, text.replace(/\d+ %/, '1 %'));
        expect(await here('verify', sheet, 'loft.padstone')).toMatchObject({ code: 1, stdout: expect.stringMatching(/does not make this sheet: the sheet was changed/) });
    });
});

test('1: names the other version of the program', async () => {
    await here('sheet', 'loft.padstone', '-o', 'sheet.html');
    await put('sheet.html', (await readFile(join(folder, 'sheet.html'), 'utf8')).replaceAll('Padstone 0.1.0', 'Padstone 0.0.9').replace(/\d+ %/, '1 %'));
    expect((await here('verify', 'sheet.html')).stdout).toMatch(/Padstone was 0\.0\.9, and is \d/);
});
test('2: what is no sheet, or is not there', async () => {
    await put('other.html', '<html></html>');
    expect(await here('verify', 'other.html')).toMatchObject({ code: 2, stderr: expect.stringMatching(/no sheet in HTML or Markdown/) });
    expect(await here('verify', 'gone.html')).toMatchObject({ code: 2, stderr: 'padstone: gone.html: there is no such file\n' });
    await here('sheet', 'loft.padstone', '-o', 'details/sheet.html');
    expect(await here('verify', 'details/sheet.html')).toMatchObject({ code: 2, stderr: expect.stringMatching(/loft\.padstone is not beside .*say where it is/) });
    expect((await here('verify', 'details/sheet.html', 'loft.padstone')).code).toBe(0);
});
