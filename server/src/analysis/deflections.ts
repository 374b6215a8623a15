/** Sags of a member: envelopes for the diagrams, and the greatest of each span. */
import type { Combination, Deflection, DiagramPoint, Span, UnitCase } from './actions.js';
import type { Combine, Rule } from './combinations.js';
import { chordOf, sagAt, type Chord, type Place, type Scale } from './effects.js';
import type { PieceMesh } from './mesh.js';
import { combined, place, type Placement } from './placement.js';
import type { UnitSolution } from './unit-solutions.js';

export interface Sags {
    /** By place and case: downwards from the chord. */
    readonly w: Float64Array;
    readonly slope: Float64Array;
}

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

/** Envelope along the member and the greatest deflection of each span, both by one set of rules. */
export interface SagResults { readonly envelope: readonly DiagramPoint[]; readonly worst: readonly Deflection[] }

/** `camber`: an upward bow that is taken off downward sags, in mm at the middle of the longest span. */
export function sags(context: DeflectionContext, rules: readonly Rule[], camber: number): SagResults {
    const { places, spans, mesh } = context;
    const length = mesh.piece.member.length.value;
    const longest = spans.filter((span) => !span.overhang).reduce<Span | undefined>((best, span) =>
        (best && best.to - best.from >= span.to - span.from ? best : span), undefined);
    const envelope: DiagramPoint[] = [];
    const worst: Deflection[] = [];
    spans.forEach((span, i) => {
        const from = i === 0 ? 0 : span.from;
        const to = i === spans.length - 1 ? length : span.to;
        const mine = places.filter(({ x }) => x >= from && x <= to);
        const bow = (x: number): { w: number; slope: number } => bowAt(span === longest ? camber : 0, span, x);
        const { points, greatest } = spanSags(context, rules, span, mine, bow);
        envelope.push(...points);
        if (greatest) worst.push(greatest);
    });
    return { envelope, worst };
}

type Bow = (x: number) => { readonly w: number; readonly slope: number };

function bowAt(camber: number, span: Span, x: number): { w: number; slope: number } {
    const length = span.to - span.from;
    const t = (x - span.from) / length;
    return { w: 4 * camber * t * (1 - t), slope: (4 * camber * (1 - 2 * t)) / length };
}

interface Candidate { readonly value: number; readonly at: number; readonly combination: Combination }

function spanSags(context: DeflectionContext, rules: readonly Rule[], span: Span, places: readonly Place[], bow: Bow) {
    const { mesh, index, cases, solutions, scales, combine } = context;
    const chords = solutions.map((solution) => chordOf(mesh, solution, index, span));
    const rows = places.map((spot) => rowAt(context, chords, spot));
    const permanents = rows.map(({ w }) => permanentOf(cases, w));
    const points = places.map(({ x }) => ({ x, min: Infinity, max: -Infinity }));
    let best: Candidate | undefined;
    const offer = (candidate: Candidate): void => {
        if (!best || Math.abs(candidate.value) > Math.abs(best.value)) best = candidate;
    };
    const inside = (x: number): boolean => x >= span.from && x <= span.to;

    for (const rule of rules) {
        const peaks = { most: { value: -Infinity, s: -1, choice: undefined as Placement | undefined }, least: { value: Infinity, s: -1, choice: undefined as Placement | undefined } };
        rows.forEach(({ w }, s) => {
            const { most, least } = place(rule, w, 0);
            const raised = bow(places[s]!.x).w;
            const max = combined(rule, most, permanents[s]!, w, 0) - raised;
            const min = combined(rule, least, permanents[s]!, w, 0) - raised;
            points[s]!.max = Math.max(points[s]!.max, max);
            points[s]!.min = Math.min(points[s]!.min, min);
            if (!inside(places[s]!.x)) return;
            if (max > peaks.most.value) peaks.most = { value: max, s, choice: most };
            if (min + raised < peaks.least.value) peaks.least = { value: min + raised, s, choice: least };
        });
        for (const [peak, arched] of [[peaks.most, bow], [peaks.least, level]] as const) {
            if (!peak.choice) continue;
            const { value, x } = refine(context, chords, rule, peak.choice, places, peak.s, arched);
            const sag = peak === peaks.most && value < 0 ? 0 : value;
            offer({ value: sag, at: x, combination: combine(rule, peak.choice.present) });
        }
    }
    void scales;
    return { points, greatest: best && { ...best, span } };
}

const level: Bow = () => ({ w: 0, slope: 0 });

function rowAt({ mesh, index, solutions, scales }: DeflectionContext, chords: readonly Chord[], spot: Place): Sags {
    const w = new Float64Array(solutions.length);
    const slope = new Float64Array(solutions.length);
    solutions.forEach((solution, c) => {
        const sag = sagAt(mesh, solution, index, spot, chords[c]!);
        if (Math.abs(sag.w) > scales[c]!.movement) w[c] = sag.w;
        slope[c] = sag.slope;
    });
    return { w, slope };
}

function permanentOf(cases: readonly UnitCase[], values: Float64Array): number {
    return cases.reduce((sum, { id, permanent }) => sum + (permanent ? values[id]! : 0), 0);
}

/** The peak beside the best place, with its loads as placed there: where the slope passes zero. */
function refine(
    context: DeflectionContext, chords: readonly Chord[], rule: Rule, choice: Placement,
    places: readonly Place[], s: number, bow: Bow
): { readonly value: number; readonly x: number } {
    const at = (spot: Place): { value: number; slope: number } => {
        const { w, slope } = rowAt(context, chords, spot);
        const raised = bow(spot.x);
        return {
            value: combined(rule, choice, permanentOf(context.cases, w), w, 0) - raised.w,
            slope: combined(rule, choice, permanentOf(context.cases, slope), slope, 0) - raised.slope
        };
    };
    let best = { value: at(places[s]!).value, x: places[s]!.x };
    for (const [a, b] of [[places[s - 1], places[s]], [places[s], places[s + 1]]]) {
        if (!a || !b || b.x <= a.x) continue;
        const element = b.element;
        const start = b.x - b.into;
        let [low, high] = [a.x - start, b.into];
        const spotAt = (into: number): Place => ({ element, into, x: start + into });
        const falling = at(spotAt(low)).slope;
        if (falling * at(spotAt(high)).slope >= 0) continue;
        for (let i = 0; i < 40; i++) {
            const middle = (low + high) / 2;
            if (at(spotAt(middle)).slope * falling > 0) low = middle; else high = middle;
        }
        const spot = spotAt((low + high) / 2);
        const { value } = at(spot);
        if (Math.abs(value) > Math.abs(best.value)) best = { value, x: spot.x };
    }
    return best;
}
