import { expect, test } from 'vitest';
import { input, referenceCase } from '../oracle/cases.js';
import { close } from '../oracle/figures.js';

/** Tests computed numbers against a published case, each at the case's own tolerance. The title names the case and its source. */
export function published(id: string, compute: (given: (name: string) => number) => Readonly<Record<string, number>>): void {
    const known = referenceCase(id);
    test(`${id}: ${known.topic} (${known.provenance}: ${known.source})`, () => {
        const computed = compute(name => input(known, name));
        expect(Object.keys(computed).length).toBeGreaterThan(0);
        for (const [name, actual] of Object.entries(computed)) {
            close(actual, known.results[name]);
        }
    });
}
