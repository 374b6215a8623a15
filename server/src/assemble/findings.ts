import type { Finding, Model } from '../../../language/src/model.js';
import { percentUp } from '../sheet/numbers.js';
import type { CheckResult, Hazard, RequirementResult } from '../results.js';

/** A check that fails is shown at its member's name. */
export function failingCheckFindings(checks: readonly CheckResult[], model: Model): Finding[] {
    return checks.filter(check => !check.pass).map(check => ({
        severity: 'error',
        code: 'check-fails',
        message: `${check.id} ${percentUp(check.utilisation)}: ${check.clause}, ${check.combination}`,
        source: model.members.find(member => member.name === check.subject)?.nameSource ?? check.source
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

export function hazardFindings(hazards: readonly Hazard[]): Finding[] {
    return hazards.map(hazard => ({
        severity: 'hazard',
        code: hazard.code,
        message: `${hazard.message}. ${hazard.action} (decides: ${hazard.decider})`,
        source: hazard.source
    }));
}
