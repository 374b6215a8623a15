import type { Model } from '../../../language/src/model.js';
import type { Actions } from '../analysis/actions.js';
import type { BreakEven } from '../certainty/break-even.js';
import type { CheckResult, Hazard, LoadTestResult, MemberResult } from '../results.js';

/** What a rule may look at. */
export interface HazardContext {
    readonly model: Model;
    readonly actions: Actions;
    readonly checks: readonly CheckResult[];
    readonly members: readonly MemberResult[];
}

/** What is only found after the checks, off the typing path; undefined until it is. */
export interface LateContext {
    readonly model: Model;
    readonly breakEvens?: readonly Pick<BreakEven, 'path' | 'given' | 'limit' | 'passes' | 'sentence'>[];
    readonly loadTests?: readonly LoadTestResult[];
}

/** One thing that can hurt someone or the building: one file, one rule. */
export interface HazardRule<Context = HazardContext> {
    readonly code: string;
    readonly find: (context: Context) => readonly Omit<Hazard, 'code'>[];
}

/** A rule that looks at what is found late, and cannot say anything before. */
export interface LateHazardRule extends HazardRule<LateContext> {
    readonly needs: 'breakEvens' | 'loadTests';
}

/** The survey's lines on a subject, in any case. */
export function surveyItems({ model }: Pick<HazardContext, 'model'>, subject: RegExp) {
    return (model.survey?.items ?? []).filter(item => subject.test(item.subject));
}
