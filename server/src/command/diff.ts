import { existsSync, statSync } from 'node:fs';
import { Option, type Command } from 'commander';
import { compareSides, isChanged, type Comparison, type Side } from '../diff/comparison.js';
import { computeVerdict } from '../whole.js';
import { evaluateFile, type Calculated, type Evaluated, type ReadFile } from './calculate-file.js';
import { exitCode } from './exit-code.js';
import { diffFormats } from './format/diff/index.js';
import type { Page } from './format/page.js';
import { forkOf, GitProblem, inRepository, isRevision, openRepository, revision, workingTree, type Repository, type Tree } from './git.js';
import { isLibrary } from './libraries.js';

const help = `
A and B are two files, or two revisions of a git repository (HEAD~1 HEAD, A..B, or A...B for what B changed since
it went off from A). One revision alone is set against the working tree. Paths after -- are files or folders.

Exit codes:
  0  the two were compared, whether they differ or not
  2  one of them cannot be read or found, or the newer text has errors
  3  the program itself failed`;

export function addDiff(program: Command, page: Page): void {
    program.command('diff')
        .description('Show what went in changed and what came out changed: of two files, or of two revisions in git.')
        .argument('<a>', 'a file, or a revision')
        .argument('[b]', 'another file or revision')
        .argument('[paths...]', 'after --, the files and folders to compare in two revisions')
        .addOption(new Option('-f, --format <format>', 'how to print').choices(Object.keys(diffFormats)).default('text'))
        .addHelpText('after', help)
        .action((_a: string, _b: string | undefined, _paths: readonly string[], { format }: { format: string }, command: Command) => {
            const mark = process.argv.indexOf('--');
            const paths = mark < 0 ? [] : process.argv.slice(mark + 1);
            const named = command.args.slice(0, command.args.length - paths.length);
            try {
                const compared = pairsOf(named, paths).flatMap(pair => comparedSides(pair) ?? []);
                process.stdout.write(diffFormats[format]!(compared, page));
                process.exitCode = compared.some(({ comparison }) => comparison.verdict.after?.understood === false) ? exitCode.notUnderstood : exitCode.pass;
            } catch (error) {
                if (!(error instanceof GitProblem)) {
                    throw error;
                }
                process.stderr.write(`padstone: ${error.message}\n`);
                process.exitCode = exitCode.notUnderstood;
            }
        });
}

interface Reader { readonly file: string; readonly read?: ReadFile }
interface Pair { readonly before?: Reader; readonly after?: Reader }

/** What was compared, for views that draw both sides. */
export interface Compared extends Partial<Record<'before' | 'after', Side>> {
    readonly comparison: Comparison;
    readonly changed: boolean;
}

function pairsOf(named: readonly string[], paths: readonly string[]): readonly Pair[] {
    const [a = '', b, ...more] = named;
    if (more.length > 0) {
        throw new GitProblem('two files or revisions can be compared; paths stand after --');
    }
    const isFile = (name: string) => existsSync(name) && statSync(name).isFile();
    if (paths.length === 0 && b !== undefined && (isFile(a) || isFile(b)) && !(isRevision(a) && isRevision(b))) {
        return [{ before: { file: a }, after: { file: b } }];
    }
    if (paths.length === 0 && b === undefined && isFile(a)) {
        throw new GitProblem(`${a} is set against what? Name another file, or a revision: padstone diff HEAD -- ${a}`);
    }
    const repository = openRepository();
    const [before, after] = treesOf(repository, a, b);
    const wanted = filesIn(repository, paths, [before, after]);
    const reader = (tree: Tree, file: string): Reader | undefined => tree.files.includes(file) ? { file, read: tree.read } : undefined;
    return wanted.map(file => ({ before: reader(before, file), after: reader(after, file) }));
}

function treesOf(repository: Repository, a: string, b: string | undefined): readonly [Tree, Tree] {
    const [, from, dots, to] = /^(.*?[^.]|)(\.{2,3})([^.].*|)$/.exec(a) ?? [];
    if (b === undefined && dots !== undefined) {
        const [one, other] = [from || 'HEAD', to || 'HEAD'];
        return [revision(repository, dots === '...' ? forkOf(repository, one, other) : one), revision(repository, other)];
    }
    return [revision(repository, a), b === undefined ? workingTree(repository) : revision(repository, b)];
}

function filesIn(repository: Repository, paths: readonly string[], trees: readonly Tree[]): readonly string[] {
    const all = [...new Set(trees.flatMap(({ files }) => files))].sort();
    const inside = (file: string, path: string) => path === '.' || path === '' || file === path || file.startsWith(`${path}/`);
    const wanted = paths.map(path => inRepository(repository, path));
    const lost = wanted.findIndex(path => !all.some(file => inside(file, path)));
    if (lost >= 0) {
        throw new GitProblem(`there is no .padstone file at ${paths[lost]}, neither in ${trees[0]!.name} nor in ${trees[1]!.name}`);
    }
    return wanted.length === 0 ? all : all.filter(file => wanted.some(path => inside(file, path)));
}

/** Undefined of files that only serve others: what they change shows in the jobs that include them. */
function comparedSides({ before, after }: Pair): Compared | undefined {
    const [old, now] = [before, after].map(reader => reader && evaluateFile(reader.file, reader.read)) as [Evaluated?, Evaluated?];
    if ([old, now].every(side => side === undefined || isLibrary(side.evaluation))) {
        return undefined;
    }
    const [one, other] = [old?.calculated, isSame(old, now) ? old?.calculated : now?.calculated].map(calculate => calculate && calculate(computeVerdict)) as [Calculated?, Calculated?];
    const comparison = compareSides(one, other);
    return { comparison, changed: isChanged(comparison), before: one, after: other };
}

const isSame = (old: Evaluated | undefined, now: Evaluated | undefined): boolean => old !== undefined && now !== undefined && JSON.stringify(old.sources) === JSON.stringify(now.sources);
