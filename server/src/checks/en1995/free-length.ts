/** Lengths that are free to buckle around a station. Lengths mm. */
import type { MemberActions, Segment, Span, Station } from '../../analysis/actions.js';
import type { MemberContext } from '../check.js';

/** An axial force no larger than this is rounding in the analysis, N. */
export const negligibleForce = 1;

/** Spans that a station stands in or at the end of; all of them for the short ends past the outer supports. */
export function spansAt({ spans }: MemberActions, x: number, length: number): readonly Span[] {
    const touching = spans.filter(({ from, to }) => from <= x && x <= to);
    if (touching.length > 0) {
        return touching;
    }
    return spans.length > 0 ? spans : [{ from: 0, to: length, overhang: true }];
}

/** What is the same at all stations within one span is made once for it. */
export function onceBySpan<T>({ spans }: MemberActions, make: (station: Station) => T): (station: Station) => T {
    const within = new Map<Span, T>();
    const known = new Map<Station, T>();
    return station => {
        const span = spans.find(({ from, to }) => from < station.x && station.x < to);
        const found = span ? within.get(span) : known.get(station);
        if (found !== undefined) {
            return found;
        }
        const made = make(station);
        if (span) within.set(span, made); else known.set(station, made);
        return made;
    };
}

export function segmentsIn({ segments }: MemberActions, { from, to }: Span): readonly Segment[] {
    return segments.filter(segment => segment.from < to && segment.to > from);
}

/** Buckling length between supports; an end that nothing holds is a cantilever with a factor of 2. */
export function spanBucklingLength({ from, to, overhang }: Span): number {
    return (overhang ? 2 : 1) * (to - from);
}

/** Buckling length out of the plane: between restraints where there are any. */
export function lateralBucklingLength(span: Span, { restraint }: MemberContext['member']): number {
    return Math.min(restraint?.value ?? Infinity, spanBucklingLength(span));
}

/**
 * A leaf that pushes while its neighbours pull cannot leave them but between two bolts; undefined of other members,
 * and of leaves that push together, which can all buckle as one.
 */
export function heldByBolts({ actions, member }: Pick<MemberContext, 'actions' | 'member'>): number | undefined {
    if (!known.has(actions)) {
        known.set(actions, greatestGap(actions, member));
    }
    return known.get(actions);
}

/** Asked at every station. */
const known = new WeakMap<MemberActions, number | undefined>();

function greatestGap(actions: MemberActions, { section }: MemberContext['member']): number | undefined {
    if (section.shape !== 'plies' || actions.diagrams.N.some(({ min, max }) => Math.max(-min, max) > negligibleForce)) {
        return undefined;
    }
    const stations = section.bolts.flatMap(({ places }) => places.map(({ x }) => x)).sort((a, b) => a - b);
    const gaps = stations.slice(1).map((x, i) => x - stations[i]!);
    return gaps.length > 0 ? Math.max(...gaps) : undefined;
}
