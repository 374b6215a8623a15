/**
 * A joiner's drawing of the leaves: from above, side by side with their butts, and from the right side with the
 * bolts at their heights, over running dimensions from one marked end. Across the member it is drawn larger.
 */
import type { BoltResult, MemberResult } from '../results.js';
import { BoltEnd, BoltSide, buttsByStation } from './drawing/bolts.js';
import { dimensionHeight, Dimensions, inOrder } from './drawing/dimensions.js';
import { Drawing } from './drawing/drawing.js';
import { r, sideMargin, viewWidth } from './drawing/frame.js';
import { fontSize, rowHeight, textWidth } from './drawing/labels.js';
import type { Lane } from './drawing/lanes.js';
import { dimensionsIn, heightWords, setOut, setOutUnit, size } from './numbers.js';
import { useLineOf } from './parts.js';

/** Units that the member is deep in the view from the side, and the least and greatest of a leaf from above. */
const depthDrawn = 66;
const laneDrawn = { least: 14, most: 26 };
const steelDrawn = 5;
const between = 30;

interface Props {
    readonly member: MemberResult;
    readonly lanes: readonly Lane[];
    readonly id: string;
}

export function SettingOut({ member, lanes, id }: Props) {
    const lineOf = useLineOf();
    const { name, length, depth, butts = [], bolts = [] } = member;
    const scale = (viewWidth - 2 * sideMargin) / length;
    const along = (mm: number): number => mm * scale;
    const lane = Math.min(laneDrawn.most, Math.max(laneDrawn.least, Math.max(...lanes.map(({ breadth }) => breadth)) * depthDrawn / depth));
    const thickness = lanes.map(({ steel }) => steel ? steelDrawn : lane);
    const tops = thickness.map((_, i) => thickness.slice(0, i).reduce((sum, width) => sum + width, 0));
    const under = tops.at(-1)! + thickness.at(-1)!;
    const side = under + between;
    const axis = side + depthDrawn / 2;
    const up = (mm: number): number => axis - mm * depthDrawn / depth;
    const heights = [...new Set(bolts.map(({ height }) => height))].sort((a, b) => b - a);
    const bottom = side + depthDrawn;
    const stations = stationsThatFit(member);
    const frame = { length: along(length), halfDepth: bottom - 1, slope: 0, steep: false, down: [0, 1] as const, along, scale };
    const view = { x: -sideMargin, y: -22, width: viewWidth, height: bottom + 10 + dimensionHeight(stations) + 22 };
    return (
        <figure class="setting-out">
            <Drawing id={id} title={`Setting out of ${name}`} description={wordsOf(member, lanes)} view={view}>
                <text class="view-name" x={0} y={-11}>from above</text>
                {lanes.map(({ pieces, steel }, i) => pieces.map(piece => <Piece piece={piece} y={tops[i]!} height={thickness[i]!} steel={steel} along={along} />))}
                {bolts.map(bolt => <BoltSide x={along(bolt.x)} from={0} to={under} />)}
                {lanes.map((of, i) => <LaneText lane={of} y={tops[i]! + thickness[i]! / 2} along={along} />)}
                <text class="view-name" x={0} y={r(side - 5)}>from the right side</text>
                <rect class="residual" x={0} y={r(side)} width={r(along(length))} height={depthDrawn} />
                <path class="axis" d={`M-8 ${r(axis)}H${r(along(length) + 6)}`} />
                {butts.map(({ leaf, at, source }) => (
                    <path class={leaf === lanes.length ? 'butt' : 'butt hidden'} data-line={lineOf(source)} d={`M${r(along(at))} ${r(side)}V${r(bottom)}`} />
                ))}
                {heights.length > 1 && heights.map(height => <path class="guide" d={`M0 ${r(up(height))}H${r(along(length) + 4)}`} />)}
                {bolts.map(bolt => <BoltEnd x={along(bolt.x)} y={up(bolt.height)} radius={2.6} />)}
                {tooNear(member).map(bolt => <rect class="short" x={r(along(bolt.x) - 6)} y={r(up(bolt.height) - 6)} width={12} height={12} />)}
                {heights.length <= depthDrawn / fontSize && heights.map(height => <text x={r(along(length) + 3)} y={r(up(height) + 3.5)}>{heightWords(height)}</text>)}
                <Dimensions frame={frame} stations={stations} y={bottom + 10} />
            </Drawing>
            <figcaption>
                {member.leaves && <>Leaf 1 is the left one, seen from the start; in each the lengths of its pieces. Joints of hidden leaves are dashed. </>}
                Dimensions in {dimensionsIn()}, running from the start (○), heights of bolts from the axis. Drawn larger across than along.
                {tooNear(member).length > 0 && <> Bolts in a square are too near an end, an edge or one another.</>}
                {stations.length < allStations(member).length && <> The stations of all bolts are in the table.</>}
            </figcaption>
        </figure>
    );
}

interface PieceProps {
    readonly piece: { readonly from: number; readonly to: number };
    readonly y: number;
    readonly height: number;
    readonly steel: boolean;
    readonly along: (mm: number) => number;
}

/** A butt is drawn as a gap of its own. */
function Piece({ piece: { from, to }, y, height, steel, along }: PieceProps) {
    const gap = from > 0 ? 1.2 : 0;
    return <rect class={steel ? 'steel' : 'leaf'} x={r(along(from) + gap)} y={r(y)} width={r(Math.max(1, along(to - from) - gap))} height={r(height)} />;
}

/** The number of a leaf before it, the lengths of its pieces in it. */
function LaneText({ lane: { label, pieces, steel }, y, along }: { readonly lane: Lane; readonly y: number; readonly along: (mm: number) => number }) {
    const baseline = r(y + 4);
    return steel ? null : (
        <g>
            {pieces.map(({ from, to }) => textWidth(setOut(to - from)) < along(to - from)
                && <text x={r(along((from + to) / 2))} y={baseline} text-anchor="middle">{setOut(to - from)}</text>)}
            <text x={-8} y={baseline} text-anchor="end">{label}</text>
        </g>
    );
}

/** Bolts with a distance that is less than it has to be. */
function tooNear({ bolts = [], distances = [] }: MemberResult): readonly BoltResult[] {
    return bolts.filter(({ x, height }) => distances.some(distance => !distance.ok && distance.x === x && distance.height === height));
}

function allStations({ length, butts = [], bolts = [] }: MemberResult): readonly number[] {
    return inOrder([0, length, ...butts.map(({ at }) => at), ...bolts.map(({ x }) => x)], length);
}

/** Every bolt and butt where the values can stand side by side, else the butts and the first and last bolt. */
function stationsThatFit(member: MemberResult): readonly number[] {
    const all = allStations(member);
    const bolts = [...member.bolts ?? []].sort((a, b) => a.x - b.x);
    return all.length <= (viewWidth - 12) / rowHeight ? all
        : allStations({ ...member, bolts: [...bolts.slice(0, 1), ...bolts.slice(-1)] });
}

/** The same in words. */
function wordsOf(member: MemberResult, lanes: readonly Lane[]): string {
    const { butts = [], bolts = [], length } = member;
    const near = tooNear(member);
    return [
        `From the left ${lanes.map(({ breadth, steel }) => `${size(breadth)} ${steel ? 'steel' : 'timber'}`).join(', ')}, ${size(length)} long.`,
        ...buttsByStation(butts).map(({ at, leaves: broken }) => `Leaf ${broken.join(', ')} broken at ${size(at)}.`),
        bolts.length > 0 ? `Bolts at ${bolts.map(({ x, height }) => `${setOut(x)} (${heightWords(height)})`).join(', ')}${setOutUnit()}, heights from the axis in brackets.` : 'No bolts.',
        ...near.length > 0 ? [`Too near an end, an edge or one another: the bolts at ${near.map(({ x, height }) => `${setOut(x)} (${heightWords(height)})`).join(', ')}${setOutUnit()}.`] : []
    ].join(' ');
}
