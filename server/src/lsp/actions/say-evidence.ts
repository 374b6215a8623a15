/** How an input is known, where the file does not say: a word to choose. */
import { evidenceWords } from '../../../../language/src/model.js';
import type { Computed } from '../computed-documents.js';
import type { Mending } from './place.js';

/** @param touches whether the cursor is on a piece of the text */
export function sayEvidence({ results }: Computed, touches: (start: number, end: number) => boolean): readonly Mending[] {
    const input = results.ledger.find(({ evidence, source }) => !evidence.stated && source.file === results.file && touches(source.start, source.end));
    return input ? evidenceWords.map(word => ({ title: `Say that ${input.path} is ${word}`, at: input.source.end, text: ` (${word})` })) : [];
}
