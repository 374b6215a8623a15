import { expect, test } from 'vitest';
import { input, referenceCase } from '../oracle/cases.js';

/** The cases store their figures to seven digits. */
const lastDigit = 1e-7;

/** Tests computed numbers against a published case, each at the case's own tolerance. The title names the case and its source. */
export function published(id: string, compute: (given: (name: string) => number) => Readonly<Record<string, number>>): void {
    const known = referenceCase(id);
    test(`${id}: ${known.topic} (${known.provenance}: ${known.source})`, () => {
        const computed = compute(name => input(known, name));
        expect(Object.keys(computed).length).toBeGreaterThan(0);
        for (const [name, actual] of Object.entries(computed)) {
            const figure = known.results[name];
            if (!figure) {
                throw new Error(`${id} has no figure ${name}`);
            }
            const relative = Math.abs(actual - figure.value) / Math.abs(figure.value);
            expect(relative, `${name}: ${actual} against ${figure.value} ${figure.unit}`).toBeLessThanOrEqual(Math.max(figure.tolerance_rel, lastDigit));
        }
    });
}
