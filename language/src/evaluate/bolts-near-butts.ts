/** A bolt too near the end of a broken leaf is told, with a fix that moves it: it is never shifted silently. */
import * as ast from '../generated/ast.js';
import type { BoltRow, Butt, PliesSection } from '../model.js';
import { length } from '../quantity.js';
import { formatQuantity } from '../units.js';
import { usualEnd } from './bolts.js';
import type { Context } from './context.js';
import { report, source } from './context.js';

const millimetres = (value: number) => formatQuantity({ value, dimension: length }, 'mm');
const metres = (value: number) => `${Number((value / 1000).toFixed(4))} m`;

export function reportBoltsNearButts(context: Context, member: ast.Member, { bolts, butts }: PliesSection): void {
    for (const row of bolts) {
        const place = row.places.find(({ x }) => buttNear(x, row, butts) !== undefined);
        const butt = place && buttNear(place.x, row, butts);
        const node = member.statements.filter(ast.isBolts).find(statement => source(context, statement).start === row.source.start);
        if (place !== undefined && butt !== undefined && node !== undefined) {
            const least = usualEnd(row.diameter);
            report(context, 'warning', 'bolt-near-butt',
                `the bolt at ${metres(place.x)} is ${millimetres(Math.abs(place.x - butt.at.value))} from where leaf ${butt.leaf} is broken: less than ${millimetres(least)} (7d and 80 mm, EN 1995-1-1 Table 8.4)`,
                place.source, { related: [{ message: 'the leaf is broken here', source: butt.source }], fix: { title: 'move the bolts clear of the butts', at: row.source, text: moved(node, row, butts) } });
        }
    }
}

function buttNear(x: number, { diameter }: BoltRow, butts: readonly Butt[]): Butt | undefined {
    return butts.find(({ at }) => Math.abs(at.value - x) < usualEnd(diameter) - 1e-6);
}

/** The same bolts, each at a station: those that are too near a butt away from it, on their own side. */
function moved(node: ast.Bolts, row: BoltRow, butts: readonly Butt[]): string {
    const least = usualEnd(row.diameter);
    const stations = row.places.map(({ x }) => {
        const at = buttNear(x, row, butts)?.at.value;
        return at === undefined ? x : x < at ? Math.floor(at - least) : Math.ceil(at + least);
    });
    const others = node.parts.filter(part => ast.isBoltGrade(part) || ast.isBoltZigzag(part)).map(part => part.$cstNode?.text ?? '');
    return ['bolts', row.size, ...others, 'at', [...new Set(stations)].map(metres).join(', ')].join(' ');
}
