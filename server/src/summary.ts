/** Each member in one line, as hints and the command's table say it. */
import type { CheckResult, MemberResult, Results } from './results.js';
import type { SourceRef } from '../../language/src/model.js';
import { deflection, spanRatio } from './sheet/numbers.js';

export type MemberState = 'holds' | 'fails' | 'incomplete' | 'not computed';

export interface MemberSummary {
    readonly name: string;
    readonly stage: string | null;
    readonly state: MemberState;
    /** Worst first; empty where the member has no results. */
    readonly checks: readonly CheckResult[];
    /** `9.9 mm = L/475`: final deflection. */
    readonly deflection?: string;
    /** What its results leave out, or why there are none. */
    readonly open: readonly string[];
    readonly result?: MemberResult;
    /** Of the member's name, where it is known, else of the member. */
    readonly source: SourceRef;
}

export function memberSummaries(results: Results): MemberSummary[] {
    return [...results.members.map(member => summary(member, results)), ...results.missing.map(({ name, reason, source }) => (
        { name, stage: null, state: 'not computed' as const, checks: [], open: [reason], source }
    ))];
}

function summary(member: MemberResult, results: Results): MemberSummary {
    const checks = results.checks
        .filter(check => check.subject === member.name && check.stage === member.stage)
        .sort((a, b) => severity(b) - severity(a));
    const open = results.unchecked.filter(item => item.blocking && item.members?.includes(member.name)).map(item => item.text);
    return {
        name: member.name,
        stage: member.stage,
        state: checks.some(check => !check.pass) ? 'fails' : open.length > 0 || checks.length === 0 ? 'incomplete' : 'holds',
        checks,
        deflection: finalDeflection(member),
        open,
        result: member,
        source: member.nameSource
    };
}

/** What has no number is worse than any number. */
function severity(check: CheckResult): number {
    return Number.isNaN(check.utilisation) ? Infinity : check.utilisation;
}

function finalDeflection({ deflection: { final, ratio } }: MemberResult): string {
    const size = deflection(final.value);
    return Number.isFinite(ratio) && ratio !== 0 ? `${size} = ${spanRatio(ratio)}` : size;
}
