/** Runs the checks of one member and keeps the worst outcome of each. */
import type { CheckResult } from '../results.js';
import type { MemberCheck, MemberContext, Outcome } from './check.js';
import { isSound, worstOf } from './governing.js';

export interface CheckRun {
    readonly results: readonly CheckResult[];
    /** What was not done, a phrase each. */
    readonly lacking: readonly string[];
}

/** @param option name of the alternative that is computed, or null for what the file says first */
export function runChecks(context: MemberContext, checks: readonly MemberCheck[], option: string | null = null): CheckRun {
    const results: CheckResult[] = [];
    const lacking: string[] = [];
    if (!context.actions.stations.some(({ states }) => states.length > 0)) {
        lacking.push('bending and shear: there are no forces along the member');
    }
    for (const check of checks) {
        lacking.push(...check.lacking?.(context) ?? []);
        const worst = worstOf(check.outcomes(context));
        if (worst) {
            results.push(resultOf(context, check, worst, option));
            if (!isSound(worst.utilisation)) {
                lacking.push(`${check.name} could not be computed at ${(worst.at / 1000).toFixed(2)} m: a number it needs is missing or below nought`);
            }
        }
    }
    return { results, lacking };
}

/** Nothing passes but a number from 0 to 1; what is no number, or below nought, counts as Infinity. */
function resultOf(context: MemberContext, check: MemberCheck, outcome: Outcome, option: string | null): CheckResult {
    const { member, actions } = context;
    const utilisation = isSound(outcome.utilisation) ? outcome.utilisation : Infinity;
    return {
        id: `${member.name}.${check.name}`,
        subject: member.name,
        check: check.name,
        stage: actions.stage,
        option,
        utilisation,
        pass: utilisation <= 1,
        demand: outcome.demand,
        capacity: outcome.capacity,
        combination: outcome.combination.label,
        duration: outcome.combination.duration,
        at: { value: outcome.at / 1000, unit: 'm' },
        clause: check.clause,
        steps: outcome.explain(),
        source: member.source
    };
}
