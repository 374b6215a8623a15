/** Running dimensions from the member's start, as they are set out with one tape: every station once, in mm. */
import type { MemberResult } from '../../results.js';
import { setOut } from '../numbers.js';
import { r, type Frame } from './frame.js';
import { rowHeight, spread, textWidth } from './labels.js';
import type { Prop } from './props.js';

/** Room that the values take below the dimension line. */
export function dimensionHeight(stations: readonly number[]): number {
    return 18 + Math.max(...stations.map(station => textWidth(setOut(station))));
}

/** Both ends and everything that happens between, ascending, mm. */
export function stationsOf(member: MemberResult, props: readonly Prop[]): readonly number[] {
    const { length, supportSketches, losses, notches, loadSketches, hangerSketches, crossingSketches, butts = [] } = member;
    const all = [
        0, length,
        ...[...supportSketches, ...hangerSketches, ...props, ...crossingSketches, ...butts].map(({ at }) => at),
        ...[...losses, ...notches].flatMap(({ from, to }) => [from.value, to.value]),
        ...loadSketches.flatMap(({ point, line }) => point ? [point.at] : line ? [line.from, line.to] : [])
    ];
    return inOrder(all, length);
}

/** Each whole millimetre within the length once, ascending. */
export function inOrder(stations: readonly number[], length: number): readonly number[] {
    const within = stations.filter(at => at >= 0 && at <= length).map(at => Math.round(at));
    return [...new Set(within)].sort((a, b) => a - b);
}

interface Props {
    readonly frame: Frame;
    readonly stations: readonly number[];
    /** Distance of the dimension line from the member's axis. */
    readonly y: number;
}

export function Dimensions({ frame, stations, y }: Props) {
    const at = stations.map(frame.along);
    const labels = spread(at, rowHeight, -20, frame.length + 20);
    const turn = frame.slope > 0 ? 90 : -90;
    return (
        <g class="dimensions">
            <path class="thin" d={`M0 ${r(y)}H${r(frame.length)}`} />
            <circle class="origin" cx={0} cy={r(y)} r={3} />
            {stations.map((station, i) => {
                const x = at[i]!;
                const label = labels[i]!;
                return (
                    <g>
                        <path class="thin" d={`M${r(x)} ${r(frame.halfDepth + 2)}V${r(y + 3)}L${r(label)} ${r(y + 10)}V${r(y + 12)}`} />
                        {station > 0 && <path class="tick" d={`M${r(x - 2.5)} ${r(y + 2.5)}l5 -5`} />}
                        <text transform={`translate(${r(label + (turn > 0 ? -4 : 4))} ${r(y + 14)}) rotate(${turn})`} text-anchor={turn > 0 ? 'start' : 'end'}>{setOut(station)}</text>
                    </g>
                );
            })}
        </g>
    );
}
