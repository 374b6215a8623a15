import { readFileSync, statSync } from 'node:fs';
import { evaluateText } from '../../../language/src/index.js';
import type { Model } from '../../../language/src/model.js';
import { compute } from '../compute.js';
import { noResults } from '../no-results.js';
import type { Results } from '../results.js';
import type { Source } from '../sheet-meta.js';
import { internalErrorCode } from './exit-code.js';

export interface Calculated {
    readonly results: Results;
    /** Undefined where the file could not be read. */
    readonly model?: Model;
    /** What was read, as it stands in the files: the calculation first; empty where it could not be read. */
    readonly sources: readonly Source[];
}

/** Reads and computes one file with those that it includes. What goes wrong is in the results: one bad file never hides the others. */
export function calculateFile(file: string): Calculated {
    const read = readText(file);
    if (typeof read !== 'string') {
        return { results: noResults(file, read.code === 'no-file' ? 'cannot-read' : read.code, read.message), sources: [] };
    }
    const sources = [{ file, text: read }];
    const include = (included: string): string | { readonly refused: string } | undefined => {
        const found = readText(included);
        if (typeof found !== 'string') {
            return found.code === 'no-file' ? undefined : { refused: found.message };
        }
        sources.push({ file: included, text: found });
        return found;
    };
    try {
        const evaluation = evaluateText(read.replace(/^\uFEFF/, ''), file, include);
        return { results: compute(evaluation), model: evaluation.model, sources };
    } catch (error) {
        return { results: noResults(file, internalErrorCode, `Padstone itself failed on this file, which is a defect of Padstone: ${describe(error)}`), sources };
    }
}

/** Bytes. The language sets its own bound on characters; a film that is given by mistake need not be loaded to be refused. */
const largestFile = 10_000_000;

interface Unreadable {
    readonly code: 'cannot-read' | 'too-long' | 'no-file';
    readonly message: string;
}

function readText(file: string): string | Unreadable {
    try {
        const about = statSync(file);
        if (about.isDirectory()) {
            return { code: 'cannot-read', message: 'is a folder, not a file' };
        }
        if (about.size > largestFile) {
            return { code: 'too-long', message: `the file has ${(about.size / 1e6).toFixed(1)} MB, at most ${largestFile / 1e6} MB are read` };
        }
        return readFileSync(file, 'utf8');
    } catch (error) {
        const { code } = error as NodeJS.ErrnoException;
        return code === 'ENOENT' || code === 'ENOTDIR' ? { code: 'no-file', message: 'there is no such file' }
            : { code: 'cannot-read', message: code === 'EACCES' || code === 'EPERM' ? 'may not be read: permission denied' : `cannot be read: ${describe(error)}` };
    }
}

export function describe(error: unknown): string {
    return error instanceof Error ? error.message : String(error);
}
