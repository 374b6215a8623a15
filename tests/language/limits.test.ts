/** Whatever is typed or opened: an answer, bounded, and never an exception. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import { hangers, sailLoft, soundJob } from './check.js';

const bound = 201;

describe('texts that no person wrote', () => {
    it.each([
        ['binary', 'job "x"\0\u0001\u0002', 'not-read'],
        ['5 MB', 'member '.repeat(750_000), 'not-read'],
        ['deep parentheses', `job "x"\nlet a = ${'('.repeat(20_000)}`, 'syntax'],
        ['a chain of signs', `job "x"\nlet a = ${'-'.repeat(20_000)}1`, 'syntax'],
        ['a long line of values', `job "x"\n${Array.from({ length: 20_000 }, (_, i) => `let a${i} = a${i + 1}`).join('\n')}`, 'too-deep'],
        ['noise', 'q { } ( "x" .. 3 = § } , '.repeat(10_000), 'syntax'],
        ['a member with far too much', `${soundJob}member K { of C24 section 1 x 1 m length 4 m on north at 1 m ${'loss 1 m .. 2 m { top 1 mm } '.repeat(600)}}`, 'too-many-statements']
    ])('%s', (_, text, code) => {
        const { findings, model } = evaluateText(text, 'noise.padstone');
        expect(findings.map(finding => finding.code)).toContain(code);
        expect(findings.length).toBeLessThanOrEqual(bound);
        expect(model.members.map(member => member.name)).not.toContain('K');
    });

    it('says how many findings it leaves out', () => {
        const text = `${soundJob}${Array.from({ length: 300 }, (_, i) => `let a${i} = 1 m + 1 kN`).join('\n')}`;
        const { findings } = evaluateText(text, 'many.padstone');
        expect(findings).toHaveLength(bound);
        expect(findings.at(-1)).toMatchObject({ code: 'more-findings', message: 'and 100 more' });
    });

    it('reads the next text as if nothing had happened', () => {
        evaluateText(`let a = ${'('.repeat(20_000)}`, 'deep.padstone');
        expect(evaluateText(sailLoft, 'sail-loft.padstone').findings).toEqual([]);
    });
});

describe('any change of a sound text', () => {
    const words = [...new Set(`${sailLoft}\n${hangers}\nanswer a-b on T2 "x" (measured)`.match(/[A-Za-z_]+|[0-9.]+|"[^"]*"|[^\sA-Za-z0-9_]/g))];
    const edit = fc.record({ at: fc.double({ min: 0, max: 1, noNaN: true }), remove: fc.nat(40), insert: fc.oneof(fc.constantFrom(...words), fc.string(), fc.constant('')) });
    const changes = (text: string) => fc.array(edit, { minLength: 1, maxLength: 5 }).map(edits => edits.reduce((changed, { at, remove, insert }) => {
        const start = Math.floor(at * changed.length);
        return `${changed.slice(0, start)}${insert}${changed.slice(start + remove)}`;
    }, text));
    const mutated = fc.constantFrom(sailLoft, hangers).chain(changes);

    it('gives an evaluation that holds together', () => {
        fc.assert(fc.property(mutated, text => {
            const { model, findings, broken } = evaluateText(text, 'changed.padstone');
            const names = new Set(model.members.map(member => member.name));
            expect(findings.length).toBeLessThanOrEqual(bound);
            for (const { source, fix } of findings) {
                for (const place of fix === undefined ? [source] : [source, fix.at]) {
                    expect(place.start).toBeGreaterThanOrEqual(0);
                    expect(place.end).toBeGreaterThanOrEqual(place.start);
                    expect(place.end).toBeLessThanOrEqual(text.length);
                    expect(place.line).toBe(text.slice(0, place.start).split('\n').length);
                }
            }
            model.loads.forEach(load => expect(names).toContain(load.member));
            model.loadTests.forEach(test => {
                expect(names).toContain(test.member);
                expect(test.blocks.length).toBeGreaterThanOrEqual(2);
                test.readings.forEach(({ mass }) => expect([0, ...test.weights.map(weight => weight.mass.value)]).toContain(mass.value));
            });
            model.options.forEach(option => option.replaced.forEach(member => expect(option.model.members).toContain(member)));
            broken.forEach(member => expect(names).not.toContain(member.name));
            for (const member of model.members) {
                expect(Number.isFinite(member.length.value) && member.length.value > 0).toBe(true);
                member.supports.filter(support => support.kind === 'member').forEach(support => expect(names).toContain(support.on));
            }
        }), { numRuns: 400 });
    });

    it('gives hangers and stages of sound members alone, and findings in the file that they are about', () => {
        const changedPair = fc.tuple(changes(sailLoft), changes(hangers));
        fc.assert(fc.property(changedPair, ([job, details]) => {
            const { model, findings, broken } = evaluateText(job, 'job.padstone', path => (path === 'details/hangers.padstone' ? details : undefined));
            const texts: Readonly<Record<string, string>> = { 'job.padstone': job, 'details/hangers.padstone': details };
            const members = new Set(model.members.map(member => member.name));
            const names = new Set([...members, ...model.hangers.map(hanger => hanger.name)]);
            findings.flatMap(({ source, related, fix }) => [source, ...(related ?? []).map(place => place.source), ...(fix ? [fix.at] : [])])
                .forEach(place => expect(place.end).toBeLessThanOrEqual(texts[place.file]!.length));
            broken.forEach(member => expect(members).not.toContain(member.name));
            model.hangers.flatMap(hanger => [hanger.carries, hanger.from]).forEach(name => expect(members).toContain(name));
            model.stages.flatMap(stage => stage.steps).forEach(step => {
                const used = step.kind === 'prop' ? [step.member] : step.kind === 'tighten' ? step.hangers : step.kind === 'release' ? [step.members].flat().filter(name => name !== 'all') : step.elements;
                used.forEach(name => expect(names).toContain(name));
            });
        }), { numRuns: 400 });
    });

    it('any text at all', () => {
        fc.assert(fc.property(fc.oneof(fc.string({ maxLength: 300 }), fc.array(fc.constantFrom(...words), { maxLength: 80 }).map(list => list.join(' '))), text => {
            expect(evaluateText(text, 'any.padstone').findings.length).toBeLessThanOrEqual(bound);
        }), { numRuns: 400 });
    });
});
