/** Lengths that are free to buckle around a station. Lengths mm. */
import type { MemberActions, Segment, Span } from '../../analysis/actions.js';
import type { MemberContext } from '../check.js';

/** Spans that a station stands in or at the end of; all of them for the short ends past the outer supports. */
export function spansAt({ spans }: MemberActions, x: number, length: number): readonly Span[] {
    const touching = spans.filter(({ from, to }) => from <= x && x <= to);
    if (touching.length > 0) {
        return touching;
    }
    return spans.length > 0 ? spans : [{ from: 0, to: length, overhang: true }];
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
