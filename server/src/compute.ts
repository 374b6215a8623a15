/** The one way from what the text says to what comes out of it: Evaluation → Results. Pure. */
import type { Evaluation, Finding, Member, Model } from '../../language/src/model.js';
import { analyse, type ElasticProperties } from './analysis/index.js';
import type { Actions, MemberActions } from './analysis/actions.js';
import { createParameters, type Parameters } from './catalog/parameters.js';
import { timberStrength, type TimberStrength } from './catalog/timber.js';
import { memberChecks } from './checks/index.js';
import { runChecks } from './checks/runner.js';
import type { MemberContext } from './checks/check.js';
import { failingCheckFindings, hazardFindings, requirementFindings } from './assemble/findings.js';
import { loadResults } from './assemble/loads.js';
import { masonryBearing } from './assemble/masonry.js';
import { memberResult } from './assemble/member-result.js';
import { evaluateRequirements } from './assemble/requirements.js';
import { unchecked } from './assemble/unchecked.js';
import { judge } from './assemble/verdict.js';
import { findHazards } from './hazards/index.js';
import type { CheckResult, MemberResult, Missing, Results } from './results.js';

export function compute(evaluation: Evaluation): Results {
    const { model } = evaluation;
    const { parameters, findings: parameterFindings } = createParameters(model.values);
    const strengths = strengthsOf(model);
    const actions = analyse(model, {
        member: member => elasticProperties(strengths.of.get(member.name), model, parameters),
        hanger: () => undefined
    }, parameters);

    const checks: CheckResult[] = [];
    const members: MemberResult[] = [];
    const lacking: { member: Member; text: string }[] = [];
    for (const member of model.members) {
        const memberActions = actions.members.find(candidate => candidate.member === member.name);
        const strength = strengths.of.get(member.name);
        if (memberActions && strength) {
            const context = contextOf(model, member, strength, memberActions, actions, parameters);
            const run = runChecks(context, memberChecks);
            checks.push(...run.results);
            lacking.push(...run.lacking.map(text => ({ member, text })));
            members.push(memberResult(context, run.results, model));
        }
    }

    const textFindings = [...evaluation.findings, ...parameterFindings, ...strengths.findings, ...actions.findings];
    const understood = !textFindings.some(finding => finding.severity === 'error');
    const missing = missingMembers(evaluation, members, textFindings);
    const requirements = evaluateRequirements(model, checks, members);
    const hazards = findHazards({ model, actions, checks, members });
    const notChecked = unchecked(model, lacking, requirements);
    const judgement = judge({ understood, checks, requirements, hazards, unchecked: notChecked, missing });
    return {
        file: model.file,
        job: model.job,
        ...judgement,
        understood,
        findings: [
            ...textFindings,
            ...failingCheckFindings(checks, model),
            ...requirementFindings(requirements),
            ...hazardFindings(hazards)
        ],
        checks,
        members,
        hangers: [],
        stages: [],
        missing,
        requirements,
        loads: loadResults(model, actions),
        parameters: parameters.uses(),
        hazards,
        survey: model.survey?.items ?? [],
        access: model.access,
        ledger: model.inputs,
        unchecked: notChecked
    };
}

function contextOf(
    model: Model, member: Member, strength: TimberStrength, memberActions: MemberActions, all: Actions, parameters: Parameters
): MemberContext {
    return {
        member, job: model.job, strength, actions: memberActions, all, parameters,
        loads: model.loads.filter(load => load.member === member.name),
        members: model.members,
        hangers: model.hangers,
        materials: model.materials,
        masonryOf: wall => masonryBearing(model, wall, parameters)
    };
}

/** Mean values, EN 1995-1-1 2.3.2.2 and table 3.2. */
function elasticProperties(strength: TimberStrength | undefined, model: Model, parameters: Parameters): ElasticProperties | undefined {
    return strength && {
        E: strength.E0_mean,
        G: strength.G_mean,
        density: strength.rho_mean,
        kdef: parameters.kdef(strength.product, model.job.serviceClass)
    };
}

/** The strength of each member of timber with a section that this version computes. */
function strengthsOf(model: Model): { of: ReadonlyMap<string, TimberStrength>; findings: readonly Finding[] } {
    const of = new Map<string, TimberStrength>();
    const findings: Finding[] = [];
    const said = new Set<string>();
    for (const member of model.members) {
        const declared = model.materials.find(material => material.name === member.material);
        if (member.section.shape !== 'rectangle' || (declared && declared.kind !== 'timber')) {
            continue;
        }
        const found = timberStrength(declared ?? member.material);
        if ('strength' in found) {
            of.set(member.name, found.strength);
        } else if (!said.has(member.material)) {
            said.add(member.material);
            const source = declared?.kind === 'timber' ? declared.grade?.source ?? declared.source : member.source;
            findings.push({ severity: 'error', code: 'unknown-strength', message: found.problem, source });
        }
    }
    return { of, findings };
}

/** Members that the text names but that have no results, each with the reason. */
function missingMembers(evaluation: Evaluation, members: readonly MemberResult[], findings: readonly Finding[]): Missing[] {
    const computed = new Set(members.map(member => member.name));
    const broken = evaluation.broken.map(({ name, source }) => ({ name, source, reason: 'its text has an error' }));
    const rest = evaluation.model.members
        .filter(member => !computed.has(member.name))
        .map(member => ({ name: member.name, source: member.nameSource, reason: reasonWhyMissing(member, findings, evaluation.model) }));
    return [...broken, ...rest];
}

function reasonWhyMissing(member: Member, findings: readonly Finding[], model: Model): string {
    if (member.section.shape !== 'rectangle') {
        return `its section (${member.section.shape}) is not computed by this version`;
    }
    const material = model.materials.find(candidate => candidate.name === member.material);
    if (material && material.kind !== 'timber') {
        return `a member of ${material.kind} is not computed by this version`;
    }
    const own = findings.find(finding => finding.severity === 'error' && finding.source.start >= member.source.start && finding.source.end <= member.source.end);
    return own?.message ?? 'a member that it stands on has no results';
}
