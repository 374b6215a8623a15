/** From what was found to what is said of it: hazards with their answers, what was left out, and the verdict. Pure. */
import { failingCheckFindings, hazardFindings, requirementFindings } from './assemble/findings.js';
import { loadResults } from './assemble/loads.js';
import { evaluateRequirements } from './assemble/requirements.js';
import { stageResults } from './assemble/stages.js';
import { unchecked } from './assemble/unchecked.js';
import { judge } from './assemble/verdict.js';
import type { Found } from './compute.js';
import { applyAnswers, findHazards } from './hazards/index.js';
import type { Results } from './results.js';

export function conclude({ evaluation, actions, parameters, checks, members, hangers, missing, lacking, findings }: Found): Results {
    const { model } = evaluation;
    const understood = !findings.some(({ severity }) => severity === 'error');
    const requirements = evaluateRequirements(model, checks, members);
    const answered = applyAnswers(findHazards({ model, actions, checks, members }), model.answers);
    const { hazards } = answered;
    const notChecked = unchecked(model, lacking, requirements);
    return {
        file: model.file,
        job: model.job,
        ...judge({ understood, checks, requirements, hazards, unchecked: notChecked, missing }),
        understood,
        findings: [
            ...findings,
            ...failingCheckFindings(checks, model),
            ...requirementFindings(requirements),
            ...hazardFindings(hazards),
            ...answered.findings
        ],
        checks,
        members,
        hangers,
        stages: stageResults(model),
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
