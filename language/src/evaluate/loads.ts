import type { AstNode } from 'langium';
import * as ast from '../generated/ast.js';
import type { Action, Duration, Given, ImposedCategory, Load } from '../model.js';
import { imposedCategories } from '../model.js';
import type { Dimension, Quantity } from '../quantity.js';
import * as dim from '../quantity.js';
import { sameDimension, standardGravity } from '../quantity.js';
import type { Context } from './context.js';
import { fail, poisoned, source } from './context.js';
import { evaluateInput } from './expressions.js';
import type { Expectation } from './inputs.js';
import { aLength, aStation, consequential, evidenceOf, given, givenOutOfLedger } from './inputs.js';
import { isLeaf, leafCount, noSuchLeaf } from './leaves.js';
import { resolve } from './names.js';
import { notComputed } from './not-computed.js';
import { outside } from './supports.js';

const forces: readonly Dimension[] = [dim.force, dim.lineLoad, dim.stress];
/** What a mass is as a load, times g. */
const masses: readonly Dimension[] = [dim.mass, dim.massPerLength, dim.massPerArea];

/** Undefined where the load is wrong; then that is reported. */
export function evaluateLoad(context: Context, node: ast.Load): Load | undefined {
    reportRepeated(context, node);
    const on = node.parts.find(ast.isLoadOn);
    if (on === undefined) {
        return fail(context, 'load-on-nothing', `load ${node.name} is on nothing: say on which member`, source(context, node, 'name'));
    }
    const member = resolve(context, on.member, on, ast.isMember, 'a member');
    const action = actionOf(context, node);
    const amount = amountOf(context, node);
    if (on.leaf !== undefined) {
        notComputed(context, 'leaves', `${node.name} on a leaf`, member ? [member.name] : [], source(context, on));
        const count = member && leafCount(member);
        if (!isLeaf(on.leaf, count)) {
            noSuchLeaf(context, on.leaf, count, source(context, on, 'leaf'));
        }
    }
    const placed = amount && member && placeOf(context, node, amount, member);
    return member && action && amount && placed && {
        name: node.name, action, member: member.name, ...(on.leaf !== undefined && { leaf: on.leaf }), amount: amount.given, fromMass: amount.fromMass, ...placed,
        lasting: node.parts.find(ast.isLoadLasting)?.duration as Duration | undefined, source: source(context, node)
    };
}

function reportRepeated(context: Context, node: ast.Load): void {
    const seen = new Set<string>();
    for (const part of node.parts) {
        if (seen.has(part.$type)) {
            fail(context, 'said-twice', `load ${node.name} says this twice`, source(context, part));
        }
        seen.add(part.$type);
    }
}

function actionOf(context: Context, node: ast.Load): Action | undefined {
    const { action, category } = node;
    if (action === 'imposed') {
        if (category === undefined) {
            return fail(context, 'no-category', 'an imposed load has a category A to H (EN 1991-1-1): A rooms to live in, E storage, H roofs', source(context, node, 'action'));
        }
        return imposedCategories.includes(category as ImposedCategory) ? { kind: 'imposed', category: category as ImposedCategory }
            : fail(context, 'unknown-category', `unknown category '${category}': imposed loads are A to H`, source(context, node, 'category'));
    }
    if (category !== undefined) {
        return fail(context, 'unknown-category', `'${category}': only imposed loads have a category`, source(context, node, 'category'));
    }
    return durationlessAction(action) ?? poisoned(context);
}

const durationlessAction = (kind: string | undefined): Action | undefined =>
    kind === 'permanent' || kind === 'snow' || kind === 'wind' || kind === 'construction' ? { kind } : undefined;

interface Amount { readonly given: Given; readonly kind: Dimension; readonly fromMass: boolean }

function amountOf(context: Context, node: ast.Load): Amount | undefined {
    const written = givenOutOfLedger(context, node.amount, node.name, amountExpected(node));
    if (written?.dimension === undefined) {
        return undefined;
    }
    const { dimension } = written;
    const massKind = masses.findIndex(mass => sameDimension(mass, dimension));
    const evidence = evidenceOf(node.parts.find(ast.isLoadEvidence)?.evidence ?? node.amount.evidence);
    const kind = massKind < 0 ? dimension : forces[massKind]!;
    const amount = massKind < 0 ? written : times(written, standardGravity);
    return { given: consequential(context, { ...amount, evidence, dimension: kind })!, kind, fromMass: massKind >= 0 };
}

const times = (given: Given, factor: number): Given =>
    ({ ...given, value: given.value * factor, ...(given.band && { band: { low: given.band.low * factor, high: given.band.high * factor } }) });

/** The unit that is probably meant depends on how the load is spread. */
function amountExpected(node: ast.Load): Expectation {
    const usual = node.parts.some(ast.isLoadStrip) ? 'kN/m2' : node.parts.some(ast.isLoadAt) ? 'kN' : 'kN/m';
    return { dimensions: [...forces, ...masses], name: 'a force, a line load or an area load', usual, sign: 'any' };
}

type Placed = Pick<Load, 'strip' | 'at' | 'from' | 'to' | 'point' | 'line'>;

function placeOf(context: Context, node: ast.Load, amount: Amount, member: ast.Member): Placed | undefined {
    const [strip, run, at] = [node.parts.find(ast.isLoadStrip), node.parts.find(ast.isLoadRun), node.parts.find(ast.isLoadAt)];
    const memberLength = evaluateInput(context, member.statements.find(ast.isLengthStatement)?.value);
    if (sameDimension(amount.kind, dim.force)) {
        return misplaced(context, strip ?? run, 'a force stands at one station: at 2.45 m')
            ?? (at === undefined
                ? fail(context, 'load-without-place', 'where this force stands is not said: at a station along the member, such as at 2.45 m', source(context, node, 'amount'))
                : pointOf(context, node, at, amount, member, memberLength));
    }
    const area = sameDimension(amount.kind, dim.stress);
    if (area && strip === undefined) {
        return fail(context, 'load-without-strip', 'an area load needs the width it is collected from: strip 2.20 m', source(context, node, 'amount'));
    }
    const wrong = misplaced(context, at ?? (area ? undefined : strip), at === undefined ? 'only an area load has a strip' : 'only a force stands at one station: from 0 m to 2 m limits a spread load');
    return wrong ?? lineOf(context, node, strip, run, amount, member, memberLength);
}

/** Undefined where nothing is amiss. */
function misplaced(context: Context, part: AstNode | undefined, message: string): undefined {
    return part && fail(context, 'load-misplaced', message, source(context, part));
}

function pointOf(context: Context, node: ast.Load, part: ast.LoadAt, amount: Amount, member: ast.Member, memberLength: Quantity | undefined): Placed | undefined {
    const at = given(context, part.at, `${node.name}.at`, aStation);
    return at && inside(context, member, memberLength, at) ? { at, point: { force: amount.given.value, at: at.value } } : undefined;
}

function lineOf(
    context: Context, node: ast.Load, stripPart: ast.LoadStrip | undefined, run: ast.LoadRun | undefined, amount: Amount, member: ast.Member, memberLength: Quantity | undefined
): Placed | undefined {
    const strip = stripPart && given(context, stripPart.value, `${node.name}.strip`, aLength);
    const from = run && given(context, run.from, `${node.name}.from`, aStation);
    const to = run && given(context, run.to, `${node.name}.to`, aStation);
    if (memberLength === undefined || (stripPart && !strip) || (run && !(from && to && inside(context, member, memberLength, from) && inside(context, member, memberLength, to)))) {
        return undefined;
    }
    if (from && to && to.value <= from.value) {
        return fail(context, 'empty-run', 'this ends before it begins', source(context, run!));
    }
    const perLength = amount.given.value * (strip?.value ?? 1);
    return { ...(strip && { strip }), ...(from && { from }), ...(to && { to }), line: { perLength, from: from?.value ?? 0, to: to?.value ?? memberLength.value } };
}

function inside(context: Context, member: ast.Member, memberLength: Quantity | undefined, station: Given): boolean {
    if (memberLength === undefined) {
        return false;
    }
    if (station.value < 0 || station.value > memberLength.value) {
        fail(context, 'load-outside', `this load is ${outside(station.value, memberLength.value)} of ${member.name}`, station.source);
        return false;
    }
    return true;
}

