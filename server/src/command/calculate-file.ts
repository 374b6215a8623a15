import { readFile, stat } from 'node:fs/promises';
import { evaluateText } from '../../../language/src/index.js';
import { compute } from '../compute.js';
import { noResults } from '../no-results.js';
import type { Results } from '../results.js';
import { internalErrorCode } from './exit-code.js';

export interface Calculated {
    readonly results: Results;
    /** As it stands in the file; undefined where it could not be read. */
    readonly text?: string;
}

/** Reads and computes one file. What goes wrong with it is in the results: one bad file never hides the others. */
export async function calculateFile(file: string): Promise<Calculated> {
    const read = await readText(file);
    if ('code' in read) {
        return { results: noResults(file, read.code, read.message) };
    }
    const { text } = read;
    try {
        return { results: compute(evaluateText(text.replace(/^\uFEFF/, ''), file)), text };
    } catch (error) {
        return { results: noResults(file, internalErrorCode, `Padstone itself failed on this file, which is a defect of Padstone: ${describe(error)}`) };
    }
}

/** Bytes. The language sets its own bound on characters; a film that is given by mistake need not be loaded to be refused. */
const largestFile = 10_000_000;

async function readText(file: string): Promise<{ readonly text: string } | { readonly code: string; readonly message: string }> {
    try {
        const about = await stat(file);
        if (about.isDirectory()) {
            return { code: 'cannot-read', message: 'is a folder, not a file' };
        }
        if (about.size > largestFile) {
            return { code: 'too-long', message: `the file has ${(about.size / 1e6).toFixed(1)} MB, at most ${largestFile / 1e6} MB are read` };
        }
        return { text: await readFile(file, 'utf8') };
    } catch (error) {
        return { code: 'cannot-read', message: reasons[(error as NodeJS.ErrnoException).code ?? ''] ?? `cannot be read: ${describe(error)}` };
    }
}

const reasons: Readonly<Record<string, string>> = {
    ENOENT: 'there is no such file',
    ENOTDIR: 'there is no such file',
    EACCES: 'may not be read: permission denied',
    EPERM: 'may not be read: permission denied'
};

export function describe(error: unknown): string {
    return error instanceof Error ? error.message : String(error);
}
