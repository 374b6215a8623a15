/** The colouring keeps up with the language: every word and unit of the grammar has a colour. */
import { readFileSync } from 'node:fs';
import { AstUtils, GrammarAST } from 'langium';
import { describe, expect, it } from 'vitest';
import { createPadstoneCoreServices, units } from '../../language/src/index.js';
import { sailLoft } from './check.js';

interface Rule { readonly name?: string; readonly match?: string; readonly begin?: string; readonly patterns?: readonly Rule[] }
const folder = new URL('../../language/', import.meta.url);
const { repository } = JSON.parse(readFileSync(new URL('syntaxes/padstone.tmLanguage.json', folder), 'utf8')) as { repository: Record<string, Rule> };
const matches = (rule: Rule): readonly string[] => [rule.match, rule.begin, ...(rule.patterns ?? []).flatMap(matches)].filter(pattern => pattern !== undefined);

const grammar = createPadstoneCoreServices().padstone.Grammar;
const words = [...new Set(AstUtils.streamAllContents(grammar).filter(GrammarAST.isKeyword).map(keyword => keyword.value).filter(word => /^[a-z]/.test(word)))];
/** Coloured only with what stands around them. */
const inContext: Readonly<Record<string, string>> = {
    no: 'no self weight', self: 'no self weight', system: 'system strength', net: 'net section', strength: 'system strength', service: 'service class', class: 'service class',
    ...Object.fromEntries(['member', 'wall', 'timber', 'steel', 'masonry', 'let', 'load', 'stage', 'loadtest', 'option', 'detail'].map(word => [word, `${word} name`])),
    use: 'use detail name', answer: 'answer loss-not-probed', ...Object.fromEntries(['min', 'max', 'sqrt', 'abs', 'round'].map(word => [word, `${word}(1)`])),
    ...Object.fromEntries(['measured', 'probed', 'tested', 'graded', 'documented', 'judged', 'assumed'].map(word => [word, `(${word})`]))
};

describe('colouring', () => {
    it.each(words)('%s', word => expect(Object.values(repository).flatMap(matches).some(pattern => new RegExp(pattern, 'um').exec(inContext[word] ?? word)?.[0].includes(word))).toBe(true));

    it.each([...units.keys()])('3 %s', symbol => expect(new RegExp(repository['quantities']!.match!, 'u').exec(`3 ${symbol}`)?.[2]).toBe(symbol));

    it('every pattern is sound', () => Object.values(repository).flatMap(matches).forEach(pattern => expect(() => new RegExp(pattern, 'u')).not.toThrow()));

    it('does not take a name for a unit', () => expect(new RegExp(repository['quantities']!.match!, 'u').exec('2 rod')?.[2]).toBeUndefined());
});

describe('the editor\'s configuration', () => {
    const configuration = JSON.parse(readFileSync(new URL('language-configuration.json', folder), 'utf8')) as {
        readonly wordPattern: string;
        readonly indentationRules: { readonly increaseIndentPattern: string; readonly decreaseIndentPattern: string };
    };
    const lines = sailLoft.split('\n');

    it('indents after a brace that stays open', () => {
        const increase = new RegExp(configuration.indentationRules.increaseIndentPattern);
        expect(lines.filter(line => increase.test(line))).toEqual(lines.filter(line => /\{$/.test(line)));
    });

    it('takes a name or a number for a word', () =>
        expect('T2.loss 35 mm süd'.match(new RegExp(configuration.wordPattern, 'g'))).toEqual(['T2', 'loss', '35', 'mm', 'süd']));
});
