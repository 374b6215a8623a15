/** From what was found to what is said of it: hazards with their answers, what was left out, and the verdict. Pure. */
import type { Model } from '../../language/src/model.js';
import { failingCheckFindings, guessFindings, hazardFindings, requirementFindings } from './assemble/findings.js';
import { openAsked } from './assemble/asked.js';
import { loadResults } from './assemble/loads.js';
import { strictest, worstHazards } from './assemble/over-bands.js';
import { evaluateRequirements } from './assemble/requirements.js';
import { stageResults } from './assemble/stages.js';
import { unchecked } from './assemble/unchecked.js';
import { judge } from './assemble/verdict.js';
import { allBreakEvens } from './certainty/index.js';
import type { Found } from './compute.js';
import { applyAnswers, findHazards, findLateHazards, isUndecided, type AnsweredHazards } from './hazards/index.js';
import type { Hazard, Results } from './results.js';

/** What is only found after the checks; undefined until it is. */
export type Later = Pick<Results, 'certainty' | 'loadTests'>;

export function conclude(found: Found, later: Later = {}): Results {
    const { evaluation, actions, parameters, checks, members, hangers, missing, lacking, findings, corners } = found;
    const everywhere = corners?.all ?? [found];
    const { model } = evaluation;
    const understood = !findings.some(({ severity }) => severity === 'error');
    const requirements = over(everywhere.map(one => evaluateRequirements(model, one.checks, one.members)), strictest);
    const { hazards, findings: answerFindings } = answeredHazards(model, worstHazards(everywhere.map(hazardsOf)), later);
    const notChecked = unchecked(model, lacking, requirements, openAsked(model, later));
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
            ...answerFindings,
            ...later.certainty ? guessFindings(later.certainty) : []
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
        ...(corners && { bands: corners.bands }),
        unchecked: notChecked,
        breakEvenLines: model.breakEvens,
        ...later
    };
}

/** An answer to what may yet arise waits for it. */
function answeredHazards(model: Model, hazards: readonly Hazard[], { certainty, loadTests }: Later): AnsweredHazards {
    const late = { model, breakEvens: certainty && allBreakEvens(certainty), loadTests };
    return applyAnswers([...hazards, ...findLateHazards(late)], model.answers.filter(({ hazard }) => !isUndecided(hazard, late)));
}

function hazardsOf({ evaluation: { model }, actions, checks, members }: Found): readonly Hazard[] {
    return findHazards({ model, actions, checks, members });
}

/** Of lists of equal length: of what stands at one place in all of them one. */
function over<T>([first, ...others]: readonly (readonly T[])[], choose: (all: readonly T[]) => T): readonly T[] {
    return others.length === 0 ? first! : first!.map((one, i) => choose([one, ...others.map(list => list[i]!)]));
}
