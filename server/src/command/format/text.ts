/** A job as a person reads it in a terminal: members, checks, hazards, what is open, and the verdict last. */
import type { Results } from '../../results.js';
import { shownAs } from '../../sheet/index.js';
import { prose } from '../../sheet/prose.js';
import { checksTable, hangersTable, membersTable, requirementsTable } from './text-tables.js';
import { certaintyLines, loadTestLines, optionsTable } from './text-asked.js';
import { bandLines, findingLines, hazardLines, stageLines, uncheckedLines } from './text-lists.js';
import type { Format } from './format.js';
import type { Page } from './page.js';
import { plain } from './table.js';

export const text: Format = {
    tellsAsked: true,
    part: (results, page) => shownAs(page.settings.display, () => fileText(results, page)),
    whole: (files, page) => {
        const parts = files.map(({ part }) => part);
        const summary = [`${files.length} files`, ...files.map(file => `  ${verdictLine(file, page)}`)].join('\n');
        return `${[...parts, ...files.length > 1 ? [summary] : []].join('\n\n')}\n`;
    }
};

function fileText(results: Results, page: Page): string {
    const { bold } = page.colors;
    const sections: readonly (readonly [string, string])[] = [
        ['Members', membersTable(results, page)],
        ['Hangers', hangersTable(results, page)],
        ['Order of work', stageLines(results)],
        [checksTitle(results), checksTable(results, page)],
        ['Bands', bandLines(results)],
        ['Requirements', requirementsTable(results, page)],
        ['How sure we are', certaintyLines(results)],
        ['Load tests', loadTestLines(results, page)],
        ['Options', optionsTable(results, page)],
        ['Hazards', hazardLines(results, page)],
        ['Not checked', uncheckedLines(results)],
        ['Findings', findingLines(results, page)]
    ];
    return [
        bold(heading(results)),
        ...sections.filter(([, body]) => body !== '').map(([title, body]) => `${bold(title)}\n${body}`),
        verdictLine(results, page)
    ].join('\n\n');
}

function checksTitle({ stages }: Results): string {
    return stages.length > 1 ? `Checks, each in its worst stage (${stages.at(-1)!.name} where none is named)` : 'Checks';
}

function heading({ file, job }: Results): string {
    if (!job?.title) {
        return file;
    }
    const revision = job.revision ? `, revision ${job.revision.mark}` : '';
    return plain(`${file}: ${job.title}${revision} (${job.basis})`);
}

export function verdictLine(results: Pick<Results, 'file' | 'verdict' | 'verdictReason'>, { colors }: Page): string {
    const paint = { pass: colors.green, fail: colors.red, incomplete: colors.yellow }[results.verdict];
    return `${results.file}: ${paint(colors.bold(results.verdict.toUpperCase()))}, ${plain(prose(results.verdictReason))}`;
}
