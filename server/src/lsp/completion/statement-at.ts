/** The declaration that the cursor is in, by its words alone: the text need not parse. */
import type { Lexer, LexerResult } from 'langium';

type Token = LexerResult['tokens'][number];

export interface StatementAt {
    /** Where the declaration begins; the cursor itself where it is in none. */
    readonly start: number;
    /** `member`, `require`, …; undefined outside. */
    readonly word: string | undefined;
    /** Those before the cursor, from the declaration's word on. */
    readonly tokens: readonly Token[];
}

/** A declaration begins with its word at the beginning of a line, or where no block is open. */
export function statementAt(text: string, offset: number, lexer: Lexer, declarationWords: ReadonlySet<string>): StatementAt {
    const tokens = lexer.tokenize(text.slice(0, offset)).tokens;
    let depth = 0;
    let begun = -1;
    let lastLine = 0;
    tokens.forEach((token, index) => {
        const leads = token.startLine !== lastLine;
        lastLine = token.startLine ?? lastLine;
        if (declarationWords.has(token.image) && (token.startColumn === 1 || (depth === 0 && leads))) {
            begun = index;
            depth = 0;
        }
        depth = token.image === '{' ? depth + 1 : token.image === '}' ? Math.max(0, depth - 1) : depth;
    });
    const first = tokens[begun];
    return first ? { start: first.startOffset, word: first.image, tokens: tokens.slice(begun) } : { start: offset, word: undefined, tokens: [] };
}
