/** A diagram along a member: envelopes with their peaks marked, drawn over the same length as the elevation. */
import { scaleLinear } from 'd3-scale';
import { area, curveLinear, curveMonotoneX, line } from 'd3-shape';
import type { DiagramPoint } from '../analysis/actions.js';
import type { MemberResult } from '../results.js';
import { station } from './numbers.js';
import { Drawing } from './drawing/drawing.js';
import { r, sideMargin, viewWidth } from './drawing/frame.js';
import { placeFlags, rowHeight, textWidth } from './drawing/labels.js';
import { peaksOf, type Curve, type Peak } from './drawing/peaks.js';

const plotHeight = 64;

export interface DiagramProps {
    readonly member: MemberResult;
    readonly id: string;
    readonly title: string;
    readonly caption: string;
    readonly curves: readonly Curve[];
    /** Positive values are drawn below the axis. */
    readonly positiveDown: boolean;
}

export function Diagram({ member, id, title, caption, curves, positiveDown }: DiagramProps) {
    const peaks = curves.flatMap(peaksOf);
    const values = curves.flatMap(curve => curve.points.flatMap(({ min, max }) => [min, max]));
    const size = Math.max(...values.map(Math.abs), 0);
    const finite = Number.isFinite(size) && values.every(Number.isFinite);
    const said = finite ? peaks.map(peak => `${peak.words} ${peak.value} at ${station(peak.x)}`).join('; ') || 'nought all along' : 'not computed';
    return (
        <figure class="diagram" data-line={member.source.line}>
            <figcaption><b>{title}</b> {caption}{!finite && ': not computed'}</figcaption>
            {finite && <Plot {...{ member, id, title, curves, positiveDown, peaks, size, said }} />}
        </figure>
    );
}

interface PlotProps extends Omit<DiagramProps, 'caption'> {
    readonly peaks: readonly Peak[];
    readonly size: number;
    readonly said: string;
}

function Plot({ member, id, title, curves, positiveDown, peaks, size, said }: PlotProps) {
    const x = scaleLinear([0, member.length], [0, viewWidth - 2 * sideMargin]);
    const share = (value: number): number => (size > 0 ? value / size : 0) * (positiveDown ? 1 : -1);
    const shares = curves.flatMap(curve => curve.points.flatMap(({ min, max }) => [share(min), share(max)]));
    const top = Math.min(0, ...shares);
    const bottom = Math.max(0, ...shares);
    const y = scaleLinear([top, bottom === top ? top + 1 : bottom], [0, bottom === top ? 1 : plotHeight]);
    const flagged = peaks.map(peak => {
        const label = [peak.label, peak.value, 'at', station(peak.x)].filter(Boolean).join(' ');
        return { x: x(peak.x), y: y(share(peak.number)), below: share(peak.number) > 0, label, width: textWidth(label), name: peak.label };
    });
    const above = rowsOf(flagged.filter(flag => !flag.below));
    const below = rowsOf(flagged.filter(flag => flag.below));
    const floor = y(bottom);
    const room = { above: above.rows * rowHeight + 8, below: below.rows * rowHeight + 8 };
    return (
        <Drawing
            id={id} title={`${title} of ${member.name}`} description={`${said}.`}
            view={{ x: -sideMargin, y: -room.above, width: viewWidth, height: floor + room.above + room.below }}
        >
            {curves.map(curve => <CurvePath curve={curve} x={x} y={value => y(share(value))} />)}
            <path class="zero" d={`M-6 ${r(y(0))}H${r(x(member.length) + 6)}`} />
            {member.supportSketches.map(support => <path class="mark" d={`M${r(x(support.at))} ${r(y(0))}l-3.5 6h7Z`} />)}
            {[...above.placed, ...below.placed].map(({ flag, row, side }) => {
                const labelY = flag.below ? floor + 15 + row * rowHeight : -7 - row * rowHeight;
                return (
                    <g>
                        <path class="leader" d={`M${r(flag.x)} ${r(flag.y)}V${r(flag.below ? labelY : labelY - 9)}`} />
                        <circle class="peak" cx={r(flag.x)} cy={r(flag.y)} r={2.2} />
                        <text x={r(flag.x + (side === 'right' ? 3 : -3))} y={r(labelY)} text-anchor={side === 'right' ? 'start' : 'end'}>{flag.label}</text>
                    </g>
                );
            })}
        </Drawing>
    );
}

function rowsOf<T extends { readonly x: number; readonly width: number }>(flags: readonly T[]) {
    const placed = placeFlags(flags, { from: -sideMargin + 2, to: viewWidth - sideMargin - 2 });
    return { placed: flags.map((flag, i) => ({ flag, ...placed[i]! })), rows: Math.max(0, ...placed.map(({ row }) => row + 1)) };
}

interface CurveProps {
    readonly curve: Curve;
    readonly x: (mm: number) => number;
    readonly y: (value: number) => number;
}

function CurvePath({ curve, x, y }: CurveProps) {
    const along = ({ x: at }: DiagramPoint): number => x(at);
    const shape = curve.smooth ? curveMonotoneX : curveLinear;
    const bound = (side: 'min' | 'max') => line<DiagramPoint>().curve(shape).x(along).y(point => y(point[side])).digits(1)([...curve.points]) ?? '';
    const between = area<DiagramPoint>().curve(shape).x(along).y0(({ min }) => y(min)).y1(({ max }) => y(max)).digits(1)([...curve.points]) ?? '';
    return (
        <g class={`curve ${curve.style}`}>
            <path class="envelope" d={between} />
            <path class="bound" d={bound('max')} />
            <path class="bound" d={bound('min')} />
        </g>
    );
}
