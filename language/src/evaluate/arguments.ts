/** What the use of a detail gives for the detail's parameters. */
import * as ast from '../generated/ast.js';
import type { Quantity } from '../quantity.js';
import * as dim from '../quantity.js';
import type { Context } from './context.js';
import { fail, poisoned, source } from './context.js';
import { evaluateExpression } from './expressions.js';
import type { Expectation } from './inputs.js';
import { fitting } from './inputs.js';
import { isAnything } from './named-quantities.js';
import { resolve } from './names.js';
import { threadSizes } from './strength-classes.js';
import { formatQuantity } from '../units.js';
import { failUnknown } from './unknown.js';

const quantities: Readonly<Record<string, Expectation>> = {
    length: { dimensions: [dim.length], usual: 'm', sign: 'any' }, force: { dimensions: [dim.force], usual: 'kN', sign: 'any' },
    mass: { dimensions: [dim.mass], usual: 'kg', sign: 'any' }, stress: { dimensions: [dim.stress], usual: 'MPa', sign: 'any' },
    angle: { dimensions: [dim.angle], usual: 'deg', sign: 'any' }, time: { dimensions: [dim.time], usual: 'day', sign: 'any' },
    number: { dimensions: [dim.ratio], usual: '%', sign: 'any' }
};
export const parameterTypes: readonly string[] = ['member', 'wall', 'timber', 'steel', 'masonry', 'thread', ...Object.keys(quantities)];

export type Value =
    | { readonly kind: 'thing'; readonly thing: ast.Member | ast.Wall }
    /** A material or a class: what holds it says whether it is known. */
    | { readonly kind: 'material' }
    | { readonly kind: 'thread'; readonly size: string }
    | { readonly kind: 'quantity'; readonly quantity: Quantity };

export interface Bound { readonly parameter: ast.Parameter; readonly value: Value }

/** Looks at a detail alone: what it declares, and its defaults. */
export function checkParameters(context: Context, detail: ast.Detail): void {
    const seen = new Set<string>();
    for (const parameter of detail.parameters) {
        if (seen.has(parameter.name)) {
            fail(context, 'duplicate-name', `'${parameter.name}' is already a parameter of ${detail.name}`, source(context, parameter, 'name'));
        }
        seen.add(parameter.name);
        if (parameter.type !== undefined && !parameterTypes.includes(parameter.type)) {
            failUnknown(context, 'unknown-type', `unknown kind of parameter '${parameter.type}'`, source(context, parameter, 'type'),
                { word: parameter.type, among: parameterTypes, otherwise: `: one of ${parameterTypes.join(', ')}` });
        }
        const usual = parameter.default && valueOf(context, parameter.type, parameter.default);
        if (usual !== undefined) {
            isWithinRange(context, parameter, usual, parameter.default);
        } else if (parameter.low !== undefined && parameter.default === undefined) {
            rangeOf(context, parameter);
        }
    }
}

/** Undefined where an argument is wrong or missing; then that is reported, with the parameter's place. */
export function bindArguments(context: Context, use: ast.Use, detail: ast.Detail): readonly Bound[] | undefined {
    const given = argumentsByName(context, use, detail);
    const bound = detail.parameters.map(parameter => {
        const node = given.get(parameter.name);
        const value = node === undefined ? defaultOf(context, parameter) : valueOf(beside(context, parameter), parameter.type, node);
        return value && isWithinRange(beside(context, parameter), parameter, value, node) ? { parameter, value } : undefined;
    });
    const missing = detail.parameters.filter(parameter => parameter.default === undefined && !given.has(parameter.name));
    if (missing.length > 0) {
        fail(context, 'missing-parameter', `${use.name} does not say ${missing.map(parameter => parameter.name).join(', ')} of ${detail.name}`, source(context, use, 'name'),
            { related: missing.map(parameter => declared(context, parameter)) });
    }
    return bound.includes(undefined) ? undefined : bound as readonly Bound[];
}

const declared = (context: Context, parameter: ast.Parameter) => ({ message: `the parameter ${parameter.name}`, source: source(context, parameter) });
const beside = (context: Context, parameter: ast.Parameter): Context => ({ ...context, related: [...context.related ?? [], declared(context, parameter)] });

function argumentsByName(context: Context, use: ast.Use, detail: ast.Detail): ReadonlyMap<string, ast.Expression | undefined> {
    const given = new Map<string, ast.Expression | undefined>();
    for (const argument of use.arguments) {
        const parameter = detail.parameters.find(known => known.name === argument.parameter);
        if (parameter === undefined) {
            failUnknown(context, 'unknown-parameter', `${detail.name} has no parameter '${argument.parameter}'`, source(context, argument, 'parameter'),
                { word: argument.parameter, among: detail.parameters.map(known => known.name) });
        } else if (given.has(parameter.name)) {
            fail(beside(context, parameter), 'said-twice', `'${parameter.name}' is given twice`, source(context, argument, 'parameter'));
        } else {
            given.set(parameter.name, argument.value);
        }
    }
    return given;
}

/** What a parameter may be, in base units. Undefined where it is wrong; then that is reported. */
function rangeOf(context: Context, parameter: ast.Parameter): { readonly low: Quantity; readonly high: Quantity } | undefined {
    const [low, high] = [parameter.low, parameter.high].map(end => valueOf(context, parameter.type, end));
    if (low?.kind !== 'quantity' || high?.kind !== 'quantity') {
        return low && high && fail(context, 'range-of-name', 'only a quantity has a range', source(context, parameter, 'low'));
    }
    return low.quantity.value <= high.quantity.value ? { low: low.quantity, high: high.quantity }
        : fail(context, 'empty-range', 'the lower end of a range stands first', source(context, parameter, 'low'));
}

function isWithinRange(context: Context, parameter: ast.Parameter, value: Value, node: ast.Expression | undefined): boolean {
    if (parameter.low === undefined) {
        return true;
    }
    const range = rangeOf({ ...(context.expansion?.outer ?? context), failures: context.failures }, parameter);
    if (range === undefined || value.kind !== 'quantity') {
        return false;
    }
    if (value.quantity.value >= range.low.value && value.quantity.value <= range.high.value) {
        return true;
    }
    const [found, low, high] = [value.quantity, range.low, range.high].map(quantity => formatQuantity(quantity));
    fail(context, 'out-of-range', `${parameter.name} is ${found}: this detail is made for ${low} to ${high}`, source(context, node ?? parameter));
    return false;
}

/** In the file's own context, where `checkParameters` has told already what is wrong with it. */
function defaultOf(context: Context, parameter: ast.Parameter): Value | undefined {
    const quiet: Context = { ...(context.expansion?.outer ?? context), findings: [], failures: context.failures };
    return parameter.default && valueOf(quiet, parameter.type, parameter.default);
}

function valueOf(context: Context, type: string | undefined, node: ast.Expression | undefined): Value | undefined {
    const expected = quantities[type ?? ''];
    if (node === undefined || type === undefined) {
        return poisoned(context);
    }
    if (expected !== undefined) {
        const quantity = evaluateExpression(context, node);
        return quantity && fitting(context, node, quantity, expected) ? { kind: 'quantity', quantity } : undefined;
    }
    if (!ast.isReference(node) || node.path.length > 0) {
        return fail(context, 'wrong-kind', `expected ${type === 'thread' ? 'a thread such as M12' : `the name of a ${type}`}`, source(context, node));
    }
    switch (type) {
        case 'thread': return threadOf(context, node);
        case 'member': return thing(resolve(context, node.subject, node, ast.isMember, 'a member'));
        case 'timber': case 'steel': case 'masonry': return { kind: 'material' };
        case 'wall': return thing(resolve(context, node.subject, node, ast.isWall, 'a wall'));
        default: return poisoned(context);
    }
}

const thing = (found: ast.Member | ast.Wall | undefined): Value | undefined => found && { kind: 'thing', thing: found };

function threadOf(context: Context, node: ast.Reference): Value | undefined {
    const word = node.subject?.$refText ?? '';
    const size = context.expansion?.threads.get(word) ?? word;
    return threadSizes.includes(size) ? { kind: 'thread', size }
        : fail(context, 'wrong-kind', 'expected a thread such as M12', source(context, node));
}

/** All that can be told of the use of a detail that was not read. */
export function checkNames(context: Context, use: ast.Use): void {
    for (const { value } of use.arguments) {
        if (ast.isReference(value) && !threadSizes.includes(value.subject?.$refText ?? '')) {
            resolve(context, value.subject, value, isAnything, 'anything');
        }
    }
}
