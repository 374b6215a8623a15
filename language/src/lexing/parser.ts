import { LangiumParser, createParser } from 'langium';
import type { AstNode, LangiumCoreServices, ParseResult, ParserOptions } from 'langium';
import type { IRecognitionException, IToken } from 'chevrotain';
import type { PadstoneParserMessages, Problem } from './messages.js';
import { plainMistake } from './messages.js';

/** After so many syntax errors the rest of a text is not read. */
export const mostSyntaxErrors = 200;

/** What chevrotain knows of its place among the tokens; not in its published types. */
interface TokenCursor {
    currIdx: number;
    tokVectorLength: number;
    readonly tokVector: readonly IToken[];
    readonly _errors: readonly IRecognitionException[];
    SAVE_ERROR(error: IRecognitionException): IRecognitionException;
}

interface CommentKeeper {
    readonly nodeBuilder: { addHiddenNodes(tokens: readonly IToken[]): unknown };
}

export type SyntaxException = IRecognitionException & { previousToken?: IToken; problem?: Problem };

class PadstoneParser extends LangiumParser {
    constructor(services: LangiumCoreServices) {
        super(services);
        const { nodeBuilder } = this as unknown as CommentKeeper;
        const addComments = nodeBuilder.addHiddenNodes.bind(nodeBuilder);
        // Langium looks for the place of comments at each token, in time that grows with the block, even where there are none.
        nodeBuilder.addHiddenNodes = tokens => tokens.length > 0 && addComments(tokens);
        const cursor = this.wrapper as unknown as TokenCursor;
        const messages = services.parser.ParserErrorMessageProvider as PadstoneParserMessages;
        const save = cursor.SAVE_ERROR.bind(cursor);
        cursor.SAVE_ERROR = (error: SyntaxException) => {
            // Where chevrotain skips ahead first, it keeps the last token that it skipped.
            error.previousToken = tokenBefore(cursor.tokVector, error.token);
            error.problem = plainMistake(error.token, error.previousToken) ?? messages.last;
            error.message = error.problem?.message ?? error.message;
            const saved = save(error);
            // Recovery recurses once an error: noise would exhaust the stack.
            if (cursor._errors.length >= mostSyntaxErrors) {
                cursor.tokVectorLength = cursor.currIdx + 1;
            }
            return saved;
        };
    }

    /** A text that is nested too deep for the stack is read as an empty one with an error. */
    override parse<T extends AstNode = AstNode>(input: string, options?: ParserOptions): ParseResult<T> {
        try {
            return super.parse<T>(input, options);
        } catch (error) {
            if (!(error instanceof RangeError)) {
                throw error;
            }
            (this as unknown as { stack: unknown[] }).stack = [];
            const empty = super.parse<T>('', options);
            const message = 'something in this file is nested too deep to be read';
            return { ...empty, lexerErrors: [{ message, offset: 0, length: 1, line: 1, column: 1 }] };
        }
    }
}

function tokenBefore(tokens: readonly IToken[], token: IToken): IToken | undefined {
    if (isNaN(token.startOffset)) {
        return tokens.at(-1);
    }
    let [low, high] = [0, tokens.length];
    while (low < high) {
        const middle = (low + high) >> 1;
        if (tokens[middle]!.startOffset < token.startOffset) { low = middle + 1; } else { high = middle; }
    }
    return tokens[low - 1];
}

export function createPadstoneParser(services: LangiumCoreServices): LangiumParser {
    const parser = createParser(services.Grammar, new PadstoneParser(services), services.parser.Lexer.definition);
    parser.finalize();
    return parser;
}
