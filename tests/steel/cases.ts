/** Rows of the shared reference cases (copied into oracle/, with their sources) and how a test agrees with one. */
import { expect } from 'vitest';
import rows from './oracle/reference-cases.json' with { type: 'json' };

interface Row {
    readonly id: string;
    readonly source: string;
    readonly inputs: Readonly<Record<string, { readonly value: unknown }>>;
    readonly results: Readonly<Record<string, { readonly value: unknown; readonly tolerance_rel: number }>>;
}

export interface ReferenceCase {
    readonly id: string;
    readonly source: string;
    readonly input: (name: string) => number;
    readonly list: (name: string) => readonly number[];
    readonly result: (name: string) => number;
    /** At the case's own tolerance. */
    readonly expect: (name: string, computed: number) => void;
}

export function referenceCase(id: string): ReferenceCase {
    const row = (rows as unknown as readonly Row[]).find(one => one.id === id);
    if (!row) {
        throw new Error(`no reference case ${id}`);
    }
    const result = (name: string): number => Number(row.results[name]!.value);
    return {
        id, source: row.source, result,
        input: name => Number(row.inputs[name]!.value),
        list: name => row.inputs[name]!.value as readonly number[],
        expect: (name, computed) => within(computed, result(name), row.results[name]!.tolerance_rel, `${id} ${name}`)
    };
}

export function within(computed: number, wanted: number, relative: number, what: string): void {
    expect(Math.abs(computed - wanted), `${what}: ${computed} against ${wanted}`).toBeLessThanOrEqual(Math.abs(wanted) * relative + 1e-12);
}
