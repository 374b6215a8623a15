/** What a search found, as an answer. */
import type { Given } from '../../../language/src/model.js';
import { passes, type Worst } from './asking.js';
import type { BreakEven, Searched } from './break-even.js';
import type { FoundGrade } from './grades.js';
import { isMonotone, type Found } from './search.js';

export interface Answered {
    readonly answer: Omit<BreakEven, 'sentence' | 'aside'>;
    /** What is worst at or beyond the limit, or at the given value. */
    readonly governs: Worst;
}

export function numberAnswer(given: Given, found: Found): Answered {
    const { tried, crossing, by } = found;
    const searched: Searched = { by, from: tried[0]!.value, to: tried.at(-1)!.value, values: tried.length, monotone: isMonotone(found) };
    const direction = crossing && crossing.passing.value + crossing.failing.value > 2 * given.value ? 'up' : 'down';
    return answered(given, found.given, crossing?.governing ?? found.given, searched, crossing && { limit: crossing.passing.value, direction });
}

export function gradeAnswer(given: Given<number | string>, { given: at, turn, last, values }: FoundGrade): Answered {
    const searched: Searched = { by: 'list', from: at.value, to: last.value, values, monotone: true };
    return answered(given, at, turn?.failing ?? at, searched, turn && { limit: last.value, direction: passes(at) ? 'down' : 'up' });
}

function answered(
    { path, value, dimension, evidence, band }: Given<number | string>, at: Worst, governs: Worst, searched: Searched,
    limit: Pick<BreakEven, 'limit' | 'direction'> | undefined
): Answered {
    const { check, stage } = governs;
    return {
        governs,
        answer: {
            path, given: value, ...(dimension && { dimension }), evidence, ...(band && { band }), passes: passes(at), utilisation: at.utilisation, without: at.without,
            ...limit, check, ...(stage !== undefined && { stage }), searched
        }
    };
}
