/** Units and sizes in what this version does not compute are looked at all the same. */
import type { AstNode } from 'langium';
import { AstUtils } from 'langium';
import * as ast from '../generated/ast.js';
import * as dim from '../quantity.js';
import type { Context } from './context.js';
import { newContext } from './context.js';
import { evaluateExpression } from './expressions.js';
import type { Expectation } from './inputs.js';
import { aLength, aStation, aTime, fitting } from './inputs.js';
import { leafCount, leafNumbers } from './leaves.js';
import { evaluateMember } from './members.js';

const aWeight: Expectation = { dimensions: [dim.mass, dim.force], usual: 'kg', sign: 'not negative' };
const aDeflection: Expectation = { dimensions: [dim.length], usual: 'mm', sign: 'any' };

/** By the type of a node and the name of its part. */
const expected: Readonly<Record<string, Readonly<Record<string, Expectation>>>> = {
    Fire: { value: aTime },
    TestPiece: { stations: aStation }, TestWeight: { amount: aWeight, at: aStation, spread: aLength }, TestReading: { weight: aWeight, deflection: aDeflection }
};

export function checkUnusedValues(context: Context, root: ast.Calculation): void {
    for (const declaration of root.declarations) {
        switch (declaration.$type) {
            case 'Member': case 'LoadTest': checkParts(context, declaration); break;
            case 'Option': checkOption(context, declaration); break;
            default: break;
        }
    }
}

function checkParts(context: Context, node: AstNode): void {
    for (const part of AstUtils.streamAst(node)) {
        for (const [name, expectation] of Object.entries(expected[part.$type] ?? {})) {
            checkProperty(context, (part as unknown as Record<string, unknown>)[name], expectation);
        }
        if (ast.isTestPiece(part)) {
            checkLeaves(context, part);
        }
    }
}

function checkLeaves(context: Context, piece: ast.TestPiece): void {
    const member = context.names.things.get(piece.member?.$refText ?? '');
    if (piece.leaves.length > 0 && ast.isMember(member)) {
        leafNumbers(context, piece, leafCount(member));
    }
}

/** Either an expression, an input or a list of them. */
function checkProperty(context: Context, value: unknown, expectation: Expectation): void {
    for (const item of Array.isArray(value) ? value : [value]) {
        const node = ast.isInput(item) ? item.value : ast.isExpression(item) ? item : undefined;
        const quantity = node && evaluateExpression(context, node);
        if (node !== undefined && quantity !== undefined) {
            fitting(context, node, quantity, expectation);
        }
    }
}

/** An option's members are evaluated for their errors alone. */
function checkOption(context: Context, option: ast.Option): void {
    const scratch: Context = { ...newContext(context.files, context.names), findings: context.findings, values: context.values };
    for (const change of option.changes) {
        evaluateReplacement(scratch, change);
        checkParts(scratch, change);
    }
}

function evaluateReplacement(context: Context, replace: ast.Replace): void {
    const name = replace.member?.$refText;
    if (name !== undefined) {
        evaluateMember(context, { ...replace, $type: 'Member', name, title: undefined } as unknown as ast.Member);
    }
}
