import { describe, expect, test } from 'vitest';
import { check, job, member } from '../../../tests/command/results-fixture.js';
import { hangerSummaries, memberSummaries } from '../summary.js';
import { hintLabel } from './inlay-hints.js';
import { checksTable, checkText, otherStages } from './markdown.js';

const stages = ['found', 'propped', 'relieved'];
const staged = (worst: string) => job({
    members: stages.map(stage => member('T2', { stage })),
    checks: stages.flatMap(stage => [check('T2.bending', stage === worst ? 0.83 : 0.4, { stage }), check('T2.shear', 0.2, { stage })])
});
const hint = (results: ReturnType<typeof job>): string => hintLabel(memberSummaries(results)[0]!);

describe('a hint', () => {
    test('is one for a member of many stages', () => expect(memberSummaries(staged('found'))).toHaveLength(1));
    test('names the stage of the worst check where that is not the last', () => expect(hint(staged('propped'))).toBe('bending 83 % in propped · 9.9 mm = L/475'));
    test('names no stage where it is the last', () => expect(hint(staged('relieved'))).toBe('bending 83 % · 9.9 mm = L/475'));
    test('names no stage of two that are as bad, if the last is one of them', () => expect(hint(staged('none'))).toBe('bending 40 % · 9.9 mm = L/475'));
    test('names none where there are no stages', () => expect(hint(job())).toBe('bending 83 % · 9.9 mm = L/475'));
    test('tells a failure in any stage', () => {
        const results = staged('propped');
        expect(hint({ ...results, checks: [...results.checks, check('T2.bearing', 1.0001, { stage: 'found', pass: false })] })).toBe('bearing 101 % FAILS in found · 9.9 mm = L/475');
    });
    test('counts what has no number as worst', () => {
        const results = staged('propped');
        expect(hint({ ...results, checks: [...results.checks, check('T2.bearing', NaN, { stage: 'relieved', pass: false })] })).toBe('bearing not computed FAILS · 9.9 mm = L/475');
    });
});

describe('a hover', () => {
    test('on a hanger has its force and its checks, each in its worst stage', () => {
        const kN = (value: number) => ({ value, unit: 'kN' });
        const hanger = { name: 'H1', carries: 'T2', carriesAt: 1500, from: 'R1', fromAt: 1500, description: '2 rods M12 4.6', worst: 'H1.rods', source: check('x', 0).source };
        const results = job({
            hangers: [{ ...hanger, stage: 'hung', force: { min: kN(2.5), max: kN(2.5) } }, { ...hanger, stage: 'relieved', force: { min: kN(3.1), max: kN(6.2) } }],
            checks: [check('H1.rods', 0.5, { stage: 'hung' }), check('H1.rods', 0.24, { stage: 'relieved' }), check('H1.grain', 0.3, { stage: 'relieved' })]
        });
        const table = checksTable(hangerSummaries(results)[0]!);
        expect(table).toContain('**H1** 2 rods M12 4.6');
        expect(table).toContain('Tension of all rods 2.5 to 6.2 kN');
        expect(table.match(/\| rods \|/g)).toHaveLength(1);
        expect(table).toMatch(/\| ok \| rods \| 50 % \| .*stage hung \|[^]*\| ok \| grain \| 30 % \|/);
    });

    test('prints notes of steps as words, not as TeX', () => {
        const step = { symbol: '\\eta', formula: '', terms: [], result: { value: 0.5, unit: '' }, clause: 'EN 1995-1-1 (6.35)', note: 'has to be \\le 1' };
        expect(checkText(check('T2.bending', 0.5, { steps: [step] }))).toContain('η = 0.500   (EN 1995-1-1 (6.35), has to be ≤ 1)');
    });

    test('says what a check is in other stages', () => {
        expect(otherStages([check('T2.bending', 0.111, { stage: 'found' }), check('T2.bending', 0.4, { stage: 'hung_up' })])).toBe('Other stages: found 12 %, hung\\_up 40 %');
        expect(otherStages([])).toBe('');
    });
});
