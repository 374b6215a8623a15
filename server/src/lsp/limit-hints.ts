/** What each guess and each loss must not become, in the margin; the whole sentence behind a `breakeven` line. */
import { limitInShort, type LedgerEntry } from '../certainty/index.js';
import type { Computed } from './computed-documents.js';
import { escape } from './markdown.js';

export interface LimitHint {
    readonly offset: number;
    readonly label: string;
    /** Markdown. */
    readonly tooltip: string;
}

/** None until it is known. */
export function limitHints({ results: { certainty, breakEvenLines = [], file } }: Computed): readonly LimitHint[] {
    if (certainty === undefined) {
        return [];
    }
    const inputs = certainty.ledger.filter(({ input }) => input.source.file === file).flatMap(entry => {
        const label = labelOf(entry);
        return label === undefined ? [] : [{ offset: entry.input.source.end, label, tooltip: entry.breakEvens.map(({ sentence }) => escape(sentence)).join('\n\n') }];
    });
    const lines = breakEvenLines.filter(({ source }) => source.file === file).flatMap(({ path, source }) => {
        const found = certainty.asked.find(one => one.path === path);
        return found ? [{ offset: source.end, label: found.sentence, tooltip: escape(found.sentence) }] : [];
    });
    return [...inputs, ...lines];
}

/** Of a section both sides. */
function labelOf({ breakEvens }: LedgerEntry): string | undefined {
    const limits = breakEvens.flatMap(one => {
        const short = limitInShort(one);
        return short === undefined ? [] : [{ name: one.path.split('.').at(-1)!, short }];
    });
    return limits.length === 0 ? undefined : limits.map(({ name, short }) => breakEvens.length > 1 ? `${name} ${short}` : short).join(', ');
}
