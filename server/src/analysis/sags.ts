/** Displacement normal to a member's axis, downwards from the chord of a span. */
import type { Span, UnitCase } from './actions.js';
import type { Rule } from './combinations.js';
import { isSet } from './durations.js';
import { shapeAt, placeAt, upwards, type Place, type Scale } from './effects.js';
import type { ElementState } from './element.js';
import type { PieceMesh } from './mesh.js';
import { rootOf } from './spans.js';
import { stateOf, stateSize, weightedState, type UnitSolution } from './unit-solutions.js';

/** A member as one stiffness lets it bend. */
export interface Bent {
    readonly mesh: PieceMesh;
    readonly solutions: readonly UnitSolution[];
    readonly scales: readonly Scale[];
}

export interface SagContext {
    readonly cases: readonly UnitCase[];
    readonly instant: Bent;
    /** After creep; where it is absent the sag grows by kdef. */
    readonly final?: Bent;
    readonly kdef: number;
}

/** Sags of one strand along one span, mm. */
export interface Sags {
    readonly span: Span;
    readonly places: readonly Place[];
    readonly by: (rule: Rule) => RuleSags;
}

/** With a rule's factors applied. */
export interface RuleSags {
    /** By place. */
    readonly steady: Float64Array;
    /** Row by row: the share of the rule's variable case i at place s stands at `s * count + i`. */
    readonly w: Float64Array;
    readonly count: number;
    /** The sag and its slope anywhere, with these of the variable cases present. */
    readonly shape: (present: Uint8Array) => (place: Place) => Sag;
}

export interface Sag { readonly w: number; readonly slope: number }

export function sagsOf(context: SagContext, strand: number, span: Span, places: readonly Place[]): Sags {
    const { cases, instant, final, kdef } = context;
    const layers = [instant, ...(final ? [final] : [])].map((bent) => layerOf(bent, strand, span, places));
    const count = cases.length;
    const always = cases.flatMap(({ id, permanent }) => (permanent ? [id] : []));
    return {
        span, places,
        by: (rule) => {
            const { first, last } = weightsOf(rule, cases, final ? undefined : kdef);
            const weights = final ? [first, last] : [first];
            const n = rule.variable.length;
            const w = new Float64Array(places.length * n);
            const steady = new Float64Array(places.length);
            layers.forEach((layer, l) => {
                const weight = weights[l]!;
                for (let s = 0; s < places.length; s++) {
                    for (const c of always) steady[s]! += weight[c]! * layer.w[s * count + c]!;
                    for (let i = 0; i < n; i++) w[s * n + i]! += weight[rule.variable[i]!]! * layer.w[s * count + rule.variable[i]!]!;
                }
            });
            return {
                steady, w, count: n,
                shape: (present) => {
                    const off = new Set([...rule.variable].filter((_, i) => !present[i]));
                    const shapes = layers.map(({ shape }, i) => shape(weights[i]!.map((weight, c) => (off.has(c) ? 0 : weight))));
                    return (place) => shapes.map((shape) => shape(place)).reduce((a, b) => ({ w: a.w + b.w, slope: a.slope + b.slope }));
                }
            };
        }
    };
}

/**
 * Factors f on each case's instant sag and g on its creep, which is what the final one has more: so f − g on the instant
 * one and g on the final one; or f + g kdef on the instant one where creep is kdef times that.
 */
function weightsOf(rule: Rule, cases: readonly UnitCase[], kdef: number | undefined): { readonly first: Float64Array; readonly last: Float64Array } {
    const f = new Float64Array(cases.length);
    const g = new Float64Array(cases.length);
    for (const unit of cases) {
        if (!unit.permanent) continue;
        f[unit.id] = isSet(unit) ? 1 : rule.permanent;
        if (rule.creep) g[unit.id] = 1;
    }
    rule.variable.forEach((c, i) => {
        f[c] = rule.factors[i]!;
        g[c] = rule.creep?.[i] ?? 0;
    });
    return kdef === undefined
        ? { first: f.map((value, c) => value - g[c]!), last: g }
        : { first: f.map((value, c) => value + kdef * g[c]!), last: g };
}

interface Layer {
    /** The sag of case c at place s stands at `s * cases + c`. */
    readonly w: Float64Array;
    readonly shape: (weights: Float64Array) => (place: Place) => Sag;
}

function layerOf({ mesh, solutions, scales }: Bent, strand: number, span: Span, places: readonly Place[]): Layer {
    const { elements } = mesh.strands[strand]!;
    const from = span.overhang ? rootOf(mesh.piece.member, span) : span.from;
    const chords = solutions.map((solution) => chordOf(mesh, solution, span, from));
    const count = solutions.length;
    const w = new Float64Array(places.length * count);
    solutions.forEach(({ states }, c) => {
        const { at, slope } = chords[c]!;
        const { movement } = scales[c]!;
        for (let s = 0; s < places.length; s++) {
            const { element, into, x } = places[s]!;
            const { id, EI, GAs } = elements[element]!;
            const i = stateSize * id;
            const sag = at + slope * (x - from) - states[i + 3]! - upwards(states[i + 4]!, states[i + 2]!, states[i + 1]!, states[i + 6]!, EI, GAs, into);
            if (Math.abs(sag) > movement) w[s * count + c] = sag;
        }
    });
    return {
        w,
        shape: (weights) => {
            const at = chords.reduce((sum, chord, c) => sum + weights[c]! * chord.at, 0);
            const slope = chords.reduce((sum, chord, c) => sum + weights[c]! * chord.slope, 0);
            const together = new Map<number, ElementState>();
            return ({ element, into, x }) => {
                const one = elements[element]!;
                let state = together.get(element);
                if (!state) together.set(element, state = weightedState(solutions, weights, one.id));
                const shape = shapeAt(one, state, into);
                return { w: at + slope * (x - from) - shape.v, slope: slope - shape.slope };
            };
        }
    };
}

/** The straight line from a span's first end to the other as they have moved, upwards; for an overhang level with its support. */
interface Chord { readonly at: number; readonly slope: number }

function chordOf(mesh: PieceMesh, solution: UnitSolution, span: Span, from: number): Chord {
    const v = (x: number): number => {
        const { element, into } = placeAt(mesh, x);
        const leaves = mesh.piece.member.supports.find(({ at }) => at.value === x)?.leaves;
        const bearing = mesh.strands.find(({ strand, elements }) => !elements[element]!.loose && (strand.leaf === undefined || leaves?.includes(strand.leaf) !== false));
        const one = (bearing ?? mesh.strands[0]!).elements[element]!;
        return shapeAt(one, stateOf(solution, one.id), into).v;
    };
    const at = v(from);
    return { at, slope: span.overhang ? 0 : (v(span.to) - at) / (span.to - from) };
}
