/** Results in words, for the editor's trees, its tests and its tools. */
import type { Connection } from 'vscode-languageserver';
import { calculationRequest, jobsRequest, overviewRequest, type CalculationParams, type Overview, type OverviewParams, type OverviewSubject } from '../protocol.js';
import type { SourceRef } from '../../../language/src/model.js';
import type { Results } from '../results.js';
import { hangerSummaries, memberSummaries, worstOfEach, type HangerSummary, type MemberSummary } from '../summary.js';
import { percentUp } from '../sheet/numbers.js';
import type { AnyResults } from './any-results.js';
import { orCancelled } from './cancelled.js';
import { hintLabel } from './inlay-hints.js';
import { checkText, governs, otherStages } from './markdown.js';
import type { WorkspaceFolders } from './workspace-folders.js';

export function addOverviewHandlers(connection: Connection, results: AnyResults, folders: WorkspaceFolders): void {
    connection.onRequest(jobsRequest, () => folders.list());
    connection.onRequest(overviewRequest, ({ uri }: OverviewParams, cancellation) =>
        orCancelled(results.of(uri, cancellation).then((found): Overview | null => found ? overviewOf(uri, found.results) : null)));
    connection.onRequest(calculationRequest, ({ uri, id }: CalculationParams, cancellation) =>
        orCancelled(results.of(uri, cancellation).then(found => found ? calculationOf(found.results, id) : null)));
}

export function overviewOf(uri: string, results: Results): Overview {
    const line = (source: SourceRef): number => source.file === results.file ? source.line : 1;
    return {
        uri,
        title: results.job?.title || results.file,
        verdict: results.verdict,
        verdictReason: results.verdictReason,
        subjects: [
            ...memberSummaries(results).map(member => subjectOf(member, hintLabel(member), line(member.source))),
            ...hangerSummaries(results).map(hanger => {
                const { usedAt, source } = hanger.stages.at(-1)!;
                return subjectOf(hanger, `${worstInWords(hanger)} · ${hanger.force}`, line(usedAt ?? source));
            })
        ],
        hazards: results.hazards.map(({ source, answer, ...hazard }) => ({ ...hazard, answer: answer?.what, line: line(source) })),
        requirements: results.requirements.map(({ text, holds, reason, source }) => ({ text, holds, reason, line: line(source) })),
        unchecked: results.unchecked.map(({ text }) => text),
        errors: results.findings.filter(({ severity, code }) => severity === 'error' && code !== 'check-fails' && code !== 'requirement-fails')
            .map(({ message, source }) => ({ message, line: line(source) }))
    };
}

function subjectOf(summary: MemberSummary | HangerSummary, headline: string, line: number): OverviewSubject {
    const { name, description = '', state, checks } = summary;
    return {
        name, description, state, headline, line,
        checks: worstOfEach(checks).map(check => ({
            id: check.id, check: check.check, use: percentUp(check.utilisation), pass: check.pass, clause: check.clause, governs: governs(check)
        }))
    };
}

function worstInWords({ checks: [worst] }: HangerSummary): string {
    return worst ? `${worst.check} ${percentUp(worst.utilisation)}${worst.pass ? '' : ' FAILS'}` : 'no checks';
}

function calculationOf(results: Results, id: string): string | null {
    const [worst, ...others] = results.checks.filter(check => check.id === id).sort((a, b) => b.utilisation - a.utilisation);
    return worst ? [checkText(worst), otherStages(others)].filter(Boolean).join('\n\n') : null;
}
