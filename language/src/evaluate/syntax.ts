/** What the lexer and the parser found wrong, as findings, with the places that they make unsound. */
import type { ParseResult } from 'langium';
import type { IToken } from 'chevrotain';
import type { Finding, Fix, SourceRef } from '../model.js';
import { mostSyntaxErrors } from '../lexing/parser.js';
import { behind } from './source.js';

export interface SyntaxError {
    readonly finding: Finding;
    /** Names of the grammar rules that were being read, outermost first; empty for a stray character. */
    readonly rules: readonly string[];
    /** Offset of the last thing that was read before it. */
    readonly after: number;
}

export function syntaxErrors({ lexerErrors, parserErrors }: ParseResult, text: string, file: string): readonly SyntaxError[] {
    const stray = lexerErrors.map(({ offset, length, line, column, message }): SyntaxError => {
        const source = { file, start: offset, end: offset + length, line: line ?? lineOf(text, offset), column: column ?? 1 };
        return { finding: { severity: 'error', code: 'syntax', message, source }, rules: [], after: offset };
    });
    const parsed = parserErrors.map((error): SyntaxError => {
        const previous = (error as { readonly previousToken?: IToken }).previousToken;
        return {
            finding: findingOf(error.message, error.token, previous, text, file),
            rules: error.context.ruleStack.map(rule => rule.replace(/\u200B$/, '')),
            after: previous !== undefined && !isNaN(previous.startOffset) ? previous.startOffset : 0
        };
    });
    const cut = parserErrors.length >= mostSyntaxErrors ? [cutOff(parserErrors.at(-1)!.token, text, file)] : [];
    return [...stray, ...parsed, ...cut];
}

function findingOf(message: string, token: IToken, previous: IToken | undefined, text: string, file: string): Finding {
    const source = placeOf(token, previous, text, file);
    const meant = /: did you mean '([^']+)'\?$/.exec(message)?.[1];
    const code = message.startsWith('unknown unit') ? 'unknown-unit' : 'syntax';
    const fix = meant !== undefined ? { title: `write '${meant}'`, at: source, text: meant } : plainFix(message, source);
    return { severity: 'error', code, message, source, ...(fix && { fix }) };
}

function plainFix(message: string, at: SourceRef): Fix | undefined {
    if (message.startsWith('decimals are written')) {
        return { title: 'write a point', at, text: '.' };
    }
    return message.startsWith('this text is not closed') ? { title: 'close the text', at: behind(at), text: '"' } : undefined;
}

/** What is missing is shown behind what stands before it, when the next thing is on another line. */
function placeOf(token: IToken, previous: IToken | undefined, text: string, file: string): SourceRef {
    const ends = isNaN(token.startOffset);
    const last = previous !== undefined && !isNaN(previous.startOffset) ? previous : undefined;
    if (last !== undefined && (ends || token.startLine !== last.endLine) && !isStray(token)) {
        return refOf(last, file);
    }
    return ends ? { file, start: text.length, end: text.length, line: lineOf(text, text.length), column: 1 } : refOf(token, file);
}

const isStray = (token: IToken) => token.tokenType.name.startsWith('UNCLOSED');

function refOf(token: IToken, file: string): SourceRef {
    const end = Math.min(token.endOffset! + 1, token.startOffset + Math.max(1, firstLineLength(token.image)));
    return { file, start: token.startOffset, end, line: token.startLine!, column: token.startColumn! };
}

const firstLineLength = (image: string) => (image.indexOf('\n') < 0 ? image.length : image.indexOf('\n'));

function lineOf(text: string, offset: number): number {
    let line = 1;
    for (let i = text.indexOf('\n'); i >= 0 && i < offset; i = text.indexOf('\n', i + 1)) {
        line++;
    }
    return line;
}

function cutOff(token: IToken, text: string, file: string): SyntaxError {
    const message = `after ${mostSyntaxErrors} errors of form the rest of this file is not read`;
    return { finding: { severity: 'error', code: 'too-many-errors', message, source: placeOf(token, undefined, text, file) }, rules: [], after: text.length };
}
