/** Whole results by what they were made from: a text that comes back, as by undo, has its break-evens at once. */
import type { Results } from '../../results.js';
import type { Source } from '../../sheet-meta.js';

/** Texts. */
const room = 12;

export class KnownWholes {
    private readonly known = new Map<string, Results>();

    get(sources: readonly Source[]): Results | undefined {
        return this.known.get(keyOf(sources));
    }

    set(sources: readonly Source[], results: Results): void {
        const key = keyOf(sources);
        this.known.delete(key);
        this.known.set(key, results);
        const [oldest] = this.known.keys();
        if (this.known.size > room && oldest !== undefined) this.known.delete(oldest);
    }
}

const keyOf = (sources: readonly Source[]): string => JSON.stringify(sources.map(({ file, text }) => [file, text]));
