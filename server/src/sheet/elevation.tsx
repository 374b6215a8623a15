/** The member to scale, seen from its right side, with what it stands on, what it carries and what is lost of it. */
import type { MemberResult } from '../results.js';
import { amount, dimensionsIn, force, setOut, setOutUnit, size } from './numbers.js';
import { BoltEnd, buttsByStation, diameterOf } from './drawing/bolts.js';
import { facesOf, type Caption } from './drawing/captions.js';
import { Crossings } from './drawing/crossings.js';
import { Dimensions, stationsOf } from './drawing/dimensions.js';
import { Drawing } from './drawing/drawing.js';
import { r, type Frame } from './drawing/frame.js';
import { Hangers, hangerWords } from './drawing/hangers.js';
import { rowHeight } from './drawing/labels.js';
import { Loads } from './drawing/loads.js';
import { outlinePath } from './drawing/outline.js';
import { fittingPlan } from './drawing/plan.js';
import { Props, propWords, type Prop } from './drawing/props.js';
import { Supports } from './drawing/supports.js';
import { useLineOf } from './parts.js';
import { prose } from './prose.js';

interface ElevationProps {
    /** As it stays: in its last stage. */
    readonly member: MemberResult;
    readonly props: readonly Prop[];
    readonly id: string;
}

export function Elevation({ member, props, id }: ElevationProps) {
    const { frame, loads, captions, firstCaption, dimensionLine, stations, view } = fittingPlan(member, props);
    const all = stationsOf(member, props);
    return (
        <figure class="elevation">
            <Drawing id={id} title={`Elevation of ${member.name}, to scale`} description={describe(member, props)} view={view} turn={frame.slope}>
                <Losses frame={frame} member={member} />
                <path class="axis" d={`M-12 0H${r(frame.length + 12)}`} />
                <Within frame={frame} member={member} />
                <path class="outline" d={outlinePath(frame, member)} />
                <Dimensions frame={frame} stations={stations} y={dimensionLine} />
                <Supports frame={frame} supports={member.supportSketches} />
                <Props frame={frame} props={props} />
                <Crossings frame={frame} crossings={member.crossingSketches} />
                <Hangers frame={frame} hangers={member.hangerSketches} />
                <Loads frame={frame} layout={loads} />
                {captions.map(caption => <CaptionText caption={caption} y={firstCaption + caption.row * rowHeight} />)}
            </Drawing>
            <figcaption>
                Elevation to scale, seen from the right side. Dimensions in {dimensionsIn()}, running from the start (○). Loads at their characteristic value.
                {stations.length < all.length && <> All stations: {all.map(setOut).join(', ')}.</>}
            </figcaption>
        </figure>
    );
}

function CaptionText({ caption, y }: { readonly caption: Caption; readonly y: number }) {
    const lineOf = useLineOf();
    return <text x={r(caption.x)} y={r(y)} text-anchor="middle" data-line={lineOf(caption.source)}>{caption.text}</text>;
}

/** What lies within the outline: flanges or plates, joints of leaves (dashed where another leaf is in front), bolts. */
function Within({ frame, member }: { readonly frame: Frame; readonly member: MemberResult }) {
    const lineOf = useLineOf();
    const { rolled, plates, leaves, butts = [], bolts = [] } = member;
    const inner = rolled && rolled.tf > 0 ? rolled.h / 2 - rolled.tf : plates && plates.depth < member.depth ? plates.depth / 2 : undefined;
    const half = frame.halfDepth;
    return (
        <g>
            {inner !== undefined && [-1, 1].map(side => <path class={plates ? 'hidden' : 'thin'} d={`M0 ${r(side * frame.along(inner))}H${r(frame.length)}`} />)}
            {butts.map(({ leaf, at, source }) => (
                <path class={leaf === leaves?.length ? 'butt' : 'butt hidden'} data-line={lineOf(source)} d={`M${r(frame.along(at))} ${r(-half)}V${r(half)}`} />
            ))}
            {bolts.map(bolt => <BoltEnd x={frame.along(bolt.x)} y={-frame.along(bolt.height)} radius={Math.max(1.2, frame.along(diameterOf(bolt)) / 2)} />)}
        </g>
    );
}

/** What is lost at the top or bottom is hatched where it is; at the sides, loosely over the whole depth. */
function Losses({ frame, member }: { readonly frame: Frame; readonly member: MemberResult }) {
    const lineOf = useLineOf();
    return (
        <g>
            {member.losses.map(({ from, to, faces, source }) => {
                const x = r(frame.along(from.value));
                const width = r(frame.along(to.value - from.value));
                const deep = 2 * frame.halfDepth;
                const thick = (face: 'top' | 'bottom'): number => Math.min(deep, frame.along(faces[face]?.value ?? 0));
                return (
                    <g data-line={lineOf(source)}>
                        {(faces.left || faces.right) && <rect class="loss loss-side" x={x} y={r(-frame.halfDepth)} width={width} height={r(deep)} />}
                        {faces.top && <rect class="loss" x={x} y={r(-frame.halfDepth)} width={width} height={r(thick('top'))} />}
                        {faces.bottom && <rect class="loss" x={x} y={r(frame.halfDepth - thick('bottom'))} width={width} height={r(thick('bottom'))} />}
                    </g>
                );
            })}
        </g>
    );
}

/** The same numbers in words. */
function describe(member: MemberResult, props: readonly Prop[]): string {
    const { name, kind, length, description, slope, supportSketches, losses, notches, loadSketches, hangerSketches, crossingSketches, butts = [], bolts = [] } = member;
    return [
        `${kind === 'post' ? 'Post' : 'Beam'} ${name}, ${size(length)} long, ${prose(description)}${slope !== 0 && kind === 'beam' ? `, at ${Math.round(slope * 180 / Math.PI)} degrees` : ''}.`,
        ...supportSketches.map(support => `Support ${support.name} (${support.kind}${support.tied ? ', tied' : ''}) at ${size(support.at)}${support.bearing === undefined ? '' : `, bearing ${size(support.bearing)}`}.`),
        ...losses.map(loss => `Loss from ${setOut(loss.from.value)} to ${size(loss.to.value)}: ${facesOf(loss)}${setOutUnit()}.`),
        ...notches.map(notch => `Notch in the ${notch.face} from ${setOut(notch.from.value)} to ${size(notch.to.value)}, ${size(notch.depth.value)} deep.`),
        ...buttsByStation(butts).map(({ at, leaves }) => `Leaf ${leaves.join(', ')} broken at ${size(at)}.`),
        bolts.length > 0 ? `${bolts.length} bolts ${[...new Set(bolts.map(({ size }) => size))].join(', ')} through all leaves.` : '',
        ...hangerSketches.map(hanger => `Hanger ${hangerWords(hanger)} at ${size(hanger.at)}.`),
        ...props.map(prop => `A ${propWords(prop)} at ${size(prop.at)}.`),
        ...crossingSketches.map(crossing => `${crossing.name} rests on it at ${size(crossing.at)}.`),
        ...loadSketches.map(({ name: load, action, point, line }) => point
            ? `Load ${load} (${action}) ${force(point.force / 1000)} at ${size(point.at)}.`
            : line ? `Load ${load} (${action}) ${amount({ value: line.perLength, unit: 'kN/m' })} from ${setOut(line.from)} to ${size(line.to)}.` : '')
    ].filter(Boolean).join(' ');
}
