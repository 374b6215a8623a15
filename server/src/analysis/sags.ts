/** Displacement normal to a member's axis, downwards from the chord of a span. */
import type { Span, UnitCase } from './actions.js';
import type { Rule } from './combinations.js';
import { placeAt, shapeAt, type Place, type Scale } from './effects.js';
import type { ElementState } from './element.js';
import type { PieceMesh } from './mesh.js';
import { rootOf } from './spans.js';
import type { UnitSolution } from './unit-solutions.js';

/** A member and the solutions of its group. */
export interface SagContext {
    readonly mesh: PieceMesh;
    readonly index: number;
    readonly cases: readonly UnitCase[];
    readonly solutions: readonly UnitSolution[];
    readonly scales: readonly Scale[];
}

/** Unit sags along one span, mm. */
export interface Sags {
    readonly span: Span;
    readonly places: readonly Place[];
    readonly cases: number;
    /** Row by row: the sag of case c at place s stands at `s * cases + c`. */
    readonly w: Float64Array;
    /** By place, all permanent cases together. */
    readonly permanent: Float64Array;
    /** The sag and its slope anywhere, with a rule's loads so placed. */
    readonly shapeOf: (rule: Rule, present: Uint8Array) => (place: Place) => { readonly w: number; readonly slope: number };
}

export function sagsOf(context: SagContext, span: Span, places: readonly Place[]): Sags {
    const { mesh, index, cases, solutions, scales } = context;
    const states = solutions.map((solution) => solution.states[index]!);
    const from = span.overhang ? rootOf(mesh.piece.member, span) : span.from;
    const chords = states.map((own) => chordOf(mesh, own, span, from));
    const w = new Float64Array(places.length * cases.length);
    const permanent = new Float64Array(places.length);
    places.forEach(({ element, into, x }, s) => {
        for (let c = 0; c < cases.length; c++) {
            const chord = chords[c]!;
            const sag = chord.at + chord.slope * (x - from) - shapeAt(mesh.elements[element]!, states[c]![element]!, into).v;
            if (Math.abs(sag) <= scales[c]!.movement) continue;
            w[s * cases.length + c] = sag;
            if (cases[c]!.permanent) permanent[s]! += sag;
        }
    });
    const permanents = cases.filter((unit) => unit.permanent).map(({ id }) => id);
    return {
        span, places, w, permanent,
        cases: cases.length,
        shapeOf: (rule, present) => {
            const factors = new Float64Array(cases.length);
            for (const id of permanents) factors[id] = rule.permanent;
            rule.variable.forEach((id, i) => { if (present[i]) factors[id] = rule.factors[i]!; });
            const at = chords.reduce((sum, chord, c) => sum + factors[c]! * chord.at, 0);
            const slope = chords.reduce((sum, chord, c) => sum + factors[c]! * chord.slope, 0);
            const together = new Map<number, ElementState>();
            return ({ element, into, x }) => {
                let state = together.get(element);
                if (!state) together.set(element, state = sumOf(states.map((own) => own[element]!), factors));
                const shape = shapeAt(mesh.elements[element]!, state, into);
                return { w: at + slope * (x - from) - shape.v, slope: slope - shape.slope };
            };
        }
    };
}

/** The straight line from a span's first end to the other as they have moved, upwards; for an overhang level with its support. */
interface Chord { readonly at: number; readonly slope: number }

function chordOf(mesh: PieceMesh, states: readonly ElementState[], span: Span, from: number): Chord {
    const v = (x: number): number => {
        const { element, into } = placeAt(mesh, x);
        return shapeAt(mesh.elements[element]!, states[element]!, into).v;
    };
    const at = v(from);
    return { at, slope: span.overhang ? 0 : (v(span.to) - at) / (span.to - from) };
}

function sumOf(states: readonly ElementState[], factors: Float64Array): ElementState {
    const sum = { N: 0, V: 0, M: 0, v: 0, theta: 0, along: 0, down: 0 };
    states.forEach((state, c) => {
        const factor = factors[c]!;
        if (factor === 0) return;
        sum.N += factor * state.N;
        sum.V += factor * state.V;
        sum.M += factor * state.M;
        sum.v += factor * state.v;
        sum.theta += factor * state.theta;
        sum.along += factor * state.along;
        sum.down += factor * state.down;
    });
    return sum;
}
