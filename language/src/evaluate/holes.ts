import * as ast from '../generated/ast.js';
import type { Hole } from '../model.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';
import { aLength, aStation, consequential, given, unsaid } from './inputs.js';
import { notComputed } from './not-computed.js';

export function evaluateHoles(context: Context, member: ast.Member, memberLength: number | undefined, depth: number | undefined): readonly Hole[] {
    return member.statements.filter(ast.isHole).flatMap((node, i) => {
        const path = `${member.name}.hole${i === 0 ? '' : i + 1}`;
        const at = source(context, node);
        const diameter = consequential(context, given(context, node.diameter, path, aLength));
        const station = given(context, node.at, `${path}.at`, aStation);
        const height = node.height === undefined ? unsaid(0, `${path}.height`, at) : given(context, node.height, `${path}.height`, aStation);
        if (diameter === undefined || station === undefined || height === undefined) {
            return [];
        }
        if (memberLength !== undefined && (station.value < 0 || station.value > memberLength)) {
            fail(context, 'loss-outside', `this hole is not on ${member.name}`, station.source);
        } else if (depth !== undefined && Math.abs(height.value) + diameter.value / 2 >= depth / 2) {
            fail(context, 'hole-outside', `this hole breaks through an edge of ${member.name}: it is a notch`, at);
        }
        notComputed(context, 'holes', `${member.name}.${(node.$cstNode?.text ?? 'hole').replace(/\s+/g, ' ')}`, [member.name], at);
        return [{ diameter, at: station, height, source: at }];
    });
}
