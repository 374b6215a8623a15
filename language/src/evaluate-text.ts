import { URI } from 'langium';
import { evaluate } from './evaluate/evaluate.js';
import type { Evaluation } from './model.js';
import { createPadstoneCoreServices } from './padstone-module.js';

let services: ReturnType<typeof createPadstoneCoreServices> | undefined;

/** Evaluates a text alone; `file` is what the places of its findings call it. Never throws. */
export function evaluateText(text: string, file: string): Evaluation {
    services ??= createPadstoneCoreServices();
    const document = services.shared.workspace.LangiumDocumentFactory.fromString(text, URI.from({ scheme: 'memory', path: '/text.padstone' }));
    return evaluate(document, file);
}
