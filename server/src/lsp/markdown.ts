/** Results as Markdown, for hovers and tooltips. */
import type { CheckResult } from '../results.js';
import type { MemberSummary } from '../summary.js';
import { amount, percentUp } from '../sheet/numbers.js';
import { stepToText } from '../sheet/plain-math.js';

/** Text of the file is never markup. */
export function escape(text: string): string {
    return text.replace(/[\\`*_{}[\]()#!|<>~&]/g, '\\$&').replace(/\s+/g, ' ');
}

/** Every check of a member, worst first. */
export function checksTable({ checks, deflection, open, result, name }: MemberSummary): string {
    const head = `**${escape(name)}**${result ? ` ${escape(result.description)}` : ''}`;
    const rows = checks.map(check => `| ${[
        check.pass ? 'ok' : '**FAILS**', escape(check.check), percentUp(check.utilisation), escape(governs(check)), escape(check.clause)
    ].join(' | ')} |`);
    return [
        head,
        rows.length > 0 ? ['| | check | use | governed by | clause |', '|---|---|--:|---|---|', ...rows].join('\n') : '',
        deflection ? `Final deflection ${escape(deflection)}` : '',
        open.length > 0 ? ['Not checked:', ...open.map(text => `- ${escape(text)}`)].join('\n') : ''
    ].filter(part => part !== '').join('\n\n');
}

/** One check with its formulas and numbers. */
export function checkText(check: CheckResult): string {
    const steps = check.steps.map(step => `${stepToText(step)}${step.clause && step.clause !== check.clause ? `   (${step.clause})` : ''}`);
    return [
        `**${escape(check.id)}** ${percentUp(check.utilisation)} ${check.pass ? 'holds' : '**FAILS**'} (${escape(check.clause)})`,
        `${escape(amount(check.demand))} of ${escape(amount(check.capacity))} at ${escape(amount(check.at))}, ${escape(governs(check))}`,
        steps.length > 0 ? ['```text', ...steps, '```'].join('\n') : ''
    ].filter(part => part !== '').join('\n\n');
}

function governs(check: CheckResult): string {
    const stage = check.stage === null ? '' : `, stage ${check.stage}`;
    return `${check.combination}${check.duration ? ` (${check.duration})` : ''}${stage}`;
}
