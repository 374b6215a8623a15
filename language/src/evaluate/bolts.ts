/** Bolts through a member of leaves: where each one goes. */
import * as ast from '../generated/ast.js';
import type { BoltPlace, BoltRow, Given } from '../model.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';
import { boltGradeOf, threadOf } from './fasteners.js';
import { aDepth, aLength, aStation, given, single } from './inputs.js';
import { outside } from './supports.js';

/** What the bolts go through, mm: a leaf's sides, and the member's length. */
export interface Leaf { readonly breadth: number; readonly depth: number; readonly length: number }

/** Far more than a member has; each is an element of the analysis. */
const mostBolts = 500;

export function evaluateBolts(context: Context, member: ast.Member, leaf: Leaf | undefined): readonly BoltRow[] {
    const rows = member.statements.filter(ast.isBolts).flatMap((node, i) => evaluateRow(context, member, node, `${member.name}.bolts${i === 0 ? '' : i + 1}`, leaf) ?? []);
    reportTwiceInOnePlace(context, rows);
    return rows;
}

function evaluateRow(context: Context, member: ast.Member, node: ast.Bolts, path: string, leaf: Leaf | undefined): BoltRow | undefined {
    reportParts(context, node);
    const thread = threadOf(context, node);
    const grade = boltGradeOf(context, node, path);
    const [every, ends, zigzagPart, at] = [node.parts.find(ast.isBoltSpacing), node.parts.find(ast.isBoltEnds), node.parts.find(ast.isBoltZigzag), node.parts.find(ast.isBoltStations)];
    const spacing = every && given(context, every.value, `${path}.every`, aLength);
    const endDistance = ends && given(context, ends.value, `${path}.ends`, aLength);
    const zigzag = zigzagPart && given(context, zigzagPart.value, `${path}.zigzag`, aDepth);
    const listed = at?.stations.map(station => stationOf(context, station));
    if (thread === undefined || grade === undefined || leaf === undefined || (every && !spacing) || (ends && !endDistance) || (zigzagPart && !zigzag) || listed?.includes(undefined)) {
        return undefined;
    }
    const { diameter } = thread;
    if (diameter >= Math.min(leaf.breadth, leaf.depth)) {
        return fail(context, 'bolt-too-large', `${thread.size} leaves nothing of a leaf of ${leaf.breadth} × ${leaf.depth} mm`, source(context, node, 'thread'));
    }
    if (zigzag !== undefined && zigzag.value + diameter / 2 > leaf.depth / 2) {
        return fail(context, 'bolt-outside', `a bolt ${zigzag.value} mm from the axis is cut by the edge of a leaf ${leaf.depth} mm deep`, zigzag.source);
    }
    const stations = listed === undefined ? evenly(context, node, leaf, endDistance?.value ?? usualEnd(diameter), spacing) : inside(context, member, listed as readonly Station[], leaf);
    return stations && {
        ...thread, grade, places: stations.map(({ x, source: place }, i) => ({ x, height: zigzag === undefined ? 0 : zigzag.value * cycle[i % cycle.length]!, source: place })),
        ...(spacing && { spacing }), ...(zigzag && { zigzag }), ...(endDistance && { ends: endDistance }), source: source(context, node)
    };
}

/** Above the middle, in it, below it, in it. */
const cycle = [1, 0, -1, 0] as const;

/** From the end of a leaf: the larger of 7d and 80 mm (EN 1995-1-1 Table 8.4, a3,t). */
export const usualEnd = (diameter: number): number => Math.max(7 * diameter, 80);

type Station = Pick<BoltPlace, 'x' | 'source'>;

function stationOf(context: Context, input: ast.Input): Station | undefined {
    const at = single(context, input, aStation);
    return at && { x: at.value, source: source(context, input.value) };
}

function evenly(context: Context, node: ast.Bolts, leaf: Leaf, end: number, spacing: Given | undefined): readonly Station[] | undefined {
    if (spacing === undefined) {
        return fail(context, 'bolts-nowhere', 'where these bolts are is not said: every 350 mm, or at 0.20 m, 0.55 m', source(context, node));
    }
    const run = leaf.length - 2 * end;
    if (run < 0) {
        return fail(context, 'bolts-nowhere', `no bolt fits between two end distances of ${end} mm`, source(context, node));
    }
    const steps = Math.ceil(run / spacing.value - 1e-9);
    if (steps >= mostBolts) {
        return fail(context, 'too-many-bolts', `these are ${steps + 1} bolts: at most ${mostBolts} in a row are computed`, spacing.source);
    }
    return Array.from({ length: steps + 1 }, (_, i) => ({ x: end + (steps === 0 ? 0 : run * i / steps), source: source(context, node) }));
}

function inside(context: Context, member: ast.Member, stations: readonly Station[], leaf: Leaf): readonly Station[] | undefined {
    const astray = stations.find(({ x }) => x < 0 || x > leaf.length);
    if (astray !== undefined) {
        return fail(context, 'bolt-outside', `this bolt is ${outside(astray.x, leaf.length)} of ${member.name}`, astray.source);
    }
    if (stations.length > mostBolts) {
        return fail(context, 'too-many-bolts', `these are ${stations.length} bolts: at most ${mostBolts} in a row are computed`, stations[mostBolts]!.source);
    }
    return [...stations].sort((a, b) => a.x - b.x);
}

function reportParts(context: Context, node: ast.Bolts): void {
    const seen = new Set<string>();
    for (const part of node.parts) {
        if (seen.has(part.$type)) {
            fail(context, 'said-twice', 'these bolts say this twice', source(context, part));
        }
        seen.add(part.$type);
    }
    const listed = node.parts.find(ast.isBoltStations);
    const spread = node.parts.find(part => ast.isBoltSpacing(part) || ast.isBoltEnds(part));
    if (listed !== undefined && spread !== undefined) {
        fail(context, 'bolts-both-ways', 'bolts are either at stations or every so far between the ends', source(context, spread));
    }
    if (node.count !== undefined) {
        fail(context, 'misplaced-count', 'only the bolts of a splice are counted: each station has one bolt here', source(context, node, 'count'));
    }
}

function reportTwiceInOnePlace(context: Context, rows: readonly BoltRow[]): void {
    const all = rows.flatMap(row => row.places.map(place => ({ ...place, diameter: row.diameter }))).sort((a, b) => a.x - b.x);
    for (let i = 1; i < all.length; i++) {
        const place = all[i]!;
        for (let j = i - 1; j >= 0 && place.x - all[j]!.x < place.diameter; j--) {
            const other = all[j]!;
            if (Math.hypot(place.x - other.x, place.height - other.height) < (place.diameter + other.diameter) / 2) {
                fail(context, 'bolts-collide', 'two bolts are in one place here', place.source, { related: [{ message: 'the other is here', source: other.source }] });
                return;
            }
        }
    }
}
