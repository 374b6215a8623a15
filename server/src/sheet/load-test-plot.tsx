/** Sinking over weight: the predicted band, its mean, and what was read. Down is down. */
import { scaleLinear } from 'd3-scale';
import type { LoadTestPoint, LoadTestResult } from '../results.js';
import { Drawing } from './drawing/drawing.js';
import { r, viewWidth } from './drawing/frame.js';
import { anchor } from './ids.js';
import { amount, deflection, significant } from './numbers.js';

const plot = { left: 40, right: 60, above: 22, height: 150, below: 12 };

type Side = 'low' | 'predicted' | 'high';

export function LoadTestPlot({ test }: { readonly test: LoadTestResult }) {
    const { name, points, residual } = test;
    const reads = points.flatMap(({ weight, read }) => read ? [{ weight, read }] : []);
    const most = Math.max(0, ...points.map(({ high }) => high.value), ...reads.map(({ read }) => read.value));
    if (points.length === 0 || !(most > 0) || !Number.isFinite(most)) {
        return null;
    }
    const x = scaleLinear([0, Math.max(...points.map(({ weight }) => weight.value))], [0, viewWidth - plot.left - plot.right]);
    const y = scaleLinear([0, most], [0, plot.height]);
    return (
        <figure class="diagram">
            <figcaption><b class="name">Sinking under the weight</b> predicted (line), nine pieces in ten (band), read (dots)</figcaption>
            <Drawing
                id={anchor('load-test', name)} title={`Proof load ${name}: predicted and read`} description={described(points, residual)}
                view={{ x: -plot.left, y: -plot.above, width: viewWidth, height: plot.above + plot.height + plot.below }}
            >
                {placesOf(points).map(place => <Prediction points={place} x={x} y={y} />)}
                <path class="zero" d={`M0 ${plot.height}V0H${r(x.range()[1]! + 8)}`} />
                {y.ticks(5).filter(tick => tick > 0).map(tick => <g><path d={`M-4 ${r(y(tick))}H0`} /><text x={-7} y={r(y(tick) + 4)} text-anchor="end">{significant(tick)}</text></g>)}
                <text x={-7} y={4} text-anchor="end">mm</text>
                {[...new Set(points.map(({ weight }) => weight.value))].map(weight => <g><path d={`M${r(x(weight))} -4V0`} /><text x={r(x(weight))} y={-8} text-anchor="middle">{amount({ value: weight, unit: 'kg' })}</text></g>)}
                {reads.map(({ weight, read }) => <Reading x={x(weight.value)} y={y(read.value)} label={deflection(read.value)} />)}
                {residual && <Reading x={0} y={y(residual.value)} label={`${deflection(residual.value)} after unloading`} />}
            </Drawing>
        </figure>
    );
}

/** Weights that stand at one place, the lightest first: all is linear in them. */
function placesOf(points: readonly LoadTestPoint[]): readonly (readonly LoadTestPoint[])[] {
    const keys = [...new Set(points.map(keyOf))];
    return keys.map(key => points.filter(point => keyOf(point) === key).sort((a, b) => a.weight.value - b.weight.value));
}

const keyOf = ({ at, spread }: LoadTestPoint): string => `${at.value} ${spread?.value}`;

interface PredictionProps {
    readonly points: readonly LoadTestPoint[];
    readonly x: (kilograms: number) => number;
    readonly y: (mm: number) => number;
}

function Prediction({ points, x, y }: PredictionProps) {
    const along = (side: Side): readonly string[] => points.map(point => `${r(x(point.weight.value))} ${r(y(point[side].value))}`);
    return (
        <>
            <path class="envelope" d={`M0 0L${[...along('low'), ...[...along('high')].reverse()].join('L')}Z`} />
            {(['low', 'high'] as const).map(side => <path class="hidden" d={`M0 0L${along(side).join('L')}`} />)}
            <path class="bound" d={`M0 0L${along('predicted').join('L')}`} />
        </>
    );
}

/** Its label clear of the axis. */
function Reading({ x, y, label }: { readonly x: number; readonly y: number; readonly label: string }) {
    return <g><circle class="peak" cx={r(x)} cy={r(y)} r={3.5} /><text x={r(x + 7)} y={r(Math.max(y + 4, 13))}>{label}</text></g>;
}

function described(points: readonly LoadTestPoint[], residual: LoadTestResult['residual']): string {
    const each = points.map(({ weight, predicted, low, high, read }) =>
        `${amount(weight)}: predicted ${deflection(predicted.value)}, between ${deflection(low.value)} and ${deflection(high.value)}, ${read ? `read ${deflection(read.value)}` : 'not read'}`);
    return `${[...each, ...residual ? [`after unloading: ${deflection(residual.value)}`] : []].join('; ')}.`;
}
