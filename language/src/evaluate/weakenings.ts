/** Losses and notches. */
import * as ast from '../generated/ast.js';
import type { Face, Given, Loss, Notch, RectangularSection } from '../model.js';
import { length } from '../quantity.js';
import { formatQuantity } from '../units.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';
import { aDepth, aLength, aStation, consequential, evidenceOf, given, givenOutOfLedger, givenValue, unsaid } from './inputs.js';
import { outside } from './supports.js';

interface Run { readonly from: Given; readonly to: Given }
const print = (value: number) => formatQuantity({ value, dimension: length }, 'mm');

function evaluateRun(context: Context, member: ast.Member, node: ast.Loss | ast.Notch, path: string, memberLength: number | undefined): Run | undefined {
    const from = givenValue(context, node.from, undefined, `${path}.from`, aStation);
    const to = givenValue(context, node.to, undefined, `${path}.to`, aStation);
    if (from === undefined || to === undefined) {
        return undefined;
    }
    if (to.value <= from.value) {
        return fail(context, 'empty-run', 'this ends before it begins', { ...from.source, end: to.source.end });
    }
    const astray = memberLength === undefined ? undefined : [from, to].find(station => station.value < 0 || station.value > memberLength + 1e-6);
    return astray === undefined ? { from, to }
        : fail(context, 'loss-outside', `this is ${outside(astray.value, memberLength!)} of ${member.name}`, astray.source);
}

export function evaluateLosses(context: Context, member: ast.Member, memberLength: number | undefined, section: RectangularSection | undefined): readonly Loss[] {
    const losses = member.statements.filter(ast.isLoss).flatMap((node, i) => {
        const path = `${member.name}.loss${i === 0 ? '' : i + 1}`;
        const run = evaluateRun(context, member, node, path, memberLength);
        const faces: Partial<Record<Face, Given>> = {};
        for (const face of node.faces) {
            if (face.face === undefined) {
                continue;
            }
            if (faces[face.face] !== undefined) {
                fail(context, 'duplicate-face', `the ${face.face} face is given twice`, source(context, face));
            }
            const depth = givenOutOfLedger(context, face.depth, `${path}.${face.face}`, aDepth);
            faces[face.face] = consequential(context, depth && (face.depth.evidence === undefined ? { ...depth, evidence: evidenceOf(node.evidence) } : depth));
        }
        if (node.faces.length === 0) {
            fail(context, 'empty-loss', 'this loss takes nothing: say how deep it goes from top, bottom, left or right', source(context, node));
        }
        return run === undefined ? [] : [{ ...run, faces, evidence: evidenceOf(node.evidence), source: source(context, node) }];
    });
    if (section !== undefined) {
        losses.forEach(loss => reportEaten(context, member, loss, losses, section));
    }
    return losses;
}

/** Where losses overlap, the deepest of each face counts. */
function reportEaten(context: Context, member: ast.Member, loss: Loss, all: readonly Loss[], section: RectangularSection): void {
    const overlapping = all.filter(other => other.from.value < loss.to.value && other.to.value > loss.from.value);
    const deepest = (face: Face) => Math.max(0, ...overlapping.map(other => other.faces[face]?.value ?? 0));
    const pairs = [['top', 'bottom', section.depth.value, 'deep'], ['left', 'right', section.breadth.value, 'broad']] as const;
    for (const [one, other, whole, word] of pairs) {
        const taken = deepest(one) + deepest(other);
        if (taken >= whole) {
            fail(context, 'nothing-left', `this loss leaves nothing of ${member.name}: ${print(taken)} of a section ${print(whole)} ${word}`, loss.source);
            return;
        }
    }
}

export function evaluateNotches(context: Context, member: ast.Member, memberLength: number | undefined, section: RectangularSection | undefined): readonly Notch[] {
    return member.statements.filter(ast.isNotch).flatMap((node, i) => {
        const path = `${member.name}.notch${i === 0 ? '' : i + 1}`;
        const run = evaluateRun(context, member, node, path, memberLength);
        const depth = consequential(context, given(context, node.depth, path, aLength));
        const taper = node.taper === undefined ? undefined : given(context, node.taper, `${path}.taper`, aDepth);
        if (depth !== undefined && section !== undefined && depth.value >= section.depth.value) {
            fail(context, 'nothing-left', `this notch leaves nothing of ${member.name}: ${print(depth.value)} of a section ${print(section.depth.value)} deep`, depth.source);
        }
        if (run === undefined || depth === undefined || node.face === undefined || (node.taper !== undefined && taper === undefined)) {
            return [];
        }
        const square = unsaid(0, `${path}.taper`, depth.source);
        return [{ face: node.face, ...run, depth, taper: taper ?? square, source: source(context, node) }];
    });
}
