import { LangiumParser, createParser } from 'langium';
import type { LangiumCoreServices } from 'langium';
import type { IRecognitionException } from 'chevrotain';

/** After so many syntax errors the rest of a text is not read. */
export const mostSyntaxErrors = 200;

/** What chevrotain knows of its place among the tokens; not in its published types. */
interface TokenCursor {
    currIdx: number;
    tokVectorLength: number;
    readonly _errors: readonly IRecognitionException[];
    SAVE_ERROR(error: IRecognitionException): IRecognitionException;
}

/** Stops reading at a bound of errors: recovery recurses once an error, and noise would exhaust the stack. */
class PadstoneParser extends LangiumParser {
    constructor(services: LangiumCoreServices) {
        super(services);
        const cursor = this.wrapper as unknown as TokenCursor;
        const save = cursor.SAVE_ERROR.bind(cursor);
        cursor.SAVE_ERROR = error => {
            const saved = save(error);
            if (cursor._errors.length >= mostSyntaxErrors) {
                cursor.tokVectorLength = cursor.currIdx + 1;
            }
            return saved;
        };
    }
}

export function createPadstoneParser(services: LangiumCoreServices): LangiumParser {
    const parser = createParser(services.Grammar, new PadstoneParser(services), services.parser.Lexer.definition);
    parser.finalize();
    return parser;
}
