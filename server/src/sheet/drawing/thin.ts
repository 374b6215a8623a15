import type { DiagramPoint } from '../../analysis/actions.js';

/**
 * Fewer points that look the same: those are left out that lie within `tolerance` of the straight line between the ones
 * that stay, on both bounds. The first, the last, and both sides of a jump stay. One pass: from each point that stays,
 * the slopes are kept at which a line passes all that follow.
 */
export function thinned(points: readonly DiagramPoint[], tolerance: number): readonly DiagramPoint[] {
    const first = points[0];
    if (!first) {
        return points;
    }
    const kept = [first];
    let from = first;
    let cone = open;
    for (let i = 1; i < points.length; i += 1) {
        const [point, before] = [points[i]!, points[i - 1]!];
        if (before !== from && (point.x === before.x || !within(cone, from, point))) {
            kept.push(before);
            from = before;
            cone = open;
        }
        cone = point.x === from.x ? open : narrowed(cone, from, point, tolerance);
        if (point.x === from.x) {
            kept.push(point);
            from = point;
        }
    }
    return from === points.at(-1) ? kept : [...kept, points.at(-1)!];
}

interface Slopes { readonly least: number; readonly most: number }
interface Cone { readonly min: Slopes; readonly max: Slopes }

const all: Slopes = { least: -Infinity, most: Infinity };
const open: Cone = { min: all, max: all };

function within({ min, max }: Cone, from: DiagramPoint, to: DiagramPoint): boolean {
    const run = to.x - from.x;
    const holds = ({ least, most }: Slopes, rise: number): boolean => rise / run >= least && rise / run <= most;
    return holds(min, to.min - from.min) && holds(max, to.max - from.max);
}

function narrowed({ min, max }: Cone, from: DiagramPoint, to: DiagramPoint, tolerance: number): Cone {
    const run = to.x - from.x;
    const both = ({ least, most }: Slopes, rise: number): Slopes => ({ least: Math.max(least, (rise - tolerance) / run), most: Math.min(most, (rise + tolerance) / run) });
    return { min: both(min, to.min - from.min), max: both(max, to.max - from.max) };
}
