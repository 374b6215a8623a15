import { existsSync } from 'node:fs';
import { globSync, isDynamicPattern } from 'tinyglobby';

/**
 * The files that the command line names, each once, patterns such as `jobs/*.padstone` expanded in the order of
 * their names. What is no pattern, or is one and yet a file's name, stays as it is, whether it exists or not.
 */
export function expandFiles(patterns: readonly string[]): { readonly files: readonly string[]; readonly unmatched: readonly string[] } {
    const found = patterns.map(pattern => existsSync(pattern) || !isDynamicPattern(pattern) ? [pattern] : globSync(pattern, { dot: false }).sort());
    return { files: [...new Set(found.flat())], unmatched: patterns.filter((_pattern, i) => found[i]!.length === 0) };
}
