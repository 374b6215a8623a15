/**
 * Tokens that depend on what stands before them, so that `m`, `t`, `in` and `x` stay free as names:
 * a unit only follows a number on its line, and `x` only parts the sides of a size.
 */
import { DefaultTokenBuilder } from 'langium';
import type { GrammarAST, TokenBuilderOptions } from 'langium';
import type { CustomPatternMatcherFunc, IToken, TokenType, TokenVocabulary } from 'chevrotain';
import { units } from '../units.js';

const escaped = [...units.keys()].sort((a, b) => b.length - a.length).map(symbol => symbol.replace(/[/.]/g, '\\$&'));
const unitPattern = new RegExp(`(?:${escaped.join('|')})(?![\\p{L}\\p{N}_/²³⁴])`, 'uy');
const timesAfterValue = /×|x(?=[\s\d(])/y;
const timesAfterName = /×|x(?=\s*[\d(]|\s+[A-Za-z_])/y;

const matchAt = (pattern: RegExp, text: string, offset: number) => {
    pattern.lastIndex = offset;
    return pattern.exec(text);
};

const unit: CustomPatternMatcherFunc = (text, offset, matched) => {
    const last = matched.at(-1);
    return last?.tokenType.name === 'NUMBER' && sameLine(text, last, offset) ? matchAt(unitPattern, text, offset) : null;
};

const times: CustomPatternMatcherFunc = (text, offset, matched) => {
    const last = matched.at(-1);
    switch (last !== undefined && sameLine(text, last, offset) ? last.tokenType.name : undefined) {
        case 'NUMBER': case 'UNIT': case ')':
            return matchAt(timesAfterValue, text, offset);
        case 'ID':
            return matchAt(timesAfterName, text, offset);
        default:
            return null;
    }
};

function sameLine(text: string, last: IToken, offset: number): boolean {
    for (let i = last.endOffset! + 1; i < offset; i++) {
        if (text[i] === '\n') {
            return false;
        }
    }
    return true;
}

const firstCharacters = [...new Set([...units.keys()].map(symbol => symbol[0]!))];

/** Not of the grammar: each is one syntax error that swallows what it opened, and no more. */
export const unclosedString = 'UNCLOSED_STRING';
export const unclosedComment = 'UNCLOSED_COMMENT';

export class PadstoneTokenBuilder extends DefaultTokenBuilder {
    override buildTokens(grammar: GrammarAST.Grammar, options?: TokenBuilderOptions): TokenVocabulary {
        const tokens = super.buildTokens(grammar, options) as TokenType[];
        const first = tokens.filter(({ name }) => name === 'UNIT' || name === 'TIMES');
        const comments = tokens.filter(({ name }) => name.endsWith('_COMMENT'));
        const rest = tokens.filter(token => !first.includes(token) && !comments.includes(token));
        return [
            ...first, ...comments,
            { name: unclosedComment, PATTERN: /\/\*[\s\S]*/, LINE_BREAKS: true },
            ...rest,
            { name: unclosedString, PATTERN: /"[^"\n\r]*/ }
        ];
    }

    protected override buildTerminalToken(terminal: GrammarAST.TerminalRule): TokenType {
        switch (terminal.name) {
            case 'UNIT': return { name: 'UNIT', PATTERN: unit, LINE_BREAKS: false, START_CHARS_HINT: firstCharacters };
            case 'TIMES': return { name: 'TIMES', PATTERN: times, LINE_BREAKS: false, START_CHARS_HINT: ['x', '×'] };
            default: return super.buildTerminalToken(terminal);
        }
    }
}
