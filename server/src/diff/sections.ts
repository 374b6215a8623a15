import type { Comparison } from './comparison.js';
import { checkRow, elementRows, hazardRow, pieceRow, uncheckedRow, type Row } from './lines.js';

export interface Section {
    readonly title: string;
    readonly rows: readonly Row[];
    /** Of what is too small to print. */
    readonly note?: string;
}

/** What there is to tell of one calculation, in the order of reading; empty sections are left out. */
export function sectionsOf({ verdict, revision, inputs, checks, hazards, unchecked, pieces, errors }: Comparison): readonly Section[] {
    const said = (side: Comparison['verdict']['before']): string => side === undefined ? '' : `${side.understood ? side.verdict.toUpperCase() : 'HAS ERRORS'}: ${side.reason}`;
    const isNews = verdict.before?.verdict !== verdict.after?.verdict || verdict.before?.understood !== verdict.after?.understood;
    const mistakes = (errors.before ?? []).join('\n') === (errors.after ?? []).join('\n') ? [] : [
        ...(errors.before ?? []).map(text => ({ what: 'error', before: text, after: '' })), ...(errors.after ?? []).map(text => ({ what: 'error', before: '', after: text }))
    ];
    const all: readonly Section[] = [
        { title: 'Verdict', rows: isNews ? [{ what: 'verdict', before: said(verdict.before), after: said(verdict.after) }] : [] },
        { title: 'Errors of the text', rows: mistakes },
        { title: 'What went in', rows: [
            ...revision.before === revision.after ? [] : [{ what: 'revision', before: revision.before ?? '', after: revision.after ?? '' }],
            ...inputs.flatMap(({ element, changes }) => elementRows(element, changes.filter(({ what }) => !(element === 'job' && what === 'revision mark'))))
        ] },
        outcomes(checks),
        { title: 'Hazards', rows: hazards.map(hazardRow) },
        { title: 'Not checked', rows: unchecked.map(uncheckedRow) },
        { title: 'Pieces', rows: pieces.map(pieceRow) }
    ];
    return all.filter(({ rows, note }) => rows.length > 0 || note !== undefined);
}

/** Two that print alike tell a reader nothing. */
function outcomes(checks: Comparison['checks']): Section {
    const rows = checks.map(checkRow);
    const told = rows.filter(({ before, after }) => before !== after);
    const small = rows.length - told.length;
    return { title: 'What came out', rows: told, note: small === 0 ? undefined : `${small} ${small === 1 ? 'check' : 'checks'} by less than 1 %` };
}
