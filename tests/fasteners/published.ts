/** The published and closed-form cases that concern bolts and rods, by id; copied from the shared list of oracles. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

interface Case {
    readonly id: string;
    readonly topic: string;
    readonly source: string;
    readonly provenance: string;
    readonly inputs: Readonly<Record<string, { readonly value: number | string }>>;
    readonly results: Readonly<Record<string, { readonly value: number; readonly unit: string; readonly tolerance_rel: number }>>;
}

const cases = JSON.parse(readFileSync(new URL('oracle/cases.json', import.meta.url), 'utf8')) as readonly Case[];

/** The cases store their figures to seven digits. */
const lastDigit = 1e-7;

const tested = new Set<string>();

/** Ids of cases in the list that no test has taken up. */
export function untested(): readonly string[] {
    return cases.map(({ id }) => id).filter(id => !tested.has(id));
}

/** Tests every figure of a case, each at the case's own tolerance. The title names the case and its source. */
export function published(id: string, compute: (given: (name: string) => number) => Readonly<Record<string, number>>): void {
    const known = cases.find(one => one.id === id);
    if (!known) {
        throw new Error(`no case ${id}`);
    }
    tested.add(id);
    test(`${id}: ${known.topic} (${known.provenance}: ${known.source})`, () => {
        const computed = compute(name => {
            const value = known.inputs[name]?.value;
            if (typeof value !== 'number') {
                throw new Error(`${id} has no number ${name}`);
            }
            return value;
        });
        expect(Object.keys(computed).sort()).toEqual(Object.keys(known.results).sort());
        for (const [name, figure] of Object.entries(known.results)) {
            const actual = computed[name]!;
            expect(Math.abs(actual - figure.value) / Math.abs(figure.value), `${name}: ${actual} against ${figure.value} ${figure.unit}`)
                .toBeLessThanOrEqual(Math.max(figure.tolerance_rel, lastDigit));
        }
    });
}
