import { readFileSync, statSync } from 'node:fs';
import { evaluateText } from '../../../language/src/index.js';
import type { Evaluation, Model } from '../../../language/src/model.js';
import { noResults } from '../no-results.js';
import type { Results } from '../results.js';
import type { Source } from '../sheet-meta.js';
import { computeWhole } from '../whole.js';
import { internalErrorCode } from './exit-code.js';

export interface Calculated {
    readonly results: Results;
    /** Undefined where the file could not be read. */
    readonly model?: Model;
    /** What was read, as it stands in the files: the calculation first; empty where it could not be read. */
    readonly sources: readonly Source[];
}

/** The text of a file, or why there is none. */
export type ReadFile = (file: string) => string | Unreadable;

/** Reads and computes one file with those that it includes. What goes wrong is in the results: one bad file never hides the others. */
export function calculateFile(file: string, calculate?: Calculate): Calculated {
    return evaluateFile(file).calculated(calculate);
}

type Calculate = (evaluation: Evaluation) => Results;

export interface Evaluated {
    readonly sources: Calculated['sources'];
    /** Undefined where the file could not be read, or the program failed on it. */
    readonly evaluation?: Evaluation;
    /** The longer part of the work, where only some of many files turn out to need it. */
    readonly calculated: (calculate?: Calculate) => Calculated;
}

export function evaluateFile(file: string, read: ReadFile = readFromDisk): Evaluated {
    const text = read(file);
    if (typeof text !== 'string') {
        const results = noResults(file, text.code === 'no-file' ? 'cannot-read' : text.code, text.message);
        return { sources: [], calculated: () => ({ results, sources: [] }) };
    }
    const sources = [{ file, text }];
    const include = (included: string): string | { readonly refused: string } | undefined => {
        const found = read(included);
        if (typeof found !== 'string') {
            return found.code === 'no-file' ? undefined : { refused: found.message };
        }
        sources.push({ file: included, text: found });
        return found;
    };
    const failed = (error: unknown) => ({ results: noResults(file, internalErrorCode, `Padstone itself failed on this file, which is a defect of Padstone: ${describe(error)}`), sources });
    try {
        const evaluation = evaluateText(text.replace(/^\uFEFF/, ''), file, include);
        const calculated = (calculate: Calculate = computeWhole) => {
            try {
                return { results: calculate(evaluation), model: evaluation.model, sources };
            } catch (error) {
                return failed(error);
            }
        };
        return { evaluation, sources, calculated };
    } catch (error) {
        return { sources, calculated: () => failed(error) };
    }
}

/** Bytes. The language sets its own bound on characters; a film that is given by mistake need not be loaded to be refused. */
export const largestFile = 10_000_000;

export interface Unreadable {
    readonly code: 'cannot-read' | 'too-long' | 'no-file';
    readonly message: string;
}

export function readFromDisk(file: string): string | Unreadable {
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
