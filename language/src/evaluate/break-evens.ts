/** Whether each `breakeven` names an input that has a value to be varied. */
import * as ast from '../generated/ast.js';
import type { BreakEvenLine } from '../model.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';
import { failUnknown } from './unknown.js';

/** After all inputs are known. Of a member that is broken its inputs are not. */
export function evaluateBreakEvens(context: Context, root: ast.Calculation, broken: ReadonlyMap<string, string>): readonly BreakEvenLine[] {
    return root.declarations.filter(ast.isBreakEven).flatMap(node => {
        const subject = node.input?.subject?.$refText;
        if (subject === undefined) {
            return [];
        }
        const path = [subject, ...node.input.path].join('.');
        if (!context.paths.has(path)) {
            if (!broken.has(subject)) {
                reportUnknown(context, node, path);
            }
            return [];
        }
        return [{ path, source: source(context, node) }];
    });
}

function reportUnknown(context: Context, node: ast.BreakEven, path: string): void {
    const at = source(context, node, 'input');
    const parts = [...context.paths].filter(known => known.startsWith(`${path}.`));
    if (parts.length > 0) {
        fail(context, 'unknown-input', `${path} is several inputs: ${parts.join(', ')}`, at);
    } else {
        failUnknown(context, 'unknown-input', `no input is called '${path}'`, at, { word: path, among: context.paths });
    }
}
