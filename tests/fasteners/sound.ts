import { isProblem, type Problem } from '../../server/src/checks/verdict.js';

/** What was computed; the test fails with the problem's words where it was not. */
export function sound<T extends object>(result: T | Problem): T {
    if (isProblem(result)) {
        throw new Error(result.problem);
    }
    return result;
}

export const degrees = (angle: number): number => angle * Math.PI / 180;
