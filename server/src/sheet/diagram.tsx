/** A diagram along a member: envelopes with their peaks marked, drawn over the same length as the elevation. */
import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { DiagramPoint } from '../analysis/actions.js';
import type { MemberResult } from '../results.js';
import { station } from './numbers.js';
import { Drawing } from './drawing/drawing.js';
import type { Extent } from './drawing/extent.js';
import { r, sideMargin, viewWidth } from './drawing/frame.js';
import { placeFlags, rowHeight, textWidth } from './drawing/labels.js';
import { peaksOf, type Curve, type Peak } from './drawing/peaks.js';
import { thinned } from './drawing/thin.js';
import { useLineOf } from './parts.js';

/** Of one by itself, and of one among several side by side. */
const sizes = {
    alone: { width: viewWidth, plotHeight: 64 },
    small: { width: 310, plotHeight: 46 }
};

export interface DiagramProps {
    readonly member: MemberResult;
    readonly id: string;
    readonly title: string;
    readonly caption: string;
    readonly curves: readonly Curve[];
    /** What the plot reaches over, where several share a scale more than these curves; undefined where it is no number. */
    readonly extent: Extent | undefined;
    /** Positive values are drawn below the axis. */
    readonly positiveDown: boolean;
    readonly small?: boolean;
    /** What is drawn, where the title does not say it. */
    readonly subject?: string;
}

export function Diagram(props: DiagramProps) {
    const lineOf = useLineOf();
    const { member, title, caption, curves, extent } = props;
    const peaks = curves.flatMap(peaksOf);
    const said = extent ? peaks.map(peak => `${peak.words} ${peak.value} at ${station(peak.x)}`).join('; ') || 'nought all along' : 'not computed';
    return (
        <figure class={props.small ? 'diagram small-multiple' : 'diagram'} data-line={lineOf(member.source)}>
            <figcaption><b class="name">{title}</b>{caption && ` ${caption}`}{!extent && ': not computed'}{extent && props.small && peaks.length === 0 && <span class="small"> nought all along</span>}</figcaption>
            {extent && <Plot {...props} extent={extent} peaks={peaks} said={said} />}
        </figure>
    );
}

interface PlotProps extends Omit<DiagramProps, 'extent' | 'caption'> {
    readonly extent: Extent;
    readonly peaks: readonly Peak[];
    readonly said: string;
}

function Plot({ member, id, title, subject, curves, positiveDown, peaks, extent, said, small }: PlotProps) {
    const { width, plotHeight } = small ? sizes.small : sizes.alone;
    const x = scaleLinear([0, member.length], [0, width - 2 * sideMargin]);
    const size = Math.max(-extent.least, extent.greatest);
    const share = (value: number): number => (size > 0 ? value / size : 0) * (positiveDown ? 1 : -1);
    const [top, bottom] = [share(extent.least), share(extent.greatest)].sort((a, b) => a - b) as [number, number];
    const y = scaleLinear([top, bottom === top ? top + 1 : bottom], [0, bottom === top ? 1 : plotHeight]);
    const flagged = peaks.map(peak => {
        const label = [peak.label, peak.value, 'at', station(peak.x)].filter(Boolean).join(' ');
        return { x: x(peak.x), y: y(share(peak.number)), below: share(peak.number) > 0, label, width: textWidth(label), name: peak.label };
    });
    const above = rowsOf(flagged.filter(flag => !flag.below), width);
    const below = rowsOf(flagged.filter(flag => flag.below), width);
    /** Its own, so that labels stand near a slight curve; the top is common, so that axes side by side are level. */
    const floor = y(Math.max(0, ...curves.flatMap(curve => curve.points.flatMap(({ min, max }) => [share(min), share(max)]))));
    const room = { above: above.rows * rowHeight + 8, below: below.rows * rowHeight + 8 };
    return (
        <Drawing
            id={id} title={subject ? `${subject} of ${member.name}, ${title}` : `${title} of ${member.name}`} description={`${said}.`}
            view={{ x: -sideMargin, y: -room.above, width, height: floor + room.above + room.below }}
        >
            {curves.map(curve => <CurvePath curve={curve} x={x} y={value => y(share(value))} />)}
            <path class="zero" d={`M-6 ${r(y(0))}H${r(x(member.length) + 6)}`} />
            {[...member.supportSketches, ...member.propSketches].map(support => <path class="mark" d={`M${r(x(support.at))} ${r(y(0))}l-3.5 6h7Z`} />)}
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

function rowsOf<T extends { readonly x: number; readonly width: number }>(flags: readonly T[], width: number) {
    const placed = placeFlags(flags, { from: -sideMargin + 2, to: width - sideMargin - 2 });
    return { placed: flags.map((flag, i) => ({ flag, ...placed[i]! })), rows: Math.max(0, ...placed.map(({ row }) => row + 1)) };
}

interface CurveProps {
    readonly curve: Curve;
    readonly x: (mm: number) => number;
    readonly y: (value: number) => number;
}

/** Units of the view that nobody sees. */
const tolerance = 0.15;

/** The stations are so close that a straight line between them is the curve. */
function CurvePath({ curve, x, y }: CurveProps) {
    const points = thinned(curve.points.map(point => ({ x: x(point.x), min: y(point.min), max: y(point.max) })), tolerance);
    const bound = (side: 'min' | 'max') => line<DiagramPoint>(point => point.x, point => point[side]).digits(1)(points) ?? '';
    const between = area<DiagramPoint>(point => point.x, ({ min }) => min, ({ max }) => max).digits(1)(points) ?? '';
    return (
        <g class={`curve ${curve.style}`}>
            {curve.style === 'solid' && <path class="envelope" d={between} />}
            <path class="bound" d={bound('max')} />
            <path class="bound" d={bound('min')} />
        </g>
    );
}
