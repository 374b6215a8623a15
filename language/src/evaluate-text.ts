import { evaluate } from './evaluate/evaluate.js';
import { besideFile } from './evaluate/paths.js';
import type { Evaluation } from './model.js';
import { parseText } from './parse-text.js';

/** The text of a file beside or below the main one, `refused` where it is not to be read, undefined where there is none. */
export type ReadText = (file: string) => string | { readonly refused: string } | undefined;

/** Evaluates a text; `file` is what the places of its findings call it, and what the paths of its includes start from. Never throws on bad input. */
export function evaluateText(text: string, file: string, readText?: ReadText): Evaluation {
    return evaluate(parseText(text), {
        file,
        include: readText && ((path, fromFile) => {
            const found = readText(besideFile(fromFile, path));
            return typeof found === 'string' ? parseText(found.replace(/^\uFEFF/, '')) : found;
        })
    });
}
