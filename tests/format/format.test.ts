/** The formatter: what it sets right, what it leaves, and that no result ever changes by it. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { globSync } from 'tinyglobby';
import { describe, expect, it } from 'vitest';
import { evaluateText, exampleFile, examples, formatText } from '../../language/src/index.js';
import { compute } from '../../server/src/compute.js';
import { root } from '../command/run.js';
import { anyFile, remarksOf, wordsOf } from './respaced.js';

const format = (text: string): string => formatText(text, 'job.padstone').text;
const samples = globSync(['samples/**/*.padstone', 'client/templates/*.padstone', 'tests/language/fixtures/**/*.padstone'], { cwd: root })
    .map(file => [file, readFileSync(root + file, 'utf8')] as const);

/** Everything that comes out, save where in the text it came from; a requirement is printed as it is written. */
function resultsOf(text: string, file: string): string {
    const results = compute(evaluateText(text, file, () => undefined));
    return JSON.stringify(results, (_key, value: unknown) => typeof value === 'object' && value !== null && 'column' in value ? undefined
        : typeof value === 'string' ? value.replace(/\s/g, '') : typeof value === 'number' ? String(value) : value);
}
const images = (text: string) => wordsOf(text).map(word => word.text);

describe('sets right', () => {
    it.each<[string, string, string]>([
        ['units, sizes and commas', 'let a = max(1m ,2m)\nmember B1 { section 75x200mm }', 'let a = max(1 m, 2 m)\nmember B1 { section 75 x 200 mm }\n'],
        ['parentheses', 'use d H1( old :T2 , at: ( 1 m + 2 m ) *2 )', 'use d H1 (old: T2, at: (1 m + 2 m) * 2)\n'],
        ['operators, close ones as they are', 'let a = B1.span/2+ 1 m\nlet b = 2 m*3', 'let a = B1.span/2 + 1 m\nlet b = 2 m*3\n'],
        ['a sign', 'load w wind - 0.4 kN/m on B1\nlet a = abs(- 3 m)', 'load w wind -0.4 kN/m on B1\nlet a = abs(-3 m)\n'],
        ['the braces of a block over several lines', 'job "x" { basis EN1995\nservice class 1 }', 'job "x" {\n  basis EN1995\n  service class 1\n}\n'],
        ['blocks in blocks', 'option o { replace B1 {\nof C24 } }', 'option o {\n  replace B1 {\n    of C24\n  }\n}\n'],
        ['a statement that goes on', 'member B1 {\nbolts M12\nevery 300 mm\n}', 'member B1 {\n  bolts M12\n    every 300 mm\n}\n'],
        ['empty lines', '\n\njob "x"\n\n\n\nmember B1 {\n\n  of C24\n\n}', 'job "x"\n\nmember B1 {\n  of C24\n}\n'],
        ['line ends', 'job "x"  \r\n\tmember B1 {   // a beam  \r\n}', 'job "x"\r\nmember B1 {   // a beam\r\n}\r\n'],
        ['nothing', ' \n \n', '']
    ])('%s', (_, before, after) => expect(format(before)).toBe(after));
});

describe('leaves', () => {
    it.each(samples)('%s as it is', (_, text) => expect(format(text)).toBe(text));
    it.each(examples.map(({ construct, text }) => [construct, text] as const))('the reference as it is: %s', (_, text) => {
        const inMember = `member X {\n  ${text.replace(/\n/g, '\n  ')}\n}\n`;
        expect([`${text}\n`, inMember]).toContain(format(examples.some(example => example.text === text && example.inside) ? inMember : `${text}\n`));
    });
    it('columns that the writer has lined up, in each line by itself', () => {
        const lined = 'load a     permanent 1 kN/m on B1   // long\nload bcdef imposed A 1 kN/m on B1   // use\n';
        expect(format(lined)).toBe(lined);
    });
    it('remarks, also between words and inside a block of remarks', () => {
        const text = '/* one\n     two */\nmember B1 { /* three */\n  of C24 // four\n  // five\n}\n';
        expect(format(text)).toBe(text);
    });
    it('a text that does not parse, and says why', () => {
        const broken = 'job "x"\nmember   B1 {\n   of   \n}\n';
        const { text, findings } = formatText(broken, 'job.padstone');
        expect(text).toBe(broken);
        expect(findings).toMatchObject([{ severity: 'error', source: { file: 'job.padstone', line: 3 } }]);
    });
    it('a byte order mark', () => expect(format('\uFEFFjob   "x"')).toBe('\uFEFFjob   "x"\n'));
    it('what is binary', () => expect(formatText('job\0', 'x').findings[0]!.message).toMatch(/binary/));
});

describe('in files set anyhow', () => {
    const property = (check: (set: string, plain: string) => void) => fc.assert(fc.property(anyFile, ({ set, plain }) => {
        expect(formatText(set, 'job.padstone').findings, 'the generated file parses').toEqual([]);
        check(set, plain);
    }), { numRuns: 150 });

    it('it is done in one go', () => property(set => expect(format(format(set))).toBe(format(set))));
    it('no word and no remark is lost or changed', () => property(set => {
        expect(images(format(set))).toEqual(images(set));
        expect(remarksOf(format(set))).toEqual(remarksOf(set));
    }));
    it('no line ends in white space, and none is indented by a tab', () => property(set => expect(format(set).replace(/\/\*[^]*?\*\//g, 'remark')).not.toMatch(/[ \t]\r?\n|^ *\t/m)));
    it('no result changes', () => property(set => expect(resultsOf(format(set), 'job.padstone')).toBe(resultsOf(set, 'job.padstone'))));
    it.each(samples)('no result of %s changes', (file, text) => {
        const squeezed = text.replace(/(?<=\S) {2,}(?=\S)/g, ' ').replace(/^ +/gm, '\t');
        expect(resultsOf(format(squeezed), file)).toBe(resultsOf(text, file));
    });
    it('a change in one line changes no other', () => fc.assert(fc.property(fc.constantFrom(...samples.filter(([file]) => file.startsWith('samples'))), fc.nat(), fc.nat(), ([, text], at, width) => {
        const words = wordsOf(text).filter((word, i, all) => i > 0 && !text.slice(all[i - 1]!.end, word.start).includes('\n') && text.slice(all[i - 1]!.end, word.start) !== '');
        const place = words[at % words.length]!.start;
        const line = text.slice(0, place).split('\n').length - 1;
        const changed = format(text.slice(0, place) + ' '.repeat(width % 9) + text.slice(place)).split('\n');
        expect(changed.filter((_, i) => i !== line)).toEqual(format(text).split('\n').filter((_, i) => i !== line));
    }), { numRuns: 60 }));
});

it('reads the reference\'s examples as whole files', () => {
    for (const example of examples) {
        const text = exampleFile(example);
        expect(images(format(text))).toEqual(images(text));
    }
});
