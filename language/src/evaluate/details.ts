/** The use of a detail makes real, named elements: the detail's contents with what the use gives for its parameters. */
import type { AstNode } from 'langium';
import * as ast from '../generated/ast.js';
import type { Hanger, SourceRef } from '../model.js';
import type { Bound } from './arguments.js';
import { bindArguments, checkNames } from './arguments.js';
import type { Context, Expansion } from './context.js';
import { fail, poisoned, source } from './context.js';
import { isElement } from './expand-parts.js';
import { evaluateHanger } from './hangers.js';
import type { Named } from './names.js';
import { notComputed } from './not-computed.js';
import { failUnknown } from './unknown.js';

/** More than a building has: a few details that use each other twice would make more than any memory holds. */
const mostElements = 5000;

/** `unread`: a file that may hold the detail was not read. */
export function expandUse(context: Context, use: ast.Use, unread: boolean): readonly Hanger[] {
    const hangers = expand(context, use, use.name, unread);
    context.made.set(use.name, [...memberNamesOf(context, use.name), ...hangers.map(hanger => hanger.name)]);
    return hangers;
}

/** Members that the use of a detail makes, also by details that it uses. */
export const memberNamesOf = ({ expansions: { origins } }: Context, use: string): readonly string[] =>
    [...origins].filter(([part, origin]) => ast.isMember(part) && origin.use.name === use).map(([part]) => (part as ast.Member).name);

/** The context in which a part of a detail tells its findings at the use; what the file says itself is as it was. */
export function withinDetail(context: Context, node: ast.Declaration): Context {
    const origin = context.expansions.origins.get(node);
    if (origin === undefined) {
        return context;
    }
    const related = origin.through.map((use, i) => ({ message: `used here, in the detail ${origin.details[i]}`, source: source(context, use) }));
    return { ...context, related, expansion: { outer: context, usedAt: source(context, origin.use), details: origin.details, own: new Set(), threads: new Map() } };
}

/** Where a reader looks for what a detail makes: at its use. */
export function atUse<T extends { readonly source: SourceRef }>(context: Context, node: ast.Declaration, made: T | undefined): T | undefined {
    const use = context.expansions.origins.get(node)?.use;
    return use === undefined || made === undefined ? made
        : { ...made, source: source(context, use), ...'nameSource' in made && { nameSource: source(context, use, 'name') } };
}

function expand(context: Context, use: ast.Use, label: string, unread: boolean): readonly Hanger[] {
    const outer = context.expansion?.outer ?? context;
    const name = use.detail?.$refText;
    const detail = outer.names.details.get(name ?? '');
    if (name === undefined || detail === undefined) {
        return reportUnknown(context, use, name, label, unread);
    }
    const details = [...context.expansion?.details ?? [], name];
    if (details.indexOf(name) < details.length - 1) {
        fail(context, 'detail-circle', `this detail expands for ever: ${details.slice(details.indexOf(name)).join(' → ')}`, source(context, use, 'detail'));
        return [];
    }
    const bound = bindArguments(context, use, detail);
    if (bound === undefined) {
        poisoned(context);
        return [];
    }
    const inner = insideOf(context, outer, use, detail, bound, details, label);
    const elements = detail.contents.filter(isElement);
    reportTwins(inner, detail);
    return elements.flatMap((element, i) => {
        if (++context.elements.count > mostElements) {
            return tooMany(context, use);
        }
        const full = elements.length === 1 ? label : `${label}.${element.name ?? i + 1}`;
        return ast.isMember(element) || ast.isWall(element) ? [] : ast.isHanger(element) ? evaluateHanger(inner, element, full) ?? [] : expand(inner, element, full, unread);
    });
}

function reportUnknown(context: Context, use: ast.Use, name: string | undefined, label: string, unread: boolean): readonly [] {
    if (name === undefined) {
        poisoned(context);
    } else if (unread) {
        checkNames(context, use);
        const members = use.arguments.map(({ value }) => (ast.isReference(value) ? value.subject?.$refText : undefined))
            .filter(word => word !== undefined && ast.isMember(context.names.things.get(word))) as readonly string[];
        notComputed(context, 'use', `detail use ${label}`, members, source(context, use));
    } else {
        failUnknown(context, 'unknown-name', `unknown detail '${name}'`, source(context, use, 'detail'), { word: name, among: context.names.details.keys() });
    }
    return [];
}

function tooMany(context: Context, use: ast.Use): readonly [] {
    if (context.elements.count > mostElements + 1) {
        poisoned(context);
        return [];
    }
    fail(context, 'detail-too-large', `the details of this file make more than ${mostElements} elements`, source(context, use));
    return [];
}

/** Where the detail's own names hide the file's. */
function insideOf(context: Context, outer: Context, use: ast.Use, detail: ast.Detail, bound: readonly Bound[], details: readonly string[], label: string): Context {
    const things = new Map<string, Named>(outer.names.things);
    const own = new Set<AstNode>();
    const threads = new Map<string, string>();
    const values: Context['values'] = new Map();
    for (const { parameter, value } of bound) {
        things.delete(parameter.name);
        switch (value.kind) {
            case 'thing': things.set(parameter.name, value.thing); break;
            case 'thread': threads.set(parameter.name, value.size); break;
            case 'quantity': {
                const given = asLet(parameter);
                things.set(parameter.name, given);
                own.add(given);
                values.set(given.value.value, value.quantity);
            }
        }
    }
    for (const content of detail.contents.filter(ast.isLet).filter(node => node.name)) {
        things.set(content.name, content);
        own.add(content);
    }
    context.expansions.parts.get(label)?.forEach((part, name) => {
        if (!ast.isLet(part)) {
            things.set(name, part);
        }
    });
    const expansion: Expansion = { outer, usedAt: context.expansion?.usedAt ?? source(context, use), details, own, threads };
    const through = context.expansion === undefined ? [] : [{ message: `used here, in the detail ${details.at(-2)}`, source: source(context, use) }];
    return { ...outer, names: { ...outer.names, things }, expansion, related: [...context.related ?? [], ...through], values };
}

/** A quantity that a use gives has a name like any other value. */
function asLet(parameter: ast.Parameter): ast.Let {
    const value = { $type: 'Literal', $container: parameter } as unknown as ast.Literal;
    return { $type: 'Let', $container: parameter, name: parameter.name, value: { $type: 'Input', value } } as unknown as ast.Let;
}

function reportTwins(context: Context, detail: ast.Detail): void {
    const seen = new Set(detail.parameters.map(parameter => parameter.name));
    for (const content of detail.contents) {
        if (content.name !== undefined && seen.has(content.name)) {
            fail(context, 'duplicate-name', `'${content.name}' is already a name in ${detail.name}`, source(context, content, 'name'));
        }
        seen.add(content.name!);
    }
}
