/** What the texts mean: values in base units, with their evidence and place. */
import { describe, expect, it } from 'vitest';
import { evaluateFormula, evaluateText } from '../../language/src/index.js';
import type { Quantity } from '../../language/src/index.js';
import { length, ratio } from '../../language/src/quantity.js';
import { granary, hangers, inMember, sailLoft, soundJob } from './check.js';

const model = (text: string) => {
    const { model, findings } = evaluateText(text, 'test.padstone');
    expect(findings).toEqual([]);
    return model;
};
const member = (line: string, name = 'J3') => model(inMember(line)).members.find(found => found.name === name)!;
const load = (line: string) => model(`${soundJob}${line}\n`).loads.at(-1)!;

describe('the sail loft', () => {
    const loft = model(sailLoft);

    it('has its job, survey and access', () => {
        expect(loft.job).toMatchObject({ title: 'Sail loft, relief of tie T2', revision: { mark: 'C', note: 'hangers moved clear of the valley board' }, basis: 'EN1995', serviceClass: 2, serviceClassStated: true });
        expect(loft.survey!.items.map(({ subject, state, note }) => [subject, state, note])).toEqual([
            ['services', 'not checked', undefined], ['asbestos', 'checked', 'sampled, none found'], ['damp source', 'fixed', 'valley gutter relined'], ['heritage consent', 'pending', undefined]
        ]);
        expect([loft.access!.piece!.value, loft.access!.carry!.value]).toEqual([3100, 50]);
    });

    it('has its tie', () => {
        const tie = loft.members[0]!;
        expect(tie).toMatchObject({ name: 'T2', kind: 'beam', slope: 0, material: 'oldPine', length: { value: 4900 }, restraint: { value: 600 }, selfWeight: true });
        expect(tie.section).toMatchObject({ shape: 'rectangle', breadth: { value: 190, evidence: { word: 'measured', note: 'tape, three places', stated: true } }, depth: { value: 240 } });
        expect(tie.supports.map(support => [support.kind, support.on, support.at.value, support.bearing!.value, support.bearing!.evidence.word])).toEqual([
            ['wall', 'north', 100, 150, 'assumed'], ['wall', 'south', 4800, 120, 'judged']
        ]);
        expect(tie.losses).toMatchObject([{ from: { value: 1600 }, to: { value: 2700 }, faces: { top: { value: 35, path: 'T2.loss.top' }, left: { value: 20 } }, evidence: { word: 'probed' } }]);
        expect(sailLoft.slice(tie.nameSource.start, tie.nameSource.end)).toBe('T2');
    });

    it('has its loads', () => {
        expect(loft.loads.map(({ name, action, point, line }) => [name, action, point ?? line])).toEqual([
            ['ceiling', { kind: 'permanent' }, { perLength: expect.closeTo(1.1, 12), from: 0, to: 4900 }],
            ['joists', { kind: 'permanent' }, { perLength: expect.closeTo(0.44, 12), from: 0, to: 4900 }],
            ['storage', { kind: 'imposed', category: 'E' }, { perLength: expect.closeTo(1.65, 12), from: 0, to: 4900 }],
            ['person', { kind: 'imposed', category: 'H' }, { force: 1500, at: 2450 }],
            ['valley', { kind: 'snow' }, { force: 3200, at: 2200 }]
        ]);
    });

    it('lists every input of consequence, and says which have no evidence', () => {
        expect(loft.inputs.map(input => [input.path, input.evidence.word, input.evidence.stated])).toEqual([
            ['oldPine.grade', 'judged', true], ['oldPine.moisture', 'measured', true], ['oldBrick.fk', 'assumed', true], ['newLarch.grade', 'documented', true], ['T2.section', 'measured', true],
            ['T2.north.bearing', 'assumed', false], ['T2.south.bearing', 'judged', true], ['T2.loss.top', 'probed', true], ['T2.loss.left', 'probed', true],
            ['R1.section', 'assumed', false], ['R1.bolts.grade', 'assumed', false], ['R1.north.bearing', 'assumed', false], ['R1.south.bearing', 'assumed', false],
            ['ceiling', 'assumed', false], ['joists', 'assumed', false], ['storage', 'assumed', true], ['person', 'assumed', false], ['valley', 'assumed', false]
        ]);
    });

    it('names all that is not computed, with the members it touches', () => {
        expect(loft.notComputed.map(({ what, members }) => [what, members])).toEqual([
            ['detail use H1', ['T2', 'R1']], ['detail use H2', ['T2', 'R1']],
            ['include "details/hangers.padstone"', []]
        ]);
    });

    it('has a library of details beside it', () => {
        const { findings, model: library } = evaluateText(hangers, 'hangers.padstone');
        expect(findings.map(finding => [finding.severity, finding.code])).toEqual([['info', 'library']]);
        expect([library.notComputed, library.hangers]).toEqual([[], []]);
    });

    it('is plain data', () => expect(JSON.parse(JSON.stringify(loft))).toEqual(JSON.parse(JSON.stringify(model(sailLoft)))));
});

describe('the granary', () => {
    it('is of members of one piece, with nothing left out', () => {
        const floor = model(granary);
        expect(floor.members.map(({ name, section }) => [name, section.shape])).toEqual(['B1', 'B2', 'J1', 'J2'].map(name => [name, 'rectangle']));
        expect([floor.files, floor.hangers, floor.stages, floor.notComputed]).toEqual([['test.padstone'], [], [], []]);
        expect(floor.members.flatMap(({ holes, splices }) => [...holes, ...splices])).toEqual([]);
        expect(floor.members[2]!.supports.map(({ on, stationOnCarrier }) => [on, stationOnCarrier?.value])).toEqual([['west', undefined], ['B2', 1500]]);
    });
});

describe('statements of a member', () => {
    it.each([
        ['slopes 30 deg', { slope: Math.PI / 6 }], ['stands', { kind: 'post', slope: Math.PI / 2 }], ['no self weight', { selfWeight: false }],
        ['system strength', { systemStrength: true }], ['restrained', { restraint: { value: 0 } }], ['precamber 5 mm', { precamber: { value: 5 } }],
        ['notch bottom 0 m .. 0.15 m deep 40 mm', { notches: [{ face: 'bottom', from: { value: 0 }, to: { value: 150 }, depth: { value: 40 }, taper: { value: 0 } }] }],
        ['notch top 3.5 m .. 4 m deep 20 mm taper 60 mm', { notches: [{ face: 'top', taper: { value: 60 } }] }],
        ['loss 0 m .. 1 m { top 9 mm (judged) left 8 mm } (probed)', { losses: [{ faces: { top: { evidence: { word: 'judged' } }, left: { evidence: { word: 'probed' } } } }] }],
        ['floor { width 4.5 m spacing 400 mm mass 80 kg/m2 deck 12 kNm2/m }', { floor: { width: { value: 4500 }, spacing: { value: 400 }, massPerArea: { value: expect.closeTo(8e-5, 15) }, transverseStiffness: { value: 12e6 }, damping: { value: 0.01 } } }]
    ])('%s', (line, expected) => expect(member(line)).toMatchObject(expected));

    it.each([
        ['on north at 2 m bearing 80 mm tied from end 200 mm', { kind: 'wall', on: 'north', at: { value: 2000 }, bearing: { value: 80 }, tied: true, fromWallEnd: { value: 200 } }],
        ['on J1 at 2 m crossing at 1.5 m', { kind: 'member', on: 'J1', stationOnCarrier: { value: 1500 }, tied: false }],
        ['spring 500 N/mm at 2 m', { kind: 'spring', on: 'spring', stiffness: { value: 500 } }],
        ['pinned at 2 m', { kind: 'pinned', on: 'pin' }], ['fixed at 2 m tied', { kind: 'fixed', on: 'fixed', tied: true }]
    ])('%s', (line, expected) => expect(member(line).supports[0]).toMatchObject(expected));

    it('stands on a post at its top', () => {
        const text = `${soundJob}member P { of C24 section 100 x 100 mm length 2.4 m stands pinned at 0 m }\nmember B { of C24 section 75 x 200 mm length 3 m on P at 0.1 m on north at 2.9 m }\n`;
        expect(model(text).members.at(-1)!.supports[0]).toMatchObject({ on: 'P', kind: 'member', stationOnCarrier: { value: 2400 } });
    });

    it.each(['190x240 mm', '190 x 240 mm', '190×240 mm', '190 × 240 mm', '190 mm x 240 mm', '19 cm x 240 mm', '0.19 x 0.24 m'])('section %s', size => {
        const text = inMember('').replace('of C24\n  section 75 x 200 mm\n  length 4 m\n  \n', `of C24\n  section ${size}\n  length 4 m\n`);
        const section = model(text).members.at(-1)!.section;
        expect(section.shape === 'rectangle' && [section.breadth.value, section.depth.value]).toEqual([expect.closeTo(190, 9), expect.closeTo(240, 9)]);
    });
});

describe('loads', () => {
    it.each([
        ['load x imposed A 480 kg at 1 m on J1', { fromMass: true, point: { force: expect.closeTo(480 * 9.80665, 9), at: 1000 } }],
        ['load x permanent 80 kg/m2 strip 500 mm on J1', { fromMass: true, line: { perLength: expect.closeTo(80 * 9.80665 * 0.5 / 1000, 12) } }],
        ['load x permanent 10 psf strip 2 ft on J1', { fromMass: false, line: { perLength: expect.closeTo(20 * 4.4482216152605 / 304.8, 12) } }],
        ['load x snow 3 kN/m from 1 m to 2 m on J1', { line: { perLength: 3, from: 1000, to: 2000 } }],
        ['load x wind -0.4 kN/m on J1', { line: { perLength: -0.4 } }],
        ['load x snow 3 kN/m on J1 lasting medium-term (judged "local")', { lasting: 'medium-term', amount: { evidence: { word: 'judged', note: 'local' } } }],
        ['load x snow 3 kN/m (judged) lasting medium-term on J1', { lasting: 'medium-term', amount: { evidence: { word: 'judged' } } }],
        ['load floor construction 3 kN/m on J1', { name: 'floor', action: { kind: 'construction' } }],
        ['load snow snow 3 kN/m on J1', { name: 'snow' }]
    ])('%s', (line, expected) => expect(load(line)).toMatchObject(expected));
});

describe('expressions', () => {
    const lengthOf = (expression: string, lets = '') => model(`${soundJob}${lets}\nmember K { of C24 section 1 x 1 m length ${expression} on north at 0 m }\n`).members.at(-1)!.length.value;
    it.each([
        ['4.80 m + 2 * 0.05 m', 4900], ['2 m - 500 mm - 1 m', 500], ['8 m / 2 / 2', 2000], ['2 * (1 m + 50 cm)', 3000], ['-(1 m - 3 m)', 2000], ['2 m * 3 m / 4 m', 1500],
        ['max(1 m, 2 m, 3 ft)', 2000], ['min(1 m, 2 m)', 1000], ['sqrt(4 m * 1 m)', 2000], ['abs(1 m - 3 m)', 2000], ['round(1.2345 m, to: 5 mm)', 1235], ['1 m * round(2.4)', 2000],
        ['1e3 mm', 1000], ['J1.length', 4000], ['J1.span', 3800], ['10 * J1.depth', 2000], ['J1.breadth * 20', 1500], ['north.thick * 3', 900], ['12 in', 304.8]
    ])('%s', (expression, value) => expect(lengthOf(expression)).toBeCloseTo(value, 9));

    it('of leaves the depth is theirs, the breadth that of one', () => {
        const leaves = 'member L { of C24 plies 3 of 63 x 225 mm length 3 m on north at 0 m bolts M12 every 400 mm }';
        expect([lengthOf('10 * L.depth', leaves), lengthOf('10 * L.breadth', leaves)]).toEqual([2250, 630]);
    });

    it('names may be letters that are units or signs', () =>
        expect(lengthOf('m + t + in + x + 2 * x', 'let m = 1 m\nlet t = 2 m\nlet in = 3 in\nlet x = 10 mm')).toBeCloseTo(1000 + 2000 + 76.2 + 30, 9));

    it('does not care for the order of definitions', () => expect(lengthOf('a', 'let a = b * 2\nlet b = c\nlet c = 1 m')).toBe(2000));
});

describe('requirements', () => {
    const requirement = (line: string) => model(`${soundJob}${line}\n`).requirements[0]!;
    const results: Readonly<Record<string, Quantity>> = { 'J1.bending': { value: 0.8, dimension: ratio }, 'J1.final': { value: 9, dimension: length }, J1: { value: 0.95, dimension: ratio } };
    const value = (line: string) => {
        const { left, right } = requirement(line);
        const lookup = (subject: string, check?: string) => results[check === undefined ? subject : `${subject}.${check}`];
        return [evaluateFormula(left, lookup)?.value, evaluateFormula(right, lookup)?.value];
    };
    it.each([
        ['require J1.bending <= 90 %', [0.8, 0.9]], ['require J1.final <= span/300', [9, 3800 / 300]], ['require J1 < 1', [0.95, 1]],
        ['require 2 * J1.bending - 0.1 >= J1.bending + 0.2', [1.5, 1]], ['require J1.final / J2.span < 1/250', [9 / 3800, 1 / 250]], ['require J2.bending <= 1', [undefined, 1]], ['require J1.bending / (J1 - J1) < 1', [undefined, 1]]
    ])('%s', (line, expected) => expect(value(line)).toEqual(expected.map(number => (number === undefined ? undefined : expect.closeTo(number, 12)))));

    it('of the one check that has two words', () => {
        expect(requirement('require J1.net section <= 90 %').left).toMatchObject({ kind: 'result', subject: 'J1', check: 'net section' });
        expect(evaluateText(`${soundJob}require J1.net <= 90 %\n`, 'test.padstone').findings).toMatchObject([{ code: 'unknown-check' }]);
    });

    it('keeps the text', () => expect(requirement('require  J1.final   <=\n  span / 300').text).toBe('J1.final <= span / 300'));
});
