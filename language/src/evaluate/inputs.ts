/** Inputs: a value of the expected kind, with how it is known. */
import type { AstNode } from 'langium';
import * as ast from '../generated/ast.js';
import type { Evidence, EvidenceWord, Given, SourceRef } from '../model.js';
import type { Dimension, Quantity } from '../quantity.js';
import * as dim from '../quantity.js';
import { sameDimension } from '../quantity.js';
import { dimensionName, formatQuantity } from '../units.js';
import type { Context } from './context.js';
import { fail, poisoned, source } from './context.js';
import { evaluateExpression, evaluateInput } from './expressions.js';
import { notComputed } from './not-computed.js';
import { behind } from './source.js';

export interface Expectation {
    readonly dimensions: readonly Dimension[];
    /** With its article, where the dimension does not say it. */
    readonly name?: string;
    /** The unit that a missing or wrong one is replaced with. */
    readonly usual: string;
    readonly sign: 'positive' | 'not negative' | 'any';
    /** In base units. */
    readonly most?: number;
}

/** A kilometre: nothing in a building is longer. */
const longest = 1e6;
export const aLength: Expectation = { dimensions: [dim.length], usual: 'mm', sign: 'positive', most: longest };
export const aDistance: Expectation = { ...aLength, usual: 'm' };
/** Its place on the member is looked at where the member is known. */
export const aStation: Expectation = { dimensions: [dim.length], usual: 'm', sign: 'any', most: longest };
export const aDepth: Expectation = { ...aLength, sign: 'not negative' };
export const aStress: Expectation = { dimensions: [dim.stress], usual: 'MPa', sign: 'positive' };
export const aDensity: Expectation = { dimensions: [dim.density], usual: 'kg/m3', sign: 'positive' };
export const aMass: Expectation = { dimensions: [dim.mass], usual: 'kg', sign: 'positive' };
export const aShare: Expectation = { dimensions: [dim.ratio], usual: '%', sign: 'not negative', most: 10 };
export const anAngle: Expectation = { dimensions: [dim.angle], usual: 'deg', sign: 'any' };
export const aStiffness: Expectation = { dimensions: [dim.lineLoad], usual: 'N/mm', sign: 'positive' };
export const aTime: Expectation = { dimensions: [dim.time], usual: 'min', sign: 'positive' };
export const aForce: Expectation = { dimensions: [dim.force], usual: 'kN', sign: 'any' };

export function evidenceOf(node: ast.Evidence | undefined): Evidence {
    return node?.word === undefined ? { word: 'assumed', stated: false }
        : { word: node.word as EvidenceWord, stated: true, ...(node.note !== undefined && { note: node.note }) };
}

/** Its evidence, or that it is a band, puts it into the ledger. */
export function given(context: Context, input: ast.Input | undefined, path: string, expected: Expectation): Given | undefined {
    const found = givenOutOfLedger(context, input, path, expected);
    return found?.evidence.stated === true || found?.band !== undefined ? consequential(context, found) : found;
}

export function givenOutOfLedger(context: Context, input: ast.Input | undefined, path: string, expected: Expectation): Given | undefined {
    return input?.high === undefined ? givenValue(context, input?.value, input?.evidence, path, expected) : givenBand(context, input, input.high, path, expected);
}

export function givenValue(
    context: Context, node: ast.Expression | undefined, evidence: ast.Evidence | undefined, path: string, expected: Expectation
): Given | undefined {
    context.paths.add(path);
    const quantity = evaluateExpression(context, node);
    return quantity && node && fitting(context, node, quantity, expected)
        ? { value: quantity.value, evidence: evidenceOf(evidence), source: source(context, node), path, dimension: quantity.dimension } : undefined;
}

function givenBand(context: Context, input: ast.Input, upper: ast.Expression, path: string, expected: Expectation): Given | undefined {
    context.paths.add(path);
    const middle = evaluateInput(context, input);
    if (middle === undefined) {
        return undefined;
    }
    const [low, high] = [evaluateExpression(context, input.value), evaluateExpression(context, upper)];
    if (low === undefined || high === undefined || !fitting(context, upper, high, expected) || !fitting(context, input.value, low, expected)) {
        return undefined;
    }
    const at = { ...source(context, input.value), end: source(context, upper).end };
    const subject = context.names.things.get(path.split('.')[0]!);
    if (ast.isLoadTest(subject)) {
        notComputed(context, 'band', `${path} as a band`, [], at);
    }
    return { ...middle, evidence: evidenceOf(input.evidence), source: at, path, band: { low: low.value, high: high.value } };
}

/** Where the place of a thing is not an input by itself: one value, and not a band. */
export function single(context: Context, input: ast.Input, expected: Expectation): Quantity | undefined {
    const quantity = evaluateInput(context, input);
    if (input.high !== undefined) {
        return fail(context, 'band-misplaced', 'no band can stand here: say one value', { ...source(context, input.value), end: source(context, input.high).end });
    }
    return quantity && fitting(context, input.value, quantity, expected) ? quantity : undefined;
}

/** Whether a quantity is of the expected kind, sign and size; else reports it. */
export function fitting(context: Context, node: ast.Expression, quantity: Quantity, expected: Expectation): boolean {
    const at = source(context, node);
    if (!expected.dimensions.some(dimension => sameDimension(dimension, quantity.dimension))) {
        wrongDimension(context, node, quantity, expected);
        return false;
    }
    if (expected.sign === 'positive' ? quantity.value <= 0 : expected.sign === 'not negative' && quantity.value < 0) {
        fail(context, expected.sign === 'positive' ? 'not-positive' : 'negative',
            `${formatQuantity(quantity)} is ${quantity.value === 0 ? 'nought' : 'negative'}: ${expected.sign === 'positive' ? 'this is more than nought' : 'this cannot be'}`, at);
        return false;
    }
    if (expected.most !== undefined && Math.abs(quantity.value) > expected.most) {
        fail(context, 'too-large', `${formatQuantity(quantity)} is too large: at most ${formatQuantity({ value: expected.most, dimension: quantity.dimension })}`, at);
        return false;
    }
    return true;
}

function wrongDimension(context: Context, node: ast.Expression, quantity: Quantity, expected: Expectation): void {
    const at = source(context, node);
    const wanted = expected.name ?? expected.dimensions.map(dimensionName).join(' or ');
    if (ast.isLiteral(node) && node.unit === undefined) {
        fail(context, 'unit-missing', `a unit is missing: expected ${wanted}, such as ${node.value} ${expected.usual}`, at,
            { fix: { title: `add ${expected.usual}`, text: ` ${expected.usual}`, at: behind(at) } });
        return;
    }
    const unit = ast.isLiteral(node) ? source(context, node, 'unit') : undefined;
    fail(context, 'wrong-dimension', `expected ${wanted}, found ${dimensionName(quantity.dimension)}`, at,
        unit === undefined ? {} : { fix: { title: `write ${expected.usual} for the unit`, text: expected.usual, at: unit } });
}

/** Puts an input into the ledger. */
export function consequential<T extends number | string>(context: Context, input: Given<T> | undefined): Given<T> | undefined {
    if (input !== undefined && context.inputs.at(-1) !== input) {
        context.paths.add(input.path);
        context.inputs.push(input);
    }
    return input;
}

/** A whole number of things, from 1; undefined where it is none, and then that is reported. */
export function wholeNumber(context: Context, value: number | undefined, node: AstNode, property: string): number | undefined {
    if (value === undefined) {
        return poisoned(context);
    }
    return Number.isInteger(value) && value >= 1 && value <= 1000 ? value
        : fail(context, 'not-whole', 'expected a whole number from 1', source(context, node, property));
}

/** What a file does not say, and what that counts as. */
export const unsaid = (value: number, path: string, at: SourceRef, dimension: Dimension = dim.length): Given =>
    ({ value, evidence: evidenceOf(undefined), source: at, path, dimension });
