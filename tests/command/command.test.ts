/** The built command in a process of its own: exit codes, what it prints, what it writes. */
import { access, mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Ajv from 'ajv/dist/2020.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import packageJson from '../../package.json';
import { position, shed } from '../lsp/jobs.js';
import { padstone, root } from './run.js';

let folder: string;
beforeAll(async () => { folder = await mkdtemp(join(tmpdir(), 'padstone-command-')); });
afterAll(() => rm(folder, { recursive: true }));

/** What makes the shed's job whole, so that it can pass. */
const survey = `
survey {
  services checked "none in the loft"
  asbestos checked "none"
  damp source fixed "gutter"
  heritage consent not needed
}
`;
const passing = shed + survey;

async function file(name: string, text: string | Uint8Array): Promise<string> {
    await writeFile(join(folder, name), text);
    return name;
}
const here = (args: readonly string[], env?: NodeJS.ProcessEnv) => padstone(args, { cwd: folder, env });

describe('exit codes', () => {
    test('0: all holds', async () => {
        const { code, stdout } = await here(['check', await file('passes.padstone', passing)]);
        expect(stdout).toMatch(/passes\.padstone: PASS, \d+ checks made, 1 requirement set: all hold\n$/);
        expect(code).toBe(0);
    });

    test('1: a check fails', async () => {
        const { code, stdout } = await here(['check', await file('fails.padstone', passing.replace('100 x 250 mm', '40 x 120 mm'))]);
        expect(stdout).toMatch(/^ {2}FAIL {2}B1\.bending +\d{3} %/m);
        expect(stdout).toMatch(/: FAIL, B1\.bending/);
        expect(code).toBe(1);
    });

    test('1: a requirement fails where all checks hold', async () => {
        const { code, stdout } = await here(['check', await file('required.padstone', passing.replace('<= 100 %', '<= 1 %'))]);
        expect(stdout).toMatch(/^ {2}FAIL {2}B1\.bending <= 1 %/m);
        expect(code).toBe(1);
    });

    test('1: what is incomplete is no pass', async () => {
        const { code, stdout } = await here(['check', await file('open.padstone', passing.replace('length 4.00 m', 'length 4.00 m\n  fire 30 min'))]);
        expect(stdout).toMatch(/: INCOMPLETE, not checked: /);
        expect(code).toBe(1);
    });

    test('2: a text with an error, whatever else holds', async () => {
        const { code, stdout } = await here(['check', await file('wrong.padstone', passing.replace('4.00 m', '4.00 kN'))]);
        expect(stdout).toMatch(/wrong\.padstone:14:\d+: error: .*length/);
        expect(stdout).toMatch(/INCOMPLETE/);
        expect(code).toBe(2);
    });

    test('the worst of several files, each of which is checked', async () => {
        await file('a.padstone', passing);
        await file('b.padstone', passing.replace('100 x 250 mm', '40 x 120 mm'));
        const { code, stdout } = await here(['check', 'gone.padstone', 'b.padstone', 'a.padstone']);
        expect(stdout).toMatch(/3 files\n {2}gone\.padstone: INCOMPLETE, there is no such file\n {2}b\.padstone: FAIL, .*\n {2}a\.padstone: PASS, .*\n$/);
        expect(code).toBe(2);
        expect((await here(['check', 'a.padstone', 'b.padstone'])).code).toBe(1);
    });

    test.each([[['check']], [['check', 'a.padstone', '--format', 'xml']], [['frobnicate']], [['sheet', 'a.padstone']], [['check', '--what']]])('2: %j is not understood, and says so', async args => {
        const { code, stdout, stderr } = await here(args);
        expect(stderr).toMatch(/^error: /);
        expect(stdout).toBe('');
        expect(code).toBe(2);
    });

    test('help tells them', async () => {
        for (const args of [['--help'], ['check', '--help'], ['sheet', '--help']]) {
            const { code, stdout } = await here(args);
            expect(stdout).toMatch(/0 {2}every.*\n {2}1 .*incomplete.*\n {2}2 .*\n {2}3 /);
            expect(code).toBe(0);
        }
    });

    test('--version is that of the package', async () => {
        expect(await here(['--version'])).toMatchObject({ code: 0, stdout: `${packageJson.version}\n` });
    });
});

describe('bad input: a message at the right place, no pass, exit 2', () => {
    const bad: readonly (readonly [name: string, text: string | Uint8Array, at: string | undefined, message: RegExp])[] = [
        ['empty', '', undefined, /no job/],
        ['white', ' \n\n', undefined, /no job/],
        ['noise', Uint8Array.from({ length: 5000 }, (_, i) => (i * 7919) % 256), undefined, /binary/],
        ['large', 'load x permanent 1 kN at 1 m on B1\n'.repeat(150_000), undefined, /too long/],
        ['film', new Uint8Array(11_000_000), undefined, /11\.0 MB/],
        ['half', passing.slice(0, passing.indexOf('B1 "loft')), 'member ', /./],
        ['unit', passing.replace('4.00 m', '4.00 furlong'), 'furlong', /furlong/],
        ['dimension', passing.replace('4.00 m', '4.00 kN'), '4.00 kN', /length/],
        ['no-unit', passing.replace('4.00 m', '4.00'), '4.00', /unit|length/],
        ['name', passing.replace('of pine', 'of oak'), 'oak', /oak/],
        ['no-support', passing.replace(/ {2}on west.*\n {2}on east.*\n/, ''), 'B1 "loft', /no support/],
        ['outside', passing.replace('3.90 m bearing', '9.90 m bearing'), '9.90 m', /past the end/],
        ['load-on-nothing', passing.replace('on B1\nload gear', 'on B9\nload gear'), 'B9', /B9/],
        ['negative', passing.replace('100 x 250', '-100 x 250'), '-100', /more than nought/],
        ['huge', passing.replace('1.50 kN/m2', '1e308 kN/m2'), '1e308', /too large/],
        ['circle', `${passing}let a = b\nlet b = a\n`, 'let a', /circle.*\ba\b.*\bb\b/]
    ];
    test.each(bad)('%s', async (name, text, at, message) => {
        const path = await file(`${name}.padstone`, text);
        const { code, stdout, stderr } = await here(['check', path]);
        const line = at === undefined ? 1 : position(String(text), at).line + 1;
        expect(stdout).toMatch(new RegExp(`^  ${name}\\.padstone:${line}:\\d+: error: .*${message.source}`, 'm'));
        expect(stdout).toMatch(/(INCOMPLETE|FAIL), [^\n]+\n$/);
        expect(stdout).not.toMatch(/PASS/);
        expect(stderr).toBe('');
        expect(code).toBe(2);
    });

    test('a folder and a missing file are told by name', async () => {
        await mkdir(join(folder, 'folder.padstone'));
        const { code, stdout } = await here(['check', 'folder.padstone', 'gone.padstone']);
        expect(stdout).toMatch(/folder\.padstone:1:1: error: is a folder/);
        expect(stdout).toMatch(/gone\.padstone:1:1: error: there is no such file/);
        expect(code).toBe(2);
    });

    test('a byte order mark and Windows line ends are no error', async () => {
        const { code } = await here(['check', await file('windows.padstone', `\uFEFF${passing.replaceAll('\n', '\r\n')}`)]);
        expect(code).toBe(0);
    });
});

describe('JSON', () => {
    test('of every sample and of bad input follows the schema that the command publishes', async () => {
        const schema = JSON.parse((await here(['schema'])).stdout);
        expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
        const validate = new Ajv({ allowUnionTypes: true, allErrors: true }).compile(schema);
        await file('wrong.padstone', passing.replace('4.00 m', '4.00 kN'));
        await file('passes.padstone', passing);
        const samples = (await readdir(`${root}samples`)).filter(name => name !== 'details').map(name => `${root}samples/${name}/${name}.padstone`);
        expect(samples.length).toBeGreaterThan(1);
        const files = ['passes.padstone', 'wrong.padstone', 'gone.padstone', ...samples];
        const { code, stdout } = await here(['check', ...files, '--format', 'json']);
        const output = JSON.parse(stdout);
        validate(output);
        expect(validate.errors ?? []).toEqual([]);
        expect(output.files.map((result: { file: string }) => result.file)).toEqual(files);
        expect(output.files.slice(0, 3).map((result: { verdict: string }) => result.verdict)).toEqual(['pass', 'incomplete', 'incomplete']);
        expect(output.files.slice(3).map((result: { members: unknown[] }) => result.members.length)).not.toContain(0);
        expect(output.files[0].checks.map((check: { id: string }) => check.id)).toEqual(expect.arrayContaining(['B1.bending', 'B1.shear', 'B2.final']));
        expect(output.files[3].breakeven.length).toBeGreaterThan(0);
        expect(code).toBe(2);
    }, 300_000);

    test('is the same twice: nothing of time or chance is in it', async () => {
        const path = await file('passes.padstone', passing);
        expect(await here(['check', path, '--format', 'json'])).toEqual(await here(['check', path, '--format', 'json']));
    });
});

describe('text', () => {
    test('of a small job', async () => {
        const { stdout } = await here(['check', await file('shed.padstone', passing)]);
        await expect(stdout).toMatchFileSnapshot('golden/shed.txt');
    });

    test('is plain in a pipe, also under CI; coloured where that is asked for', async () => {
        const path = await file('passes.padstone', passing);
        const plain = (await here(['check', path])).stdout;
        expect(plain).not.toContain('\u001b');
        expect((await here(['check', path], { CI: '1' })).stdout).toBe(plain);
        const coloured = (await here(['check', path], { FORCE_COLOR: '1' })).stdout;
        expect(coloured).toContain('\u001b[32m');
        expect(coloured.replaceAll(/\u001b\[\d+m/g, '')).toBe(plain);
        expect((await here(['check', path], { FORCE_COLOR: '1', NO_COLOR: '1' })).stdout).toBe(plain);
    });
});

describe('units and decimal sign', () => {
    test('are those that are asked for in text, and SI with points in JSON', async () => {
        const path = await file('passes.padstone', passing);
        const { stdout } = await here(['check', path, '--units', 'imperial', '--decimal', 'comma']);
        expect(stdout).toMatch(/\d,\d+ in = L\/\d+/);
        expect(stdout).toMatch(/\d+ psi +\d+ psi/);
        expect(stdout).not.toMatch(/\d (kN|MPa|mm)\b/);
        const json = async (...more: string[]) => (await here(['check', path, '--format', 'json', ...more])).stdout;
        expect(await json('--units', 'imperial', '--decimal', 'comma')).toBe(await json());
        expect((await here(['check', path, '--units', 'cubits'])).code).toBe(2);
    });
});

describe('sheet', () => {
    test('is written, and where is said', async () => {
        const path = await file('passes.padstone', passing);
        const { code, stdout } = await here(['sheet', path, '-o', 'shed.html']);
        expect(stdout).toMatch(/^passes\.padstone: PASS, .*\nWrote shed\.html\n$/);
        expect(code).toBe(0);
        const html = await readFile(join(folder, 'shed.html'), 'utf8');
        const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(passing));
        expect(html).toMatch(/^<!DOCTYPE html>/);
        expect(html).toContain(Buffer.from(digest).toString('hex'));
        expect(html).toContain('Boat shed loft');
    });

    test('of a text with errors is written, and neither it nor the exit code is a pass', async () => {
        const { code, stdout, stderr } = await here(['sheet', await file('wrong.padstone', passing.replace('4.00 m', '4.00 kN')), '--output', 'wrong.html']);
        expect(stderr).toMatch(/wrong\.padstone:14:\d+: error: /);
        expect(stdout).toMatch(/INCOMPLETE, .*\nWrote wrong\.html\n$/);
        expect(code).toBe(2);
        const html = await readFile(join(folder, 'wrong.html'), 'utf8');
        expect(html).toContain('The text has errors.');
        expect(html).not.toMatch(/class="verdict pass"/);
    });

    test('of a job that fails has exit code 1', async () => {
        const { code } = await here(['sheet', await file('fails.padstone', passing.replace('100 x 250 mm', '40 x 120 mm')), '-o', 'fails.html']);
        expect(code).toBe(1);
    });

    test('is never written over a calculation, under whatever name', async () => {
        const path = await file('passes.padstone', passing);
        await symlink(join(folder, path), join(folder, 'link.html'));
        await file('plain.txt', passing);
        for (const [source, output] of [[path, path], [path, 'other.padstone'], [path, './PASSES.PADSTONE'], [path, 'link.html'], ['plain.txt', 'plain.txt']] as const) {
            const { code, stderr } = await here(['sheet', source, '-o', output]);
            expect(stderr).toMatch(/is a calculation: the sheet is not written over it/);
            expect(code).toBe(2);
        }
        expect(await readFile(join(folder, path), 'utf8')).toBe(passing);
        expect(await readFile(join(folder, 'plain.txt'), 'utf8')).toBe(passing);
    });

    test('is Markdown where the file ends so, the same every time without its date', async () => {
        const path = await file('passes.padstone', passing);
        for (const output of ['one.md', 'two.md']) {
            expect((await here(['sheet', path, '-o', output, '--no-date'])).code).toBe(0);
        }
        const one = await readFile(join(folder, 'one.md'), 'utf8');
        expect(one).toMatch(/^# Boat shed loft\n/);
        expect(one).toMatch(/\n\| Member \| Worst check \| Final deflection \|\n\| --- \| --- \| --- \|\n/);
        expect(one).not.toContain('Calculated');
        expect(await readFile(join(folder, 'two.md'), 'utf8')).toBe(one);
    });

    test('is a PDF where the file ends so, on the paper that is asked for', async () => {
        const { code, stdout } = await here(['sheet', await file('passes.padstone', passing), '-o', 'shed.pdf', '--paper', 'Letter']);
        expect(stdout).toMatch(/PASS, .*\nWrote shed\.pdf\n$/);
        expect(code).toBe(0);
        const pdf = await readFile(join(folder, 'shed.pdf'), 'latin1');
        expect(pdf).toMatch(/^%PDF-1\./);
        expect(pdf).toContain('/MediaBox [0 0 612 792]');
    });

    test('is of no kind that nobody knows', async () => {
        const { code, stderr } = await here(['sheet', await file('passes.padstone', passing), '-o', 'sheet.doc']);
        expect(stderr).toContain('what kind of sheet is sheet.doc? It may end in .html,');
        expect(code).toBe(2);
    });

    test('of a missing file is none', async () => {
        const { code, stderr } = await here(['sheet', 'gone.padstone', '-o', 'gone.html']);
        expect(stderr).toMatch(/gone\.padstone:1:1: error: there is no such file/);
        expect(code).toBe(2);
        await expect(access(join(folder, 'gone.html'))).rejects.toThrow();
    });

    test('that cannot be written is a failure of the program', async () => {
        const { code, stderr } = await here(['sheet', await file('passes.padstone', passing), '-o', 'no/such/folder/x.html']);
        expect(stderr).toMatch(/no\/such\/folder\/x\.html could not be written: /);
        expect(code).toBe(3);
    });
});
