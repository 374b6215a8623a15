/** Sags of a member below the chords of its spans: envelopes for the diagrams, and the greatest of each span. */
import type { Deflection, DiagramPoint, Span } from './actions.js';
import type { Combine, Rule } from './combinations.js';
import { bowOf, level, type Bow } from './camber.js';
import type { Place } from './effects.js';
import { combined, extremes, roomFor } from './placement.js';
import { peakBetween } from './peak.js';
import { sagsOf, type SagContext, type Sags } from './sags.js';

export interface DeflectionContext extends SagContext {
    readonly places: readonly Place[];
    readonly spans: readonly Span[];
    readonly combine: Combine;
}

/** Envelope along the member, and the greatest deflection of each span. */
export interface Deflections { readonly envelope: readonly DiagramPoint[]; readonly worst: readonly Deflection[] }

/** Gives the deflections by any rules; `camber` (mm, in the middle of the longest span) is taken off downward ones. */
export function deflectionsOf(context: DeflectionContext): (rules: readonly Rule[], camber: number) => Deflections {
    const { spans, places, mesh: { piece: { member } } } = context;
    const longest = spans.reduce<Span | undefined>((best, span) =>
        (span.overhang || (best && best.to - best.from >= span.to - span.from) ? best : span), undefined);
    const parts = spans.map((span, i) => {
        const [from, to] = [i === 0 ? 0 : span.from, i === spans.length - 1 ? member.length.value : span.to];
        return sagsOf(context, span, places.filter(({ x }) => x >= from && x <= to));
    });
    return (rules, camber) => {
        const outcomes = parts.map((sags) => {
            const bow = bowOf(sags.span, sags.span === longest ? camber : 0);
            return { envelope: envelopeOf(sags, rules, bow), worst: worstOf(context.combine, sags, rules, bow) };
        });
        return { envelope: outcomes.flatMap(({ envelope }) => envelope), worst: outcomes.flatMap(({ worst }) => worst) };
    };
}

function envelopeOf({ places, w, permanent, cases }: Sags, rules: readonly Rule[], bow: Bow): DiagramPoint[] {
    const rooms = rules.map((rule) => ({ rule, room: roomFor(rule) }));
    return places.map(({ x }, s) => {
        let [min, max] = [Infinity, -Infinity];
        for (const { rule, room } of rooms) {
            const { most, least } = extremes(rule, w, s * cases, room);
            max = Math.max(max, combined(rule, most, permanent[s]!, w, s * cases));
            min = Math.min(min, combined(rule, least, permanent[s]!, w, s * cases));
        }
        const raised = bow(x).w;
        return { x, min: min - raised, max: max - raised };
    });
}

/** Greatest downwards less the camber (which never makes it an upward one), or upwards without it. */
function worstOf(combine: Combine, sags: Sags, rules: readonly Rule[], bow: Bow): Deflection[] {
    let best: Deflection | undefined;
    for (const rule of rules) {
        for (const [side, sign, arch] of [['most', 1, bow], ['least', -1, level]] as const) {
            const peak = peakOf(sags, rule, side, sign, arch);
            if (best && Math.abs(best.value) >= peak.height) continue;
            best = { value: sign * peak.height, at: peak.x, span: sags.span, combination: combine(rule, peak.present) };
        }
    }
    return best ? [best] : [];
}

interface Peak { readonly height: number; readonly x: number; readonly present: Uint8Array }

/** The greatest of `sign` times the sag within the span itself: every local peak is solved, its loads placed as at its station. */
function peakOf(sags: Sags, rule: Rule, side: 'most' | 'least', sign: 1 | -1, bow: Bow): Peak {
    const { span, places, w, permanent, cases } = sags;
    const room = roomFor(rule);
    const heights = places.map(({ x }, s) => {
        if (x < span.from || x > span.to) return -Infinity;
        return sign * (combined(rule, extremes(rule, w, s * cases, room)[side], permanent[s]!, w, s * cases) - bow(x).w);
    });
    let best: Peak = { height: 0, x: span.from, present: new Uint8Array(rule.variable.length) };
    heights.forEach((height, s) => {
        if (height <= 0 || height < (heights[s - 1] ?? 0) || height < (heights[s + 1] ?? 0)) return;
        const present = extremes(rule, w, s * cases)[side];
        const shape = sags.shapeOf(rule, present);
        const found = peakBetween(places, s, (place) => {
            const { w: sag, slope } = shape(place);
            const raised = bow(place.x);
            return { height: sign * (sag - raised.w), slope: slope - raised.slope };
        });
        if (found.height > best.height) best = { ...found, present };
    });
    return best;
}
