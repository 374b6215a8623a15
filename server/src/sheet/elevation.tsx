/** The member to scale, seen from its right side, with what it stands on, what it carries and what is lost of it. */
import type { MemberResult } from '../results.js';
import { amount, force, setOut } from './numbers.js';
import { facesOf, type Caption } from './drawing/captions.js';
import { Dimensions, stationsOf } from './drawing/dimensions.js';
import { Drawing } from './drawing/drawing.js';
import { r, type Frame } from './drawing/frame.js';
import { rowHeight } from './drawing/labels.js';
import { Loads } from './drawing/loads.js';
import { outlinePath } from './drawing/outline.js';
import { fittingPlan } from './drawing/plan.js';
import { Supports } from './drawing/supports.js';

export function Elevation({ member, id }: { readonly member: MemberResult; readonly id: string }) {
    const { frame, loads, captions, firstCaption, dimensionLine, stations, view } = fittingPlan(member);
    const all = stationsOf(member);
    return (
        <figure class="elevation">
            <Drawing id={id} title={`Elevation of ${member.name}, to scale`} description={describe(member)} view={view} turn={frame.slope}>
                <Losses frame={frame} member={member} />
                <path class="axis" d={`M-12 0H${r(frame.length + 12)}`} />
                <path class="outline" d={outlinePath(frame, member)} />
                <Supports frame={frame} supports={member.supportSketches} />
                <Loads frame={frame} layout={loads} />
                {captions.map(caption => <CaptionText caption={caption} y={firstCaption + caption.row * rowHeight} />)}
                <Dimensions frame={frame} stations={stations} y={dimensionLine} />
            </Drawing>
            <figcaption>
                Elevation to scale, seen from the right side. Dimensions in mm, running from the start (●). Loads at their characteristic value.
                {stations.length < all.length && <> All stations: {all.map(setOut).join(', ')}.</>}
            </figcaption>
        </figure>
    );
}

function CaptionText({ caption, y }: { readonly caption: Caption; readonly y: number }) {
    return <text x={r(caption.x)} y={r(y)} text-anchor="middle" data-line={caption.line}>{caption.text}</text>;
}

/** What is lost at the top or bottom is hatched where it is; at the sides, loosely over the whole depth. */
function Losses({ frame, member }: { readonly frame: Frame; readonly member: MemberResult }) {
    return (
        <g>
            {member.losses.map(({ from, to, faces, source }) => {
                const x = r(frame.along(from.value));
                const width = r(frame.along(to.value - from.value));
                const deep = 2 * frame.halfDepth;
                const thick = (face: 'top' | 'bottom'): number => Math.min(deep, frame.along(faces[face]?.value ?? 0));
                return (
                    <g data-line={source.line}>
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
function describe(member: MemberResult): string {
    const { name, kind, length, description, slope, supportSketches, losses, notches, loadSketches } = member;
    return [
        `${kind === 'post' ? 'Post' : 'Beam'} ${name}, ${setOut(length)} mm long, ${description}${slope !== 0 && kind === 'beam' ? `, at ${Math.round(slope * 180 / Math.PI)} degrees` : ''}.`,
        ...supportSketches.map(support => `Support ${support.name} (${support.kind}${support.tied ? ', tied' : ''}) at ${setOut(support.at)} mm${support.bearing === undefined ? '' : `, bearing ${setOut(support.bearing)} mm`}.`),
        ...losses.map(loss => `Loss from ${setOut(loss.from.value)} to ${setOut(loss.to.value)} mm: ${facesOf(loss)} mm.`),
        ...notches.map(notch => `Notch in the ${notch.face} from ${setOut(notch.from.value)} to ${setOut(notch.to.value)} mm, ${setOut(notch.depth.value)} mm deep.`),
        ...loadSketches.map(({ name: load, action, point, line }) => point
            ? `Load ${load} (${action}) ${force(point.force / 1000)} at ${setOut(point.at)} mm.`
            : line ? `Load ${load} (${action}) ${amount({ value: line.perLength, unit: 'kN/m' })} from ${setOut(line.from)} to ${setOut(line.to)} mm.` : '')
    ].filter(Boolean).join(' ');
}
