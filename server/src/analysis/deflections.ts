/** Sags of a member below the chords of its spans: envelopes for the diagrams, and the greatest of each span. */
import type { Deflection, DiagramPoint, Span, UnitCase } from './actions.js';
import type { Combine, Rule } from './combinations.js';
import { chordOf, sagAt, type Place, type Scale } from './effects.js';
import type { PieceMesh } from './mesh.js';
import { combined, extremes } from './placement.js';
import type { UnitSolution } from './unit-solutions.js';

export interface DeflectionContext {
    readonly mesh: PieceMesh;
    readonly index: number;
    readonly cases: readonly UnitCase[];
    readonly solutions: readonly UnitSolution[];
    readonly scales: readonly Scale[];
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
        (span.overhang || (best && lengthOf(best) >= lengthOf(span)) ? best : span), undefined);
    const parts = spans.map((span, i) => {
        const [from, to] = [i === 0 ? 0 : span.from, i === spans.length - 1 ? member.length.value : span.to];
        return spanSags(context, span, places.filter(({ x }) => x >= from && x <= to));
    });
    return (rules, camber) => {
        const outcomes = parts.map((sags) => {
            const bow = bowOf(sags.span, sags.span === longest ? camber : 0);
            return { envelope: envelopeOf(sags, rules, bow), worst: worstOf(context, sags, rules, bow) };
        });
        return { envelope: outcomes.flatMap(({ envelope }) => envelope), worst: outcomes.flatMap(({ worst }) => worst) };
    };
}

function lengthOf({ from, to }: Span): number {
    return to - from;
}

/** Unit sags and their slopes at any place of a span. */
interface SpanSags {
    readonly span: Span;
    readonly places: readonly Place[];
    readonly rows: readonly Row[];
    readonly rowAt: (place: Place) => Row;
}

interface Row {
    readonly w: Float64Array;
    readonly slope: Float64Array;
    /** Of all permanent cases. */
    readonly permanent: { readonly w: number; readonly slope: number };
}

function spanSags({ mesh, index, cases, solutions, scales }: DeflectionContext, span: Span, places: readonly Place[]): SpanSags {
    const chords = solutions.map((solution) => chordOf(mesh, solution, index, span));
    const rowAt = (place: Place): Row => {
        const w = new Float64Array(cases.length);
        const slope = new Float64Array(cases.length);
        const permanent = { w: 0, slope: 0 };
        for (let c = 0; c < cases.length; c++) {
            const sag = sagAt(mesh, solutions[c]!, index, place, chords[c]!);
            if (Math.abs(sag.w) > scales[c]!.movement) w[c] = sag.w;
            slope[c] = sag.slope;
            if (!cases[c]!.permanent) continue;
            permanent.w += w[c]!;
            permanent.slope += sag.slope;
        }
        return { w, slope, permanent };
    };
    return { span, places, rows: places.map(rowAt), rowAt };
}

/** A parabola that rises `camber` in the middle of a span. */
type Bow = (x: number) => { readonly w: number; readonly slope: number };

function bowOf(span: Span, camber: number): Bow {
    const length = lengthOf(span);
    return (x) => {
        const t = (x - span.from) / length;
        return { w: 4 * camber * t * (1 - t), slope: (4 * camber * (1 - 2 * t)) / length };
    };
}

const level: Bow = () => ({ w: 0, slope: 0 });

function envelopeOf({ places, rows }: SpanSags, rules: readonly Rule[], bow: Bow): DiagramPoint[] {
    return places.map(({ x }, s) => {
        const { w, permanent } = rows[s]!;
        let [min, max] = [Infinity, -Infinity];
        for (const rule of rules) {
            const { most, least } = extremes(rule, w, 0);
            max = Math.max(max, combined(rule, most, permanent.w, w, 0));
            min = Math.min(min, combined(rule, least, permanent.w, w, 0));
        }
        const raised = bow(x).w;
        return { x, min: min - raised, max: max - raised };
    });
}

/** Greatest downwards less the camber (which never makes it an upward one), or upwards without it. */
function worstOf({ combine }: DeflectionContext, sags: SpanSags, rules: readonly Rule[], bow: Bow): Deflection[] {
    let best: Deflection | undefined;
    for (const rule of rules) {
        for (const [side, sign, arch] of [['most', 1, bow], ['least', -1, level]] as const) {
            const peak = peakOf(sags, rule, side, sign, arch);
            const value = Math.max(0, peak.height) * sign;
            if (best && Math.abs(best.value) >= Math.abs(value)) continue;
            best = { value, at: peak.x, span: sags.span, combination: combine(rule, peak.present) };
        }
    }
    return best ? [best] : [];
}

interface Peak { readonly height: number; readonly x: number; readonly present: Uint8Array }

/** The greatest of `sign` times the sag within the span itself. */
function peakOf(sags: SpanSags, rule: Rule, side: 'most' | 'least', sign: 1 | -1, bow: Bow): Peak {
    const { span, places, rows } = sags;
    let best: Peak & { readonly s: number } = { height: -Infinity, x: span.from, s: 0, present: new Uint8Array(rule.variable.length) };
    rows.forEach(({ w, permanent }, s) => {
        const { x } = places[s]!;
        if (x < span.from || x > span.to) return;
        const present = extremes(rule, w, 0)[side];
        const height = sign * (combined(rule, present, permanent.w, w, 0) - bow(x).w);
        if (height > best.height) best = { height, x, s, present };
    });
    return refined(sags, rule, best, sign, bow);
}

/** With the loads as placed for the best station: the peak beside it, where the slope passes zero. */
function refined({ places, rowAt }: SpanSags, rule: Rule, best: Peak & { readonly s: number }, sign: 1 | -1, bow: Bow): Peak {
    const { present, s } = best;
    const slopeAt = (place: Place): number => {
        const { slope, permanent } = rowAt(place);
        return combined(rule, present, permanent.slope, slope, 0) - bow(place.x).slope;
    };
    // A place at a step stands there twice, once on either side.
    let [left, right] = [s, s];
    while (places[left - 1]?.x === best.x) left--;
    while (places[right + 1]?.x === best.x) right++;
    let peak: Peak = best;
    for (const [a, b] of [[places[left - 1], places[left]], [places[right], places[right + 1]]]) {
        if (!a || !b) continue;
        const start = b.x - b.into;
        const placeAt = (into: number): Place => ({ element: b.element, into, x: start + into });
        const into = zeroBetween((x) => slopeAt(placeAt(x)), a.x - start, b.into);
        if (into === undefined) continue;
        const place = placeAt(into);
        const { w, permanent } = rowAt(place);
        const height = sign * (combined(rule, present, permanent.w, w, 0) - bow(place.x).w);
        if (height > peak.height) peak = { height, x: place.x, present };
    }
    return peak;
}

/** By halving; undefined where the ends have one sign. */
function zeroBetween(f: (x: number) => number, from: number, to: number): number | undefined {
    const first = f(from);
    if (first * f(to) >= 0) return undefined;
    let [low, high] = [from, to];
    for (let i = 0; i < 40; i++) {
        const middle = (low + high) / 2;
        if (f(middle) * first > 0) low = middle; else high = middle;
    }
    return (low + high) / 2;
}
