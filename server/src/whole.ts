/** All that a file asks for, also what takes many analyses: proof loads, break-evens, options. Off the typing path. Pure. */
import type { Evaluation } from '../../language/src/model.js';
import { certaintySteps } from './certainty/index.js';
import { compute, findAll } from './compute.js';
import { conclude } from './conclude.js';
import { finished } from './finished.js';
import { optionSteps } from './options/index.js';
import { loadTestResults } from './proof-load/index.js';
import type { Results } from './results.js';
import { varying } from './varying.js';

/** What is being found, and how much of it is done. */
export interface Doing {
    readonly what: string;
    readonly done: number;
    readonly of: number;
}

export function computeWhole(evaluation: Evaluation): Results {
    return finished(wholeSteps(evaluation));
}

/** What the verdict rests on, and no more: checks and proof loads, without break-evens and options. */
export function computeVerdict(evaluation: Evaluation): Results {
    const found = findAll(evaluation);
    const drawn = conclude(found);
    return drawn.understood ? conclude(found, { loadTests: loadTestResults(evaluation.model, found.actions) }) : drawn;
}

/** Yields before each evaluation of the model, so that whoever runs it can stop, wait and tell how far it is. Of a text with errors there is no more than `compute` has. */
export function* wholeSteps(evaluation: Evaluation, found = findAll(evaluation)): Generator<Doing, Results> {
    const drawn = conclude(found);
    if (!drawn.understood) {
        return drawn;
    }
    const { model } = evaluation;
    yield { what: 'load tests', done: 0, of: model.loadTests.length };
    const loadTests = loadTestResults(model, found.actions);
    const certainty = yield* told(certaintySteps(model, varying(found)), ({ path, done, of }) => ({ what: path, done, of }));
    const whole = conclude(found, { loadTests, certainty });
    const options = yield* told(optionSteps(model, whole, option => compute({ model: option, findings: [], broken: [] })), ({ name, done, of }) => ({ what: `option ${name}`, done, of }));
    return { ...whole, options };
}

function* told<P, T>(steps: Generator<P, T>, inWords: (progress: P) => Doing): Generator<Doing, T> {
    let step = steps.next();
    while (!step.done) {
        yield inWords(step.value);
        step = steps.next();
    }
    return step.value;
}
