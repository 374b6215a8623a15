/** `padstone diff` in repositories that git itself has made. */
import { mkdtempSync, rmSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'parse5';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { shed } from '../lsp/jobs.js';
import { TestRepository } from './repository.js';
import { root } from './run.js';

const shallower = shed.replace('100 x 250 mm', '100 x 200 mm');
let repository: TestRepository;
beforeAll(async () => {
    repository = new TestRepository();
    repository.git('init', '-q');
    repository.write('jobs/loft.padstone', await readFile(`${root}samples/sail-loft/sail-loft.padstone`, 'utf8'));
    repository.write('jobs/details/hangers.padstone', await readFile(`${root}samples/sail-loft/details/hangers.padstone`, 'utf8'));
    repository.write('jobs/shed.padstone', shed);
    repository.write('jobs/set.padstone', shed);
    repository.write('other/boat.padstone', shed);
    repository.commit('as found');
    repository.write('jobs/shed.padstone', shallower);
    repository.write('jobs/set.padstone', shed.replaceAll('  ', '\t').replaceAll(' mm', 'mm'));
    repository.write('jobs/details/hangers.padstone', (await readFile(`${root}samples/sail-loft/details/hangers.padstone`, 'utf8')).replace('M12', 'M16'));
    repository.write('other/boat.padstone', shallower);
    repository.commit('a shallower beam');
});
afterAll(() => repository.remove());

const diff = (args: readonly string[], cwd?: string) => repository.padstone(['diff', ...args], cwd);
const json = async (args: readonly string[], cwd?: string) => {
    const { code, stdout } = await diff([...args.slice(0, args.indexOf('--') < 0 ? undefined : args.indexOf('--')), '-f', 'json', ...args.indexOf('--') < 0 ? [] : args.slice(args.indexOf('--'))], cwd);
    expect(code).toBe(0);
    return JSON.parse(stdout) as { format: number; files: { file: string; changed: boolean; presence: string; checks: { id: string; before?: { utilisation: number }; after?: { utilisation: number } }[]; inputs: { element: string }[] }[] };
};
const changed = async (args: readonly string[], cwd?: string) => (await json(args, cwd)).files.filter(file => file.changed).map(({ file }) => file);

describe('two revisions', () => {
    test('tells what went in and what came out, of the job that has changed', async () => {
        const { code, stdout } = await diff(['HEAD~1', 'HEAD', '--', 'jobs/shed.padstone']);
        expect(stdout).toMatch(/^jobs\/shed\.padstone {2}Boat shed loft\n/);
        expect(stdout).toContain('member B1 section depth: 250 mm (measured "tape") → 200 mm (measured "tape")');
        expect(stdout).toMatch(/B1\.bending: \d+ % → \d+ %/);
        expect(stdout).toMatch(/B1: 100 × 250 mm C24, 4000 mm, [\d.]+ kg → 100 × 200 mm C24/);
        expect(stdout).toMatch(/1 calculation compared: 1 changed, 0 unchanged\n$/);
        expect(code).toBe(0);
    });
    test('compares just what git says has changed, but for what is only set otherwise and what a detail brings about', async () => {
        const said = repository.git('diff', '--name-only', 'HEAD~1', 'HEAD').trim().split('\n');
        expect(said).toEqual(['jobs/details/hangers.padstone', 'jobs/set.padstone', 'jobs/shed.padstone', 'other/boat.padstone']);
        expect(await changed(['HEAD~1', 'HEAD'])).toEqual(['jobs/loft.padstone', 'jobs/shed.padstone', 'other/boat.padstone']);
    });
    test('has the numbers that check prints of each', async () => {
        const { checks } = (await json(['HEAD~1', 'HEAD', '--', 'jobs/shed.padstone'])).files[0]!;
        for (const [side, revision] of [['before', 'HEAD~1'], ['after', 'HEAD']] as const) {
            repository.write('copy/one.padstone', repository.git('show', `${revision}:jobs/shed.padstone`));
            const printed = JSON.parse((await repository.padstone(['check', 'copy/one.padstone', '--format', 'json'])).stdout).files[0].checks as { id: string; utilisation: number }[];
            expect(checks.map(check => [check.id, check[side]!.utilisation])).toEqual(checks.map(({ id }) => [id, printed.find(check => check.id === id)!.utilisation]));
        }
        repository.git('clean', '-qfd', 'copy');
    });
    test('reads what is included from the same revision', async () => {
        const { inputs } = (await json(['HEAD~1', 'HEAD', '--', 'jobs/loft.padstone'])).files[0]!;
        expect(inputs).toEqual(['H1', 'H2'].map(name => ({ element: `hanger ${name}`, changes: [{ what: 'rods size', before: 'M12', after: 'M16' }] })));
    });
    test.each([[['HEAD~1..HEAD']], [['HEAD~1...HEAD']], [['HEAD^', 'main']]])('named %j', async args => {
        expect(await changed([...args, '--', 'jobs'])).toEqual(['jobs/loft.padstone', 'jobs/shed.padstone']);
    });
    test('from a folder of it, with paths as they are there', async () => {
        expect(await changed(['HEAD~1', 'HEAD', '--', '.'], 'other')).toEqual(['other/boat.padstone']);
        expect(await changed(['HEAD~1', 'HEAD', '--', '../jobs/shed.padstone'], 'other')).toEqual(['jobs/shed.padstone']);
    });
    test('shows no change where none is', async () => {
        expect(await diff(['HEAD', 'HEAD'])).toMatchObject({ code: 0, stdout: '4 calculations compared: 0 changed, 4 unchanged\n' });
    });
    test('what a branch has changed since it went off, whatever happened to the other meanwhile', async () => {
        repository.git('checkout', '-q', '-b', 'branch', 'HEAD~1');
        repository.write('jobs/new.padstone', shed);
        repository.git('rm', '-q', 'jobs/set.padstone');
        repository.commit('a new job');
        const { files } = await json(['main...branch']);
        expect(files.filter(file => file.changed).map(({ file, presence }) => [file, presence])).toEqual([['jobs/new.padstone', 'added'], ['jobs/set.padstone', 'removed']]);
        repository.git('checkout', '-q', 'main');
    });
    test('against the working tree, with files that git does not know yet', async () => {
        repository.write('jobs/shed.padstone', shed);
        repository.write('jobs/fresh.padstone', shed);
        expect(await changed(['HEAD', '--', 'jobs'])).toEqual(['jobs/fresh.padstone', 'jobs/shed.padstone']);
        repository.git('checkout', '-q', 'jobs');
        repository.git('clean', '-qfd');
    });
});

describe('formats', () => {
    test('Markdown is a table a section, and text of the file is no markup', async () => {
        repository.write('a.padstone', shed.replace('"loft beam"', '"a | b <b>@all</b>"'));
        repository.write('b.padstone', shallower.replace('"loft beam"', '"`c`"'));
        const { stdout } = await diff(['a.padstone', 'b.padstone', '--format', 'markdown']);
        expect(stdout).toMatch(/^## Padstone\n\n### Boat shed loft \(`b\.padstone`\)\n/);
        expect(stdout).toMatch(/\n\| B1\.bending \| \d+ % \| \d+ % \|\n/);
        expect(stdout).toContain('| member B1 title | a \\| b \\<b\\>@\u200Ball\\</b\\> | \\`c\\` |');
        repository.git('clean', '-qfd');
    });
    test('HTML has both drawings of the member that has changed, side by side, and stands alone', async () => {
        const { stdout } = await diff(['HEAD~1', 'HEAD', '-f', 'html', '--', 'jobs/shed.padstone']);
        const drawings = [...stdout.matchAll(/<div class="sides">[^]*?<\/section>/g)].map(([text]) => text.match(/Elevation of B1/g)?.length);
        expect(drawings).toEqual([2]);
        expect(stdout).not.toMatch(/Elevation of B2/);
        expect(stdout).not.toMatch(/<script|src="http|href="http/);
        const errors: string[] = [];
        parse(stdout, { onParseError: error => errors.push(error.code) });
        expect(errors).toEqual([]);
        const ids = [...stdout.matchAll(/\bid="([^"]+)"/g)].map(([, id]) => id);
        expect(new Set(ids).size).toBe(ids.length);
    });
});

describe('bad input: a message, exit 2', () => {
    const problem = async (args: readonly string[], message: RegExp, at: TestRepository = repository) => {
        const { code, stdout, stderr } = await at.padstone(['diff', ...args]);
        expect([stdout, code]).toEqual(['', 2]);
        expect(stderr).toMatch(message);
    };
    test('an unknown revision, also one that looks like an option', async () => {
        await problem(['HEAD~9', 'HEAD'], /^padstone: there is no revision HEAD~9 in this repository\n$/);
        await problem(['HEAD', 'nowhere'], /no revision nowhere/);
        await problem(['HEAD..--all'], /no revision --all/);
    });
    test('a path that is in neither', () => problem(['HEAD~1', 'HEAD', '--', 'gone'], /no \.padstone file at gone, neither in HEAD~1 nor in HEAD/));
    test('one file alone', () => problem(['jobs/shed.padstone'], /set against what\? .*padstone diff HEAD -- jobs\/shed\.padstone/));
    test('no repository', async () => {
        const folder = mkdtempSync(join(tmpdir(), 'padstone-no-git-'));
        const { code, stderr } = await (await import('./run.js')).padstone(['diff', 'HEAD~1', 'HEAD'], { cwd: folder, env: { GIT_CEILING_DIRECTORIES: tmpdir() } });
        expect([code, stderr]).toEqual([2, 'padstone: this is no git repository, nor is a folder above it\n']);
        rmSync(folder, { recursive: true });
    });
    test('no git program', async () => {
        const { code, stderr } = await (await import('./run.js')).padstone(['diff', 'HEAD~1', 'HEAD'], { env: { PATH: '' } });
        expect([code, stderr]).toEqual([2, 'padstone: the git program is not installed, or not on the path\n']);
    });
    test('no commits', async () => {
        const empty = new TestRepository();
        empty.git('init', '-q');
        empty.write('a.padstone', shed);
        await problem(['HEAD~1', 'HEAD'], /^padstone: this repository has no commits yet\n$/, empty);
        empty.remove();
    });
    test('a shallow clone', async () => {
        const shallow = new TestRepository();
        shallow.git('clone', '-q', '--depth', '1', `file://${repository.folder}`, '.');
        await problem(['HEAD~1', 'HEAD'], /no revision HEAD~1 in this repository: it is a shallow clone, its older history was not fetched \(git fetch --deepen/, shallow);
        expect((await shallow.padstone(['diff', 'HEAD'])).code).toBe(0);
        shallow.remove();
    });
    test('a binary file among the jobs, which hides no other', async () => {
        const mixed = new TestRepository();
        mixed.git('init', '-q');
        mixed.write('a.padstone', shed);
        mixed.write('film.padstone', 'job "x"\n');
        mixed.commit('one');
        mixed.write('a.padstone', shallower);
        mixed.write('film.padstone', Uint8Array.from({ length: 3000 }, (_, i) => (i * 7919) % 256));
        mixed.commit('two');
        const { code, stdout } = await mixed.padstone(['diff', 'HEAD~1', 'HEAD']);
        expect(stdout).toMatch(/film\.padstone.*\n[^]*error: .*binary/);
        expect(stdout).toMatch(/a\.padstone {2}Boat shed loft\n/);
        expect(code).toBe(2);
        mixed.remove();
    });
    test('an include outside the repository, and a circle', async () => {
        const odd = new TestRepository();
        odd.git('init', '-q');
        odd.write('a.padstone', `include "../../elsewhere.padstone"\n${shed}`);
        odd.write('b.padstone', `include "b.padstone"\n${shed}`);
        odd.commit('one');
        const { code, stdout } = await odd.padstone(['diff', 'HEAD', 'HEAD', '-f', 'json']);
        const { files } = JSON.parse(stdout) as { files: { errors: { after: string[] } }[] };
        expect(files.map(({ errors }) => errors.after)).toEqual([[expect.stringMatching(/outside the repository/)], [expect.stringMatching(/circle of includes/)]]);
        expect(code).toBe(2);
        odd.remove();
    });
});
