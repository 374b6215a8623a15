/** Parameters of details, and what a use of one gives them. */
import * as ast from '../generated/ast.js';
import * as dim from '../quantity.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';
import { evaluateExpression } from './expressions.js';
import type { Expectation } from './inputs.js';
import { fitting } from './inputs.js';
import { isAnything } from './named-quantities.js';
import { resolve } from './names.js';
import { failUnknown } from './unknown.js';

const quantities: Readonly<Record<string, Expectation>> = {
    length: { dimensions: [dim.length], usual: 'm', sign: 'any' }, force: { dimensions: [dim.force], usual: 'kN', sign: 'any' },
    mass: { dimensions: [dim.mass], usual: 'kg', sign: 'any' }, stress: { dimensions: [dim.stress], usual: 'MPa', sign: 'any' },
    angle: { dimensions: [dim.angle], usual: 'deg', sign: 'any' }, time: { dimensions: [dim.time], usual: 'day', sign: 'any' },
    number: { dimensions: [dim.ratio], usual: '%', sign: 'any' }
};
export const parameterTypes: readonly string[] = ['member', 'wall', 'thread', ...Object.keys(quantities)];

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
        if (parameter.default !== undefined) {
            checkValue(context, parameter.type, parameter.default);
        }
    }
}

/** Against the detail, where that is in the same file. */
export function checkArguments(context: Context, use: ast.Use, detail: ast.Detail): void {
    const given = new Set<string>();
    for (const argument of use.arguments) {
        const parameter = detail.parameters.find(known => known.name === argument.parameter);
        if (parameter === undefined) {
            failUnknown(context, 'unknown-parameter', `${detail.name} has no parameter '${argument.parameter}'`, source(context, argument, 'parameter'),
                { word: argument.parameter, among: detail.parameters.map(known => known.name) });
            continue;
        }
        if (given.has(parameter.name)) {
            fail(context, 'said-twice', `'${parameter.name}' is given twice`, source(context, argument, 'parameter'));
        }
        given.add(parameter.name);
        checkValue(context, parameter.type, argument.value);
    }
    const missing = detail.parameters.filter(parameter => parameter.default === undefined && !given.has(parameter.name)).map(parameter => parameter.name);
    if (missing.length > 0) {
        fail(context, 'missing-parameter', `${use.name} does not say ${missing.join(', ')} of ${detail.name}`, source(context, use, 'name'));
    }
}

/** All that can be told of the use of a detail that was not read. */
export function checkNames(context: Context, use: ast.Use): void {
    for (const { value } of use.arguments) {
        if (ast.isReference(value) && !isThread(value)) {
            resolve(context, value.subject, value, isAnything, 'anything');
        }
    }
}

function checkValue(context: Context, type: string | undefined, node: ast.Expression | undefined): void {
    if (node === undefined || type === undefined) {
        return;
    }
    const expected = quantities[type];
    if (expected !== undefined) {
        const quantity = evaluateExpression(context, node);
        if (quantity !== undefined) {
            fitting(context, node, quantity, expected);
        }
    } else if (!ast.isReference(node) || node.path.length > 0) {
        fail(context, 'wrong-kind', `expected ${type === 'thread' ? 'a thread such as M12' : `the name of a ${type}`}`, source(context, node));
    } else if (type === 'thread') {
        if (!isThread(node)) {
            fail(context, 'wrong-kind', 'expected a thread such as M12', source(context, node));
        }
    } else if (type === 'member' || type === 'wall') {
        const isWanted = (thing: unknown): thing is ast.Member | ast.Wall => (type === 'member' ? ast.isMember(thing) : ast.isWall(thing));
        resolve(context, node.subject, node, isWanted, `a ${type}`);
    }
}

const isThread = (node: ast.Reference): boolean => /^M\d+$/.test(node.subject?.$refText ?? '');
