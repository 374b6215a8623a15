import type { CrossingSketch } from '../../results.js';
import { r, type Frame } from './frame.js';
import { useLineOf } from '../parts.js';

/** How high a member that rests on this one is drawn. */
export const crossingHeight = 12;

/** Members that rest on this one, by their end grain. */
export function Crossings({ frame, crossings }: { readonly frame: Frame; readonly crossings: readonly CrossingSketch[] }) {
    const lineOf = useLineOf();
    return (
        <g>
            {crossings.map(({ at, bearing, source }) => {
                const width = Math.max(8, frame.along(bearing ?? 0));
                return (
                    <g data-line={lineOf(source)} transform={`translate(${r(frame.along(at) - width / 2)} ${r(-frame.halfDepth - crossingHeight)})`}>
                        <path class="symbol" d={`M0 0H${r(width)}V${crossingHeight}H0ZL${r(width)} ${crossingHeight}M${r(width)} 0L0 ${crossingHeight}`} />
                    </g>
                );
            })}
        </g>
    );
}
