/** What a row says of itself in words; colour and bar only repeat it. */
import type { CheckResult, Results, Verdict } from '../results.js';

export type Outcome = 'pass' | 'fail' | 'incomplete';

export const outcomeWords: Readonly<Record<Outcome, string>> = { pass: 'holds', fail: 'FAILS', incomplete: 'incomplete' };

export const verdictWords: Readonly<Record<Verdict, string>> = {
    pass: 'PASSES: every check that was made holds',
    fail: 'FAILS',
    incomplete: 'INCOMPLETE: this is not a pass'
};

export const marks: Readonly<Record<Outcome, string>> = { pass: '✓', fail: '✗', incomplete: '?' };

export const outcomeOf = (check: CheckResult): Outcome => check.pass && check.utilisation <= 1 ? 'pass' : 'fail';

/** A member's: failing where any of its checks fails, incomplete where something that matters to it was left out. */
export function memberOutcome(results: Results, name: string): Outcome {
    const checks = results.checks.filter(check => check.subject === name);
    if (checks.some(check => outcomeOf(check) === 'fail')) {
        return 'fail';
    }
    const leftOut = results.unchecked.some(item => item.blocking && item.members?.includes(name));
    return leftOut || checks.length === 0 ? 'incomplete' : 'pass';
}
