/** Many break-evens, an evaluation of the model at a time, so that whoever runs it can stop, wait and tell how far it is. */
import type { Model } from '../../../language/src/model.js';
import { breakEvenSteps, type BreakEven } from './break-even.js';
import type { WorstOf } from './worst.js';

export interface Progress {
    /** The input that is being varied. */
    readonly path: string;
    /** Inputs that are done with, of how many. */
    readonly done: number;
    readonly of: number;
    /** What was found so far; inputs that are left out or cannot be varied have no entry. */
    readonly found: readonly BreakEven[];
}

interface Asked {
    readonly worst: WorstOf;
    /** Asked before each input whether to leave it out. */
    readonly leave?: (path: string) => boolean;
}

/** Yields before each evaluation and once at the end of each input. To cancel it, ask no further. */
export function* breakEvens(model: Model, paths: readonly string[], { worst, leave }: Asked): Generator<Progress, readonly BreakEven[]> {
    let found: readonly BreakEven[] = [];
    for (const [done, path] of paths.entries()) {
        if (leave?.(path)) continue;
        const steps = breakEvenSteps(model, path, worst);
        let step = steps.next();
        while (!step.done) {
            yield { path, done, of: paths.length, found };
            step = steps.next();
        }
        if (step.value) found = [...found, step.value];
        yield { path, done: done + 1, of: paths.length, found };
    }
    return found;
}
