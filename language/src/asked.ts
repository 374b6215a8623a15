/** What a calculation asks of its results: what has to hold, limits, proof loads, alternatives, and answers to hazards. */
import type { Evidence, Given, Member, Model, SourceRef } from './model.js';
import type { Dimension } from './quantity.js';

/** An expression over results, for `require`. */
export type Formula =
    | { readonly kind: 'number'; readonly value: number; readonly dimension: Dimension; readonly text: string }
    | { readonly kind: 'result'; readonly subject: string; readonly check?: string; readonly source: SourceRef }
    | { readonly kind: 'operation'; readonly operator: '+' | '-' | '*' | '/'; readonly left: Formula; readonly right: Formula };

export type Comparison = '<=' | '<' | '>=' | '>' | '==';

export interface Requirement {
    /** As written, white space folded. */
    readonly text: string;
    readonly left: Formula;
    readonly comparison: Comparison;
    readonly right: Formula;
    readonly source: SourceRef;
}

/** An input whose break-even is asked for. */
export interface BreakEvenLine {
    /** Of an input, as in `Given`. */
    readonly path: string;
    readonly source: SourceRef;
}

/** A proof load: a member, or some of its leaves, on blocks under weights. */
export interface LoadTest {
    readonly name: string;
    readonly title?: string;
    readonly member: string;
    /** The leaves that are tested, from 1; all where it is absent. */
    readonly leaves?: readonly number[];
    /** Stations of the blocks along the member, in order; two at least. */
    readonly blocks: readonly Given[];
    /** Each is all that lies on the member at one time, in the order of writing. */
    readonly weights: readonly TestWeight[];
    readonly readings: readonly TestReading[];
    readonly source: SourceRef;
}

export interface TestWeight {
    /** kg. */
    readonly mass: Given;
    readonly at: Given;
    /** Length along the member that it is spread over, `at` in its middle. */
    readonly spread?: Given;
    readonly source: SourceRef;
}

export interface TestReading {
    /** kg: that of one of the weights, or 0 after unloading. */
    readonly mass: Given;
    /** Downwards. */
    readonly deflection: Given;
    readonly source: SourceRef;
}

/** A whole alternative. */
export interface Option {
    readonly name: string;
    readonly title?: string;
    /** What stands in the place of the members of the same names. */
    readonly replaced: readonly Member[];
    /**
     * The whole calculation with them, as if the file said so: loads reach to their ends, values that are
     * worked out from them follow, and `inputs` and `notComputed` are its own. It has no options, load tests and break-evens.
     */
    readonly model: Model;
    readonly source: SourceRef;
}

/** What was done about a hazard. Whether there is such a hazard is not known here. */
export interface Answer {
    /** Its code, e.g. `services-unknown`. */
    readonly hazard: string;
    /** The one subject that is answered for; every one where it is absent. */
    readonly subject?: string;
    readonly what: string;
    readonly evidence: Evidence;
    readonly source: SourceRef;
}
