/** The published and closed-form cases, by id. */
import { readFileSync } from 'node:fs';

export interface Figure { readonly value: number; readonly unit: string; readonly tolerance_rel: number }

export interface ReferenceCase {
    readonly id: string;
    readonly topic: string;
    readonly source: string;
    readonly provenance: string;
    readonly inputs: Readonly<Record<string, { readonly value: unknown; readonly unit: string }>>;
    readonly results: Readonly<Record<string, Figure>>;
}

function published(name: string): unknown {
    return JSON.parse(readFileSync(new URL(`published/${name}`, import.meta.url), 'utf8'));
}

export const referenceCases = published('reference-cases.json') as readonly ReferenceCase[];
export const tables = published('tables.json') as Readonly<Record<string, { readonly source: string; readonly rows: Readonly<Record<string, never>> }>>;

export function referenceCase(id: string): ReferenceCase {
    const found = referenceCases.find((one) => one.id === id);
    if (!found) throw new Error(`no reference case ${id}`);
    return found;
}

export function input(of: ReferenceCase, name: string): number {
    const value = of.inputs[name]?.value;
    if (typeof value !== 'number') throw new Error(`${of.id} has no number ${name}`);
    return value;
}
