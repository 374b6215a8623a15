/** The value of an input at which the first check reaches 100 %. */
import type { Evidence, Given, Model } from '../../../language/src/model.js';
import type { Dimension } from '../../../language/src/quantity.js';
import { passes, type Asking, type Worst } from './asking.js';
import { isGrade, searchGrades, type FoundGrade } from './grades.js';
import { inputOf, type Input } from './input.js';
import { rangeOf } from './range.js';
import { isMonotone, search, type Found } from './search.js';
import { sentenceOf } from './sentence.js';
import type { WorstOf } from './worst.js';

export interface BreakEven {
    readonly path: string;
    /** In base units, or a class. */
    readonly given: number | string;
    readonly dimension?: Dimension;
    readonly evidence: Evidence;
    /** What is given passes, as far as this input goes: the checks of the members that it has to do with. */
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
    /** A check that fails and that this input has nothing to do with. */
    readonly elsewhere?: string;
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
    const steps = breakEvenSteps(model, path, worst);
    for (;;) {
        const step = steps.next();
        if (step.done) return step.value;
    }
}

/** Yields before each evaluation of the model. */
export function* breakEvenSteps(model: Model, path: string, worst: WorstOf): Generator<undefined, BreakEven | undefined> {
    const input = inputOf(model, path);
    if (input === undefined) return undefined;
    const { given } = input;
    yield;
    const whole = worst(model);
    if (isNumber(given)) return said(model, whole, numberAnswer(given, yield* answered(search(given.value, rangeOf(model, given)), input, worst)));
    return isGrade(String(given.value)) ? said(model, whole, gradeAnswer(given, yield* answered(searchGrades(String(given.value)), input, worst))) : undefined;
}

/** Sends a search what it asks for. */
function* answered<V extends number | string, T>(asking: Asking<V, T>, input: Input, worst: WorstOf): Generator<undefined, T> {
    let step = asking.next();
    while (!step.done) {
        yield;
        step = asking.next(worst(input.withValue(step.value)));
    }
    return step.value;
}

const isNumber = (given: Given<number | string>): given is Given => typeof given.value === 'number';

type Answer = Omit<BreakEven, 'sentence' | 'elsewhere'>;

interface Answered {
    readonly answer: Answer;
    /** What is worst beyond the limit, or at the given value. */
    readonly governs: Worst;
}

function said(model: Model, whole: Worst, { answer, governs }: Answered): BreakEven {
    const full = { ...answer, ...(answer.passes && !passes(whole) && whole.check !== '' && { elsewhere: whole.check }) };
    return { ...full, sentence: sentenceOf(model, full, governs.reason) };
}

function about({ path, value, dimension, evidence }: Given<number | string>, at: Worst): Omit<Answer, 'searched' | 'check' | 'stage'> {
    return { path, given: value, ...(dimension && { dimension }), evidence, passes: passes(at), utilisation: at.utilisation, without: at.without };
}

const checkIn = ({ check, stage }: Worst): Pick<Answer, 'check' | 'stage'> => ({ check, ...(stage !== undefined && { stage }) });

function numberAnswer(given: Given, found: Found): Answered {
    const { tried, crossing, by } = found;
    const searched: Searched = { by, from: tried[0]!.value, to: tried.at(-1)!.value, values: tried.length, monotone: isMonotone(found) };
    const governs = crossing?.failing ?? found.given;
    const limit: Partial<Answer> = crossing ? { limit: crossing.passing.value, direction: crossing.passing.value + crossing.failing.value > 2 * given.value ? 'up' : 'down' } : {};
    return { governs, answer: { ...about(given, found.given), ...limit, ...checkIn(governs), searched } };
}

function gradeAnswer(given: Given<number | string>, { given: at, turn, last, values }: FoundGrade): Answered {
    const governs = turn?.failing ?? at;
    const limit: Partial<Answer> = turn ? { limit: last.value, direction: passes(at) ? 'down' : 'up' } : {};
    const searched: Searched = { by: 'list', from: at.value, to: last.value, values, monotone: true };
    return { governs, answer: { ...about(given, at), ...limit, ...checkIn(governs), searched } };
}
