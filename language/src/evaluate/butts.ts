/** Where the leaves of a member are broken. */
import * as ast from '../generated/ast.js';
import type { Butt, PliesSection, Support } from '../model.js';
import { formatQuantity } from '../units.js';
import { length } from '../quantity.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';
import { aStation, given } from './inputs.js';
import { leafNumbers } from './leaves.js';
import { outside } from './supports.js';

/** Butts nearer than this are at one place: no leaf bridges it for any use. */
const onePlace = 10;

export function evaluateButts(context: Context, member: ast.Member, count: number | undefined, memberLength: number | undefined): readonly Butt[] {
    const counts = new Map<number, number>();
    return member.statements.filter(ast.isPly).flatMap(node => {
        const leaves = leafNumbers(context, node, count);
        const first = leaves[0] ?? 0;
        const again = (counts.get(first) ?? 0) + 1;
        counts.set(first, again);
        const at = given(context, node.at, `${member.name}.ply${first}.butt${again === 1 ? '' : again}`, aStation);
        if (at === undefined || memberLength === undefined) {
            return [];
        }
        if (at.value <= 0 || at.value >= memberLength) {
            fail(context, 'butt-outside', at.value === 0 || at.value === memberLength ? 'a leaf ends here already: nothing is broken'
                : `this butt is ${outside(at.value, memberLength)} of ${member.name}`, at.source);
            return [];
        }
        return leaves.map(leaf => ({ leaf, at, source: source(context, node) }));
    });
}

/** A leaf that is broken where it bears stands on its ends; where every leaf is broken nothing holds. */
export function reportButts(context: Context, member: ast.Member, { butts, count }: PliesSection, supports: readonly Support[]): void {
    for (const butt of unique(butts)) {
        const support = supports.find(({ at, bearing, leaves }) =>
            Math.abs(at.value - butt.at.value) <= Math.max(1, (bearing?.value ?? 0) / 2) && (leaves === undefined || leaves.includes(butt.leaf)));
        if (support !== undefined) {
            fail(context, 'butt-at-support', `leaf ${butt.leaf} of ${member.name} is broken where it bears`, butt.at.source,
                { related: [{ message: 'it bears here', source: support.source }] });
        }
    }
    const sorted = [...butts].sort((a, b) => a.at.value - b.at.value);
    for (const [i, butt] of sorted.entries()) {
        const near = sorted.slice(i).filter(other => other.at.value - butt.at.value <= onePlace);
        if (new Set(near.map(other => other.leaf)).size === count) {
            const at = formatQuantity({ value: butt.at.value, dimension: length });
            fail(context, 'all-leaves-broken', count === 1 ? `the one leaf of ${member.name} is broken at ${at}` : `every leaf of ${member.name} is broken at ${at}: nothing is whole there`, butt.source,
                { related: near.filter(other => other.source !== butt.source).map(other => ({ message: `leaf ${other.leaf} is broken here`, source: other.source })) });
            return;
        }
    }
}

/** `ply 1, 3 butt` is one place in the text. */
function unique(butts: readonly Butt[]): readonly Butt[] {
    const seen = new Set<unknown>();
    return butts.filter(({ at }) => !seen.has(at) && seen.add(at));
}
