import * as ast from '../generated/ast.js';
import type { Splice } from '../model.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';
import { boltGroupOf } from './fasteners.js';
import { aStation, given } from './inputs.js';
import { notComputed } from './not-computed.js';
import { evaluateEndPlate, evaluatePlate } from './plates.js';
import { outside } from './supports.js';

/** `ownSteel`: what plates are of that do not say so, where the member itself is of steel. */
export function evaluateSplices(context: Context, member: ast.Member, memberLength: number | undefined, ownSteel: string | undefined): readonly Splice[] {
    return member.statements.filter(ast.isSplice).flatMap((node, i) => {
        const path = `${member.name}.splice${i === 0 ? '' : i + 1}`;
        const at = given(context, node.at, path, aStation);
        const plates = node.parts.filter(ast.isPlate).flatMap((plate, j) => plateOf(context, plate, `${path}.plate${j === 0 ? '' : j + 1}`, ownSteel) ?? []);
        const bolts = node.parts.filter(ast.isBolts).flatMap((group, j) => boltsOf(context, group, `${path}.bolts${j === 0 ? '' : j + 1}`) ?? []);
        if (at !== undefined && memberLength !== undefined && (at.value <= 0 || at.value >= memberLength)) {
            fail(context, 'splice-outside', at.value === 0 || at.value === memberLength ? `${member.name} ends here: nothing is spliced`
                : `this splice is ${outside(at.value, memberLength)} of ${member.name}`, at.source);
        }
        if (!node.parts.some(ast.isPlate) || !node.parts.some(ast.isBolts)) {
            fail(context, 'splice-incomplete', `this splice lacks its ${node.parts.some(ast.isPlate) ? 'bolts' : 'plates'}`, source(context, node));
        }
        notComputed(context, 'splices', `${member.name}.splice`, [member.name], source(context, node));
        return at === undefined ? [] : [{ at, plates, bolts, source: source(context, node) }];
    });
}

function plateOf(context: Context, node: ast.Plate, path: string, ownSteel: string | undefined): Splice['plates'][number] | undefined {
    const { kind } = node;
    if (kind === undefined || kind === 'head' || kind === 'foot') {
        return kind && fail(context, 'misplaced-plate', `a ${kind} plate belongs to a hanger: a splice has end, cover, web or flange plates`, source(context, node));
    }
    const whole = kind !== 'end' || node.size?.sides.length === 3;
    const plate = whole ? evaluatePlate(context, node, path, ownSteel) : evaluateEndPlate(context, node, path, ownSteel);
    return plate && { ...plate, where: kind };
}

function boltsOf(context: Context, node: ast.Bolts, path: string): Splice['bolts'][number] | undefined {
    const placed = node.parts.find(part => !ast.isBoltGrade(part));
    if (placed !== undefined) {
        return fail(context, 'misplaced-bolts', 'the bolts of a splice are counted: bolts 4 M16 grade 8.8', source(context, placed));
    }
    return node.count === undefined ? fail(context, 'no-count', 'how many bolts these are is not said: bolts 4 M16 grade 8.8', source(context, node))
        : boltGroupOf(context, node, path);
}
