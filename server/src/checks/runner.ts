/** Runs the checks of one subject and keeps the worst outcome of each. */
import type { SourceRef } from '../../../language/src/model.js';
import type { CheckResult, Step } from '../results.js';
import type { Check, HangerContext, MemberContext, Outcome, SteelMemberContext } from './check.js';
import { worstOf } from './governing.js';
import { isSound } from './worse.js';
import { checksOf, hangerChecks } from './index.js';

export interface CheckRun {
    readonly results: readonly CheckResult[];
    /** What was not done, a phrase each. */
    readonly lacking: readonly string[];
}

/**
 * @param checks those of the member's section unless given
 * @param option name of the alternative that is computed, or null for what the file says first
 */
export function runChecks<C extends MemberContext | SteelMemberContext>(
    context: C, checks: readonly Check<C>[] = checksOf(context), option: string | null = null
): CheckRun {
    const { member, actions } = context;
    const { results, lacking } = run({ name: member.name, source: member.source, stage: actions.stage, option }, context, checks);
    const moved = actions.stations.some(({ states }) => states.length > 0);
    return { results, lacking: moved ? lacking : ['bending and shear: there are no forces along the member', ...lacking] };
}

export function runHangerChecks(context: HangerContext, option: string | null = null): CheckRun {
    const { hanger, actions } = context;
    const { results, lacking } = run({ name: hanger.name, source: hanger.source, stage: actions.stage, option }, context, hangerChecks);
    return { results, lacking: actions.states.length > 0 ? lacking : ['there is no force in the hanger', ...lacking] };
}

interface Subject extends Pick<CheckResult, 'stage' | 'option'> {
    readonly name: string;
    readonly source: SourceRef;
}

function run<C>(subject: Subject, context: C, checks: readonly Check<C>[]): CheckRun {
    const results: CheckResult[] = [];
    const lacking = new Set<string>();
    for (const check of checks) {
        check.lacking?.(context).forEach(text => lacking.add(text));
        const worst = worstOf(check.outcomes(context));
        if (worst) {
            results.push(resultOf(subject, check, worst));
            if (!isSound(worst.utilisation)) {
                lacking.add(`${check.name} could not be computed at ${(worst.at / 1000).toFixed(2)} m: a number it needs is missing or below nought`);
            }
        }
    }
    return { results, lacking: [...lacking] };
}

/** Nothing passes but a number from 0 to 1; what is no number, or below nought, counts as Infinity. */
function resultOf<C>({ name, source, stage, option }: Subject, check: Check<C>, outcome: Outcome): CheckResult {
    const utilisation = isSound(outcome.utilisation) ? outcome.utilisation : Infinity;
    let steps: readonly Step[] | undefined;
    return {
        id: `${name}.${check.name}`,
        subject: name,
        check: check.name,
        stage,
        option,
        utilisation,
        pass: utilisation <= 1,
        demand: outcome.demand,
        capacity: outcome.capacity,
        get combination() { return outcome.combination.label; },
        duration: outcome.combination.duration,
        at: { value: outcome.at / 1000, unit: 'm' },
        clause: outcome.clause ?? check.clause,
        // Written out when it is read: nine of ten runs only ask how far it is used.
        get steps() { return steps ??= withLeaf(outcome); },
        source
    };
}

/** The first line names the leaf. */
function withLeaf({ explain, leaf }: Outcome): readonly Step[] {
    const [first, ...rest] = explain();
    return first && leaf !== undefined
        ? [{ ...first, note: [`leaf ${leaf}`, first.note].filter(Boolean).join('; ') }, ...rest]
        : first ? [first, ...rest] : [];
}
