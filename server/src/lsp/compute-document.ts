import { UriUtils, type LangiumDocument } from 'langium';
import { findAll } from '../compute.js';
import { conclude } from '../conclude.js';
import { noResults } from '../no-results.js';
import type { Results } from '../results.js';
import { wholeSteps, type Doing } from '../whole.js';
import type { Computed } from './computed-documents.js';
import type { IncludedFiles } from './included-files.js';
import type { KnownWholes } from './later/known-wholes.js';

export interface ComputedDocument extends Pick<Computed, 'results' | 'sources'> {
    /** Finds the rest, which takes many analyses; undefined where there is none, or it is there already. */
    readonly later?: Generator<Doing, Results>;
}

/** A defect of ours in one file takes neither the server nor the other files with it. */
export async function computeDocument(document: LangiumDocument, included: IncludedFiles, wholes?: KnownWholes): Promise<ComputedDocument> {
    const file = UriUtils.basename(document.uri);
    try {
        const { evaluation, sources } = await included.evaluate(document, file);
        const known = wholes?.get(sources);
        if (known) {
            return { results: known, sources };
        }
        const found = findAll(evaluation);
        const results = conclude(found);
        return { results, sources, ...results.understood && { later: wholeSteps(evaluation, found) } };
    } catch (error) {
        const message = error instanceof Error ? error.message : String(error);
        return {
            results: noResults(file, 'program-failed', `Padstone itself failed on this text, which is a defect of Padstone: ${message}`),
            sources: [{ file, text: document.textDocument.getText() }]
        };
    }
}
