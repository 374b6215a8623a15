import * as ast from '../generated/ast.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';
import { evaluateInput } from './expressions.js';

/** Looks at every value with a name, used or not. */
export function evaluateLets(context: Context, root: ast.Calculation): void {
    root.declarations.filter(ast.isLet).forEach(node => evaluateInput(context, node.value));
    [root, ...root.declarations.filter(ast.isDetail)].flatMap(one => (ast.isDetail(one) ? one.contents : one.declarations)).filter(ast.isLet)
        .forEach(({ value }) => reportBand(context, value));
}

/** Each input that used it would move by itself. */
function reportBand(context: Context, value: ast.Input | undefined): void {
    if (value?.high !== undefined) {
        fail(context, 'band-misplaced', 'a value with a name is one number: give the band to the input that uses it', { ...source(context, value.value), end: source(context, value.high).end });
    }
}
