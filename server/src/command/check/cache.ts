/**
 * Reports by the content that they were made from: this program, the file, and all that it includes. An entry is
 * written under another name first and then renamed, so that neither a killed process nor a second run at the same
 * time leaves half of one; what cannot be read is made anew.
 */
import { createHash, randomUUID } from 'node:crypto';
import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { version } from '../../../../package.json';
import type { ReadFile } from '../calculate-file.js';
import { exitCode } from '../exit-code.js';
import type { Report } from './report.js';

/** Without the texts: their hashes are enough to know them by, save the file's own, which the entry is called by. */
interface Entry extends Omit<Report, 'texts'> {
    readonly included: readonly (readonly [file: string, hash: string | null])[];
}

export class ReportCache {
    private readonly program = hashOf(version, readFileSync(fileURLToPath(import.meta.url), 'utf8'));

    /** @param settings whatever else the reports depend on: how they are printed */
    constructor(private readonly folder: string, private readonly settings: string) {
        mkdirSync(folder, { recursive: true });
    }

    get(file: string, read: ReadFile): Report | undefined {
        const text = textOf(read(file));
        if (text === null) {
            return undefined;
        }
        try {
            const { included, ...report } = JSON.parse(readFileSync(this.pathOf(file, text), 'utf8')) as Entry;
            const texts = included.map(([path]) => [path, textOf(read(path))] as const);
            return texts.every(([, now], i) => (now === null ? null : hashOf(now)) === included[i]![1]) ? { ...report, texts: [[file, text], ...texts] } : undefined;
        } catch {
            // Not there, or not whole: it is made anew.
            return undefined;
        }
    }

    /** Failures of the program are not kept: the next run may be luckier. */
    put({ texts: [own, ...included], ...report }: Report): void {
        const text = own?.[1] ?? null;
        if (text === null || report.exitCode === exitCode.programFailed) {
            return;
        }
        const entry: Entry = { ...report, included: included.map(([path, found]) => [path, found === null ? null : hashOf(found)]) };
        const passing = join(this.folder, `${randomUUID()}.tmp`);
        writeFileSync(passing, JSON.stringify(entry));
        renameSync(passing, this.pathOf(report.file, text));
    }

    private pathOf(file: string, text: string): string {
        return join(this.folder, `${hashOf(this.program, this.settings, file, text)}.json`);
    }
}

const textOf = (found: ReturnType<ReadFile>): string | null => typeof found === 'string' ? found : null;

/** Of several texts, each told apart from the next. */
function hashOf(...texts: readonly string[]): string {
    const hash = createHash('sha256');
    texts.forEach(text => hash.update(`${text.length}:`).update(text));
    return hash.digest('hex');
}
