import { evaluateFormula } from '../../../language/src/index.js';
import { length, ratio, sameDimension, type Quantity } from '../../../language/src/quantity.js';
import type { Comparison, Formula, Model, Requirement } from '../../../language/src/model.js';
import type { Amount, CheckResult, MemberResult, RequirementResult } from '../results.js';

/** Each `require` line against the results that it names. */
export function evaluateRequirements(model: Model, checks: readonly CheckResult[], members: readonly MemberResult[]): RequirementResult[] {
    return model.requirements.map(requirement => evaluateRequirement(requirement, checks, members));
}

function evaluateRequirement(requirement: Requirement, checks: readonly CheckResult[], members: readonly MemberResult[]): RequirementResult {
    const { text, source } = requirement;
    const wantsLength = [requirement.left, requirement.right].some(isLength);
    const unknown: string[] = [];
    const lookup = (subject: string, check: string | undefined): Quantity | undefined => {
        const found = resultOf(subject, check, wantsLength, checks, members);
        if (!found) {
            unknown.push(check ? `${subject}.${check}` : subject);
        }
        return found;
    };
    const left = evaluateFormula(requirement.left, lookup);
    const right = evaluateFormula(requirement.right, lookup);
    if (!left || !right) {
        return { text, requirement, source, holds: undefined, reason: `${unknown.join(', ')} was not computed` };
    }
    if (!sameDimension(left.dimension, right.dimension)) {
        return { text, requirement, source, holds: undefined, reason: 'the two sides are of different kinds' };
    }
    const holds = compare(left.value, requirement.comparison, right.value);
    return { text, requirement, source, holds, left: amount(left), right: amount(right) };
}

/** Over all stages. A subject without a check is the worst of its checks. A deflection is in mm where it is compared with a length, else a utilisation. */
function resultOf(
    subject: string, check: string | undefined, wantsLength: boolean, checks: readonly CheckResult[], members: readonly MemberResult[]
): Quantity | undefined {
    const stages = members.filter(candidate => candidate.name === subject);
    if (wantsLength && stages.length > 0 && (check === 'instant' || check === 'final')) {
        return { value: Math.max(...stages.map(({ deflection }) => Math.abs(deflection[check].value))), dimension: length };
    }
    const own = checks.filter(candidate => candidate.subject === subject && (check === undefined || candidate.check === check));
    return own.length === 0 ? undefined : { value: Math.max(...own.map(candidate => candidate.utilisation)), dimension: ratio };
}

function isLength(formula: Formula): boolean {
    switch (formula.kind) {
        case 'number': return sameDimension(formula.dimension, length);
        case 'result': return false;
        case 'operation': return isLength(formula.left) || isLength(formula.right);
    }
}

function compare(left: number, comparison: Comparison, right: number): boolean {
    switch (comparison) {
        case '<=': return left <= right;
        case '<': return left < right;
        case '>=': return left >= right;
        case '>': return left > right;
        case '==': return left === right;
    }
}

function amount({ value, dimension }: Quantity): Amount {
    return sameDimension(dimension, length) ? { value, unit: 'mm' } : { value: 100 * value, unit: '%' };
}
