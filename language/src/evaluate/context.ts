/** What the steps of an evaluation share: where findings go, and what names and values are known. */
import { GrammarUtils } from 'langium';
import type { AstNode } from 'langium';
import type { Finding, Fix, Given, NotComputed, SourceRef } from '../model.js';
import type { Quantity } from '../quantity.js';
import type { Names } from './names.js';
import { sourceOf, sourceOfCst } from './source.js';

export interface Details {
    readonly fix?: { readonly title: string; readonly text: string; readonly at?: SourceRef };
    readonly related?: Finding['related'];
}

export interface Context {
    readonly file: string;
    readonly names: Names;
    /** By a detail's parameter, the thread that its use gives. */
    readonly threads: ReadonlyMap<string, string>;
    readonly findings: Finding[];
    /** By what they are called. */
    readonly notComputed: Map<string, NotComputed>;
    readonly inputs: Given<number | string>[];
    /** Every input's name as `breakeven` would call it, of consequence or not. */
    readonly paths: Set<string>;
    /** Values found so far; undefined where a value is wrong and was reported. */
    readonly values: Map<AstNode, Quantity | undefined>;
    /** Names of the definitions being evaluated, to find a circle. */
    readonly pending: string[];
    /** Rises with each error, and with each use of something that had one. */
    failures: number;
}

export function newContext(file: string, names: Names): Context {
    return { file, names, threads: new Map(), findings: [], notComputed: new Map(), inputs: [], paths: new Set(), values: new Map(), pending: [], failures: 0 };
}

export function source(context: Context, node: AstNode, property?: string): SourceRef {
    const part = property === undefined ? undefined : GrammarUtils.findNodeForProperty(node.$cstNode, property);
    return part === undefined ? sourceOf(node, context.file) : sourceOfCst(part, context.file);
}

/** Reports an error; returns undefined so that it can stand where a value would. */
export function fail(context: Context, code: string, message: string, at: SourceRef, details: Details = {}): undefined {
    context.failures++;
    report(context, 'error', code, message, at, details);
    return undefined;
}

export function report(context: Context, severity: Finding['severity'], code: string, message: string, at: SourceRef, details: Details = {}): void {
    const fix: Fix | undefined = details.fix && { title: details.fix.title, at: details.fix.at ?? at, text: details.fix.text };
    context.findings.push({ severity, code, message, source: at, ...(fix && { fix }), ...(details.related && { related: details.related }) });
}

/** Something that had an error of its own is used: no second message. */
export function poisoned(context: Context): undefined {
    context.failures++;
    return undefined;
}

/** Whether `action` went through without an error, and what it gave. */
export function attempt<T>(context: Context, action: () => T): { readonly value: T; readonly sound: boolean } {
    const before = context.failures;
    const value = action();
    return { value, sound: context.failures === before };
}
