import { DefaultLexer } from 'langium';
import type { LexerResult, TokenizeOptions } from 'langium';

/** Characters. A file past this is no calculation that a person wrote. */
export const longestText = 2_000_000;

/** Why this text is not read at all, if it is not. */
export function refusal(text: string): string | undefined {
    if (text.length > longestText) {
        return `this file is too long to be a calculation (${(text.length / 1e6).toFixed(1)} million characters, at most 2 million): it is not read`;
    }
    if (text.includes('\0')) {
        return 'this file is binary, not text: it is not read';
    }
    return undefined;
}

/** Sees nothing of a text that is refused; `evaluate` says why. */
export class PadstoneLexer extends DefaultLexer {
    override tokenize(text: string, options?: TokenizeOptions): LexerResult {
        return super.tokenize(refusal(text) === undefined ? text : '', options);
    }
}
