/** Results as Markdown, for hovers and tooltips. */
import type { CheckResult } from '../results.js';
import { worstOfEach, type HangerSummary, type MemberSummary } from '../summary.js';
import { amount, percentUp } from '../sheet/numbers.js';
import { proseToText, stepToText } from '../sheet/plain-math.js';
import { prose } from '../sheet/prose.js';

/** Text of the file is never markup. */
export function escape(text: string): string {
    return text.replace(/[\\`*_{}[\]()#!|<>~&]/g, '\\$&').replace(/\s+/g, ' ');
}

/** Every check of a member or hanger, worst first, each in its worst stage. */
export function checksTable(summary: MemberSummary | HangerSummary): string {
    const { checks, open, description, name } = summary;
    const worst = new Set(worstOfEach(checks));
    const rows = checks.filter(check => worst.has(check)).map(check => `| ${[
        check.pass ? 'ok' : '**FAILS**', escape(check.check), percentUp(check.utilisation), escape(governs(check)), escape(check.clause)
    ].join(' | ')} |`);
    return [
        `**${escape(name)}**${description ? ` ${escape(prose(description))}` : ''}`,
        rows.length > 0 ? ['| | check | use | governed by | clause |', '|---|---|--:|---|---|', ...rows].join('\n') : '',
        escape(outcome(summary)),
        open.length > 0 ? ['Not checked:', ...open.map(text => `- ${escape(text)}`)].join('\n') : ''
    ].filter(part => part !== '').join('\n\n');
}

function outcome(summary: MemberSummary | HangerSummary): string {
    return 'force' in summary ? `Tension of all rods ${summary.force}` : summary.deflection ? `Final deflection ${summary.deflection}` : '';
}

/** One check with its formulas and numbers. */
export function checkText(check: CheckResult): string {
    const steps = check.steps.map(step => {
        const said = [step.clause === check.clause ? '' : step.clause, step.note && proseToText(step.note)].filter(Boolean).join(', ');
        return `${stepToText(step)}${said && `   (${said})`}`;
    });
    return [
        `**${escape(check.id)}** ${percentUp(check.utilisation)} ${check.pass ? 'holds' : '**FAILS**'} (${escape(check.clause)})`,
        `${escape(amount(check.demand))} of ${escape(amount(check.capacity))} at ${escape(amount(check.at))}, ${escape(governs(check))}`,
        steps.length > 0 ? ['```text', ...steps, '```'].join('\n') : ''
    ].filter(part => part !== '').join('\n\n');
}

/** `Other stages: found 12 %, propped 40 %`. */
export function otherStages(checks: readonly CheckResult[]): string {
    return checks.length === 0 ? '' : `Other stages: ${checks.map(({ stage, utilisation }) => `${escape(stage ?? '')} ${percentUp(utilisation)}`).join(', ')}`;
}

export function governs(check: CheckResult): string {
    const stage = check.stage === null ? '' : `, stage ${check.stage}`;
    return `${check.combination}${check.duration ? ` (${check.duration})` : ''}${stage}${check.corner ? `, ${check.corner.sentence}` : ''}`;
}
