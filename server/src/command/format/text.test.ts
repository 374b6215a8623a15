import stringWidth from 'string-width';
import { describe, expect, test } from 'vitest';
import { at, check, finding, job, member } from '../../../../tests/command/results-fixture.js';
import { noResults } from '../../no-results.js';
import type { Results } from '../../results.js';
import { plainDisplay } from '../../sheet/index.js';
import { pageOf, type Page } from './page.js';
import { text as format } from './text.js';

const text = (files: readonly Results[], page: Page): string => format.whole(files.map(file => ({ ...file, part: format.part(file, page) })), page);

const plain = pageOf({ width: 120, coloured: false, display: plainDisplay });
const coloured = pageOf({ width: 120, coloured: true, display: plainDisplay });
const requirement = { left: { kind: 'number' as const, value: 1, dimension: [0, 0, 0, 0, 0] as const, text: '1' }, comparison: '<=' as const, right: { kind: 'number' as const, value: 1, dimension: [0, 0, 0, 0, 0] as const, text: '1' }, source: at(40) };

const failing = job({
    verdict: 'fail', verdictReason: 'T2.bending does not hold',
    checks: [check('T2.bending', 1.1201), check('T2.shear', 0.3)],
    missing: [{ name: 'R1', reason: '3 plies are not computed by this version', source: at(20) }],
    requirements: [
        { text: 'T2.bending <= 90 %', requirement: { ...requirement, text: '' }, holds: false, left: { value: 112.01, unit: '%' }, right: { value: 90, unit: '%' }, source: at(40) },
        { text: 'R1.final <= span/300', requirement: { ...requirement, text: '' }, holds: undefined, reason: 'R1.final was not computed', source: at(41) }
    ],
    hazards: [
        { code: 'a', severity: 'note', subject: 'job', message: 'consent is pending', action: 'Wait for it.', decider: 'conservation officer', source: at(9, 3) },
        { code: 'b', severity: 'stop', subject: 'T2', message: 'the gutter leaks', action: 'Find the source.', decider: 'you', source: at(8, 3) }
    ],
    unchecked: [{ text: 'stage hung: stages are not computed by this version', blocking: true, source: at(30) }, { text: 'fire resistance', blocking: false }],
    findings: [finding('warning', 'unknown-word', 'what is this', 3), finding('error', 'check-fails', 'T2.bending 113 %', 12), finding('hazard', 'b', 'the gutter leaks', 8)]
});

describe('text', () => {
    test('a failing job, plain', () => {
        expect(text([failing], plain)).toBe(`loft.padstone: Loft floor, revision B (EN1995)

Members
        member  section           worst check    use      deflection  governed by
  FAIL  T2      190 × 240 mm C18  bending      113 %  9.9 mm = L/475  1.35 G + 1.5 storage
  none  R1: no check of it was computed; 3 plies are not computed by this version

Checks
        check         use    demand  capacity     at  governed by           duration     clause
  FAIL  T2.bending  113 %  11.2 MPa    10 MPa  2.1 m  1.35 G + 1.5 storage  medium-term  EN 1995-1-1 6.1.6
  ok    T2.shear     30 %     3 MPa    10 MPa  2.1 m  1.35 G + 1.5 storage  medium-term  EN 1995-1-1 6.1.6

Requirements
        require               found                      limit
  FAIL  T2.bending <= 90 %    113 %                       90 %
  none  R1.final <= span/300  R1.final was not computed

Hazards
  STOP  T2: the gutter leaks
        Find the source. Decides: you. loft.padstone:8:3
  NOTE  job: consent is pending
        Wait for it. Decides: conservation officer. loft.padstone:9:3

Not checked
  - stage hung: stages are not computed by this version (loft.padstone:30:1)
  - fire resistance

Findings
  loft.padstone:12:3: error: T2.bending 113 % [check-fails]
  loft.padstone:3:3: warning: what is this [unknown-word]

loft.padstone: FAIL, T2.bending does not hold
`);
    });

    test('what a member leaves open is said beside its checks that hold', () => {
        const open = job({ verdict: 'incomplete', verdictReason: 'not checked: hanger H1', unchecked: [{ text: 'hanger H1', blocking: true, members: ['T2'] }] });
        expect(text([open], plain)).toMatch(/^ {2}open {2}T2 /m);
        expect(text([open], plain)).toMatch(/INCOMPLETE, not checked: hanger H1\n$/);
    });

    test('of stages each check is told where it is worst, and wherever it fails; hangers and the order of work by themselves', () => {
        const kN = (value: number) => ({ value, unit: 'kN' });
        const sags = { found: 12, hung: 9.9 };
        const staged = text([job({
            verdict: 'fail', verdictReason: 'T2.bending does not hold',
            members: (['found', 'hung'] as const).map(stage => member('T2', { stage, deflection: { instant: { value: 1, unit: 'mm' }, final: { value: sags[stage], unit: 'mm' }, total: { value: 2, unit: 'mm' }, ratio: 4700 / sags[stage] } })),
            hangers: [{ name: 'H1', stage: 'hung', carries: 'T2', carriesAt: 1500, from: 'R1', fromAt: 1500, force: { min: kN(0), max: kN(4.21) }, description: '2 rods M12 4.6', worst: 'H1.rods', source: at(30) }],
            stages: [{ name: 'found', lines: ['T2 as it is'], source: at(31) }, { name: 'hung', title: 'rods', lines: ['have R1, H1 in place', 'tighten H1 to 2.5 kN'], source: at(32) }],
            checks: [
                check('T2.bending', 1.2, { stage: 'found' }), check('T2.bending', 1.1, { stage: 'hung' }),
                check('T2.shear', 0.5, { stage: 'found' }), check('T2.shear', 0.2, { stage: 'hung' }), check('H1.rods', 0.4, { stage: 'hung' })
            ]
        })], plain);
        expect(staged).toContain('FAIL  T2      190 × 240 mm C18  bending @ found  120 %  12.0 mm = L/391 (found)  1.35 G + 1.5 storage');
        expect(staged).toContain('ok  H1      T2 from R1  rods         40 %  0.0 to 4.2 kN  2 rods M12 4.6');
        expect(staged).toContain('  1. found: T2 as it is\n  2. hung (rods): have R1, H1 in place; tighten H1 to 2.5 kN\n');
        const checks = staged.slice(staged.indexOf('Checks, each in its worst stage'), staged.indexOf('loft.padstone: FAIL')).split('\n').slice(2).map(line => line.trim().split(/ {2,}/).slice(1, 3).join(' '));
        expect(checks.slice(0, 4)).toEqual(['T2.bending @ found 120 %', 'T2.bending 110 %', 'T2.shear @ found 50 %', 'H1.rods 40 %']);
    });

    test('a utilisation just above 1 never reads as 100 %', () => {
        const close = job({ verdict: 'fail', verdictReason: 'T2.bending does not hold', checks: [check('T2.bending', 1.0004)] });
        expect(text([close], plain)).toMatch(/FAIL {2}T2\.bending {2}101 %/);
    });

    test('colour never is the only sign, and takes no room', () => {
        const escapes = /\u001b\[\d+m/g;
        expect(text([failing], coloured)).toMatch(escapes);
        expect(text([failing], coloured).replace(escapes, '')).toBe(text([failing], plain));
    });

    test('several files each, then a summary', () => {
        const both = text([job(), noResults('gone.padstone', 'cannot-read', 'there is no such file')], plain);
        expect(both).toContain('gone.padstone:1:1: error: there is no such file [cannot-read]');
        expect(both.endsWith(`2 files
  loft.padstone: PASS, all 2 checks hold
  gone.padstone: INCOMPLETE, there is no such file
`)).toBe(true);
    });

    test.each([80, 100, 120])('no line of a table is wider than %d columns, whatever the names', width => {
        const names = ['T2', 'a_very_long_name_of_a_member_that_somebody_once_gave_to_a_tie_over_a_ceiling', '🏚️👨‍👩‍👧梁🪵'.repeat(12)];
        const wide = job({ checks: names.map(name => check(`${name}.bending`, 0.5)), members: names.map(name => member(name, { description: '190 × 240 mm GL24h' })) });
        const tables = text([wide], { ...plain, width }).split('\n').filter(line => line.startsWith('  '));
        expect(tables).toHaveLength(8);
        expect(Math.max(...tables.map(line => stringWidth(line)))).toBeLessThanOrEqual(width);
        expect(tables.join('')).toContain('…');
        expect(tables.join('')).not.toMatch(/[\uD800-\uDFFF]/u);
    });

    test('a file cannot move the cursor or break a line', () => {
        const { job: head } = job();
        const hostile = text([job({ job: { ...head!, title: 'a\u001b[2J\u0007\nb' }, findings: [finding('error', 'x', 'one\ntwo\u001b[31m', 1)] })], plain);
        expect(hostile).not.toMatch(/[\u001b\u0007]/);
        expect(hostile).toContain('one two[31m');
    });
});
