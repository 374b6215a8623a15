/** The value of an input at which the first check reaches 100 %. */
import type { Evidence, Given, Model } from '../../../language/src/model.js';
import type { Dimension } from '../../../language/src/quantity.js';
import { finished } from '../finished.js';
import { gradeAnswer, numberAnswer, type Answered } from './answer.js';
import type { Asking, Worst } from './asking.js';
import { gradesAbove, isGrade, searchGrades } from './grades.js';
import { inputOf, type Input } from './input.js';
import { rangeOf, usual } from './range.js';
import { search } from './search.js';
import { sentenceOf } from './sentence.js';
import type { WorstOf } from './worst.js';

export interface BreakEven {
    readonly path: string;
    /** In base units, or a class. */
    readonly given: number | string;
    readonly dimension?: Dimension;
    readonly evidence: Evidence;
    /** Where only a band is known: `given` is its worse end. */
    readonly band?: Given['band'];
    /** What is given passes, as far as this input goes: the checks of the members that it has to do with, but for those that are set aside. */
    readonly passes: boolean;
    /**
     * Where the verdict turns, undefined where that is nowhere within reach. Of a number the last value that
     * passes, on the way out where what is given passes, on the way back where not; of a grade the
     * first class that fails, or that passes where the given one does not.
     */
    readonly limit?: number | string;
    /** Where the limit lies from what is given. */
    readonly direction?: 'up' | 'down';
    /** The check that is not held beyond the limit; the worst one at the given value where there is no limit. */
    readonly check: string;
    /** In which stage, where the file has some. */
    readonly stage?: string;
    /** Of checks, at what is given; NaN where nothing was computed for want of results. */
    readonly utilisation: number;
    /** What this input has to do with and that has no results: it is left out. */
    readonly without: readonly string[];
    /** Checks that fail at what is given and that no value of this input mends, the worst first: the limit is that of the others. */
    readonly aside: readonly string[];
    readonly searched: Searched;
    /** `passes until the top loss is 52 mm; 35 mm was probed; bending governs`. */
    readonly sentence: string;
}

export interface Searched {
    /** `bracket`: more of it is never worse. `grid`: the nearest turn between neighbouring values that were tried. */
    readonly by: 'bracket' | 'grid' | 'list';
    readonly from: number | string;
    readonly to: number | string;
    readonly values: number;
    /** The worst utilisation only rose or only fell on each side of what is given, over the values that were tried. */
    readonly monotone: boolean;
}

/** Undefined where no input has this path, or none that can be varied. */
export function breakEven(model: Model, path: string, { worst }: { readonly worst: WorstOf }): BreakEven | undefined {
    return finished(breakEvenSteps(model, path, worst));
}

/** Yields before each evaluation of the model. */
export function* breakEvenSteps(model: Model, path: string, worst: WorstOf): Generator<undefined, BreakEven | undefined> {
    const known = inputOf(model, path);
    const input = known && (yield* fromWorseEnd(known, worst));
    if (input === undefined || (typeof input.given.value === 'string' && !isGrade(input.given.value))) return undefined;
    const given = yield* at(input, input.given.value, worst);
    yield;
    const elsewhere = worst(model).failing.filter((id) => !given.failing.includes(id));
    const aside = new Set(given.failing);
    const whole = aside.size === 0 || (yield* isPromising(model, input, given, worst)) ? yield* answerOf(model, input, worst) : undefined;
    if (whole && (aside.size === 0 || whole.answer.limit !== undefined)) return said(model, whole, elsewhere);
    const others = yield* answerOf(model, input, (changed) => worst(changed, aside));
    return others.answer.check === '' ? said(model, whole ?? (yield* answerOf(model, input, worst)), elsewhere) : said(model, others, [...aside, ...elsewhere]);
}

/** Of a band the end that is worse stands for what is given: a pass is never that of the middle. */
function* fromWorseEnd({ given, withValue }: Input, worst: WorstOf): Generator<undefined, Input> {
    if (given.band === undefined) return { given, withValue };
    const { low, high } = given.band;
    const [atLow, atHigh] = [yield* at({ given, withValue }, low, worst), yield* at({ given, withValue }, high, worst)];
    return { given: { ...given, value: atLow.utilisation > atHigh.utilisation ? low : high }, withValue };
}

function* at(input: Input, value: number | string, worst: WorstOf): Generator<undefined, Worst> {
    yield;
    return worst(input.withValue(value));
}

function* answerOf(model: Model, input: Input, worst: WorstOf): Generator<undefined, Answered> {
    const { given } = input;
    return isNumber(given) ? numberAnswer(given, yield* answered(search(given.value, rangeOf(model, given)), input, worst))
        : gradeAnswer(given, yield* answered(searchGrades(String(given.value)), input, worst));
}

/** Sends a search what it asks for. */
function* answered<V extends number | string, T>(asking: Asking<V, T>, input: Input, worst: WorstOf): Generator<undefined, T> {
    let step = asking.next();
    while (!step.done) step = asking.next(yield* at(input, step.value, worst));
    return step.value;
}

const isNumber = (given: Given<number | string>): given is Given => typeof given.value === 'number';

/** What fails is worth a search only where a bound brings it a quarter of the way to 100 %; a station may do so in between. */
function* isPromising(model: Model, { given, withValue }: Input, { utilisation }: Worst, worst: WorstOf): Generator<undefined, boolean> {
    const range = isNumber(given) ? rangeOf(model, given) : undefined;
    if (range && range.steps > usual) return true;
    const bounds = range ? (range.steps === 1 ? [range.worse === 'up' ? range.low : range.high] : [range.low, range.high]) : gradesAbove(String(given.value)).slice(-1);
    for (const bound of bounds) {
        if ((yield* at({ given, withValue }, bound, worst)).utilisation < 1 + 0.75 * (utilisation - 1)) return true;
    }
    return false;
}

function said(model: Model, { answer, governs }: Answered, aside: readonly string[]): BreakEven {
    const full = { ...answer, aside };
    return { ...full, sentence: sentenceOf(model, full, governs.reason) };
}
