import * as ast from '../generated/ast.js';
import type { Comparison, Formula, Requirement } from '../model.js';
import type { Dimension, Quantity } from '../quantity.js';
import { length, ratio, sameDimension } from '../quantity.js';
import { dimensionName } from '../units.js';
import type { Context } from './context.js';
import { fail, poisoned, source } from './context.js';
import { combine, evaluateExpression } from './expressions.js';
import { memberNamesOf } from './details.js';
import { resolve } from './names.js';
import { checkNames, checkPath, isAnything, longestSpan, quantityOf } from './named-quantities.js';
import { failUnknown } from './unknown.js';

/** `instant` and `final` are the deflections themselves; every other result is a utilisation. */
export const resultDimension = (check: string | undefined): Dimension => (check === 'instant' || check === 'final' ? length : ratio);

interface Part { readonly formula: Formula; readonly dimension: Dimension }

export function evaluateRequirement(context: Context, node: ast.Require): Requirement | undefined {
    const subject = subjectOf(context, node.left) ?? subjectOf(context, node.right);
    const left = part(context, node.left, subject);
    const right = part(context, node.right, subject);
    if (left === undefined || right === undefined || node.comparison === undefined) {
        return undefined;
    }
    if (!sameDimension(left.dimension, right.dimension)) {
        return fail(context, 'wrong-dimension', `expected ${dimensionName(left.dimension)}, found ${dimensionName(right.dimension)}`, source(context, node.right));
    }
    const text = (node.$cstNode?.text ?? '').replace(/\s+/g, ' ').replace(/^require /, '');
    return { text, left: left.formula, comparison: node.comparison as Comparison, right: right.formula, source: source(context, node) };
}

/** The member whose `span` is meant: the first that is named. */
function subjectOf(context: Context, node: ast.Expression | undefined): ast.Member | undefined {
    switch (node?.$type) {
        case 'Reference': {
            const thing = context.names.things.get(node.subject?.$refText ?? '');
            const made = ast.isUse(thing) ? madeBy(memberNamesOf(context, thing.name), thing.name, node.path) : undefined;
            const member = made === undefined ? thing : context.names.sole.get(made) ?? context.names.things.get(made);
            return ast.isMember(member) ? member : undefined;
        }
        case 'Operation': return subjectOf(context, node.left) ?? subjectOf(context, node.right);
        case 'Group': case 'Negation': return subjectOf(context, node.value);
        case 'Call': return node.arguments.map(argument => subjectOf(context, argument)).find(Boolean);
        default: return undefined;
    }
}

function part(context: Context, node: ast.Expression | undefined, subject: ast.Member | undefined): Part | undefined {
    if (node === undefined) {
        return poisoned(context);
    }
    switch (node.$type) {
        case 'Group': return part(context, node.value, subject);
        case 'Reference': return referencePart(context, node, subject);
        case 'Operation': return operationPart(context, node, subject);
        case 'Negation': {
            const value = part(context, node.value, subject);
            const minus: Formula = { kind: 'number', value: -1, dimension: ratio, text: '-1' };
            return value && { formula: { kind: 'operation', operator: '*', left: minus, right: value.formula }, dimension: value.dimension };
        }
        default: return number(node, evaluateExpression(context, node));
    }
}

function number(node: ast.Expression, value: Quantity | undefined): Part | undefined {
    const text = node.$cstNode?.text ?? '';
    return value && { formula: { kind: 'number', ...value, text }, dimension: value.dimension };
}

function operationPart(context: Context, node: ast.Operation, subject: ast.Member | undefined): Part | undefined {
    const left = part(context, node.left, subject);
    const right = part(context, node.right, subject);
    const combined = left && right && combine(node.operator, { value: 1, dimension: left.dimension }, { value: 1, dimension: right.dimension });
    if (left !== undefined && right !== undefined && combined === undefined) {
        return fail(context, 'wrong-dimension', `expected ${dimensionName(left.dimension)}, found ${dimensionName(right.dimension)}`, source(context, node.right));
    }
    return combined && { formula: { kind: 'operation', operator: node.operator, left: left!.formula, right: right!.formula }, dimension: combined.dimension };
}

/** Which of the things that the use of a detail makes is meant: the only one, or `H1.left`. */
function madeBy(made: readonly string[], name: string, path: readonly string[]): string | undefined {
    return made.find(one => [name, ...path].join('.') === one || [name, ...path].join('.').startsWith(`${one}.`));
}

function referencePart(context: Context, node: ast.Reference, spanOf: ast.Member | undefined): Part | undefined {
    const name = node.subject?.$refText;
    if (name === 'span' && node.path.length === 0 && spanOf !== undefined && !context.names.things.has('span')) {
        return number(node, longestSpan(context, spanOf));
    }
    const thing = resolve(context, node.subject, node, isAnything, 'anything that has results');
    if (thing === undefined) {
        return undefined;
    }
    const made = ast.isUse(thing) ? context.made.get(thing.name) ?? [thing.name] : [thing.name];
    const path = checkPath(node);
    const subject = madeBy(made, thing.name, path);
    const check = path.slice(subject === undefined ? 0 : subject.split('.').length - 1).join('.');
    if (quantityOf(thing, check) !== undefined) {
        return number(node, evaluateExpression(context, node));
    }
    if (check !== '' && !checkNames.includes(check)) {
        return failUnknown(context, 'unknown-check', `unknown result '${name}.${check}'`, source(context, node), { word: check, among: checkNames, before: `${name}.` });
    }
    if (!ast.isMember(thing) && !ast.isHanger(thing) && !ast.isUse(thing)) {
        return fail(context, 'unknown-check', `${thing.name} has no results`, source(context, node));
    }
    if (subject === undefined) {
        return fail(context, 'unknown-check', `${thing.name} is several: ${made.join(', ')}`, source(context, node));
    }
    const result: Formula = { kind: 'result', subject, ...(check !== '' && { check }), source: source(context, node) };
    return { formula: result, dimension: resultDimension(check || undefined) };
}
