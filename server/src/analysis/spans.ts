/** The lengths between supports, and past the last ones. */
import type { Member, Support } from '../../../language/src/model.js';
import type { Span } from './actions.js';

/** Places nearer than this are one, mm. */
export function tolerance(member: Member): number {
    return 1e-5 * member.length.value;
}

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
    const places = placesOf(member, supports, heads);
    const [first, last] = [places[0], places.at(-1)];
    if (first === undefined || last === undefined) return [];
    const spans: Span[] = [];
    if (first > shortEnd(member, first)) spans.push({ from: 0, to: first, overhang: true });
    for (let i = 0; i + 1 < places.length; i++) spans.push({ from: places[i]!, to: places[i + 1]!, overhang: false });
    if (length - last > shortEnd(member, last)) spans.push({ from: last, to: length, overhang: true });
    return spans;
}

function placesOf(member: Member, supports: readonly Support[], heads: readonly number[]): number[] {
    const all = [...supports.map((support) => support.at.value), ...heads].sort((a, b) => a - b);
    return all.filter((x, i) => i === 0 || x - all[i - 1]! > tolerance(member));
}

/**
 * An end that runs past the middle of its support by no more than the depth or the bearing is no overhang: its
 * deflection is not looked at. Common practice, no source.
 */
function shortEnd(member: Member, at: number): number {
    const bearings = member.supports.filter((support) => support.at.value === at).map((support) => support.bearing?.value ?? 0);
    return Math.max(tolerance(member), 'depth' in member.section ? member.section.depth.value : 0, ...bearings);
}

/** The end of an overhang that is supported. */
export function rootOf(member: Member, { from, to }: Span): number {
    return member.supports.some((support) => support.at.value === from) ? from : to;
}

/** A stretch of a member that a part of a free load may be absent from. */
export interface Stretch {
    readonly from: number;
    readonly to: number;
    readonly name: string;
    /** Short ends beside it, each with the place of its support. */
    readonly ends: readonly { readonly from: number; readonly to: number; readonly support: number }[];
}

/**
 * The whole of a member, from support to support; a post is one, for what it carries runs down it. An end of up to a
 * thirty-second of the span beside it goes with that span: a load on it moves a support's force by less than 1/1000.
 */
export function stretchesOf(member: Member): Stretch[] {
    const length = member.length.value;
    const inner = placesOf(member, member.supports, []).filter((x) => x > tolerance(member) && x < length - tolerance(member));
    const [first, last] = [inner[0], inner.at(-1)];
    if (member.kind === 'post' || first === undefined || last === undefined) return [{ from: 0, to: length, name: 'span 1', ends: [] }];
    const supported = (x: number): boolean => member.supports.some((support) => Math.abs(support.at.value - x) <= tolerance(member));
    const pastFirst = !supported(0);
    const pastLast = !supported(length);
    const places = [...(pastFirst ? [] : [0]), ...inner, ...(pastLast ? [] : [length])];
    const spans = places.slice(1).map((to, i): Stretch => ({ from: places[i]!, to, name: `span ${i + 1}`, ends: [] }));
    const ends = [
        ...(pastFirst ? [{ from: 0, to: first, support: first, name: 'left overhang' }] : []),
        ...(pastLast ? [{ from: last, to: length, support: last, name: 'right overhang' }] : [])
    ];
    const beside = ({ from }: typeof ends[number]): Stretch | undefined => (from === 0 ? spans[0] : spans.at(-1));
    const isShort = (end: typeof ends[number]): boolean => {
        const span = beside(end);
        return span !== undefined && end.to - end.from <= Math.min(shortEnd(member, end.support), (span.to - span.from) / 32);
    };
    const overhangs = ends.filter((end) => !isShort(end)).map(({ from, to, name }): Stretch => ({ from, to, name, ends: [] }));
    return [...overhangs, ...spans.map((span) => ({
        ...span,
        ends: ends.filter((end) => isShort(end) && beside(end) === span).map(({ from, to, support }) => ({ from, to, support }))
    }))].sort((a, b) => a.from - b.from);
}
