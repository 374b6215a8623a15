import * as ast from '../generated/ast.js';
import type { Quantity } from '../quantity.js';
import { length, ratio, sameDimension } from '../quantity.js';
import { dimensionName } from '../units.js';
import type { Context } from './context.js';
import { fail, poisoned, source } from './context.js';
import { evaluateExpression } from './expressions.js';
import { behind } from './source.js';

/** The sides of `190 x 240 mm`, in mm: the last side's unit is that of every side that has none. */
export function sizeSides(context: Context, size: ast.Size | undefined, count: number): readonly Quantity[] | undefined {
    if (size === undefined || size.sides.length < 2) {
        return poisoned(context);
    }
    if (context.values.has(size)) {
        return context.values.get(size) === undefined ? poisoned(context) : size.sides.map(side => context.values.get(side)!);
    }
    const sides = measure(context, size, count);
    context.values.set(size, sides?.[0]);
    return sides;
}

function measure(context: Context, size: ast.Size, count: number): readonly Quantity[] | undefined {
    const last = size.sides.at(-1)!;
    const bareUnit = ast.isLiteral(last) ? last.unit : undefined;
    if (size.sides.length !== count) {
        return fail(context, 'wrong-size', `expected ${count} sides, found ${size.sides.length}`, source(context, size));
    }
    if (size.sides.every(side => ast.isLiteral(side) && side.unit === undefined)) {
        const at = source(context, size);
        return fail(context, 'unit-missing', 'a unit is missing: a size is in mm, cm, m, in or ft', at,
            { fix: { title: 'add mm', text: ' mm', at: behind(at) } });
    }
    const sides = size.sides.map(side => sideOf(context, side, bareUnit));
    return sides.includes(undefined) ? undefined : sides as readonly Quantity[];
}

function sideOf(context: Context, node: ast.Expression, bareUnit: string | undefined): Quantity | undefined {
    const side = evaluateExpression(context, node, bareUnit);
    if (side === undefined) {
        return undefined;
    }
    if (!sameDimension(side.dimension, length)) {
        const code = sameDimension(side.dimension, ratio) ? 'unit-missing' : 'wrong-dimension';
        return fail(context, code, `expected a length, found ${dimensionName(side.dimension)}`, source(context, node));
    }
    if (side.value <= 0) {
        return fail(context, 'not-positive', 'a side of a size is more than nought', source(context, node));
    }
    return side.value > 1e5 ? fail(context, 'too-large', 'no section is so large: at most 100 m', source(context, node)) : side;
}
