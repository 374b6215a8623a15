/** The published and closed-form cases that concern bolts and rods. */
import { expect, test } from 'vitest';
import { input, referenceCase } from '../oracle/cases.js';

/** The cases store their figures to seven digits. */
const lastDigit = 1e-7;

/** Tests every figure of a case, each at the case's own tolerance. The title names the case and its source. */
export function published(id: string, compute: (given: (name: string) => number) => Readonly<Record<string, number>>): void {
    const known = referenceCase(id);
    test(`${id}: ${known.topic} (${known.provenance}: ${known.source})`, () => {
        const computed = compute(name => input(known, name));
        expect(Object.keys(computed).sort()).toEqual(Object.keys(known.results).sort());
        for (const [name, figure] of Object.entries(known.results)) {
            const actual = computed[name]!;
            expect(Math.abs(actual - figure.value) / Math.abs(figure.value), `${name}: ${actual} against ${figure.value} ${figure.unit}`)
                .toBeLessThanOrEqual(Math.max(figure.tolerance_rel, lastDigit));
        }
    });
}
