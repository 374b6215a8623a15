import type { Finding, Model } from '../../../language/src/model.js';
import { evidenceInWords } from '../summary.js';
import type { Certainty } from '../certainty/certainty.js';
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

/** Of what is given, more or less, within which a guess counts as close. Common practice, no source. */
const close = 0.2;

/** A guess that holds, and would not if it were a little off; a guessed grade that holds, and one class lower does not. */
export function guessFindings({ ledger, sensitivities }: Certainty): Finding[] {
    const near = ledger.filter(({ guess, margin }) => guess && margin !== undefined && margin >= 0 && margin <= close).map(({ input, breakEvens }) => ({
        severity: 'info' as const, code: 'guess-close', source: input.source,
        message: `${input.path} was only ${input.evidence.word}, and a check fails soon: ${breakEvens.filter(({ limit }) => limit !== undefined).map(({ sentence }) => sentence).join('; ')}`
    }));
    const lower = sensitivities.flatMap(({ path, grade, lowerClass, lowModulus }) => [lowerClass, lowModulus].flatMap(variant => {
        const source = ledger.find(({ input }) => input.path === path)?.input.source;
        return variant?.changesVerdict && source ? [{
            severity: 'info' as const, code: 'grade-decides', source,
            message: `the verdict hangs on ${grade}, which was guessed: with ${variant.with} ${variant.worst.check} is ${percentUp(variant.worst.utilisation)}`
        }] : [];
    }));
    return [...near, ...lower];
}
