import * as ast from '../generated/ast.js';
import type { Given, Hanger } from '../model.js';
import type { Context } from './context.js';
import { fail, source, sourceOfReference } from './context.js';
import { boltGroupOf } from './fasteners.js';
import { aDepth, aStation, given, unsaid } from './inputs.js';
import { quantityOf } from './named-quantities.js';
import { resolve } from './names.js';
import { notComputed } from './not-computed.js';
import { evaluatePlate, evaluateWashers } from './plates.js';
import { outside } from './supports.js';

/** A hanger under the name that it has in the file: its own, or that of the detail's use. Undefined where it is wrong; then that is reported. */
export function evaluateHanger(context: Context, node: ast.Hanger, name: string): Hanger | undefined {
    reportRepeated(context, node, name);
    const carried = resolve(context, node.carried, node, ast.isMember, 'a member');
    const carrier = resolve(context, node.carrier, node, ast.isMember, 'a member');
    const carriesAt = stationOf(context, node.carriedAt, `${name}.carries`, carried);
    const fromAt = stationOf(context, node.carrierAt, `${name}.from`, carrier);
    if (carried !== undefined && carried === carrier) {
        return fail(context, 'hung-on-itself', `${carried.name} cannot hang from itself`, sourceOfReference(context, node.carrier, node));
    }
    const rods = node.parts.find(ast.isRods);
    const group = rods && boltGroupOf(context, rods, `${name}.rods`);
    if (rods === undefined) {
        fail(context, 'no-rods', `${name} has no rods: say them, such as rods 2 M12 grade 4.6`, source(context, node));
    }
    const plate = (kind: 'head' | 'foot') => {
        const part = node.parts.find((found): found is ast.Plate => ast.isPlate(found) && found.kind === kind);
        return part && evaluatePlate(context, part, `${name}.${kind}`);
    };
    const [headPlate, footPlate] = [plate('head'), plate('foot')];
    const washers = node.parts.find(ast.isWashers);
    const washerSize = washers && evaluateWashers(context, washers, `${name}.washers`);
    const gap = node.parts.find(ast.isGap);
    const clear = gap === undefined ? unsaid(0, `${name}.gap`, source(context, node)) : given(context, gap.value, `${name}.gap`, aDepth);
    if (!carried || !carrier || !carriesAt || !fromAt || !group || !clear) {
        return undefined;
    }
    const { expansion } = context;
    notComputed(context, 'hangers', `hanger ${name}`, [carried.name, carrier.name], expansion?.usedAt ?? source(context, node));
    return {
        name, carries: carried.name, carriesAt, from: carrier.name, fromAt, rods: group,
        ...(headPlate && { headPlate }), ...(footPlate && { footPlate }), ...(washerSize && { washers: washerSize }),
        gap: clear, source: source(context, node), ...(expansion && { usedAt: expansion.usedAt })
    };
}

function stationOf(context: Context, node: ast.Input | undefined, path: string, member: ast.Member | undefined): Given | undefined {
    const at = given(context, node, path, aStation);
    const whole = member && quantityOf(member, 'length')?.(context.expansion?.outer ?? context);
    if (at === undefined || whole === undefined) {
        return undefined;
    }
    return at.value >= 0 && at.value <= whole.value ? at
        : fail(context, 'hanger-outside', `this hanger is ${outside(at.value, whole.value)} of ${member!.name}`, at.source);
}

function reportRepeated(context: Context, node: ast.Hanger, name: string): void {
    const seen = new Set<string>();
    for (const part of node.parts) {
        const kind = ast.isPlate(part) ? `${part.kind} plate` : part.$type;
        if (ast.isPlate(part) && part.kind !== undefined && part.kind !== 'head' && part.kind !== 'foot') {
            fail(context, 'misplaced-plate', `a hanger has a head plate and a foot plate: a ${part.kind} plate belongs to a splice`, source(context, part));
        } else if (seen.has(kind)) {
            fail(context, 'said-twice', `${name} says this twice`, source(context, part));
        }
        seen.add(kind);
    }
}
