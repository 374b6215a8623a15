/** What came out otherwise. */
import type { Model } from '../../../language/src/model.js';
import { piecesOf } from '../pieces/pieces.js';
import type { CheckResult, Hazard, Unchecked } from '../results.js';
import type { Change, CheckChange, HazardChange, PieceChange } from './comparison.js';

/** Far above the noise of arithmetic in another order, far below what is printed. */
const noise = 1e-6;

export function changedChecks(before: readonly CheckResult[], after: readonly CheckResult[]): CheckChange[] {
    const outcome = (check: CheckResult | undefined) => check && { utilisation: check.utilisation, pass: check.pass };
    return paired(before, after, ({ id, stage, option }) => JSON.stringify([id, stage, option]))
        .filter(({ one, other }) => !one || !other || one.pass !== other.pass || !isNear(one.utilisation, other.utilisation))
        .map(({ one, other }) => {
            const { id, stage, option } = (other ?? one)!;
            return { id, stage, option, before: outcome(one), after: outcome(other) };
        })
        .sort((a, b) => Number(isWorse(b)) - Number(isWorse(a)) || size(b) - size(a));
}

const isWorse = ({ before, after }: CheckChange): boolean => after?.pass === false && before?.pass !== false;
const isNear = (a: number, b: number): boolean => Object.is(a, b) || Math.abs(a - b) <= noise * Math.max(Math.abs(a), Math.abs(b), noise);

/** What comes and what goes counts in full; what has no number more than any. */
function size({ before, after }: CheckChange): number {
    const by = Math.abs((after?.utilisation ?? 0) - (before?.utilisation ?? 0));
    return Number.isNaN(by) ? Number.MAX_VALUE : Math.min(by, Number.MAX_VALUE);
}

export function changedHazards(before: readonly Hazard[], after: readonly Hazard[]): HazardChange[] {
    const told = (hazard: Hazard | undefined) => hazard && { severity: hazard.severity, message: hazard.message, answered: hazard.answer !== undefined };
    return paired(before, after, ({ code, subject }) => JSON.stringify([code, wordsOf(subject)]))
        .map(({ one, other }) => ({ code: (other ?? one)!.code, subject: (other ?? one)!.subject, before: told(one), after: told(other) }))
        .filter(({ before: one, after: other }) => !one || !other || one.severity !== other.severity || one.answered !== other.answered || wordsOf(one.message) !== wordsOf(other.message));
}

/** Names are told in the order of the text, which means nothing. */
const wordsOf = (text: string): string => text.split(/[\s,]+/).sort().join(' ');

export function changedUnchecked(before: readonly Unchecked[], after: readonly Unchecked[]): Change<string>[] {
    return paired(before, after, ({ text }) => wordsOf(text))
        .filter(({ one, other }) => !one || !other)
        .map(({ one, other }) => ({ before: one?.text, after: other?.text }));
}

export function changedPieces(before: Model | undefined, after: Model | undefined): PieceChange[] {
    const pieces = (model: Model | undefined) => model ? piecesOf(model).map(({ mark, description, length, mass }) => ({ mark, description, length, mass })) : [];
    return paired(pieces(before), pieces(after), ({ mark }) => mark)
        .map(({ one, other }) => ({ mark: (other ?? one)!.mark, before: one, after: other }))
        .filter(change => JSON.stringify(change.before) !== JSON.stringify(change.after));
}

/** Those of one key together, as they come after, then what has gone; several of one key in turn. */
function paired<T>(before: readonly T[], after: readonly T[], keyOf: (item: T) => string): { readonly one?: T; readonly other?: T }[] {
    const old = new Map<string, T[]>();
    before.forEach(item => old.set(keyOf(item), [...old.get(keyOf(item)) ?? [], item]));
    const kept = after.map(other => ({ one: old.get(keyOf(other))?.shift(), other }));
    return [...kept, ...[...old.values()].flat().map(one => ({ one, other: undefined }))];
}
