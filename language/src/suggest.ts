import { closest, distance } from 'fastest-levenshtein';

/** The candidate that was probably meant, if any is near enough to `word`. */
export function suggest(word: string, candidates: Iterable<string>): string | undefined {
    const list = [...candidates];
    if (list.length === 0 || word.length > 60) {
        return undefined;
    }
    const best = closest(word, list);
    const reach = word.length <= 3 ? 1 : Math.ceil(word.length / 3);
    return best !== word && distance(word, best) <= reach ? best : undefined;
}

/** `: did you mean 'north'?`, or nothing. */
export function didYouMean(suggestion: string | undefined): string {
    return suggestion === undefined ? '' : `: did you mean '${suggestion}'?`;
}
