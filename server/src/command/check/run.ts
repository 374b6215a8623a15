import { readFromDisk, type ReadFile } from '../calculate-file.js';
import type { Page } from '../format/page.js';
import { ReportCache } from './cache.js';
import { tell } from '../tell.js';
import type { CheckOptions } from './index.js';
import { reportOn, type Report } from './report.js';
import { shareOut } from './workers.js';

/** So few files are done sooner than a process is started. */
const few = 4;
const defaultFolder = '.padstone-cache';

/** In the order of the files; what a cache knows is taken from there. */
export async function reportOnAll(files: readonly string[], { format, workers, cache: folder }: CheckOptions, page: Page): Promise<readonly Report[]> {
    const cache = folder === undefined ? undefined : new ReportCache(folder === true ? defaultFolder : folder, JSON.stringify([format, page.settings]));
    const read = readOnce();
    const reports = new Map<string, Report>(files.flatMap(file => {
        const known = cache?.get(file, read);
        return known === undefined ? [] : [[file, known] as const];
    }));
    const done = (report: Report): void => {
        reports.set(report.file, report);
        cache?.put(report);
    };
    const missing = files.filter(file => !reports.has(file));
    if (workers > 1 && missing.length > few) {
        await shareOut({ files: missing, format, page, workers, done, tell });
    } else {
        missing.forEach(file => done(reportOn(file, format, page, readFromDisk)));
    }
    return files.map(file => reports.get(file)!);
}

/** What many files include is read once. */
function readOnce(): ReadFile {
    const found = new Map<string, ReturnType<ReadFile>>();
    return file => {
        const text = found.get(file) ?? readFromDisk(file);
        found.set(file, text);
        return text;
    };
}
