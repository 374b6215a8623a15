/** Each member and hanger in one line, as hints, the command's tables and the sheet say it: the worst over all stages. */
import type { Sensitivity } from './certainty/index.js';
import type { CheckResult, HangerResult, MemberResult, OptionResult, Results } from './results.js';
import type { Evidence, SourceRef } from '../../language/src/model.js';
import { deflection, force, percentUp, range, spanRatio } from './sheet/numbers.js';

export type State = 'holds' | 'fails' | 'incomplete' | 'not computed';

interface Summary {
    readonly name: string;
    readonly state: State;
    /** Of every stage, worst first; empty where there are no results. */
    readonly checks: readonly CheckResult[];
    /** The worst check's stage, where it is not the last. */
    readonly stage?: string;
    readonly description?: string;
    /** What its results leave out, or why there are none. */
    readonly open: readonly string[];
}

export interface MemberSummary extends Summary {
    /** `9.9 mm = L/475`: the final deflection that uses most of its span, with its stage where that is not the last. */
    readonly deflection?: string;
    /** In the same stage, instantaneous. */
    readonly instant?: string;
    /** Of every stage, in the order of work; the last is what stays. */
    readonly stages: readonly MemberResult[];
    /** Of the member's name, where it is known, else of the member. */
    readonly source: SourceRef;
}

export interface HangerSummary extends Summary {
    /** `0.0 to 4.2 kN`, over all stages. */
    readonly force: string;
    readonly stages: readonly HangerResult[];
}

export function memberSummaries(results: Results): MemberSummary[] {
    return [...overStages(results.members).map(stages => memberSummary(stages, results)), ...results.missing.map(({ name, reason, source }) => (
        { name, state: 'not computed' as const, checks: [], open: [reason], stages: [], source }
    ))];
}

export function hangerSummaries(results: Results): HangerSummary[] {
    return overStages(results.hangers).map(stages => {
        const forces = stages.flatMap(({ force: { min, max } }) => [min.value, max.value]);
        return {
            ...summary(stages, results),
            force: forceRange(Math.min(...forces), Math.max(...forces)),
            description: stages.at(-1)!.description,
            stages
        };
    });
}

export function subjectSummary(results: Results, name: string): MemberSummary | HangerSummary | undefined {
    return [...memberSummaries(results), ...hangerSummaries(results)].find(summary => summary.name === name);
}

/** `measured: tape, three places`; `assumed: nothing is said`. */
export function evidenceInWords({ word, note, stated }: Evidence): string {
    return [stated ? word : 'assumed: nothing is said', note].filter(part => part !== undefined).join(': ');
}

/** Where it changes the verdict, a line for each that does. */
export function sensitivityInWords({ path, grade, lowerClass, lowModulus }: Sensitivity): readonly string[] {
    return [lowerClass, lowModulus].flatMap(variant => variant?.changesVerdict
        ? [`${path}: ${grade} was guessed; with ${variant.with} ${variant.worst.check} is ${percentUp(variant.worst.utilisation)}, which changes the verdict`] : []);
}

export const optionName = ({ name, title }: OptionResult): string => name === null ? 'as drawn' : title === undefined ? name : `${name}: ${title}`;

/** `1 stop, 2 warnings`; what is only to be known is not counted. */
export function hazardCount({ stop, warn }: OptionResult['hazards']): string {
    const counted = [...stop > 0 ? [`${stop} stop`] : [], ...warn > 0 ? [`${warn} warning${warn === 1 ? '' : 's'}`] : []];
    return counted.join(', ') || 'none to settle';
}

/** kN. */
export function forceRange(min: number, max: number): string {
    return range(force(min), force(max));
}

/** One list for each name, in the order in which they first come; each list in the order of work. */
export function overStages<T extends { readonly name: string }>(items: readonly T[]): T[][] {
    const of = new Map<string, T[]>();
    for (const item of items) {
        const list = of.get(item.name);
        list ? list.push(item) : of.set(item.name, [item]);
    }
    return [...of.values()];
}

function memberSummary(stages: readonly MemberResult[], results: Results): MemberSummary {
    const last = stages.at(-1)!;
    const bent = stages.reduce((most, member) => Math.abs(member.deflection.ratio) < Math.abs(most.deflection.ratio) ? member : most, last);
    return {
        ...summary(stages, results),
        deflection: `${finalDeflection(bent)}${bent === last || bent.stage === null ? '' : ` (${bent.stage})`}`,
        instant: deflection(bent.deflection.instant.value),
        description: last.description,
        stages,
        source: last.nameSource
    };
}

function summary(stages: readonly (MemberResult | HangerResult)[], results: Results): Summary {
    const { name, stage: last } = stages.at(-1)!;
    // Of two that are as bad, the later stage comes first.
    const rank = (check: CheckResult): number => stages.findIndex(({ stage }) => stage === check.stage);
    const checks = results.checks.filter(check => check.subject === name).sort((a, b) => severity(b) - severity(a) || rank(b) - rank(a));
    const open = results.unchecked.filter(item => item.blocking && item.members?.includes(name)).map(item => item.text);
    const stage = checks[0]?.stage;
    return {
        name,
        state: !checks.every(holds) ? 'fails' : open.length > 0 || checks.length === 0 ? 'incomplete' : 'holds',
        checks,
        stage: stage === null || stage === last ? undefined : stage,
        open
    };
}

/** What has no number is worse than any number. */
function severity(check: CheckResult): number {
    return Number.isNaN(check.utilisation) ? Number.MAX_VALUE : Math.min(check.utilisation, Number.MAX_VALUE);
}

/** The worst of each check over the stages, each subject's together. */
export function worstOfEach(checks: readonly CheckResult[]): CheckResult[] {
    return grouped(checks).map(worstOf);
}

/** Of two that are as bad, the later. */
function worstOf(stages: readonly CheckResult[]): CheckResult {
    return stages.reduce((most, check) => severity(check) >= severity(most) ? check : most);
}

/** Each check in its worst stage, then in every other where it does not hold; each subject's together, as they first come. */
export function worthShowing(checks: readonly CheckResult[]): CheckResult[] {
    return grouped(checks).flatMap(stages => {
        const worst = worstOf(stages);
        return [worst, ...stages.filter(check => check !== worst && !holds(check))];
    });
}

/** The stages of each check, the checks of each subject together. */
function grouped(checks: readonly CheckResult[]): CheckResult[][] {
    const subjects = new Map<string, Map<string, CheckResult[]>>();
    for (const check of checks) {
        const own = subjects.get(check.subject) ?? new Map<string, CheckResult[]>();
        subjects.set(check.subject, own.set(check.id, [...own.get(check.id) ?? [], check]));
    }
    return [...subjects.values()].flatMap(own => [...own.values()]);
}

export const holds = ({ pass, utilisation }: CheckResult): boolean => pass && utilisation <= 1;

function finalDeflection({ deflection: { final, ratio } }: MemberResult): string {
    const size = deflection(final.value);
    return Number.isFinite(ratio) && ratio !== 0 ? `${size} = ${spanRatio(ratio)}` : size;
}
