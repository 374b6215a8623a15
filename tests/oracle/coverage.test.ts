/** Every published case is held by a test, or says why not yet. */
import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { referenceCases } from './cases.js';

/** Path of the test that uses a case, or the reason why none does. */
const coverage = JSON.parse(readFileSync(new URL('coverage.json', import.meta.url), 'utf8')) as Readonly<Record<string, string>>;
const root = new URL('../../', import.meta.url);
const isPath = (entry: string): boolean => /^(tests|language|server|client)\/.*\.test\.tsx?$/.test(entry);

/** By its whole id, or put together from its stem and its parts: `BS-${name}-${grade}`. */
function mentions(text: string, id: string): boolean {
    const [stem, ...parts] = id.split('-');
    return text.includes(id) || (text.includes(`\`${stem}-\${`) && parts.every((part) => text.includes(`'${part}'`)));
}

test('every case of reference-cases.json is listed, and nothing else', () => {
    expect(Object.keys(coverage).sort()).toEqual(referenceCases.map(({ id }) => id).sort());
});

test.each(Object.entries(coverage).filter(([, entry]) => isPath(entry)))('%s is used by %s', (id, path) => {
    const url = new URL(path, root);
    expect(existsSync(url)).toBe(true);
    expect(mentions(readFileSync(url, 'utf8'), id)).toBe(true);
});

test.each(Object.entries(coverage).filter(([, entry]) => !isPath(entry)))('%s: %s', (id, reason) => {
    expect(reason, id).toMatch(/^not yet: .{10,}/);
});
