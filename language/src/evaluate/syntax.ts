/** What the lexer and the parser found wrong, as findings, with the places that they make unsound. */
import type { ParseResult } from 'langium';
import type { IToken } from 'chevrotain';
import type { Finding, Fix, SourceRef } from '../model.js';
import type { SyntaxException } from '../lexing/parser.js';
import { mostSyntaxErrors } from '../lexing/parser.js';
import { behind } from './source.js';

export interface SyntaxError {
    readonly finding: Finding;
    /** Offset of a place in the declaration that the error makes unsound, if it lies in or right behind one. */
    readonly within?: number;
    /** Only if that place is before the declaration's end. */
    readonly strictly?: true;
    /** Words that were skipped, so that nothing is known of what they say. */
    readonly skipped: readonly string[];
}

export function syntaxErrors({ lexerErrors, parserErrors }: ParseResult, text: string, file: string): readonly SyntaxError[] {
    const stray = lexerErrors.map(({ offset, length, line, column, message }): SyntaxError => {
        const source = { file, start: offset, end: offset + length, line: line ?? lineOf(text, offset), column: column ?? 1 };
        return { finding: { severity: 'error', code: 'syntax', message, source }, within: offset, strictly: true, skipped: [] };
    });
    const parsed = (parserErrors as readonly SyntaxException[]).map((error): SyntaxError => ({
        finding: findingOf(error, text, file),
        within: unsoundPlace(error),
        skipped: skippedWords(error, text)
    }));
    const cut = parserErrors.length >= mostSyntaxErrors ? [cutOff(parserErrors.at(-1)!.token, text, file)] : [];
    return firstAtEachPlace([...stray, ...parsed, ...cut]);
}

/** Between declarations an error makes none unsound, save what is left over on the line of one, or belongs inside one. */
function unsoundPlace({ context, token, previousToken, problem }: SyntaxException): number | undefined {
    const between = context.ruleStack.length <= 1;
    const leftOver = previousToken?.endLine === token.startLine || problem?.kind === 'outside member';
    return between && !leftOver ? undefined : previousToken?.startOffset;
}

/** What recovery skipped, and the rest of the line that it stumbled over: a statement is seldom longer. */
function skippedWords({ token, previousToken, problem, resyncedTokens }: SyntaxException, text: string): readonly string[] {
    const start = isNaN(token.startOffset) ? text.length : token.startOffset;
    const lineEnd = text.indexOf('\n', start);
    const nothingHere = problem?.kind === 'missing' && previousToken?.endLine !== token.startLine;
    const end = nothingHere ? start : lineEnd < 0 ? text.length : lineEnd;
    return [...(text.slice(start, end).match(/[\p{L}_][\p{L}\p{N}_]*/gu) ?? []), ...resyncedTokens.map(skipped => skipped.image)];
}

/** Recovery may stumble over one place more than once. */
function firstAtEachPlace(errors: readonly SyntaxError[]): readonly SyntaxError[] {
    const seen = new Set<number>();
    return errors.filter(({ finding: { source: { start } } }) => !seen.has(start) && seen.add(start));
}

function findingOf(error: SyntaxException, text: string, file: string): Finding {
    const { token, previousToken, problem, message } = error;
    const source = placeOf(token, previousToken, problem?.kind === 'missing', text, file);
    const code = problem?.kind === 'unknown unit' || problem?.kind === 'decimal comma' ? problem.kind.replace(' ', '-') : 'syntax';
    const fix = fixOf(problem, source);
    return { severity: 'error', code, message, source, ...(fix && { fix }) };
}

function fixOf(problem: SyntaxException['problem'], at: SourceRef): Fix | undefined {
    if (problem?.meant !== undefined) {
        return { title: `write '${problem.meant}'`, at, text: problem.meant };
    }
    switch (problem?.kind) {
        case 'decimal comma': return { title: 'write a point', at, text: '.' };
        case 'unclosed text': return { title: 'close the text', at: behind(at), text: '"' };
        default: return undefined;
    }
}

/** What is missing is shown behind what stands before it, when the next thing is on another line. */
function placeOf(token: IToken, previous: IToken | undefined, isMissing: boolean, text: string, file: string): SourceRef {
    const ends = isNaN(token.startOffset);
    const last = previous !== undefined && !isNaN(previous.startOffset) ? previous : undefined;
    if (last !== undefined && (ends || (token.startLine !== last.endLine && isMissing))) {
        return refOf(last, file);
    }
    return ends ? { file, start: text.length, end: text.length, line: lineOf(text, text.length), column: 1 } : refOf(token, file);
}

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
    return { finding: { severity: 'error', code: 'too-many-errors', message, source: placeOf(token, undefined, false, text, file) }, skipped: [] };
}
