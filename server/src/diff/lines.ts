/** Each kind of change in words, the same in the terminal, in Markdown and in HTML. */
import { percentUp, significant } from '../sheet/numbers.js';
import type { Change, CheckChange, HazardChange, InputChange, PieceChange } from './comparison.js';

/** A change with its two sides, one of them empty where something comes or goes. */
export interface Row {
    readonly what: string;
    readonly before: string;
    readonly after: string;
}

export const inputRow = ({ what, before, after }: InputChange): Row => ({ what, before: before ?? 'not said', after: after ?? 'not said' });

/** Of a thing that comes or goes: `added`, `removed`; what it is stands behind. */
export function elementRows(element: string, changes: readonly InputChange[]): Row[] {
    return changes.map(change => change.what !== '' || (change.before !== undefined && change.after !== undefined)
        ? { ...inputRow(change), what: `${element} ${change.what}`.trim() }
        : { what: element, before: change.before ?? '', after: change.after ?? '' });
}

export function checkRow({ id, stage, option, before, after }: CheckChange): Row {
    const side = (outcome: CheckChange['before']): string => outcome === undefined ? 'not checked' : `${percentUp(outcome.utilisation)}${outcome.pass ? '' : ' FAILS'}`;
    const where = [stage === null ? '' : ` in ${stage}`, option === null ? '' : `, option ${option}`].join('');
    return { what: `${id}${where}`, before: side(before), after: side(after) };
}

export function hazardRow({ code, subject, before, after }: HazardChange): Row {
    const side = (hazard: HazardChange['before']): string => hazard === undefined ? '' : `${hazard.severity.toUpperCase()}${hazard.answered ? ' (answered)' : ''}: ${hazard.message}`;
    return { what: `${subject}, ${code}`, before: side(before), after: side(after) };
}

export const uncheckedRow = ({ before, after }: Change<string>): Row => ({ what: 'not checked', before: before ?? '', after: after ?? '' });

export function pieceRow({ mark, before, after }: PieceChange): Row {
    const side = (piece: PieceChange['before']): string => piece === undefined ? ''
        : `${piece.description}, ${Math.round(piece.length)} mm${piece.mass === undefined ? '' : `, ${significant(piece.mass)} kg`}`;
    return { what: mark, before: side(before), after: side(after) };
}

export const presenceWords = { both: '', added: 'new file', removed: 'file removed' } as const;

/** `3 files: 1 changed, 2 unchanged`. */
export function tally(all: number, changed: number): string {
    return `${all} ${all === 1 ? 'calculation' : 'calculations'} compared: ${changed} changed, ${all - changed} unchanged`;
}
