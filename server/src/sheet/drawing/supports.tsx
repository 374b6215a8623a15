import type { SupportSketch } from '../../results.js';
import { degrees, r, type Frame } from './frame.js';
import { useLineOf } from '../parts.js';

/** How far a symbol reaches from the member's face. */
export const supportHeight = 18;

/**
 * Supports as plain symbols of the trade: masonry hatched, a member's end grain crossed, a spring coiled,
 * a pin on a triangle, a fixed end in a block; a tie through the member where it is held down.
 */
export function Supports({ frame, supports }: { readonly frame: Frame; readonly supports: readonly SupportSketch[] }) {
    return <g>{supports.map(support => <Support frame={frame} support={support} />)}</g>;
}

function Support({ frame, support }: { readonly frame: Frame; readonly support: SupportSketch }) {
    const lineOf = useLineOf();
    const x = frame.along(support.at);
    const foot = frame.steep && x < 1;
    const turn = foot || !frame.steep ? degrees(frame.slope) : 0;
    const width = Math.max(6, support.bearing ? frame.along(support.bearing) : foot ? 2 * frame.halfDepth : 8);
    return (
        <g data-line={lineOf(support.source)} transform={`translate(${r(x)} ${r(foot ? 0 : frame.halfDepth)}) rotate(${r(turn)})`}>
            {symbol(support.kind, width)}
            {support.tied && <path class="tie" d={`M0 ${r(foot ? -14 : -2 * frame.halfDepth - 3)}V${supportHeight}m-4 0h8M-4 ${r(foot ? -14 : -2 * frame.halfDepth - 3)}h8`} />}
        </g>
    );
}

function symbol(kind: string, width: number) {
    switch (kind) {
        case 'wall':
            return <><rect class="masonry" x={r(-width / 2)} y={0} width={r(width)} height={14} /><path class="outline" d={`M${r(-width / 2)} 14V0H${r(width / 2)}V14`} /></>;
        case 'member':
            return <path class="symbol" d="M-7 0H7V14H-7ZL7 14M-7 14L7 0" />;
        case 'spring':
            return <><path class="symbol" d="M0 0V2L-5 4L5 6L-5 8L5 10L0 12V14" /><Ground /></>;
        case 'fixed':
            return <><rect class="block" x={-7} y={0} width={14} height={14} /><Ground /></>;
        default:
            return <><path class="symbol" d="M0 0L-7 14H7Z" /><Ground /></>;
    }
}

function Ground() {
    return <path class="thin" d="M-10 14H10M-8 18L-4 14M-3 18L1 14M2 18L6 14M6 18L10 14" />;
}
