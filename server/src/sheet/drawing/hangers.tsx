/** Hangers where they meet the member: rods with a plate and nuts under what is carried, over what carries. */
import type { HangerSketch } from '../../results.js';
import { r, type Frame } from './frame.js';
import { labelName } from './labels.js';
import { useLineOf } from '../parts.js';

/** How far a rod goes beyond the member, before it is broken off. */
export const rodHeight = 13;

export function hangerWords({ name, other, above }: HangerSketch): string {
    return `${labelName(name)} ${above ? 'from' : 'carries'} ${labelName(other)}`;
}

export function Hangers({ frame, hangers }: { readonly frame: Frame; readonly hangers: readonly HangerSketch[] }) {
    const lineOf = useLineOf();
    return (
        <g>
            {hangers.map(({ at, above, source }) => {
                // Towards the other member; the plate is on the face beyond.
                const away = above ? -1 : 1;
                const plate = -away * frame.halfDepth;
                const end = away * (frame.halfDepth + rodHeight);
                return (
                    <g class="hanger" data-line={lineOf(source)} transform={`translate(${r(frame.along(at))} 0)`}>
                        <path class="rod" d={`M0 ${r(plate - away * 5.5)}V${r(end)}`} />
                        <path class="plate" d={`M-6 ${r(plate - away)}H6`} />
                        <path class="nut" d={`M-2.5 ${r(plate - away * 2)}h5v${-away * 2.5}h-5Z`} />
                        <path class="thin" d={`M-4 ${r(end)}l3 -1.5l2 3l3 -1.5`} />
                    </g>
                );
            })}
        </g>
    );
}
