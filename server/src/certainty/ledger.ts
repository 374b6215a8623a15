/** Every input of consequence with how it is known; guesses by how near they are to what they must not be. */
import type { Given, Model } from '../../../language/src/model.js';
import type { BreakEven } from './break-even.js';
import { strengthIn } from './grades.js';
import { inputOf } from './input.js';

export interface LedgerEntry {
    readonly input: Given<number | string>;
    /** Judged or assumed. */
    readonly guess: boolean;
    /** Of the input, or of each side of a section; none for what was measured and nobody asked about. */
    readonly breakEvens: readonly BreakEven[];
    /**
     * The least distance from what is given to a break-even, as a part of what is given: 0.5 is half as much again;
     * below nought where the given value fails already. Undefined where no break-even is within reach.
     */
    readonly margin?: number;
}

export const isGuess = ({ evidence }: Given<number | string>): boolean => evidence.word === 'judged' || evidence.word === 'assumed';

/** Guesses first, by how near they are to their break-even, whether from the side that passes or not; then the rest, in the order of the file. */
export function ledger(model: Model, breakEvens: readonly BreakEven[]): readonly LedgerEntry[] {
    const byPath = new Map(breakEvens.map((one) => [one.path, one]));
    const entries = model.inputs.map((input) => entryOf(input, pathsOf(model, input).flatMap((path) => byPath.get(path) ?? [])));
    const guesses = entries.filter(({ guess }) => guess).sort((a, b) => distanceOf(a) - distanceOf(b) || 0);
    return [...guesses, ...entries.filter(({ guess }) => !guess)];
}

/** The inputs whose break-evens a ledger needs: all judged and assumed ones that can be varied. */
export function guessedPaths(model: Model): readonly string[] {
    return [...new Set(model.inputs.filter(isGuess).flatMap((input) => pathsOf(model, input)))];
}

/** A section is told of in one line, and varied by its sides. */
function pathsOf(model: Model, { path }: Given<number | string>): readonly string[] {
    const section = model.members.find(({ name }) => path === `${name}.section`)?.section;
    const sides = section === undefined ? [path] : 'depth' in section ? [section.depth.path, section.breadth.path] : [];
    return sides.filter((side) => inputOf(model, side) !== undefined);
}

function entryOf(input: Given<number | string>, breakEvens: readonly BreakEven[]): LedgerEntry {
    const margins = breakEvens.flatMap((one) => marginOf(one) ?? []);
    const [nearest] = margins.sort((a, b) => Math.abs(a) - Math.abs(b));
    return { input, guess: isGuess(input), breakEvens, ...(nearest !== undefined && { margin: nearest }) };
}

const distanceOf = ({ margin }: LedgerEntry): number => (margin === undefined ? Infinity : Math.abs(margin));

function marginOf({ given, limit, passes }: BreakEven): number | undefined {
    if (limit === undefined) return undefined;
    const [from, to] = typeof given === 'number' ? [given, Number(limit)] : [strengthIn(given), strengthIn(String(limit))];
    const distance = from === 0 ? Infinity : Math.abs(to - from) / Math.abs(from);
    return passes ? distance : -distance;
}
