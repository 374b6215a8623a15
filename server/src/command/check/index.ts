import { availableParallelism } from 'node:os';
import { InvalidArgumentError, Option, type Command } from 'commander';
import type { Display } from '../../sheet/index.js';
import { addDisplay } from '../display.js';
import { exitCode, exitCodeHelp } from '../exit-code.js';
import { formats, type FormatName } from '../format/index.js';
import { pageOf, type Page } from '../format/page.js';
import { tell } from '../tell.js';
import { BaselineProblem, readBaseline, worsened, writeBaseline } from './baseline.js';
import type { Report } from './report.js';
import { reportOnAll } from './run.js';
import { filesOf, shardOf, type Shard } from './shard.js';
import { watch } from './watch.js';

export interface CheckOptions extends Display {
    readonly format: FormatName;
    readonly workers: number;
    readonly cache?: string | true;
    readonly shard?: Shard;
    readonly baseline?: string;
    readonly writeBaseline?: true;
    readonly watch?: true;
}

const help = `
With --baseline, a run exits with 1 only where something is worse than the baseline knows: a check that fails anew or
by more, a hazard that stops, something not computed. A file with errors exits with 2 all the same.
`;

export function addCheck(program: Command, page: Page): void {
    addDisplay(program.command('check'))
        .description('Compute files and print every member, check, hazard and verdict.')
        .argument('<file...>', 'calculations, usually ending in .padstone, or patterns of their names')
        .addOption(new Option('-f, --format <format>', 'how to print').choices(Object.keys(formats)).default('text'))
        .addOption(new Option('--workers <n>', 'processes to share many files among').argParser(positive).default(availableParallelism(), 'one a processor'))
        .option('--cache [folder]', 'keep results, and take them where nothing has changed (default folder: .padstone-cache)')
        .addOption(new Option('--shard <i/n>', 'only the i-th of n parts of the files').argParser(shardOf))
        .option('--baseline <file>', 'fail only where something is worse than this file says')
        .option('--write-baseline', 'write that file instead of comparing with it')
        .option('--watch', 'check again what changes, until interrupted')
        .addHelpText('after', help + exitCodeHelp)
        .action(async (patterns: string[], options: CheckOptions) => {
            if (options.writeBaseline && options.baseline === undefined) {
                program.error('error: --write-baseline needs --baseline FILE');
            }
            const { units, decimal } = options;
            const asWanted = pageOf({ ...page.settings, display: { units, decimal } });
            process.exitCode = await (options.watch ? watch(patterns, options, asWanted) : checkOnce(patterns, options, asWanted));
        });
}

async function checkOnce(patterns: readonly string[], options: CheckOptions, page: Page): Promise<number> {
    const { files, lost } = filesOf(patterns, options.shard);
    const reports = jobsAmong(await reportOnAll(files, options, page));
    if (reports.length > 0 || lost === 0) {
        process.stdout.write(formats[options.format].whole(reports, page));
    }
    return Math.max(verdictOf(reports, options), lost > 0 ? exitCode.notUnderstood : exitCode.pass);
}

/** Without files that only serve others, unless there is nothing else. */
function jobsAmong(reports: readonly Report[]): readonly Report[] {
    const jobs = reports.filter(({ library }) => !library);
    if (jobs.length > 0) {
        reports.filter(({ library }) => library).forEach(({ file }) => tell(`${file} holds details or values for other files: it is checked in those`));
        return jobs;
    }
    return reports;
}

function verdictOf(reports: readonly Report[], { baseline, writeBaseline: write }: CheckOptions): number {
    const worst = Math.max(exitCode.pass, ...reports.map(report => report.exitCode));
    if (baseline === undefined) {
        return worst;
    }
    try {
        if (write) {
            writeBaseline(baseline, reports);
            tell(`wrote ${baseline}`);
            return exitCode.pass;
        }
        const known = readBaseline(baseline);
        const news = reports.flatMap(report => worsened(known, report).map(text => `${report.file}: worse than the baseline: ${text}`));
        news.forEach(tell);
        return worst >= exitCode.notUnderstood ? worst : news.length > 0 ? exitCode.fails : exitCode.pass;
    } catch (error) {
        if (error instanceof BaselineProblem) {
            tell(error.message);
            return exitCode.notUnderstood;
        }
        throw error;
    }
}

function positive(text: string): number {
    if (!/^[1-9]\d{0,3}$/.test(text)) {
        throw new InvalidArgumentError('a whole number from 1 on is wanted.');
    }
    return Number(text);
}
