import { URI } from 'langium';
import type { LangiumDocument } from 'langium';
import { evaluate } from './evaluate/evaluate.js';
import { besideFile } from './evaluate/paths.js';
import type { Evaluation } from './model.js';
import { createPadstoneCoreServices } from './padstone-module.js';

/** The text of a file beside or below the main one, `refused` where it is not to be read, undefined where there is none. */
export type ReadText = (file: string) => string | { readonly refused: string } | undefined;

let services: ReturnType<typeof createPadstoneCoreServices> | undefined;

/** Evaluates a text; `file` is what the places of its findings call it, and what the paths of its includes start from. Never throws on bad input. */
export function evaluateText(text: string, file: string, readText?: ReadText): Evaluation {
    return evaluate(parse(text), {
        file,
        include: readText && ((path, fromFile) => {
            const found = readText(besideFile(fromFile, path));
            return typeof found === 'string' ? parse(found.replace(/^\uFEFF/, '')) : found;
        })
    });
}

function parse(text: string): LangiumDocument {
    services ??= createPadstoneCoreServices();
    return services.shared.workspace.LangiumDocumentFactory.fromString(text, URI.from({ scheme: 'memory', path: '/text.padstone' }));
}
