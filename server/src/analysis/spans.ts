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
 * deflection is not looked at. Common practice, no source. (It is loaded by itself all the same.)
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
export interface Stretch { readonly from: number; readonly to: number; readonly name: string }

/** The whole of a member, from support to support; a post is one, for what it carries runs down it. */
export function stretchesOf(member: Member): Stretch[] {
    const length = member.length.value;
    const inner = placesOf(member, member.supports, []).filter((x) => x > tolerance(member) && x < length - tolerance(member));
    if (member.kind === 'post' || inner.length === 0) return [{ from: 0, to: length, name: 'span 1' }];
    const ends = [0, ...inner, length];
    const supported = (x: number): boolean => member.supports.some((support) => Math.abs(support.at.value - x) <= tolerance(member));
    const firstIsSpan = supported(0);
    return ends.slice(1).map((to, i) => {
        const from = ends[i]!;
        if (i === 0 && !firstIsSpan) return { from, to, name: to > shortEnd(member, to) ? 'left overhang' : shortLeft };
        if (i === ends.length - 2 && !supported(length)) return { from, to, name: to - from > shortEnd(member, from) ? 'right overhang' : shortRight };
        return { from, to, name: `span ${i + (firstIsSpan ? 1 : 0)}` };
    });
}

/** Names of stretches too short to be worth naming in a combination. */
export const shortLeft = 'left end';
export const shortRight = 'right end';
