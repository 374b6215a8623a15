import { Arrow, type Point } from './arrow.js';
import { r, type Frame } from './frame.js';
import { rowHeight } from './labels.js';
import type { Band, LoadLayout, PointArrow } from './load-layout.js';
import { useLineOf } from '../parts.js';

interface Props { readonly frame: Frame; readonly layout: LoadLayout }

/** Loads act straight down whatever the slope; their labels run along the member. */
export function Loads({ frame, layout }: Props) {
    return (
        <g>
            {layout.points.map(point => <PointLoad frame={frame} point={point} firstRow={layout.firstRow} />)}
            {layout.bands.map(band => frame.steep ? <LineBeside frame={frame} band={band} /> : <LineAbove frame={frame} band={band} />)}
        </g>
    );
}

function PointLoad({ frame, point, firstRow }: { readonly frame: Frame; readonly point: PointArrow; readonly firstRow: number }) {
    const lineOf = useLineOf();
    const onEnd = frame.steep && point.x > frame.length - 1;
    const tip: Point = onEnd ? [frame.length, 0] : [point.x, -frame.halfDepth - (frame.steep ? 6 : 0)];
    const tail: Point = [tip[0] - point.size * frame.down[0], tip[1] - point.size * frame.down[1]];
    const [from, to] = point.upwards ? [tip, tail] : [tail, tip];
    if (onEnd) {
        return <g data-line={lineOf(point.source)}><Arrow from={from} to={to} /><text x={r(tail[0] + 4)} y={4}>{point.label}</text></g>;
    }
    const row = -frame.halfDepth - firstRow - point.row * rowHeight;
    const right = point.side === 'right';
    return (
        <g data-line={lineOf(point.source)}>
            <Arrow from={from} to={to} />
            <line class="leader" x1={r(tail[0])} y1={r(tail[1])} x2={r(tail[0])} y2={r(row - 9)} />
            <text x={r(tail[0] + (right ? 3 : -3))} y={r(row - 1)} text-anchor={right ? 'start' : 'end'}>{point.label}</text>
        </g>
    );
}

/** A load along the length: arrows from its top edge to its foot. */
function LineAbove({ frame, band }: { readonly frame: Frame; readonly band: Band }) {
    const lineOf = useLineOf();
    const foot = -frame.halfDepth - band.foot;
    const rise: Point = [-band.size * frame.down[0], -band.size * frame.down[1]];
    const top = foot + rise[1];
    const outline = [[band.from, foot], [band.to, foot], [band.to + rise[0], top], [band.from + rise[0], top]];
    return (
        <g data-line={lineOf(band.source)}>
            <polygon class="band" points={outline.map(([x, y]) => `${r(x!)},${r(y!)}`).join(' ')} />
            {stations(band, 18).map(x => {
                const [at, above]: [Point, Point] = [[x, foot], [x + rise[0], top]];
                return band.upwards ? <Arrow from={at} to={above} head={4} /> : <Arrow from={above} to={at} head={4} />;
            })}
            <BandLabel frame={frame} band={band} y={top - 3} />
        </g>
    );
}

/** Beside a post, the same load runs along the line it acts on. */
function LineBeside({ frame, band }: { readonly frame: Frame; readonly band: Band }) {
    const lineOf = useLineOf();
    const y = -frame.halfDepth - band.foot;
    const [start, end] = band.upwards ? [band.from, band.to] : [band.to, band.from];
    return (
        <g data-line={lineOf(band.source)}>
            {stations({ from: start, to: end }, 24).slice(1).map((x, i, all) => <Arrow from={[all[i - 1] ?? start, y]} to={[x, y]} head={4} />)}
            <BandLabel frame={frame} band={band} y={y - 5} />
        </g>
    );
}

function BandLabel({ frame, band, y }: { readonly frame: Frame; readonly band: Band; readonly y: number }) {
    const x = Math.max(-20, Math.min(band.from, frame.length + 20 - band.labelWidth));
    return <text x={r(x)} y={r(y)}>{band.label}</text>;
}

function stations({ from, to }: { readonly from: number; readonly to: number }, apart: number): number[] {
    const count = Math.max(1, Math.round(Math.abs(to - from) / apart));
    return Array.from({ length: count + 1 }, (_, i) => from + (to - from) * i / count);
}
