/** Syntax errors in the words of a person of the trade. */
import { AbstractParserErrorMessageProvider, DefaultLexerErrorMessageProvider } from 'langium';
import type { GrammarAST } from 'langium';
import type { IToken, TokenType } from 'chevrotain';
import { didYouMean, suggest } from '../suggest.js';
import { units } from '../units.js';
import { leadingWordsOfBlock } from './leading-words.js';
import { unclosedComment, unclosedString } from './tokens.js';

const tokenLabels: Readonly<Record<string, string>> = {
    NUMBER: 'a number', ID: 'a name', STRING: 'a text in "quotes"', UNIT: 'a unit', TIMES: '\'x\' and the other side of the size', EOF: 'the end of the file'
};

const aValue = 'a value with its unit, such as 4.90 m';
const ruleExpectations: Readonly<Record<string, string>> = {
    Expression: aValue, Sum: aValue, Product: aValue, Prefixed: aValue, Primary: aValue, Input: aValue, Literal: aValue,
    Size: 'a size such as 190 x 240 mm', SectionStatement: 'a size such as 190 x 240 mm',
    Name: 'a name', RevisionMark: 'a mark such as C', Word: 'a word',
    ActionName: 'one of permanent, imposed A…H, snow, wind, construction',
    EvidenceName: 'one of measured, probed, tested, graded, documented, judged, assumed',
    DurationName: 'one of permanent, long-term, medium-term, short-term, instantaneous',
    CombinationRule: '6.10 or 6.10a/b'
};

const blockNames: Readonly<Record<string, string>> = {
    Job: 'the job', Survey: 'the survey', Member: 'a member', Replace: 'a member', Timber: 'a timber', Masonry: 'a masonry', Steel: 'a steel',
    Wall: 'a wall', Loss: 'a loss', Floor: 'a floor', LoadTest: 'a load test', Option: 'an option', Stage: 'a stage', Hanger: 'a hanger',
    Detail: 'a detail', Splice: 'a splice', Access: 'the access', Values: 'the values', Properties: 'the properties'
};

const label = (type: TokenType) => tokenLabels[type.name] ?? `'${type.name}'`;
const isEnd = (token: IToken) => token.tokenType.name === 'EOF';
const found = (token: IToken) => (isEnd(token) ? 'the file ends' : `'${token.image.slice(0, 40)}' stands here`);
const after = (token: IToken | undefined) => (token === undefined || isNaN(token.startOffset) ? '' : ` after '${token.image.slice(0, 40)}'`);
const isWord = (token: IToken) => /^[\p{L}_]/u.test(token.image);

export class PadstoneParserMessages extends AbstractParserErrorMessageProvider {
    private readonly blockWords: (rule: string) => readonly string[];

    constructor(grammar: GrammarAST.Grammar) {
        super();
        this.blockWords = leadingWordsOfBlock(grammar);
    }

    override buildMismatchTokenMessage({ expected, actual, previous, ruleName }: { expected: TokenType; actual: IToken; previous: IToken; ruleName: string }): string {
        const rule = plain(ruleName);
        if (expected.name === 'EOF' || expected.name === '}') {
            return plainMistake(actual, previous) ?? this.stray(rule, actual);
        }
        return plainMistake(actual, previous) ?? (rule === 'Name' || expected.name === 'ID' ? notAName(actual) : undefined)
            ?? `${label(expected)} is missing${after(previous)}: ${found(actual)}`;
    }

    override buildNotAllInputParsedMessage({ firstRedundant }: { firstRedundant: IToken; ruleName: string }): string {
        return this.stray('Calculation', firstRedundant);
    }

    override buildNoViableAltMessage({ expectedPathsPerAlt, actual, previous, ruleName }:
    { expectedPathsPerAlt: TokenType[][][]; actual: IToken[]; previous: IToken; ruleName: string }): string {
        const rule = plain(ruleName);
        const token = actual[0]!;
        return plainMistake(token, previous) ?? (rule === 'Name' ? notAName(token) : undefined)
            ?? `${ruleExpectations[rule] ?? oneOf(expectedPathsPerAlt.flat())} is missing${after(previous)}: ${found(token)}`;
    }

    override buildEarlyExitMessage({ expectedIterationPaths, actual, previous, ruleName }:
    { expectedIterationPaths: TokenType[][]; actual: IToken[]; previous: IToken; ruleName: string }): string {
        const token = actual[0]!;
        return plainMistake(token, previous)
            ?? `${ruleExpectations[plain(ruleName)] ?? oneOf(expectedIterationPaths)} is missing${after(previous)}: ${found(token)}`;
    }

    /** What stands where a statement of the block, or its end, should. */
    private stray(rule: string, actual: IToken): string {
        const block = blockNames[rule];
        if (block !== undefined && (isEnd(actual) || this.blockWords('Calculation').includes(actual.image))) {
            return `} is missing: the block of ${block} is not closed`;
        }
        if (actual.image === '}') {
            return 'this } closes nothing';
        }
        const words = this.blockWords(rule);
        const place = block === undefined ? 'begins no statement here' : `is not a statement of ${block}`;
        return `'${actual.image.slice(0, 40)}' ${place}${didYouMean(isWord(actual) ? suggest(actual.image, words) : undefined)}`;
    }
}

/** Mistakes that are the same wherever they stand. */
function plainMistake(actual: IToken, previous: IToken | undefined): string | undefined {
    if (actual.tokenType.name === unclosedString) {
        return 'this text is not closed: a " is missing';
    }
    if (actual.tokenType.name === unclosedComment) {
        return 'this comment is not closed: */ is missing';
    }
    if (previous?.tokenType.name !== 'NUMBER' || previous.endLine !== actual.startLine) {
        return undefined;
    }
    if (actual.image === ',') {
        return 'decimals are written with a point, not a comma';
    }
    return actual.tokenType.name === 'ID' ? `unknown unit '${actual.image}'${didYouMean(suggest(actual.image, units.keys()))}` : undefined;
}

function notAName(actual: IToken): string | undefined {
    return isWord(actual) && actual.tokenType.name !== 'ID' ? `a name is missing: '${actual.image}' is a word of the language and cannot be one` : undefined;
}

function oneOf(paths: readonly (readonly TokenType[])[]): string {
    const labels = [...new Set(paths.flatMap(path => path.slice(0, 1)).map(label))];
    return labels.length <= 1 ? labels[0] ?? 'something' : labels.length > 8 ? 'a word of this statement' : `one of ${labels.join(', ')}`;
}

const plain = (ruleName: string) => ruleName.replace(/\u200B$/, '');

export class PadstoneLexerMessages extends DefaultLexerErrorMessageProvider {
    override buildUnexpectedCharactersMessage(text: string, offset: number, length: number): string {
        return `'${text.slice(offset, offset + Math.min(length, 20))}' has no meaning here`;
    }
}
