/** `strip`, `T2.length`, `T2.span`: quantities that declared things give to expressions. */
import { AstUtils } from 'langium';
import * as ast from '../generated/ast.js';
import type { Quantity } from '../quantity.js';
import { length } from '../quantity.js';
import type { Context } from './context.js';
import { fail, poisoned, source } from './context.js';
import { evaluateInput } from './expressions.js';
import type { Named } from './names.js';
import { resolve } from './names.js';
import { notComputed } from './not-computed.js';
import { sizeSides } from './sizes.js';
import { failUnknown } from './unknown.js';

/** Names of checks: results, which no input may use. */
export const checkNames: readonly string[] = [
    'bending', 'shear', 'bearing', 'stability', 'tension', 'compression', 'notch', 'instant', 'final', 'vibration', 'interaction', 'web',
    'net section', 'plies', 'butt', 'splice', 'rods', 'plates', 'washers', 'grain', 'edge', 'masonry', 'piece', 'carry'
];

type Getter = (context: Context) => Quantity | undefined;

export function namedQuantity(context: Context, node: ast.Reference): Quantity | undefined {
    const thing = resolve(context, node.subject, node, isAnything, 'anything that has a value');
    if (thing === undefined) {
        return undefined;
    }
    const path = [thing.name, ...node.path].join('.');
    const getter = quantityOf(thing, node.path.join('.'));
    if (getter === undefined) {
        return unknownQuantity(context, thing, path, node);
    }
    const start = context.pending.indexOf(path);
    if (start >= 0) {
        return fail(context, 'circle', `circle of definitions: ${[...context.pending.slice(start), path].join(' → ')}`, source(context, node));
    }
    context.pending.push(path);
    const { expansion } = context;
    const value = getter(expansion === undefined || expansion.own.has(thing) ? context : expansion.outer);
    context.pending.pop();
    return value;
}

export const isAnything = (_: unknown): _ is Named => true;

/** What follows the name of a thing: the one check of two words counts as one. */
export const checkPath = (node: ast.Reference): readonly string[] => (node.sections.length > 0 ? [...node.path.slice(0, -1), 'net section'] : node.path);

/** How to get the quantity of this name, if there is one. */
export function quantityOf(thing: Named, name: string): Getter | undefined {
    const value = (input: ast.Input | undefined): Getter | undefined => input && (context => middleOf(context, input));
    switch (thing.$type) {
        case 'Let': return name === '' ? (context => evaluateInput(context, thing.value)) : undefined;
        case 'Load': return name === '' ? value(thing.amount) : undefined;
        case 'Wall': return name === 'thick' ? value(thing.facts.find(ast.isThickness)?.value)
            : name === 'height' ? value(thing.facts.find(ast.isHeight)?.value) : undefined;
        case 'Masonry': return name === 'fk' ? value(thing.facts.find(ast.isStrength)?.value) : undefined;
        case 'Member': return memberQuantity(thing, name);
        default: return undefined;
    }
}

/** What is worked out from a band does not follow it: it is named. */
function middleOf(context: Context, input: ast.Input | undefined): Quantity | undefined {
    if (input?.high !== undefined) {
        const at = { ...source(context, input.value), end: source(context, input.high).end };
        notComputed(context, 'band', `what is worked out from the band in line ${at.line}`, [], at);
    }
    return evaluateInput(context, input);
}

function memberQuantity(member: ast.Member, name: string): Getter | undefined {
    const side = (index: number): Getter | undefined => {
        const section = member.statements.find(statement => ast.isSectionStatement(statement) || ast.isPlies(statement) || ast.isFlitch(statement));
        return section?.size && (context => sizeSides(context, section.size!, 2)?.[index]);
    };
    switch (name) {
        case 'length': return context => middleOf(context, member.statements.find(ast.isLengthStatement)?.value);
        case 'span': return context => longestSpan(context, member);
        case 'breadth': return side(0);
        case 'depth': return side(1);
        default: return undefined;
    }
}

/** The longest distance between neighbouring supports; nought where there are fewer than two. */
export function longestSpan(context: Context, member: ast.Member): Quantity | undefined {
    const supports = member.statements.filter(isSupport);
    const stations = supports.map(support => middleOf(context, support.at));
    if (stations.includes(undefined)) {
        return poisoned(context);
    }
    const sorted = stations.map(station => station!.value).sort((a, b) => a - b);
    return { value: Math.max(0, ...sorted.slice(1).map((station, i) => station - sorted[i]!)), dimension: length };
}

export type SupportStatement = ast.Bearing | ast.Spring | ast.Pinned | ast.Fixed;

export const isSupport = (node: ast.Statement): node is SupportStatement =>
    ast.isBearing(node) || ast.isSpring(node) || ast.isPinned(node) || ast.isFixed(node);

function unknownQuantity(context: Context, thing: Named, path: string, node: ast.Reference): undefined {
    const at = source(context, node);
    const last = checkPath(node).at(-1);
    if (last !== undefined && checkNames.includes(last)) {
        return fail(context, 'result-in-input', `${path} is a result: results can be used in require and breakeven alone`, at);
    }
    if (last === 'weight') {
        return fail(context, 'unknown-quantity', `${path} is not available in an input in this version`, at);
    }
    if (AstUtils.getContainerOfType(node, ast.isDetail) !== undefined) {
        return poisoned(context);
    }
    const known = ['length', 'span', 'breadth', 'depth', 'thick', 'height', 'fk'].filter(name => quantityOf(thing, name) !== undefined);
    const otherwise = known.length > 0 ? `: it has ${known.map(name => `${thing.name}.${name}`).join(', ')}` : '';
    return failUnknown(context, 'unknown-quantity', `${path} is not a value`, at, { word: last ?? '', among: known, before: `${thing.name}.`, otherwise });
}
