/**
 * Files shared out among processes, one at a time. Processes rather than threads: one that is killed, or runs out of
 * memory, takes nothing with it but the file that it had in hand, which another tries once more.
 */
import { fork, type ChildProcess } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { noResults } from '../../no-results.js';
import { exitCodeOf, internalErrorCode } from '../exit-code.js';
import { formats, type FormatName } from '../format/index.js';
import { pageOf, type Page, type PageSettings } from '../format/page.js';
import { readFromDisk } from '../calculate-file.js';
import { reportOn, type Report } from './report.js';

export const workerArgument = '--worker';

interface Order {
    readonly file: string;
    readonly format: FormatName;
    readonly page: PageSettings;
}

/** What a worker does: a report for each file that it is sent. */
export function serve(): void {
    process.on('message', ({ file, format, page }: Order) => {
        process.send!(reportOn(file, format, pageOf(page), readFromDisk));
    });
    process.on('disconnect', () => process.exit());
}

interface Work {
    readonly files: readonly string[];
    readonly format: FormatName;
    readonly page: Page;
    readonly workers: number;
    readonly done: (report: Report) => void;
    /** Of what a reader should know though it does no harm. */
    readonly tell: (message: string) => void;
}

export function shareOut({ files, format, page, workers, done, tell }: Work): Promise<void> {
    const waiting = [...files];
    const tried = new Set<string>();
    let open = files.length;
    return new Promise(resolve => {
        const running = new Set<ChildProcess>();
        const finish = (report: Report): void => {
            done(report);
            open -= 1;
            if (open === 0) {
                running.forEach(child => child.disconnect());
                resolve();
            }
        };
        const start = (): void => {
            const child = fork(fileURLToPath(import.meta.url), [workerArgument], { stdio: ['ignore', 'ignore', 'inherit', 'ipc'] });
            running.add(child);
            let current: string | undefined;
            const next = (): void => {
                current = waiting.shift();
                if (current !== undefined) {
                    child.send({ file: current, format, page: page.settings } satisfies Order, () => undefined);
                }
            };
            child.on('message', (report: Report) => {
                next();
                finish(report);
            });
            const ended = (how: string): void => {
                const lost = running.delete(child) ? current : undefined;
                if (lost === undefined) {
                    return;
                }
                const isFirst = !tried.has(lost);
                tried.add(lost);
                if (isFirst) {
                    tell(`the worker that calculated ${lost} ended half-way (${how}): it is tried once more`);
                    waiting.unshift(lost);
                }
                if (waiting.length > 0) {
                    start();
                }
                if (!isFirst) {
                    finish(failed(lost, `two workers ended while they calculated it (${how})`, format, page));
                }
            };
            child.on('error', error => ended(error.message));
            child.on('exit', (code, signal) => ended(signal ?? `exit code ${code}`));
            next();
        };
        Array.from({ length: Math.min(workers, files.length) }, start);
    });
}

function failed(file: string, message: string, format: FormatName, page: Page): Report {
    const results = noResults(file, internalErrorCode, message);
    return {
        file, verdict: results.verdict, verdictReason: message, understood: false, exitCode: exitCodeOf(results), library: false,
        shortcomings: { fails: {}, open: [message] }, part: formats[format].part(results, page), texts: []
    };
}
