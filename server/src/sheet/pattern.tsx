/** Where the bolts come nearest to an end, an edge and one another: to scale, with what is there and what is required. */
import type { BoltDistance, MemberResult } from '../results.js';
import { BoltEnd, diameterOf } from './drawing/bolts.js';
import { Drawing } from './drawing/drawing.js';
import { distanceWords, numbered, tightest } from './drawing/distances.js';
import { r, viewWidth } from './drawing/frame.js';
import { Height, Width } from './drawing/section-dimensions.js';
import { dimensionsIn } from './numbers.js';

/** Units of the view that a window on the member takes, and what lies around it. */
const window = { width: 132, height: 74, apart: 16, above: 20, below: 34 };

export function Pattern({ member, id }: { readonly member: MemberResult; readonly id: string }) {
    const shown = ['a3', 'a4', 'a1', 'a2'].map(rule => tightest(member.distances ?? [], rule)).filter(distance => distance !== undefined).slice(0, 3);
    return shown.length === 0 ? null : (
        <figure class="pattern">
            <Drawing
                id={id} title={`Drilled pattern of ${member.name}, where it is tightest`} description={`${shown.map(distance => wordsOf(member, distance)).join('; ')}.`}
                view={{ x: -8, y: -window.above, width: viewWidth, height: window.above + window.height + window.below }}
            >
                {shown.map((distance, i) => <g transform={`translate(${i * (window.width + window.apart)} 0)`}><Place member={member} distance={distance} /></g>)}
            </Drawing>
            <figcaption>
                Tightest of the drilled pattern, to scale: the distance that is there, in {dimensionsIn()}, against the least one by EN 1995-1-1 Table 8.4 under the bolt's forces (dashed).
            </figcaption>
        </figure>
    );
}

function wordsOf(member: MemberResult, distance: BoltDistance): string {
    const { x, height, leaf, towards, ok } = distance;
    return `bolt ${numbered(member.bolts ?? []).findIndex(bolt => bolt.x === x && bolt.height === height) + 1}${leaf === undefined ? '' : ` in leaf ${leaf}`}, ${towards}: ${distanceWords(distance)}${ok ? '' : ', too little'}`;
}

/** A window on one bolt, its leaf's ends and edges, and the bolts about it. */
function Place({ member, distance }: { readonly member: MemberResult; readonly distance: BoltDistance }) {
    const { bolts = [], depth, length, leaves } = member;
    const { x, height, to, leaf, rule, required, provided } = distance;
    const upright = rule.startsWith('a4') || rule === 'a2';
    const span = upright ? 0 : Math.max(Math.abs(to.x - x), required);
    const scale = Math.min(window.width / (span + 0.9 * depth), window.height / depth);
    const middle = (x + to.x) / 2;
    const [from, until] = [middle - window.width / 2 / scale, middle + window.width / 2 / scale];
    const pieces = (leaf === undefined ? undefined : leaves?.find(one => one.leaf === leaf)?.pieces) ?? [{ from: 0, to: length }];
    const along = (mm: number): number => (mm - from) * scale;
    const down = (mm: number): number => (depth / 2 - mm) * scale;
    const deep = depth * scale;
    const shown = pieces.filter(piece => piece.to > from && piece.from < until).map(piece => ({ from: along(Math.max(piece.from, from)), to: along(Math.min(piece.to, until)), open: [piece.from < from, piece.to > until] as const }));
    const least = !upright ? along(x + Math.sign(to.x - x) * required) : down(height + Math.sign(to.height - height) * required);
    return (
        <g>
            <text x={0} y={-8}>{`bolt ${numbered(bolts).findIndex(bolt => bolt.x === x && bolt.height === height) + 1}${leaf === undefined ? '' : `, leaf ${leaf}`}`}</text>
            {shown.map(piece => <Timber {...piece} deep={deep} />)}
            <path class="axis" d={shown.map(piece => `M${r(piece.from - 4)} ${r(deep / 2)}H${r(piece.to + 4)}`).join('')} />
            {bolts.filter(bolt => bolt.x >= from && bolt.x <= until).map(bolt => <BoltEnd x={along(bolt.x)} y={down(bolt.height)} radius={Math.max(1.5, diameterOf(bolt) * scale / 2)} />)}
            {provided > 0 && <path class="hidden" d={!upright ? `M${r(least)} -3V${r(deep + 3)}` : `M${r(along(x) - 14)} ${r(least)}H${r(along(x) + 14)}`} />}
            <path class="thin" d={upright ? `M${r(along(x) + 5)} ${r(down(height))}h15M${r(along(to.x) + 5)} ${r(down(to.height))}h15` : `M${r(along(x))} ${r(down(height) + 5)}V${r(deep + 7)}M${r(along(to.x))} ${r(down(to.height) + 5)}V${r(deep + 7)}`} />
            {upright
                ? <Height x={along(x) + 22} y={Math.min(down(height), down(to.height))} height={Math.abs(down(height) - down(to.height))} text="" />
                : <Width x={Math.min(along(x), along(to.x))} width={Math.abs(along(to.x) - along(x))} y={deep + 9} text="" />}
            <text x={window.width / 2} y={r(deep + 26)} text-anchor="middle" class={distance.ok ? undefined : 'short'}>{`${distance.ok ? '' : '✗ '}${distanceWords(distance)}`}</text>
        </g>
    );
}

/** An end is drawn thick; where the window cuts it, the timber goes on. */
function Timber({ from, to, open: [before, after], deep }: { readonly from: number; readonly to: number; readonly open: readonly [boolean, boolean]; readonly deep: number }) {
    const end = (x: number, goesOn: boolean): string => goesOn ? `M${r(x)} 0` : `M${r(x)} 0V${r(deep)}`;
    return (
        <g>
            <path class="outline" d={`M${r(from)} 0H${r(to)}M${r(from)} ${r(deep)}H${r(to)}${end(from, before)}${end(to, after)}`} />
            {[[from, before], [to, after]].map(([x, goesOn]) => goesOn && <path class="thin" d={`M${r(Number(x))} -3V${r(deep / 2 - 4)}l-3 2l6 4l-3 2V${r(deep + 3)}`} />)}
        </g>
    );
}
