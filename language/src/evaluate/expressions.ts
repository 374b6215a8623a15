/** Values of expressions, with their dimensions. Each error is reported once, at the operand that is wrong. */
import * as ast from '../generated/ast.js';
import type { Dimension, Quantity } from '../quantity.js';
import { ratio, sameDimension } from '../quantity.js';
import { dimensionName, units } from '../units.js';
import type { Context } from './context.js';
import { fail, poisoned, source } from './context.js';
import { namedQuantity } from './named-quantities.js';

/** No quantity of a building is larger in any base unit. */
const largest = 1e18;

/**
 * Undefined where the expression is wrong; then that is reported.
 * `bareUnit` is the unit of numbers that stand alone: in a size the last side's.
 */
export function evaluateExpression(context: Context, node: ast.Expression | undefined, bareUnit?: string): Quantity | undefined {
    if (node === undefined) {
        return poisoned(context);
    }
    if (context.values.has(node)) {
        return context.values.get(node) ?? poisoned(context);
    }
    const value = bounded(context, node, compute(context, node, bareUnit));
    context.values.set(node, value);
    return value;
}

/** Undefined where it is wrong; then that is reported. Of a band its middle. */
export function evaluateInput(context: Context, input: ast.Input | undefined): Quantity | undefined {
    if (input?.high === undefined) {
        return evaluateExpression(context, input?.value);
    }
    if (!context.values.has(input)) {
        const band = bandOf(context, input, input.high);
        context.values.set(input, band && { value: (band.low + band.high) / 2, dimension: band.dimension });
        return context.values.get(input);
    }
    return context.values.get(input) ?? poisoned(context);
}

/** `1.5 .. 3.0 MPa`: the unit of the higher value is that of the lower one that has none. */
function bandOf(context: Context, input: ast.Input, upper: ast.Expression): { readonly low: number; readonly high: number; readonly dimension: Dimension } | undefined {
    const high = evaluateExpression(context, upper);
    const low = evaluateExpression(context, input.value, unitOf(upper));
    if (low === undefined || high === undefined) {
        return undefined;
    }
    if (!sameDimension(low.dimension, high.dimension)) {
        return fail(context, 'wrong-dimension', `expected ${dimensionName(low.dimension)}, found ${dimensionName(high.dimension)}: a band is between two of a kind`, source(context, upper));
    }
    return low.value < high.value ? { low: low.value, high: high.value, dimension: low.dimension }
        : fail(context, 'empty-band', 'the lower value of a band stands first, and is less than the higher', { ...source(context, input.value), end: source(context, upper).end });
}

function unitOf(node: ast.Expression): string | undefined {
    return ast.isNegation(node) ? unitOf(node.value) : ast.isLiteral(node) ? node.unit : undefined;
}

function compute(context: Context, node: ast.Expression, bareUnit?: string): Quantity | undefined {
    switch (node.$type) {
        case 'Literal': return literal(context, node, bareUnit);
        case 'Group': return evaluateExpression(context, node.value, bareUnit);
        case 'Negation': return map(evaluateExpression(context, node.value, bareUnit), value => -value);
        case 'Operation': return operation(context, node);
        case 'Call': return call(context, node);
        case 'Reference': return namedQuantity(context, node);
        default: return poisoned(context);
    }
}

const map = (quantity: Quantity | undefined, change: (value: number) => number): Quantity | undefined =>
    quantity && { value: change(quantity.value), dimension: quantity.dimension };

function literal(context: Context, node: ast.Literal, bareUnit?: string): Quantity | undefined {
    if (node.value === undefined) {
        return poisoned(context);
    }
    const symbol = node.unit ?? bareUnit;
    const unit = symbol === undefined ? undefined : units.get(symbol);
    return unit === undefined ? { value: node.value, dimension: ratio } : { value: node.value * unit.factor, dimension: unit.dimension };
}

function bounded(context: Context, node: ast.Expression, quantity: Quantity | undefined): Quantity | undefined {
    if (quantity === undefined || (Number.isFinite(quantity.value) && Math.abs(quantity.value) <= largest)) {
        return quantity;
    }
    return fail(context, 'number-too-large', 'this number is too large to be a measure of anything in a building', source(context, node));
}

function operation(context: Context, node: ast.Operation): Quantity | undefined {
    const left = evaluateExpression(context, node.left);
    const right = evaluateExpression(context, node.right);
    if (left === undefined || right === undefined) {
        return undefined;
    }
    const combined = combine(node.operator, left, right);
    if (combined === undefined) {
        return fail(context, 'wrong-dimension', `expected ${dimensionName(left.dimension)}, found ${dimensionName(right.dimension)}: only like can be ${node.operator === '+' ? 'added to' : 'taken from'} like`, source(context, node.right));
    }
    if (node.operator === '/' && right.value === 0) {
        return fail(context, 'division-by-zero', 'this is nought: nothing can be divided by it', source(context, node.right));
    }
    return combined;
}

/** Undefined where the dimensions do not go together. */
export function combine(operator: '+' | '-' | '*' | '/', left: Quantity, right: Quantity): Quantity | undefined {
    const exponents = (sign: 1 | -1) => left.dimension.map((exponent, i) => exponent + sign * right.dimension[i]!) as unknown as Dimension;
    switch (operator) {
        case '*': return { value: left.value * right.value, dimension: exponents(1) };
        case '/': return { value: left.value / right.value, dimension: exponents(-1) };
        default: return sameDimension(left.dimension, right.dimension)
            ? { value: operator === '+' ? left.value + right.value : left.value - right.value, dimension: left.dimension } : undefined;
    }
}

function call(context: Context, node: ast.Call): Quantity | undefined {
    const values = node.arguments.map(argument => evaluateExpression(context, argument));
    const step = node.to === undefined ? undefined : evaluateExpression(context, node.to);
    const first = values[0];
    if (first === undefined || values.includes(undefined) || (node.to !== undefined && step === undefined)) {
        return first === undefined && values.length === 0 ? poisoned(context) : undefined;
    }
    const several = node.function === 'min' || node.function === 'max';
    if (!several && values.length > 1) {
        return fail(context, 'wrong-arguments', `${node.function} takes one value`, source(context, node.arguments[1]!));
    }
    const odd = node.arguments.findIndex((_, i) => !sameDimension(values[i]!.dimension, first.dimension));
    if (odd >= 0) {
        return fail(context, 'wrong-dimension', `expected ${dimensionName(first.dimension)}, found ${dimensionName(values[odd]!.dimension)}`, source(context, node.arguments[odd]!));
    }
    switch (node.function) {
        case 'min': return { value: Math.min(...values.map(value => value!.value)), dimension: first.dimension };
        case 'max': return { value: Math.max(...values.map(value => value!.value)), dimension: first.dimension };
        case 'abs': return map(first, Math.abs);
        case 'sqrt': return root(context, node, first);
        case 'round': return round(context, node, first, step);
    }
}

function root(context: Context, node: ast.Call, { value, dimension }: Quantity): Quantity | undefined {
    const argument = source(context, node.arguments[0]!);
    if (value < 0) {
        return fail(context, 'negative-root', 'the square root of a negative number', argument);
    }
    if (dimension.some(exponent => exponent % 2 !== 0)) {
        return fail(context, 'wrong-dimension', `expected an area or a plain number, found ${dimensionName(dimension)}`, argument);
    }
    return { value: Math.sqrt(value), dimension: dimension.map(exponent => exponent / 2) as unknown as Dimension };
}

function round(context: Context, node: ast.Call, first: Quantity, step: Quantity | undefined): Quantity | undefined {
    if (step === undefined) {
        return sameDimension(first.dimension, ratio) ? map(first, Math.round)
            : fail(context, 'wrong-arguments', 'say what to round to: round(…, to: 5 mm)', source(context, node));
    }
    if (!sameDimension(step.dimension, first.dimension)) {
        return fail(context, 'wrong-dimension', `expected ${dimensionName(first.dimension)}, found ${dimensionName(step.dimension)}`, source(context, node.to!));
    }
    return step.value > 0 ? map(first, value => Math.round(value / step.value) * step.value)
        : fail(context, 'not-positive', 'a step to round to is more than nought', source(context, node.to!));
}
