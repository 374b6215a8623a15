/** Syntax errors in the words of a person of the trade. */
import { AbstractParserErrorMessageProvider, DefaultLexerErrorMessageProvider } from 'langium';
import type { GrammarAST } from 'langium';
import type { IToken, TokenType } from 'chevrotain';
import { didYouMean, suggest } from '../suggest.js';
import { units } from '../units.js';
import type { BlockWords } from './leading-words.js';
import { blockWords } from './leading-words.js';
import { blockNames, expectations, outerBlocks, tokenNames } from './expectations.js';
import { unclosedComment, unclosedString } from './tokens.js';

const isEnd = (token: IToken) => token.tokenType.name === 'EOF';
const isWord = (token: IToken) => /^[\p{L}_]/u.test(token.image);
const sameLine = (previous: IToken | undefined, token: IToken) => previous?.endLine === token.startLine && !isEnd(token);
const quoted = (token: IToken) => `'${token.image.length > 40 ? `${token.image.slice(0, 39)}…` : token.image}'`;
const plain = (ruleName: string) => ruleName.replace(/\u200B$/, '');
const firstTypes = (paths: readonly (readonly TokenType[])[]) => [...new Set(paths.flatMap(path => path.slice(0, 1)))];

/** A syntax error as a thing of its own: chevrotain's exceptions keep no more of it than a sentence. */
export interface Problem {
    /** `missing`: something should stand before the token. The others are about the token itself. */
    readonly kind: 'missing' | 'stray' | 'outside member' | 'unclosed text' | 'unclosed comment' | 'unknown unit' | 'decimal comma';
    readonly message: string;
    /** What the token was probably meant to be. */
    readonly meant?: string;
}

export class PadstoneParserMessages extends AbstractParserErrorMessageProvider {
    private readonly words: BlockWords;
    private problem: Problem | undefined;

    /** What the last message was about. */
    get last(): Problem | undefined {
        return this.problem;
    }

    private say(problem: Problem): string {
        this.problem = problem;
        return problem.message;
    }

    constructor(grammar: GrammarAST.Grammar) {
        super();
        this.words = blockWords(grammar);
    }

    override buildMismatchTokenMessage({ expected, actual, previous, ruleName }: { expected: TokenType; actual: IToken; previous: IToken; ruleName: string }): string {
        return this.say(expected.name === 'EOF' || expected.name === '}' ? this.stray(plain(ruleName), actual)
            : missing(plain(ruleName), [expected], actual, previous));
    }

    override buildNotAllInputParsedMessage({ firstRedundant }: { firstRedundant: IToken; ruleName: string }): string {
        return this.say(this.stray('Calculation', firstRedundant));
    }

    override buildNoViableAltMessage({ expectedPathsPerAlt, actual, previous, ruleName }:
    { expectedPathsPerAlt: TokenType[][][]; actual: IToken[]; previous: IToken; ruleName: string }): string {
        return this.say(missing(plain(ruleName), firstTypes(expectedPathsPerAlt.flat()), actual[0]!, previous));
    }

    override buildEarlyExitMessage({ expectedIterationPaths, actual, previous, ruleName }:
    { expectedIterationPaths: TokenType[][]; actual: IToken[]; previous: IToken; ruleName: string }): string {
        return this.say(missing(plain(ruleName), firstTypes(expectedIterationPaths), actual[0]!, previous));
    }

    /** What stands where a statement of the block, or its end, should. */
    private stray(rule: string, actual: IToken): Problem {
        const block = blockNames[rule];
        const outer = block === undefined ? [] : [...this.words.of('Calculation'), ...this.words.of(outerBlocks[rule] ?? '')];
        if (block !== undefined && (isEnd(actual) || outer.includes(actual.image))) {
            return { kind: 'missing', message: `} is missing: the block of ${block} is not closed` };
        }
        if (actual.image === '}') {
            return { kind: 'stray', message: 'this } closes nothing' };
        }
        if (block === undefined && this.words.of('Member').includes(actual.image)) {
            return { kind: 'outside member', message: `'${actual.image}' belongs inside a member: is there a } too many before it?` };
        }
        const expected = block === undefined ? undefined : expectations[rule];
        if (expected !== undefined) {
            return { kind: 'stray', message: `${quoted(actual)} does not fit here: expected ${expected.what}, such as ${expected.example}` };
        }
        const meant = isWord(actual) ? suggest(actual.image, this.words.of(rule)) ?? (actual.image.length > 3 ? suggest(actual.image, this.words.all) : undefined) : undefined;
        return { kind: 'stray', message: `${quoted(actual)} ${block === undefined ? 'begins no statement' : `is not a statement of ${block}`}${didYouMean(meant)}`, meant };
    }
}

/** `a value is missing after 'length', such as 4.90 m`. */
function missing(rule: string, expected: readonly TokenType[], actual: IToken, previous: IToken | undefined): Problem {
    const { what, example } = expectations[rule] ?? { what: oneOf(expected) };
    const here = sameLine(previous, actual);
    if (here && isWord(actual) && actual.tokenType.name !== 'ID' && what === 'a name') {
        return { kind: 'stray', message: `${quoted(actual)} is a word of the language and cannot be a name` };
    }
    const after = previous === undefined || isNaN(previous.startOffset) ? '' : ` after ${quoted(previous)}`;
    const meant = here && isWord(actual) ? suggest(actual.image, expected.map(type => type.name).filter(name => /^[a-z]/.test(name))) : undefined;
    const found = here ? `, where ${quoted(actual)} stands` : '';
    return { kind: 'missing', message: `${what} is missing${after}${found}${example === undefined ? '' : `, such as ${example}`}${didYouMean(meant)}`, meant };
}

const label = (type: TokenType) => tokenNames[type.name] ?? `'${type.name}'`;

function oneOf(types: readonly TokenType[]): string {
    const labels = types.map(label);
    return labels.length <= 1 ? labels[0] ?? 'something' : labels.length > 8 ? 'a word of this statement' : `one of ${labels.join(', ')}`;
}

/** Mistakes that are the same wherever they stand. */
export function plainMistake(actual: IToken, previous: IToken | undefined): Problem | undefined {
    if (actual.tokenType.name === unclosedString) {
        return { kind: 'unclosed text', message: 'this text is not closed: a " is missing' };
    }
    if (actual.tokenType.name === unclosedComment) {
        return { kind: 'unclosed comment', message: 'this comment is not closed: */ is missing' };
    }
    if (previous?.tokenType.name !== 'NUMBER' || !sameLine(previous, actual)) {
        return undefined;
    }
    if (actual.image === ',') {
        return { kind: 'decimal comma', message: 'decimals are written with a point, not a comma' };
    }
    const meant = suggest(actual.image, units.keys());
    return actual.tokenType.name === 'ID' ? { kind: 'unknown unit', message: `unknown unit ${quoted(actual)}${didYouMean(meant)}`, meant } : undefined;
}

export class PadstoneLexerMessages extends DefaultLexerErrorMessageProvider {
    override buildUnexpectedCharactersMessage(text: string, offset: number, length: number): string {
        return `'${text.slice(offset, offset + Math.min(length, 20))}' has no meaning here`;
    }
}
