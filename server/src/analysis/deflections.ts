/** Sags of a member below the chords of its spans: envelopes for the diagrams, and the greatest of each span. */
import type { Deflection, DiagramPoint, Span } from './actions.js';
import type { Combine, Rule } from './combinations.js';
import { bowOf, level, type Bow } from './camber.js';
import type { Place } from './effects.js';
import { peakBetween } from './peak.js';
import { sagsOf, type RuleSags, type SagContext, type Sags } from './sags.js';

export interface DeflectionContext extends SagContext {
    readonly places: readonly Place[];
    readonly spans: readonly Span[];
    readonly combine: Combine;
}

/** Envelope along the member, and the greatest deflection of each span. */
export interface Deflections { readonly envelope: readonly DiagramPoint[]; readonly worst: readonly Deflection[] }

/** Gives the deflections by any rules; `camber` (mm, in the middle of the longest span) is taken off downward ones. */
export type DeflectionsBy = (rules: readonly Rule[], camber: number) => Deflections;

/** Of one strand, where something holds it. */
export function deflectionsOf(context: DeflectionContext, strand: number): DeflectionsBy {
    const { spans, places, instant: { mesh } } = context;
    const { elements } = mesh.strands[strand]!;
    const longest = spans.reduce<Span | undefined>((best, span) =>
        (span.overhang || (best && best.to - best.from >= span.to - span.from) ? best : span), undefined);
    const parts = spans.map((span, i) => {
        const [from, to] = [i === 0 ? 0 : span.from, i === spans.length - 1 ? mesh.piece.member.length.value : span.to];
        return sagsOf(context, strand, span, places.filter(({ x, element }) => x >= from && x <= to && !elements[element]!.loose));
    });
    return (rules, camber) => {
        const outcomes = parts.map((sags) => {
            const bow = bowOf(sags.span, sags.span === longest ? camber : 0);
            const combined = rules.map((rule) => ({ rule, sags: sags.by(rule) }));
            return { envelope: envelopeOf(sags, combined, bow), worst: worstOf(context.combine, sags, combined, bow) };
        });
        return { envelope: outcomes.flatMap(({ envelope }) => envelope), worst: outcomes.flatMap(({ worst }) => worst) };
    };
}

/** The greatest of all strands. */
export function greatestOf(all: readonly Deflections[]): Deflections {
    const [first, ...others] = all;
    if (!first || others.length === 0) return first ?? { envelope: [], worst: [] };
    const envelope = new Map<string, DiagramPoint>();
    const seen = all.map(({ envelope: points }) => {
        let [last, side] = [NaN, 0];
        return points.map((point) => {
            side = point.x === last ? side + 1 : 0;
            last = point.x;
            return { key: `${point.x} ${side}`, point };
        });
    });
    for (const { key, point } of seen.flat()) {
        const found = envelope.get(key);
        envelope.set(key, found ? { x: point.x, min: Math.min(found.min, point.min), max: Math.max(found.max, point.max) } : point);
    }
    const worst = new Map<Span, Deflection>();
    for (const one of all.flatMap((deflections) => deflections.worst)) {
        const found = worst.get(one.span);
        if (!found || Math.abs(one.value) > Math.abs(found.value)) worst.set(one.span, one);
    }
    return { envelope: [...envelope.values()].sort((a, b) => a.x - b.x), worst: [...worst.values()] };
}

type Combined = readonly { readonly rule: Rule; readonly sags: RuleSags }[];

function envelopeOf({ places }: Sags, combined: Combined, bow: Bow): DiagramPoint[] {
    return places.map(({ x }, s) => {
        let [min, max] = [Infinity, -Infinity];
        for (const { sags } of combined) {
            max = Math.max(max, extreme(sags, s, 1));
            min = Math.min(min, extreme(sags, s, -1));
        }
        const raised = bow(x).w;
        return { x, min: min - raised, max: max - raised };
    });
}

/** The greatest (1) or least (-1) sag at a place. */
function extreme({ steady, w, count }: RuleSags, s: number, sign: 1 | -1): number {
    let sum = steady[s]!;
    for (let i = s * count; i < (s + 1) * count; i++) if (w[i]! * sign > 0) sum += w[i]!;
    return sum;
}

/** The cases that make it so; those that do nothing here count as present on the greatest side. */
function placed({ w, count }: RuleSags, s: number, sign: 1 | -1): Uint8Array {
    return Uint8Array.from({ length: count }, (_, i) => Number(w[s * count + i]! >= 0 ? sign > 0 : sign < 0));
}

/** Greatest downwards less the camber (which never makes it an upward one), or upwards without it. */
function worstOf(combine: Combine, { span, places }: Sags, combined: Combined, bow: Bow): Deflection[] {
    let best: Deflection | undefined;
    for (const { rule, sags } of combined) {
        for (const [sign, arch] of [[1, bow], [-1, level]] as const) {
            const peak = peakOf(span, places, sags, sign, arch);
            const value = Math.max(0, peak.height) * sign;
            if (best && Math.abs(best.value) >= Math.abs(value)) continue;
            best = { value, at: peak.x, span, combination: combine(rule, peak.present) };
        }
    }
    return best ? [best] : [];
}

interface Peak { readonly height: number; readonly x: number; readonly present: Uint8Array }

/** The greatest of `sign` times the sag within the span itself. */
function peakOf(span: Span, places: readonly Place[], sags: RuleSags, sign: 1 | -1, bow: Bow): Peak {
    let best = { height: -Infinity, s: -1 };
    for (let s = 0; s < places.length; s++) {
        const { x } = places[s]!;
        if (x < span.from || x > span.to) continue;
        const height = sign * (extreme(sags, s, sign) - bow(x).w);
        if (height > best.height) best = { height, s };
    }
    if (best.s < 0) return { height: 0, x: span.from, present: new Uint8Array(sags.count) };
    // Placed as for the best station, whose neighbours then show on which side the peak lies.
    const present = placed(sags, best.s, sign);
    const shape = sags.shape(present);
    const found = peakBetween(places, best.s, (place) => {
        const { w: sag, slope } = shape(place);
        const raised = bow(place.x);
        return { height: sign * (sag - raised.w), slope: slope - raised.slope };
    });
    return found.height > best.height ? { ...found, present } : { height: best.height, x: places[best.s]!.x, present };
}
