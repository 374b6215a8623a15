import type { Finding, Severity, SourceRef } from '../../../../language/src/model.js';
import type { Hazard, Results } from '../../results.js';
import { evidenceInWords, worstOfEach } from '../../summary.js';
import type { Page } from './page.js';
import { plain } from './table.js';
import { prose } from '../../sheet/prose.js';

const order: readonly Hazard['severity'][] = ['stop', 'warn', 'note'];

/** Worst first, each with what to do and who decides. */
export function hazardLines(results: Results, { colors }: Page): string {
    const paint = { stop: colors.red, warn: colors.yellow, note: colors.cyan };
    return order.flatMap(severity => results.hazards.filter(hazard => hazard.severity === severity))
        .map(({ severity, subject, message, action, decider, source, answer }) => [
            `  ${paint[severity](severity.toUpperCase().padEnd(4))}  ${plain(`${subject}: ${prose(message)}`)}`,
            `        ${plain(`${prose(action)} Decides: ${decider}. ${place(source)}`)}`,
            ...answer ? [`        ${colors.green('Answered:')} ${plain(`${answer.what} (${evidenceInWords(answer.evidence)}). ${place(answer.source)}`)}`] : []
        ].join('\n'))
        .join('\n');
}

/** Numbered, as it is worked down. */
export function stageLines({ stages }: Results): string {
    return stages.map(({ name, title, lines }, i) => `  ${i + 1}. ${plain(`${name}${title ? ` (${title})` : ''}: ${prose(lines.join('; '))}`)}`).join('\n');
}

/** How bands of inputs were gone through, and the worst corner of each check that feels them. */
export function bandLines({ bands, checks }: Results): string {
    return bands === undefined ? '' : [
        `  ${plain(bands.sentence)}`,
        ...worstOfEach(checks).flatMap(({ id, corner }) => corner ? [`  - ${plain(`${id}: ${corner.sentence}`)}`] : [])
    ].join('\n');
}

export function uncheckedLines(results: Results): string {
    return results.unchecked.map(item => `  - ${plain(prose(item.text))}${item.source ? ` (${place(item.source)})` : ''}`).join('\n');
}

const severities: readonly Severity[] = ['error', 'warning', 'info'];

/** `file:line:column: error: message [code]`, as editors and terminals link it; hazards have their own section. */
export function findingLines(results: Results, page: Page): string {
    const told = new Set(results.hazards.map(({ code }) => code));
    return severities.flatMap(severity => results.findings.filter(finding => finding.severity === severity && !told.has(finding.code)))
        .map(finding => findingLine(finding, page)).join('\n');
}

export function findingLine({ severity, code, message, source }: Finding, { colors }: Page): string {
    const paint = { error: colors.red, warning: colors.yellow, info: colors.cyan, hazard: colors.yellow };
    return `  ${place(source)}: ${paint[severity](severity)}: ${plain(message)} [${code}]`;
}

function place({ file, line, column }: SourceRef): string {
    return `${file}:${line}:${column}`;
}
