/** What a row says of itself in words; colour and bar only repeat it. */
import type { CheckResult, Verdict } from '../results.js';
import { holds, type State } from '../summary.js';

export type Outcome = 'pass' | 'fail' | 'incomplete';

export const outcomeWords: Readonly<Record<Outcome, string>> = { pass: 'holds', fail: 'FAILS', incomplete: 'incomplete' };

export const verdictWords: Readonly<Record<Verdict, string>> = {
    pass: 'PASSES: every check that was made holds',
    fail: 'FAILS',
    incomplete: 'INCOMPLETE: this is not a pass'
};

export const marks: Readonly<Record<Outcome, string>> = { pass: '✓', fail: '✗', incomplete: '?' };

export const outcomeOf = (check: CheckResult): Outcome => holds(check) ? 'pass' : 'fail';

export function outcomeOfState(state: State): Outcome {
    switch (state) {
        case 'holds': return 'pass';
        case 'fails': return 'fail';
        default: return 'incomplete';
    }
}
