/** What was worked out before of the same content. */

/** Gives what is known by a key, or makes it. */
export type Recall = <T>(key: string, make: () => T) => T;

export const makeAnew: Recall = (_key, make) => make();

const apart = new Set(['loads', 'source', 'nameSource', 'usedAt', 'evidence', 'note', 'title']);

/** All but what loads weigh and where things are written. */
export function contentOf(value: unknown): string {
    return JSON.stringify(value, (key, inner: unknown) => (apart.has(key) ? undefined : inner));
}
