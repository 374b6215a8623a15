import type { Formula } from '../../../../language/src/model.js';
import type { CheckResult } from '../../results.js';
import { subjectSummary } from '../../summary.js';
import { checksTable, checkText, otherStages } from '../markdown.js';
import { holds, type HoverOf } from './place.js';

type ResultReference = Extract<Formula, { kind: 'result' }>;

/** `T2.bending` in a requirement: formula, clause and numbers; `T2` or `H1` alone: all of its checks. */
export const hoverCheck: HoverOf = ({ computed: { results }, offset }) => {
    const reference = results.requirements
        .flatMap(({ requirement }) => [...references(requirement.left), ...references(requirement.right)])
        .find(({ source }) => source.file === results.file && holds(source, offset));
    if (!reference) {
        return undefined;
    }
    const { subject, check, source } = reference;
    const checks = check === undefined ? [] : results.checks.filter(result => result.subject === subject && result.check === check);
    const summary = subjectSummary(results, subject);
    const [worst, ...others] = worstFirst(checks);
    const markdown = worst ? [checkText(worst), otherStages(others)].filter(Boolean).join('\n\n') : summary && checksTable(summary);
    return markdown === undefined ? undefined : { markdown, source };
};

function references(formula: Formula): ResultReference[] {
    switch (formula.kind) {
        case 'number': return [];
        case 'result': return [formula];
        case 'operation': return [...references(formula.left), ...references(formula.right)];
    }
}

function worstFirst(checks: readonly CheckResult[]): CheckResult[] {
    return [...checks].sort((a, b) => b.utilisation - a.utilisation);
}
