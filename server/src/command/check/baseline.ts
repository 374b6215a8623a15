/** What a repository's jobs are known to fall short of: a run fails only where one has become worse. */
import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { percentUp } from '../../sheet/numbers.js';
import { describe } from '../calculate-file.js';
import type { Report, Shortcomings } from './report.js';

const baselineFormat = 1;

interface Baseline {
    readonly format: typeof baselineFormat;
    /** Of the files that do not pass. */
    readonly files: Readonly<Record<string, Shortcomings>>;
}

export class BaselineProblem extends Error {}

/** @throws BaselineProblem where it cannot be read */
export function readBaseline(path: string): Baseline {
    let found: Partial<Baseline>;
    try {
        found = JSON.parse(readFileSync(path, 'utf8')) as Partial<Baseline>;
    } catch (error) {
        throw new BaselineProblem((error as NodeJS.ErrnoException).code === 'ENOENT' ? `there is no baseline ${path}: write one with --write-baseline` : `the baseline ${path} cannot be read: ${describe(error)}`);
    }
    if (found.format !== baselineFormat || typeof found.files !== 'object' || Object.values(found.files).some(one => typeof one?.fails !== 'object' || !Array.isArray(one.open))) {
        throw new BaselineProblem(`${path} is no baseline of this version: write one with --write-baseline`);
    }
    return { format: baselineFormat, files: found.files };
}

export function writeBaseline(path: string, reports: readonly Report[]): void {
    const entries = reports.filter(({ shortcomings: { fails, open } }) => Object.keys(fails).length + open.length > 0)
        .map(({ file, shortcomings: { fails, open } }) => [file, { fails: sorted(fails), open: [...open].sort() }] as const);
    const baseline: Baseline = { format: baselineFormat, files: sorted(Object.fromEntries(entries)) };
    writeFileSync(`${path}.tmp`, `${JSON.stringify(baseline, undefined, 2)}\n`);
    renameSync(`${path}.tmp`, path);
}

const sorted = <T>(record: Readonly<Record<string, T>>): Record<string, T> => Object.fromEntries(Object.entries(record).sort(([a], [b]) => a < b ? -1 : 1));

/** In words, one for each thing that has become worse; a check that fails by as many per cent as before has not. */
export function worsened(baseline: Baseline, { file, shortcomings, understood, verdictReason }: Report): string[] {
    const before = baseline.files[file] ?? { fails: {}, open: [] };
    const known = (name: string): number | undefined => Object.hasOwn(before.fails, name) ? before.fails[name] : undefined;
    const fails = Object.entries(shortcomings.fails).flatMap(([name, utilisation]) => {
        const was = known(name);
        const now = name.startsWith('require ') ? 'fails' : percentUp(utilisation);
        return was === undefined ? [`${name} ${now}, new`] : utilisation > was && percentUp(utilisation) !== percentUp(was) ? [`${name} ${now}, was ${percentUp(was)}`] : [];
    });
    const open = shortcomings.open.filter(text => !before.open.includes(text)).map(text => `${text}, new`);
    return [...understood ? [] : [verdictReason], ...fails, ...open];
}
