/**
 * What a repository holds, read by the `git` program: it alone knows every way to name a revision, linked work trees,
 * partial clones and objects of either hash, and a repository is seldom found where there is none.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join, posix } from 'node:path';
import { largestFile, readFromDisk, type ReadFile } from './calculate-file.js';

/** Told as it is: it is about the repository or the command line, not about this program. */
export class GitProblem extends Error {}

/** Files as one revision, or the working tree, has them. Paths are those of the repository, from its root. */
export interface Tree {
    readonly name: string;
    readonly files: readonly string[];
    readonly read: ReadFile;
}

export interface Repository {
    readonly root: string;
    /** Where the command stands in it; empty at its root. */
    readonly prefix: string;
}

export function openRepository(): Repository {
    const found = git(['rev-parse', '--show-toplevel', '--show-prefix']);
    if (found.status !== 0) {
        throw new GitProblem(/not a git repository/i.test(found.stderr) ? 'this is no git repository, nor is a folder above it' : `git: ${firstLine(found.stderr)}`);
    }
    const [root = '', prefix = ''] = found.stdout.split('\n');
    return { root, prefix };
}

/** Two revisions of which the first is asked for as `A...B`: where B went off from A. */
export function forkOf(repository: Repository, a: string, b: string): string {
    const [one, other] = [commitOf(repository, a), commitOf(repository, b)];
    const found = git(['merge-base', one, other], repository.root);
    if (found.status !== 0) {
        throw new GitProblem(`${a} and ${b} have no commit in common${isShallow(repository) ? shallowWords : ''}`);
    }
    return found.stdout.trim();
}

export function revision(repository: Repository, name: string): Tree {
    const commit = commitOf(repository, name);
    const listing = must(git(['ls-tree', '-r', '-z', '--full-tree', commit], repository.root));
    const blobs = new Map(listing.split('\0').flatMap(entry => {
        const [, mode, id, path] = /^(\d+) blob (\S+)\t([^]*)$/.exec(entry) ?? [];
        return mode?.startsWith('100') ? [[path!, id!] as const] : [];
    }));
    const texts = new Map<string, ReturnType<ReadFile>>();
    const files = [...blobs.keys()].filter(path => path.endsWith('.padstone'));
    const read = (path: string) => {
        if (path.startsWith('../')) {
            return outside;
        }
        const id = blobs.get(path);
        if (id === undefined) {
            return { code: 'no-file', message: `there is no such file in ${name}` } as const;
        }
        const text = texts.get(path) ?? readBlobs(repository, [id])[0]!;
        texts.set(path, text);
        return text;
    };
    readBlobs(repository, files.map(path => blobs.get(path)!)).forEach((text, i) => texts.set(files[i]!, text));
    return { name, files, read };
}

export function workingTree(repository: Repository): Tree {
    const listing = must(git(['ls-files', '-z', '--cached', '--others', '--exclude-standard', '--full-name', '--', ':/*.padstone'], repository.root));
    const files = [...new Set(listing.split('\0'))].filter(path => path !== '' && existsSync(join(repository.root, path)));
    return { name: 'the working tree', files, read: path => path.startsWith('../') ? outside : readFromDisk(join(repository.root, path)) };
}

/** Where a file of exactly this text stands: in the newest revision that has it, else in the working tree. */
export function whereBlobStands(repository: Repository, text: string): { readonly tree: Tree; readonly file: string } | undefined {
    const { root } = repository;
    const id = spawnSync('git', ['hash-object', '--stdin'], { cwd: root, input: text, encoding: 'utf8' }).stdout.trim();
    const commits = git(['log', '--all', '--format=%H', `--find-object=${id}`], root).stdout.split('\n').filter(commit => commit !== '');
    for (const commit of commits) {
        const entry = must(git(['ls-tree', '-r', '-z', '--full-tree', commit], root)).split('\0').find(line => line.includes(` blob ${id}\t`));
        if (entry !== undefined) {
            return { tree: revision(repository, commit), file: entry.slice(entry.indexOf('\t') + 1) };
        }
    }
    const tree = workingTree(repository);
    const file = tree.files.find(path => tree.read(path) === text);
    return file === undefined ? undefined : { tree, file };
}

const outside = { code: 'cannot-read', message: 'it lies outside the repository' } as const;

/** A path of the command line as the repository calls it. */
export const inRepository = ({ prefix }: Repository, path: string): string => posix.normalize(posix.join(prefix, path.replace(/\\/g, '/'))).replace(/\/$/, '');

export const isRevision = (name: string): boolean => git(['rev-parse', '--verify', '--quiet', '--end-of-options', `${name}^{commit}`]).status === 0;

const shallowWords = ': it is a shallow clone, its older history was not fetched (git fetch --deepen 50, or --unshallow, brings it)';

function commitOf(repository: Repository, name: string): string {
    const found = git(['rev-parse', '--verify', '--quiet', '--end-of-options', `${name}^{commit}`], repository.root);
    if (found.status === 0) {
        return found.stdout.trim();
    }
    if (git(['rev-parse', '--verify', '--quiet', 'HEAD'], repository.root).status !== 0 && must(git(['rev-list', '--all', '-n', '1'], repository.root)) === '') {
        throw new GitProblem('this repository has no commits yet');
    }
    throw new GitProblem(`there is no revision ${name} in this repository${isShallow(repository) ? shallowWords : ''}`);
}

const isShallow = ({ root }: Repository): boolean => git(['rev-parse', '--is-shallow-repository'], root).stdout.trim() === 'true';

/** All in one go: a process a file would take longer than the calculations. */
function readBlobs({ root }: Repository, ids: readonly string[]): ReturnType<ReadFile>[] {
    if (ids.length === 0) {
        return [];
    }
    const { stdout, status, stderr } = spawnSync('git', ['cat-file', '--batch'], { cwd: root, input: `${ids.join('\n')}\n`, maxBuffer: 2 ** 31 - 1 });
    if (status !== 0) {
        throw new GitProblem(`git: ${firstLine(stderr.toString())}`);
    }
    let at = 0;
    return ids.map(id => {
        const line = stdout.subarray(at, stdout.indexOf(10, at)).toString();
        const size = Number(/ blob (\d+)$/.exec(line)?.[1]);
        at += line.length + 1;
        if (Number.isNaN(size)) {
            return { code: 'cannot-read', message: `git cannot read it: ${line.replace(id, '').trim()}` } as const;
        }
        const content = stdout.subarray(at, at + size);
        at += size + 1;
        return size > largestFile ? { code: 'too-long', message: `the file has ${(size / 1e6).toFixed(1)} MB, at most ${largestFile / 1e6} MB are read` } as const : content.toString('utf8');
    });
}

function git(args: readonly string[], cwd = '.'): { readonly status: number | null; readonly stdout: string; readonly stderr: string } {
    const found = spawnSync('git', args, { cwd, encoding: 'utf8', maxBuffer: 2 ** 30, env: { ...process.env, LC_ALL: 'C' } });
    if ((found.error as NodeJS.ErrnoException | undefined)?.code === 'ENOENT') {
        throw new GitProblem('the git program is not installed, or not on the path');
    }
    return found;
}

function must({ status, stdout, stderr }: ReturnType<typeof git>): string {
    if (status !== 0) {
        throw new GitProblem(`git: ${firstLine(stderr)}`);
    }
    return stdout;
}

const firstLine = (text: string): string => text.trim().split('\n')[0] ?? '';
