/** `padstone format`: what it writes, what it only tells, and what it leaves alone. */
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { shed } from '../lsp/jobs.js';
import { padstone } from './run.js';

let folder: string;
beforeEach(async () => { folder = await mkdtemp(join(tmpdir(), 'padstone-format-')); });
afterEach(() => rm(folder, { recursive: true }));
const put = (name: string, text: string) => writeFile(join(folder, name), text);
const read = (name: string) => readFile(join(folder, name), 'utf8');
const format = (...args: string[]) => padstone(['format', ...args], { cwd: folder });
const untidy = shed.replaceAll(' mm', 'mm');

test('writes what it sets right, and nothing the second time', async () => {
    await put('shed.padstone', untidy);
    expect(await format('shed.padstone')).toEqual({ code: 0, stdout: 'formatted shed.padstone\n', stderr: '' });
    expect(await read('shed.padstone')).toBe(shed);
    expect(await format('shed.padstone')).toEqual({ code: 0, stdout: '', stderr: '' });
});

test('--check writes nothing, names what it would write, and exits with 1', async () => {
    await put('a.padstone', shed);
    await put('b.padstone', untidy);
    expect(await format('--check', 'a.padstone', 'b.padstone')).toEqual({ code: 1, stdout: 'b.padstone would be formatted\n', stderr: '' });
    expect(await read('b.padstone')).toBe(untidy);
    expect((await format('--check', 'a.padstone')).code).toBe(0);
});

test('leaves a file that does not parse as it is, says why, and formats the others', async () => {
    const broken = `${untidy}member {`;
    await put('broken.padstone', broken);
    await put('shed.padstone', untidy);
    const { code, stdout, stderr } = await format('broken.padstone', 'shed.padstone', 'gone.padstone');
    expect(stdout).toBe('formatted shed.padstone\n');
    expect(stderr).toMatch(/broken\.padstone is left as it is\n {2}broken\.padstone:\d+:\d+: error: a name is missing/);
    expect(stderr).toMatch(/gone\.padstone: .*no such file/);
    expect(code).toBe(2);
    expect(await read('broken.padstone')).toBe(broken);
});

test('takes patterns, and says where one matches nothing', async () => {
    await mkdir(join(folder, 'jobs/old'), { recursive: true });
    await put('jobs/a.padstone', untidy);
    await put('jobs/old/b.padstone', untidy);
    await put('jobs/notes.txt', untidy);
    expect((await format('jobs/**/*.padstone', 'jobs/a.padstone')).stdout).toBe('formatted jobs/a.padstone\nformatted jobs/old/b.padstone\n');
    expect(await read('jobs/notes.txt')).toBe(untidy);
    expect(await format('none/*.padstone')).toEqual({ code: 2, stdout: '', stderr: 'padstone: no file is called none/*.padstone\n' });
});
