import { watch as watchFolder, type FSWatcher } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { exitCode } from '../exit-code.js';
import { formats } from '../format/index.js';
import { readFromDisk } from '../calculate-file.js';
import type { Page } from '../format/page.js';
import { tell } from '../tell.js';
import type { CheckOptions } from './index.js';
import type { Report } from './report.js';
import { reportOnAll } from './run.js';
import { filesOf } from './shard.js';

/** ms: an editor that saves writes more than once. */
const pause = 100;

/** Prints each file when it is checked first, and again when what comes out of it changes. Ends when it is interrupted. */
export async function watch(patterns: readonly string[], options: CheckOptions, page: Page): Promise<number> {
    const printed = new Map<string, string>();
    const known = new Map<string, Report>();
    const watchers = new Map<string, FSWatcher>();
    let timer: NodeJS.Timeout | undefined;
    let running = Promise.resolve();
    const again = (): void => {
        clearTimeout(timer);
        timer = setTimeout(() => { running = running.then(check); }, pause);
    };
    /** Whole folders, since an editor may put a new file in the place of the old. */
    const follow = (folder: string): void => {
        if (!watchers.has(folder)) {
            try {
                watchers.set(folder, watchFolder(folder, again));
            } catch {
                tell(`${folder} cannot be watched`);
            }
        }
    };
    const check = async (): Promise<void> => {
        const { files } = filesOf(patterns, options.shard);
        const changed = files.filter(file => !isFresh(known.get(file)));
        for (const report of await reportOnAll(changed, options, page)) {
            known.set(report.file, report);
        }
        const news = files.map(file => known.get(file)!).filter(({ file, part }) => printed.get(file) !== part);
        news.forEach(({ file, part }) => printed.set(file, part));
        if (news.length > 0) {
            process.stdout.write(formats[options.format].whole(news, page));
        }
        [...files, ...files.flatMap(file => known.get(file)!.texts.map(([path]) => path))].forEach(path => follow(dirname(resolve(path))));
    };
    await check();
    tell('watching; interrupt to end');
    return new Promise(end => process.once('SIGINT', () => {
        watchers.forEach(watcher => watcher.close());
        clearTimeout(timer);
        end(exitCode.pass);
    }));
}

/** Whether all that a report was made from is still so. */
function isFresh(report: Report | undefined): boolean {
    return report !== undefined && report.texts.every(([path, text]) => {
        const now = readFromDisk(path);
        return (typeof now === 'string' ? now : null) === text;
    });
}
