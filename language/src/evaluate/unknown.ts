import type { SourceRef } from '../model.js';
import { didYouMean, suggest } from '../suggest.js';
import type { Context } from './context.js';
import { fail } from './context.js';

/** Guessing takes time for each name that is known: past this many findings no more are told, and no more are guessed for. */
const mostGuesses = 200;

export interface Guess {
    readonly word: string;
    readonly among: Iterable<string>;
    /** What stands before the word in the text. */
    readonly before?: string;
    /** Said where nothing is near. */
    readonly otherwise?: string;
}

/** Reports that something is not known, with what was probably meant and its fix. */
export function failUnknown(context: Context, code: string, message: string, at: SourceRef, guess: Guess): undefined {
    const meant = context.findings.length < mostGuesses ? suggest(guess.word, guess.among) : undefined;
    if (meant === undefined) {
        return fail(context, code, `${message}${guess.otherwise ?? ''}`, at);
    }
    const text = `${guess.before ?? ''}${meant}`;
    return fail(context, code, `${message}${didYouMean(meant)}`, at, { fix: { title: `write '${text}'`, text } });
}
