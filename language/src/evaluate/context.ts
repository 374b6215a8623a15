/** What the steps of an evaluation share: where findings go, and what names and values are known. */
import { AstUtils, GrammarUtils } from 'langium';
import type { AstNode, Reference } from 'langium';
import { isReplace } from '../generated/ast.js';
import type { Finding, Fix, Given, NotComputed, SourceRef } from '../model.js';
import type { Quantity } from '../quantity.js';
import type { Expansions } from './expand-parts.js';
import type { Names } from './names.js';
import { sourceOf, sourceOfCst } from './source.js';

export interface Details {
    readonly fix?: { readonly title: string; readonly text: string; readonly at?: SourceRef };
    readonly related?: Finding['related'];
}

export interface Context {
    /** What each file that was read is called. */
    readonly files: ReadonlyMap<AstNode, string>;
    readonly names: Names;
    /** What the uses of details make besides hangers. */
    readonly expansions: Expansions;
    /** Inside a detail that is used, what it is used in: where its findings are told, and where its own names stop. */
    readonly expansion?: Expansion;
    readonly findings: Finding[];
    /** Told with every finding. */
    readonly related?: Finding['related'];
    /** By what they are called. */
    readonly notComputed: Map<string, NotComputed>;
    readonly inputs: Given<number | string>[];
    /** Every input's name as `breakeven` would call it, of consequence or not. */
    readonly paths: Set<string>;
    /** Values found so far; undefined where a value is wrong and was reported. */
    readonly values: Map<AstNode, Quantity | undefined>;
    /** Names of the definitions being evaluated, to find a circle. */
    readonly pending: string[];
    /** The hangers that each use of a detail makes. */
    readonly made: Map<string, readonly string[]>;
    /** How many elements all of them have made. */
    readonly elements: { count: number };
    /** Rises with each error, and with each use of something that had one. */
    readonly failures: { count: number };
}

export interface Expansion {
    /** The file's own context, in which what the detail did not declare is evaluated. */
    readonly outer: Context;
    /** Where the outermost use stands. */
    readonly usedAt: SourceRef;
    /** The names of the details being expanded, the innermost last. */
    readonly details: readonly string[];
    /** Values and parameters of the detail. */
    readonly own: ReadonlySet<AstNode>;
    /** By parameter. */
    readonly threads: ReadonlyMap<string, string>;
}

export function newContext(files: ReadonlyMap<AstNode, string>, names: Names, expansions: Expansions): Context {
    return {
        files, names, expansions, findings: [], notComputed: new Map(), inputs: [], paths: new Set(), values: new Map(), pending: [], made: new Map(), elements: { count: 0 }, failures: { count: 0 }
    };
}

export const fileOf = (context: Context, node: AstNode): string => context.files.get(AstUtils.findRootNode(node)) ?? '';

export function source(context: Context, node: AstNode, property?: string, index?: number): SourceRef {
    // What replaces a member is called as that member is.
    const named = property === 'name' && isReplace(node.$cstNode?.astNode) ? 'member' : property;
    const part = named === undefined ? undefined : GrammarUtils.findNodeForProperty(node.$cstNode, named, index);
    return part === undefined ? sourceOf(node, fileOf(context, node)) : sourceOfCst(part, fileOf(context, node));
}

/** Where a name stands that refers to something in `node`. */
export function sourceOfReference(context: Context, reference: Reference, node: AstNode): SourceRef {
    return reference.$refNode === undefined ? source(context, node) : sourceOfCst(reference.$refNode, fileOf(context, node));
}

/** Reports an error; returns undefined so that it can stand where a value would. */
export function fail(context: Context, code: string, message: string, at: SourceRef, details: Details = {}): undefined {
    context.failures.count++;
    report(context, 'error', code, message, at, details);
    return undefined;
}

/** What is wrong inside a detail is told where the detail is used, with both places. */
export function report(context: Context, severity: Finding['severity'], code: string, message: string, at: SourceRef, details: Details = {}): void {
    const { expansion } = context;
    const inside = expansion === undefined ? [] : [{ message: `here, in the detail ${expansion.details.at(-1)}`, source: at }];
    const related = [...inside, ...details.related ?? [], ...context.related ?? []];
    const fix: Fix | undefined = expansion === undefined && details.fix ? { title: details.fix.title, at: details.fix.at ?? at, text: details.fix.text } : undefined;
    context.findings.push({ severity, code, message, source: expansion?.usedAt ?? at, ...(fix && { fix }), ...(related.length > 0 && { related }) });
}

/** Something that had an error of its own is used: no second message. */
export function poisoned(context: Context): undefined {
    context.failures.count++;
    return undefined;
}

/** Whether `action` went through without an error, and what it gave. */
export function attempt<T>(context: Context, action: () => T): { readonly value: T; readonly sound: boolean } {
    const before = context.failures.count;
    const value = action();
    return { value, sound: context.failures.count === before };
}
