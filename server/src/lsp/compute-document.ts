import { UriUtils, type LangiumDocument } from 'langium';
import { compute } from '../compute.js';
import { noResults } from '../no-results.js';
import type { Computed } from './computed-documents.js';
import type { IncludedFiles } from './included-files.js';

/** A defect of ours in one file takes neither the server nor the other files with it. */
export async function computeDocument(document: LangiumDocument, included: IncludedFiles): Promise<Pick<Computed, 'results' | 'sources'>> {
    const file = UriUtils.basename(document.uri);
    try {
        const { evaluation, sources } = await included.evaluate(document, file);
        return { results: compute(evaluation), sources };
    } catch (error) {
        const message = error instanceof Error ? error.message : String(error);
        return {
            results: noResults(file, 'program-failed', `Padstone itself failed on this text, which is a defect of Padstone: ${message}`),
            sources: [{ file, text: document.textDocument.getText() }]
        };
    }
}
