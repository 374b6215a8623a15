import { r } from './frame.js';

export type Point = readonly [x: number, y: number];

/** A line from `from` that ends in a filled head at `to`. */
export function Arrow({ from, to, head = 5 }: { readonly from: Point; readonly to: Point; readonly head?: number }) {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
    const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    const corner = (side: number): string =>
        `${r(to[0] - head * along[0] + side * head * 0.36 * along[1])},${r(to[1] - head * along[1] - side * head * 0.36 * along[0])}`;
    return (
        <g>
            <line class="arrow" x1={r(from[0])} y1={r(from[1])} x2={r(to[0])} y2={r(to[1])} />
            <polygon class="arrow-head" points={`${r(to[0])},${r(to[1])} ${corner(1)} ${corner(-1)}`} />
        </g>
    );
}
