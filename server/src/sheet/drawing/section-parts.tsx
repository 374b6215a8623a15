/** Sections of more than one piece of timber, and of steel, seen from the member's start; in units of the view from the upper left corner. */
import type { FlitchPlates, MemberResult, RolledOutline } from '../../results.js';
import { r } from './frame.js';

/** Leaves side by side, those that are broken here crossed out. */
export function LeavesParts({ member: { depth, leaves = [], butts = [] }, at, scale }: { readonly member: MemberResult; readonly at: number; readonly scale: number }) {
    const height = depth * scale;
    let x = 0;
    return (
        <g>
            {leaves.map(leaf => {
                const [left, width] = [x, leaf.breadth * scale];
                x += width;
                const broken = butts.some(butt => butt.leaf === leaf.leaf && Math.abs(butt.at - at) < 1);
                return (
                    <g>
                        <rect class="residual" x={r(left)} y={0} width={r(width)} height={r(height)} />
                        {broken && <path class="hidden" d={`M${r(left)} 0L${r(left + width)} ${r(height)}M${r(left + width)} 0L${r(left)} ${r(height)}`} />}
                        <text x={r(left + width / 2)} y={-6} text-anchor="middle">{leaf.leaf}</text>
                    </g>
                );
            })}
        </g>
    );
}

/** With washer and nut at either end. */
export function BoltThrough({ y, width, thick }: { readonly y: number; readonly width: number; readonly thick: number }) {
    const half = thick / 2;
    return (
        <g class="bolt">
            <path class="steel" d={`M-9 ${r(y - half)}H${r(width + 9)}V${r(y + half)}H-9Z`} />
            <path class="steel" d={`M-2 ${r(y - 1.5 * thick)}h2v${r(3 * thick)}h-2ZM${r(width)} ${r(y - 1.5 * thick)}h2v${r(3 * thick)}h-2Z`} />
            <path class="steel" d={`M-6 ${r(y - 0.9 * thick)}h4v${r(1.8 * thick)}h-4ZM${r(width + 2)} ${r(y - 0.9 * thick)}h4v${r(1.8 * thick)}h-4Z`} />
        </g>
    );
}

/** Timber leaves with plates between them. */
export function FlitchParts({ plates, depth, scale }: { readonly plates: FlitchPlates; readonly depth: number; readonly scale: number }) {
    const height = depth * scale;
    const plateHeight = plates.depth * scale;
    return (
        <g>
            {partsOf(plates).map(({ x, width, steel }) => steel
                ? <rect class="steel" x={r(x * scale)} y={r((height - plateHeight) / 2)} width={r(width * scale)} height={r(plateHeight)} />
                : <rect class="residual" x={r(x * scale)} y={0} width={r(width * scale)} height={r(height)} />)}
        </g>
    );
}

/** From the left, mm: leaves and plates alternate as long as there are both; plates that are left over go to the outer faces. */
export function partsOf({ leaves, leafBreadth, count, thickness }: FlitchPlates): readonly { readonly x: number; readonly width: number; readonly steel: boolean }[] {
    const between = Math.min(count, leaves - 1);
    const outside = count - between;
    const gaps = leaves - 1;
    // Plates spread evenly over the gaps.
    const inGap = (gap: number): boolean => Math.floor((gap + 1) * between / gaps) > Math.floor(gap * between / gaps);
    const order = [
        ...Array.from({ length: Math.ceil(outside / 2) }, () => true),
        ...Array.from({ length: leaves }, (_, leaf) => leaf < gaps && inGap(leaf) ? [false, true] : [false]).flat(),
        ...Array.from({ length: Math.floor(outside / 2) }, () => true)
    ];
    let x = 0;
    return order.map(steel => {
        const width = steel ? thickness : leafBreadth;
        const part = { x, width, steel };
        x += width;
        return part;
    });
}

export function RolledParts({ rolled, scale }: { readonly rolled: RolledOutline; readonly scale: number }) {
    return <path class="steel outline" d={rolledPath(rolled, scale)} />;
}

/** The outline with its root radii; a channel's flanges are drawn with parallel faces at their mean thickness. */
export function rolledPath({ form, h, b, tw, tf, r: radius }: RolledOutline, scale: number): string {
    const [H, B, W, F, R] = [h, b, tw, tf, radius].map(value => value * scale) as [number, number, number, number, number];
    const n = (...values: readonly number[]): string => values.map(r).join(' ');
    if (form === 'plate') {
        return `M0 0H${n(B)}V${n(H)}H0Z`;
    }
    const right = form === 'channel' ? W : (B + W) / 2;
    const open = `M0 0H${n(B)}V${n(F)}H${n(right + R)}A${n(R, R)} 0 0 0 ${n(right, F + R)}V${n(H - F - R)}A${n(R, R)} 0 0 0 ${n(right + R, H - F)}H${n(B)}V${n(H)}H0`;
    if (form === 'channel') {
        return `${open}Z`;
    }
    const left = (B - W) / 2;
    return `${open}V${n(H - F)}H${n(left - R)}A${n(R, R)} 0 0 0 ${n(left, H - F - R)}V${n(F + R)}A${n(R, R)} 0 0 0 ${n(left - R, F)}H0Z`;
}
