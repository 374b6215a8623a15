import * as ast from '../generated/ast.js';
import type { Given, Hanger, PlatePart } from '../model.js';
import type { Quantity } from '../quantity.js';
import type { Context } from './context.js';
import { source } from './context.js';
import { steelOf } from './fasteners.js';
import { evidenceOf } from './inputs.js';
import { sizeSides } from './sizes.js';

/** Width × thickness × length. */
export function evaluatePlate(context: Context, node: ast.Plate, path: string, ownSteel?: string): PlatePart | undefined {
    const sides = sizeSides(context, node.size, 3);
    const steel = steelOfPlate(context, node, ownSteel);
    const given = (index: number, name: string) => sideOf(context, node.size, sides!, index, `${path}.${name}`);
    return sides && steel === undefined ? undefined
        : sides && { width: given(0, 'width'), thickness: given(1, 'thickness'), length: given(2, 'length'), steel: steel!, source: source(context, node) };
}

/** Width × thickness: as long as the section is deep. */
export function evaluateEndPlate(context: Context, node: ast.Plate, path: string, ownSteel?: string): Omit<PlatePart, 'length'> | undefined {
    const sides = sizeSides(context, node.size, 2);
    const steel = steelOfPlate(context, node, ownSteel);
    return sides && steel !== undefined ? {
        width: sideOf(context, node.size, sides, 0, `${path}.width`), thickness: sideOf(context, node.size, sides, 1, `${path}.thickness`),
        steel, source: source(context, node)
    } : undefined;
}

export function evaluateWashers(context: Context, node: ast.Washers, path: string): Hanger['washers'] {
    const sides = sizeSides(context, node.size, 2);
    return sides && { size: sideOf(context, node.size, sides, 0, `${path}.size`), thickness: sideOf(context, node.size, sides, 1, `${path}.thickness`) };
}

const steelOfPlate = (context: Context, node: ast.Plate, ownSteel: string | undefined): string | undefined =>
    node.grade === undefined && ownSteel !== undefined ? ownSteel : steelOf(context, node.grade, node, 'grade', 'this plate');

function sideOf(context: Context, size: ast.Size, sides: readonly Quantity[], index: number, path: string): Given {
    context.paths.add(path);
    return { ...sides[index]!, evidence: evidenceOf(undefined), source: source(context, size.sides[index]!), path };
}
