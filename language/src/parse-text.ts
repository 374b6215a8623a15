import { URI } from 'langium';
import type { LangiumDocument } from 'langium';
import { createPadstoneCoreServices } from './padstone-module.js';

let services: ReturnType<typeof createPadstoneCoreServices> | undefined;

/** Parses a text without an editor. Never throws on bad input. */
export function parseText(text: string): LangiumDocument {
    services ??= createPadstoneCoreServices();
    return services.shared.workspace.LangiumDocumentFactory.fromString(text, URI.from({ scheme: 'memory', path: '/text.padstone' }));
}
