import type { Finding, Model } from '../../../language/src/model.js';
import { evidenceInWords } from '../summary.js';
import { percentUp } from '../sheet/numbers.js';
import type { CheckResult, Hazard, RequirementResult } from '../results.js';

/** A check that fails is shown at its member's name, or at its hanger; once, for the stage in which it is worst. */
export function failingCheckFindings(checks: readonly CheckResult[], model: Model): Finding[] {
    const worst = new Map<string, CheckResult>();
    for (const check of checks) {
        if (!check.pass && !(check.utilisation <= (worst.get(check.id)?.utilisation ?? -1))) {
            worst.set(check.id, check);
        }
    }
    return [...worst.values()].map(check => ({
        severity: 'error',
        code: 'check-fails',
        message: `${check.id} ${percentUp(check.utilisation)}${check.stage === null ? '' : ` in stage ${check.stage}`}: ${check.clause}, ${check.combination}${check.corner ? `; ${check.corner.sentence}` : ''}`,
        source: model.members.find(member => member.name === check.subject)?.nameSource
            ?? model.hangers.find(hanger => hanger.name === check.subject)?.usedAt ?? check.source
    }));
}

export function requirementFindings(requirements: readonly RequirementResult[]): Finding[] {
    return requirements.filter(requirement => requirement.holds !== true).map(requirement => ({
        severity: requirement.holds === false ? 'error' : 'warning',
        code: requirement.holds === false ? 'requirement-fails' : 'requirement-not-known',
        message: `require ${requirement.text}: ${requirement.reason ?? 'does not hold'}`,
        source: requirement.source
    }));
}

/** What is answered is still said, with its answer, and asks for nothing more. */
export function hazardFindings(hazards: readonly Hazard[]): Finding[] {
    return hazards.map(({ code, message, action, decider, answer, source }) => ({
        severity: answer ? 'info' : 'hazard',
        code,
        message: answer ? `${message}. Answered: ${answer.what} (${evidenceInWords(answer.evidence)})` : `${message}. ${action} (decides: ${decider})`,
        source,
        ...answer && { related: [{ message: 'the answer is here', source: answer.source }] }
    }));
}
