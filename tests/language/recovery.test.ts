/** One broken line never blanks the other members, and a member that may be wrong is never given as sound. */
import { describe, expect, it } from 'vitest';
import type { Evaluation } from '../../language/src/index.js';
import { evaluateText } from '../../language/src/index.js';
import { inMember, soundJob } from './check.js';

const sound = (evaluation: Evaluation) => evaluation.model.members.map(member => member.name);
const broken = (evaluation: Evaluation) => evaluation.broken.map(member => member.name);
const raw = /[Ee]xpecting|token|alternative|[Rr]edundant|EOF|\bID\b|NUMBER/;

const brokenLines = [
    'precamber', 'precamber mm', 'precamber 5 mm 6', 'loss 1 m .. { top 3 mm }', 'loss 1 m .. 2 m { top 3 mm', 'loss 1 m .. 2 m top 3 mm }', 'loss', 'on', 'on north',
    'on north at', 'on at 2 m', 'on north 2 m', 'spring 500 N/mm at', 'notch left 0 m .. 1 m deep 3 mm', 'notch bottom 0 m 1 m deep 3 mm', 'restrained evry 6 m',
    'precamber (5 mm', 'precamber 5 mm (measured', 'precamber 5 mm (measured "x"', 'precamber 5 mm )', 'precamber 2 +', 'precamber * 2 mm', 'precamber min(', 'precamber "5 mm"',
    'precamber "5 mm', 'xyz', 'xyz 5 mm', '5 mm', '"text"', '= 3', '..', ', 3', '{', '{ }', '( )', 'precamber 5 mm §', 'ply 1 but at 2 m', 'section', 'plies 3 of',
    'floor { width 4 m', 'floor width 4 m', 'bolts M12 grade at 3 m', 'hole 20 mm', 'system', 'no self', 'load', 'precamber 5 mm; slopes 3 deg', 'precamber 1e', '#', '\u00e4'
];

describe('a broken line in a member', () => {
    it.each(brokenLines)('%s', line => {
        const evaluation = evaluateText(inMember(line), 'test.padstone');
        const errors = evaluation.findings.filter(finding => finding.severity === 'error');
        expect(sound(evaluation)).toEqual(['J1', 'J2']);
        expect(broken(evaluation)).toEqual(['J3']);
        expect(errors.length).toBeGreaterThan(0);
        expect(errors.length).toBeLessThanOrEqual(3);
        for (const { message, source } of errors) {
            expect(message).not.toMatch(raw);
            expect(source.line).toBeGreaterThanOrEqual(inMember('').split('\n').findIndex(text => text.startsWith('member J3')) + 1);
        }
    });

    it('an extra brace', () => {
        const evaluation = evaluateText(inMember('}\n  loss 1 m .. 2 m { top 3 mm }'), 'test.padstone');
        expect(sound(evaluation)).toEqual(['J1', 'J2']);
        expect(broken(evaluation)).toEqual(['J3']);
    });

    it('a missing brace at the end', () => {
        const evaluation = evaluateText(inMember('').trimEnd().slice(0, -1) + '\nload x snow 1 kN/m on J1\n', 'test.padstone');
        expect(sound(evaluation)).toEqual(['J1', 'J2']);
        expect(evaluation.model.loads.map(load => load.name)).toEqual(['boards', 'plaster', 'x']);
        expect(evaluation.findings.map(finding => finding.message)).toContain('} is missing: the block of a member is not closed');
    });
});

describe('a broken declaration between the members', () => {
    it.each([
        'member', 'member K', 'member K {', 'load', 'load x', 'load x permanent', 'load x permanent 3', 'let', 'let a', 'let a =', 'wall', 'wall w', 'wall w {', 'timber t { grade }',
        'stage', 'stage a {', 'stage a { R, }', 'use', 'use a b', 'use a b (', 'detail', 'require', 'require J1.bending', 'breakeven', 'loadtest t {', 'option o {', 'job',
        'survey {', 'survey { a b', 'values {', 'values { a }', 'values { 3 }', 'access { piece 3 m }', 'include', 'include "x', 'foo', 'foo bar', '}', '}}', '3', '"x"', '"x', '§'
    ])('%s', line => {
        const evaluation = evaluateText(soundJob.replace('member J2', `${line}\nmember J2`), 'test.padstone');
        expect(sound(evaluation)).toEqual(['J1', 'J2']);
        const errors = evaluation.findings.filter(finding => finding.severity === 'error');
        expect(errors.length).toBeGreaterThan(0);
        errors.forEach(({ message }) => expect(message).not.toMatch(raw));
    });
    it('that begins a detail takes the member below it for its own, and the file is not understood', () => {
        const evaluation = evaluateText(soundJob.replace('member J2', 'detail a (b)\nmember J2'), 'test.padstone');
        expect(sound(evaluation)).toEqual(['J1']);
        const errors = evaluation.findings.filter(finding => finding.severity === 'error');
        expect(errors.length).toBeGreaterThan(0);
        errors.forEach(({ message }) => expect(message).not.toMatch(raw));
    });
});

describe('what depends on something broken', () => {
    it.each([
        ['a load with an error', 'load x permanent 3 on J1', ['J1']],
        ['a load whose end cannot be read', 'load x permanent 3 kN/m srip 2 m on J1', ['J1']],
        ['a load whose beginning cannot be read', 'laod x permanent 3 kN/m on J1', ['J1']],
        ['a load that uses a broken value', 'let q = 3 kN\nload x permanent q + 1 m at 1 m on J1', ['J1']],
        ['a value in a circle', 'let a = b\nlet b = a\nload x permanent 1 kN/m strip a on J1', ['J1']],
        ['a member that stands on a broken one', 'member K { of C24 section 1 x 1 m length 3 kN on J1 at 1 m crossing at 1 m }', ['J1', 'K']],
        ['a member with a broken material', 'timber t { grade C19 }\nmember K { of t section 1 x 1 m length 3 m on north at 1 m }', ['K']],
        ['a member on a broken wall', 'wall w { thick 3 kN }\nmember K { of C24 section 1 x 1 m length 3 m on w at 1 m }', ['K']],
        ['a member on a wall of broken masonry', 'masonry b { fk 3 }\nwall w { of b }\nmember K { of C24 section 1 x 1 m length 3 m on w at 1 m }', ['K']],
        ['what an unreadable member stands on', 'member K { of C24 section 1 x 1 m length 3 m oon J1 at 1 m }', ['J1', 'K']],
        ['a name given twice', 'member J1 { of C24 section 1 x 1 m length 3 m on north at 1 m }', ['J1']]
    ])('%s', (_, line, expected) => {
        const evaluation = evaluateText(`${soundJob}${line}\n`, 'test.padstone');
        expect([...broken(evaluation)].sort()).toEqual(expected);
        expect(sound(evaluation)).toContain('J2');
        expected.forEach(name => expect(sound(evaluation)).not.toContain(name));
        evaluation.model.loads.forEach(load => expect(sound(evaluation)).toContain(load.member));
        expect(evaluation.findings.filter(finding => finding.code === 'not-computed')).toHaveLength(expected.length);
    });

    it('a load that is not yet on anything blanks nothing', () => {
        expect(sound(evaluateText(`${soundJob}load x permanent 3 kN/m\n`, 'test.padstone'))).toEqual(['J1', 'J2']);
    });
});
