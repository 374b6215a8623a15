/** Texts as other people would have set them: the same words with any white space and remarks between them. */
import fc from 'fast-check';
import { createPadstoneCoreServices, exampleFile, examples } from '../../language/src/index.js';

const { Lexer } = createPadstoneCoreServices().padstone.parser;

export interface Word { readonly kind: string; readonly text: string; readonly start: number; readonly end: number }

export const wordsOf = (text: string): Word[] => Lexer.tokenize(text).tokens.map(({ tokenType, image, startOffset }) => ({ kind: tokenType.name, text: image, start: startOffset, end: startOffset + image.length }));
export const remarksOf = (text: string): string[] => (Lexer.tokenize(text).hidden ?? []).map(({ image }) => image.trimEnd());

const gaps = [' ', ' ', ' ', '   ', '\t', '\n', '\n    ', '\n\n\n', '  // a remark  \n', ' /* another\n   remark */ '];
const gapsOfLine = [' ', '   ', '\t'];

/** A unit stays on the line of its number and an x on that of its size; what touched may part, what was parted stays so. */
function respaced(text: string, choices: readonly number[], lineEnd: string): string {
    let result = '';
    const words = wordsOf(text);
    words.forEach((word, i) => {
        const before = words[i - 1];
        const touches = before?.end === word.start;
        const together = [before?.kind, word.kind].some(kind => kind === 'TIMES') || word.kind === 'UNIT';
        const choice = choices[i % choices.length]!;
        const among = together ? gapsOfLine : gaps;
        const apart = among[choice % among.length]!;
        // 'net section' and hazard codes are the words that are read as they touch.
        result += (before === undefined ? '' : touches && (choice % 3 > 0 || isPartOfCode(before, word)) ? '' : apart) + word.text;
    });
    return result.replaceAll('\n', lineEnd);
}

const isPartOfCode = (before: Word, word: Word): boolean => before.text === '-' || word.text === '-';

/** Each construct of the reference, and files made of several, in any setting. */
export const anyFile = fc.record({
    example: fc.constantFrom(...examples),
    choices: fc.array(fc.nat(1000), { minLength: 5, maxLength: 80 }),
    lineEnd: fc.constantFrom('\n', '\r\n')
}).map(({ example, choices, lineEnd }) => ({ plain: exampleFile(example), set: respaced(exampleFile(example), choices, lineEnd) }));
