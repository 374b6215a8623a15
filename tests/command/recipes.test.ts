/** The recipes of the README, run as they stand there. */
import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { formatText } from '../../language/src/index.js';
import { shed } from '../lsp/jobs.js';
import { TestRepository } from './repository.js';
import { root } from './run.js';

const readme = readFileSync(`${root}README.md`, 'utf8');
/** The block of code of the README that has this in it. */
const recipe = (mark: string): string => {
    const found = [...readme.matchAll(/^```(?:sh|yaml)\n([^]*?)^```$/gm)].map(([, body]) => body!).filter(body => body.includes(mark));
    expect(found, mark).toHaveLength(1);
    return found[0]!;
};
const survey = 'survey {\n  services checked "none in the loft"\n  asbestos checked "none"\n  damp source fixed "gutter"\n  heritage consent not needed\n}\n';
const passing = shed + survey;
const failing = passing.replace('100 x 250 mm', '40 x 120 mm');

let repository: TestRepository;
let bin: string;
beforeEach(() => {
    repository = new TestRepository();
    repository.git('init', '-q');
    bin = join(repository.folder, '.git/bin');
    mkdirSync(bin, { recursive: true });
    program('padstone', `exec '${process.execPath}' '${root}dist/padstone.cjs' "$@"`);
});
afterEach(() => repository.remove());
function program(name: string, body: string): void {
    writeFileSync(join(bin, name), `#!/bin/sh\n${body}\n`);
    chmodSync(join(bin, name), 0o755);
}
const environment = () => ({ ...process.env, PATH: `${bin}:${process.env['PATH']}`, GIT_CONFIG_NOSYSTEM: '1', GIT_AUTHOR_NAME: 'a', GIT_AUTHOR_EMAIL: 'a@localhost', GIT_COMMITTER_NAME: 'a', GIT_COMMITTER_EMAIL: 'a@localhost' });
const run = (command: string, args: readonly string[], env: NodeJS.ProcessEnv = {}) => {
    const { status, stdout, stderr } = spawnSync(command, args, { cwd: repository.folder, env: { ...environment(), ...env }, encoding: 'utf8' });
    return { code: status, out: stdout + stderr };
};

describe('the hook before a commit', () => {
    beforeEach(() => {
        mkdirSync(join(repository.folder, '.git/hooks'), { recursive: true });
        writeFileSync(join(repository.folder, '.git/hooks/pre-commit'), recipe('.git/hooks/pre-commit'));
        chmodSync(join(repository.folder, '.git/hooks/pre-commit'), 0o755);
    });
    const commit = (text: string) => {
        repository.write('jobs/shed.padstone', text);
        repository.git('add', '-A');
        return run('git', ['commit', '-q', '-m', 'x']);
    };
    test('lets through what holds, and what has nothing to do with it', () => {
        expect(commit(passing)).toEqual({ code: 0, out: '' });
        repository.write('notes.txt', 'x');
        repository.git('add', '-A');
        expect(run('git', ['commit', '-q', '-m', 'y'])).toEqual({ code: 0, out: '' });
    });
    test('stops what does not hold, or is not set right, and says what', () => {
        const wrong = commit(failing);
        expect(wrong.out).toMatch(/FAIL {2}B1\.bending/);
        expect(wrong.code).not.toBe(0);
        expect(commit(passing.replaceAll(' mm', 'mm'))).toMatchObject({ code: 1, out: 'jobs/shed.padstone would be formatted\n' });
        expect(formatText(passing, 'x').text).toBe(passing);
    });
    test('looks at what is staged, not at what lies beside it', () => {
        repository.write('jobs/shed.padstone', passing);
        repository.git('add', '-A');
        repository.write('jobs/shed.padstone', failing);
        expect(run('git', ['commit', '-q', '-m', 'x']).code).toBe(0);
    });
    test('holds a job that fails to its baseline', () => {
        repository.write('jobs/shed.padstone', failing);
        expect(run('padstone', ['check', 'jobs/shed.padstone', '--baseline', 'padstone-baseline.json', '--write-baseline']).code).toBe(0);
        expect(commit(failing).code).toBe(0);
        const worse = commit(failing.replace('40 x 120 mm', '40 x 100 mm'));
        expect(worse.out).toMatch(/worse than the baseline: B1\.bending \d+ %, was \d+ %/);
        expect(worse.code).not.toBe(0);
    });
});

test('the job of a pipeline comments what a pull request changes, and marks what does not hold', () => {
    repository.write('jobs/shed.padstone', passing);
    repository.commit('one');
    repository.git('update-ref', 'refs/remotes/origin/main', 'HEAD');
    repository.write('jobs/shed.padstone', failing);
    repository.commit('two');
    program('gh', 'echo "$@" > .git/gh-args; cat diff.md > .git/gh-body');
    const steps = [...recipe('.github/workflows/padstone.yml').matchAll(/^ {6}- run: (.*)$/gm)].map(([, line]) => line!);
    expect(steps).toHaveLength(3);
    const results = steps.map(line => run('sh', ['-ec', line], { GITHUB_BASE_REF: 'main', PR: '7' }));
    expect(results.map(({ code }) => code)).toEqual([0, 0, 1]);
    expect(readFileSync(join(repository.folder, '.git/gh-args'), 'utf8')).toBe('pr comment 7 --edit-last --create-if-none --body-file diff.md\n');
    expect(readFileSync(join(repository.folder, '.git/gh-body'), 'utf8')).toMatch(/\| verdict \| PASS: .* \| FAIL: .* \|[^]*\| B1\.bending \| \d+ % \| \d+ % FAILS \|/);
    expect(results[2]!.out).toMatch(/^::error file=jobs\/shed\.padstone,line=11,/m);
});

test('git diff shows results, of a job with what it includes as it stood', () => {
    const hangers = readFileSync(`${root}samples/sail-loft/details/hangers.padstone`, 'utf8');
    const loft = readFileSync(`${root}samples/sail-loft/sail-loft.padstone`, 'utf8');
    repository.write('jobs/shed.padstone', passing);
    repository.write('jobs/loft.padstone', loft);
    repository.write('jobs/details/hangers.padstone', hangers);
    repository.commit('one');
    execFileSync('sh', ['-ec', recipe('diff.padstone.textconv')], { cwd: repository.folder, env: environment() });
    repository.write('jobs/shed.padstone', passing.replace('100 x 250 mm', '100 x 200 mm'));
    repository.write('jobs/loft.padstone', loft.replace('190 x 240 mm', '190 x 230 mm'));
    const changes = run('git', ['diff', '-U0', '--', 'jobs/shed.padstone']).out;
    expect(changes).toMatch(/^-\/\/ B1\.bending: \d+ %$/m);
    expect(changes).toMatch(/^\+\/\/ B1\.bending: \d+ %$/m);
    expect(changes).not.toMatch(/B2\./);
    const hung = run('git', ['diff', '-U0', '--', 'jobs/loft.padstone']).out;
    expect(hung).toMatch(/^-\/\/ T2\.bending in relieved: \d+ %$/m);
    expect(hung).toMatch(/^\+\/\/ T2\.bending in relieved: \d+ %( FAILS)?$/m);
    repository.commit('two');
    expect(run('git', ['show', '-U0', 'HEAD', '--', 'jobs/loft.padstone']).out).toMatch(/^\+\/\/ T2\.bending in relieved: \d+ %/m);
});
