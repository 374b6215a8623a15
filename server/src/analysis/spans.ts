/** The lengths between supports, and past the last ones. */
import type { Member, Support } from '../../../language/src/model.js';
import type { Span } from './actions.js';

/** Supports in the order of their stations. */
export function supportsInOrder(member: Member): readonly Support[] {
    return [...member.supports].sort((a, b) => a.at.value - b.at.value);
}

/** Spans between all that holds the member normal to its axis; `heads` are a post's further holds. */
export function spansOf(member: Member, heads: readonly number[]): readonly Span[] {
    return spansBetween(member, member.supports, heads);
}

/**
 * Spans that deflection is measured in. A spring between firmer supports ends no span: the member's sag
 * over it counts. The chord runs between the ends of a span, so what the supports themselves move is left out.
 */
export function deflectionSpansOf(member: Member, heads: readonly number[]): readonly Span[] {
    const ordered = supportsInOrder(member);
    const ends = ordered.filter((support, i) => support.kind !== 'spring' || i === 0 || i === ordered.length - 1);
    return spansBetween(member, ends, heads);
}

function spansBetween(member: Member, supports: readonly Support[], heads: readonly number[]): Span[] {
    const length = member.length.value;
    const places = [...new Set([...supports.map((support) => support.at.value), ...heads])].sort((a, b) => a - b);
    const [first, last] = [places[0], places.at(-1)];
    if (first === undefined || last === undefined) return [];
    const spans: Span[] = [];
    if (first > endAllowance(member, first)) spans.push({ from: 0, to: first, overhang: true });
    for (let i = 0; i + 1 < places.length; i++) spans.push({ from: places[i]!, to: places[i + 1]!, overhang: false });
    if (length - last > endAllowance(member, last)) spans.push({ from: last, to: length, overhang: true });
    return spans;
}

/**
 * An end that runs past the middle of its bearing by no more than the bearing's length (half the depth where
 * none is given) is no overhang: it is not loaded by itself. Common practice, no source.
 */
function endAllowance(member: Member, at: number): number {
    const bearings = member.supports.filter((support) => support.at.value === at).map((support) => support.bearing?.value ?? 0);
    const bearing = Math.max(0, ...bearings);
    return bearing > 0 ? bearing : member.section.shape === 'rectangle' ? member.section.depth.value / 2 : 0;
}

/** The end of an overhang that is supported. */
export function rootOf(member: Member, { from, to }: Span): number {
    return member.supports.some((support) => support.at.value === from) ? from : to;
}

export function spanName(spans: readonly Span[], index: number): string {
    if (!spans[index]!.overhang) return `span ${spans.slice(0, index + 1).filter((span) => !span.overhang).length}`;
    return index === 0 && spans.length > 1 ? 'left overhang' : 'right overhang';
}
