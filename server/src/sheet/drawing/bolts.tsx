import type { BoltResult, ButtSketch } from '../../results.js';
import { r } from './frame.js';

/** A bolt seen on its end: a crossed circle. */
export function BoltEnd({ x, y, radius }: { readonly x: number; readonly y: number; readonly radius: number }) {
    const arm = radius + 1.6;
    return (
        <g class="bolt">
            <circle cx={r(x)} cy={r(y)} r={r(radius)} />
            <path d={`M${r(x - arm)} ${r(y)}h${r(2 * arm)}M${r(x)} ${r(y - arm)}v${r(2 * arm)}`} />
        </g>
    );
}

/** A bolt seen from its side, from head to nut, with its washers; `y` falls. */
export function BoltSide({ x, from, to }: { readonly x: number; readonly from: number; readonly to: number }) {
    return (
        <g class="bolt">
            <path class="shank" d={`M${r(x)} ${r(from - 5)}V${r(to + 6)}`} />
            <path class="plate" d={`M${r(x - 3.5)} ${r(from - 1)}h7M${r(x - 3.5)} ${r(to + 1)}h7`} />
            <path class="nut" d={`M${r(x - 2)} ${r(from - 2)}h4v-2.5h-4ZM${r(x - 2)} ${r(to + 2)}h4v2.5h-4Z`} />
        </g>
    );
}

/** mm: `M12` is 12. */
export const diameterOf = (bolt: BoltResult): number => Number(/\d+(?:\.\d+)?/.exec(bolt.size)?.[0] ?? 0);

/** Butts at one station together: `leaf 1, 3`. */
export function buttsByStation(butts: readonly ButtSketch[]): readonly { readonly at: number; readonly leaves: readonly number[]; readonly source: ButtSketch['source'] }[] {
    const stations = [...new Set(butts.map(({ at }) => at))].sort((a, b) => a - b);
    return stations.map(at => {
        const here = butts.filter(butt => butt.at === at);
        return { at, leaves: here.map(({ leaf }) => leaf).sort((a, b) => a - b), source: here[0]!.source };
    });
}
