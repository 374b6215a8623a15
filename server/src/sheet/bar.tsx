import { r } from './drawing/frame.js';

/** Where the limit stands in the bar, and how far the bar reaches, in per cent. */
const limit = 100;
const reach = 125;

/** Utilisation as a bar with a mark at the limit; what is beyond is hatched. It repeats a number beside it. */
export function Bar({ utilisation }: { readonly utilisation: number }) {
    const share = Number.isNaN(utilisation) ? 0 : Math.max(0, Math.min(100 * utilisation, reach));
    return (
        <svg class="bar" viewBox={`0 0 ${reach} 8`} preserveAspectRatio="none" aria-hidden="true" focusable="false">
            <rect class="bar-room" x={0} y={1} width={limit} height={6} />
            <rect class="bar-used" x={0} y={1} width={r(Math.min(share, limit))} height={6} />
            {share > limit && <rect class="bar-over" x={limit} y={1} width={r(share - limit)} height={6} />}
            <path class="bar-limit" d={`M${limit} 0V8`} />
        </svg>
    );
}
