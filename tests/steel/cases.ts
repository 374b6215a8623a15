/** How a test agrees with a published case, figure by figure. */
import { expect } from 'vitest';
import { input, referenceCase as caseNamed } from '../oracle/cases.js';

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
    const found = caseNamed(id);
    const result = (name: string): number => found.results[name]!.value;
    return {
        id, source: found.source, result,
        input: name => input(found, name),
        list: name => found.inputs[name]!.value as readonly number[],
        expect: (name, computed) => within(computed, result(name), found.results[name]!.tolerance_rel, `${id} ${name}`)
    };
}

export function within(computed: number, wanted: number, relative: number, what: string): void {
    expect(Math.abs(computed - wanted), `${what}: ${computed} against ${wanted}`).toBeLessThanOrEqual(Math.abs(wanted) * relative + 1e-12);
}
