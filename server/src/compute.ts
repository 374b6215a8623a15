/** The one way from what the text says to what comes out of it: Evaluation → Results. Pure. */
import type { Evaluation, Finding, Member } from '../../language/src/model.js';
import type { Actions } from './analysis/actions.js';
import { analyse } from './analysis/index.js';
import { createParameters, type Parameters } from './catalog/parameters.js';
import { runChecks, runHangerChecks } from './checks/runner.js';
import { contextsOf, type Basis } from './assemble/contexts.js';
import { hangerResult } from './assemble/hanger-result.js';
import { memberResult } from './assemble/member-result.js';
import { propertiesOf } from './assemble/properties.js';
import { subjectsOf } from './assemble/subjects.js';
import { overBands } from './assemble/over-bands.js';
import type { Lacking } from './assemble/unchecked.js';
import { bandsOf } from './certainty/bands.js';
import { conclude } from './conclude.js';
import { accessChecks } from './pieces/access.js';
import { recallBy } from './recall.js';
import type { BandsResult, CheckResult, HangerResult, MemberResult, Missing, Results } from './results.js';

export function compute(evaluation: Evaluation): Results {
    return conclude(findAll(evaluation));
}

/** Everything that a verdict is made from; where inputs are bands, all of it is of each check's worst corner. */
export interface Found {
    readonly evaluation: Evaluation;
    readonly parameters: Parameters;
    readonly actions: Actions;
    readonly checks: readonly CheckResult[];
    readonly members: readonly MemberResult[];
    readonly hangers: readonly HangerResult[];
    readonly missing: readonly Missing[];
    readonly lacking: readonly Lacking[];
    /** What is wrong with the text, or cannot be analysed. */
    readonly findings: readonly Finding[];
    /** Where inputs are bands: what was found with every set of values that was tried. */
    readonly corners?: { readonly all: readonly Found[]; readonly bands: BandsResult };
}

/** The engineering, without what is made of it; with the worst that bands of inputs allow. */
export function findAll(evaluation: Evaluation): Found {
    const bands = bandsOf(evaluation.model);
    return bands.length === 0 ? findOnce(evaluation) : overBands(evaluation, bands, findOnce);
}

/** Of a band its middle. */
function findOnce(evaluation: Evaluation): Found {
    const { model } = evaluation;
    const { parameters, findings: parameterFindings } = createParameters(model.values);
    const subjects = subjectsOf(model, parameters);
    const { properties, findings: springFindings } = propertiesOf(model, subjects.of, parameters);
    const actions = analyse(model, properties, parameters, { recall: recallBy(parameters, model.values) });
    const { checks, members, hangers, lacking } = checkAll({ model, all: actions, parameters, subjects: subjects.of });
    const access = accessChecks(model);
    const findings = [...evaluation.findings, ...parameterFindings, ...subjects.findings, ...springFindings, ...actions.findings];
    return {
        evaluation, parameters, actions, members, hangers, findings,
        checks: [...checks, ...access.checks],
        missing: missingMembers(evaluation, members, findings),
        lacking: [...lacking, ...access.lacking]
    };
}

interface Checked {
    readonly checks: readonly CheckResult[];
    readonly members: readonly MemberResult[];
    readonly hangers: readonly HangerResult[];
    readonly lacking: readonly Lacking[];
}

/** Every member and hanger in every stage in which it is there. */
function checkAll(basis: Basis): Checked {
    const { model, all } = basis;
    const checks: CheckResult[] = [];
    const lacking: Lacking[] = [];
    const members: MemberResult[] = [];
    const contexts = contextsOf(basis);
    for (const actions of all.members) {
        const context = contexts.ofMember(actions);
        if (context) {
            const run = runChecks(context);
            checks.push(...run.results);
            lacking.push(...run.lacking.map(text => ({ subject: context.member.name, members: [context.member.name], text, source: context.member.nameSource })));
            members.push(memberResult(context, run.results, model));
        }
    }
    const hangers: HangerResult[] = [];
    for (const actions of all.hangers ?? []) {
        const context = contexts.ofHanger(actions);
        if (context) {
            const { hanger } = context;
            const run = runHangerChecks(context);
            checks.push(...run.results);
            lacking.push(...run.lacking.map(text => ({ subject: hanger.name, members: [hanger.carries, hanger.from], text, source: hanger.usedAt ?? hanger.source })));
            hangers.push(hangerResult(context, run.results, model));
        }
    }
    lacking.push(...slackProps(basis));
    return { checks, members, hangers, lacking };
}

/** The analysis lets a prop pull, which it cannot: what was found for that stage is then not what happens. */
function slackProps({ model, all }: Basis): Lacking[] {
    return (all.props ?? []).filter(({ slack }) => slack).flatMap(({ member, at, stage }) => {
        const found = model.members.find(({ name }) => name === member);
        return found ? [{
            subject: member, members: [member], source: found.nameSource,
            text: `in stage ${stage} it lifts off its prop at ${(at / 1000).toFixed(2)} m in some combination, which the analysis does not follow`
        }] : [];
    });
}

/** Members that the text names but that have no results, each with the reason. */
function missingMembers(evaluation: Evaluation, members: readonly MemberResult[], findings: readonly Finding[]): Missing[] {
    const computed = new Set(members.map(member => member.name));
    const broken = evaluation.broken.map(({ name, source }) => ({ name, source, reason: 'its text has an error' }));
    const rest = evaluation.model.members
        .filter(member => !computed.has(member.name))
        .map(member => ({ name: member.name, source: member.nameSource, reason: reasonWhyMissing(member, findings) }));
    return [...broken, ...rest];
}

function reasonWhyMissing(member: Member, findings: readonly Finding[]): string {
    const own = findings.find(({ severity, source }) => severity === 'error' && source.file === member.source.file && source.start >= member.source.start && source.end <= member.source.end);
    return own?.message ?? 'something that it meets has no results';
}
