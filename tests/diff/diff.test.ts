/** Two revisions of a text: every change is told, and nothing that is none. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateText, formatText } from '../../language/src/index.js';
import { compute } from '../../server/src/compute.js';
import { compareSides, isChanged, type Side } from '../../server/src/diff/comparison.js';
import { sectionsOf } from '../../server/src/diff/sections.js';
import { root } from '../command/run.js';
import { shed } from '../lsp/jobs.js';

const sample = (file: string) => readFileSync(`${root}samples/${file}`, 'utf8');
const loft = sample('sail-loft/sail-loft.padstone');
const granary = sample('granary-floor/granary-floor.padstone');
const hangers = sample('sail-loft/details/hangers.padstone');

function side(text: string, detail = hangers): Side {
    const evaluation = evaluateText(text, 'job.padstone', () => detail);
    return { results: compute(evaluation), model: evaluation.model };
}
const compared = (before: string, after: string) => compareSides(side(before), side(after));
const inputs = (before: string, after: string) => compared(before, after).inputs.map(({ element, changes }) => [element, ...changes.map(({ what, before, after }) => `${what}: ${before} → ${after}`)]);

describe('what went in', () => {
    it.each<[string, string, string, unknown]>([
        ['a value', '100 x 250 mm', '100 x 260 mm', [['member B1', 'section depth: 250 mm (measured "tape") → 260 mm (measured "tape")']]],
        ['how it is known', '(measured "tape")', '(judged "by eye")', [['member B1', 'section breadth: 100 mm (measured "tape") → 100 mm (judged "by eye")', 'section depth: 250 mm (measured "tape") → 250 mm (judged "by eye")']]],
        ['a support', 'on east at 3.90 m bearing 150 mm', 'on east at 3.90 m bearing 120 mm tied', [['member B1', 'supports east bearing: 150 mm (assumed, nothing is said) → 120 mm (assumed, nothing is said)', 'supports east tied: no → yes']]],
        ['what is new in a member', 'length 4.00 m', 'length 4.00 m\n  precamber 5 mm', [['member B1', 'precamber: undefined → 5 mm (assumed, nothing is said)']]],
        ['an element that comes', 'load rails', 'load more permanent 1 kN at 1 m on B2\nload rails', [['load more', ': undefined → action permanent, member B2, amount 1 kN (assumed, nothing is said), at 1 m (assumed, nothing is said)']]],
        ['an element that goes', 'require B1.bending <= 100 %\n', '', [['require B1.bending<=100%', ': B1.bending <= 100 % → undefined']]],
        ['the job', 'service class 2', 'service class 1', [['job', 'service class: 2 → 1']]]
    ])('%s', (_, before, after, expected) => expect(inputs(shed, shed.replace(before, after))).toEqual(expected));

    it('a stage, an option and a load test', () => {
        const changed = loft.replace('lift 3 mm', 'lift 4 mm').replace('section HEA 140', 'section HEA 160').replace('read 480 kg 23 mm', 'read 480 kg 24 mm');
        expect(inputs(loft, changed).map(([element, ...changes]) => [element, changes.length])).toEqual([['stage propped', 1], ['load test bench', 1], ['option steel: R1', 2]]);
    });

    it('a detail, in each thing that it makes', () => {
        const { inputs: changes } = compareSides(side(loft), side(loft, hangers.replace('M12', 'M16')));
        expect(changes).toEqual(['H1', 'H2'].map(name => ({ element: `hanger ${name}`, changes: [{ what: 'rods size', before: 'M12', after: 'M16' }] })));
    });
});

describe('what came out', () => {
    const deeper = shed.replace('100 x 250 mm', '100 x 160 mm');
    const { checks, verdict } = compared(shed, deeper);
    const before = side(shed).results;
    const after = side(deeper).results;

    it('has each check with its numbers before and after, what fails now first', () => {
        for (const { id, stage, before: one, after: other } of checks) {
            const find = (all: typeof before.checks) => all.find(check => check.id === id && check.stage === stage)!;
            expect([one!.utilisation, other!.utilisation]).toEqual([find(before.checks).utilisation, find(after.checks).utilisation]);
        }
        const failing = after.checks.filter(({ pass }) => !pass).map(({ id }) => id);
        expect(failing.length).toBeGreaterThan(0);
        expect(checks.slice(0, failing.length).map(({ id }) => id).sort()).toEqual([...failing].sort());
        expect(verdict.after).toMatchObject({ verdict: 'fail' });
    });
    it('has all checks that changed, and none of the other member', () => {
        expect(new Set(checks.map(({ id }) => id.split('.')[0]))).toEqual(new Set(['B1']));
        expect(checks.map(({ id }) => id).sort()).toEqual(before.checks.filter(({ subject }) => subject === 'B1').map(({ id }) => id).sort());
    });
    it('has hazards and pieces', () => {
        const { hazards, pieces } = compared(granary, granary.replace('damp source fixed "roof slip over the east gable mended"', 'damp source not found').replace('section 100 x 220 mm', 'section 110 x 220 mm'));
        expect(hazards.find(({ code }) => code === 'damp-source-open')).toMatchObject({ before: undefined, after: { answered: false } });
        expect(pieces.map(({ mark, before: one, after: other }) => [mark, one!.description, other!.description])).toEqual([['B2', '100 × 220 mm C24', '110 × 220 mm C24']]);
        expect(pieces[0]!.after!.mass! / pieces[0]!.before!.mass!).toBeCloseTo(1.1, 6);
    });
    it('tells an error of the text on its side, and no pass', () => {
        const { errors, verdict: both } = compared(shed, shed.replace('length 4.00 m', 'length 4.00 kN'));
        expect(errors.before).toEqual([]);
        expect(errors.after![0]).toMatch(/^job\.padstone:14: .*length/);
        expect(both.after).toMatchObject({ understood: false });
    });
    it('tells a file that comes or goes as such', () => {
        expect(compareSides(undefined, side(shed))).toMatchObject({ presence: 'added', verdict: { before: undefined } });
        const gone = compareSides(side(shed), undefined);
        expect(gone).toMatchObject({ presence: 'removed', file: 'job.padstone', verdict: { after: undefined } });
        expect(isChanged(gone)).toBe(true);
        expect(gone.checks.every(({ after: now }) => now === undefined)).toBe(true);
    });
    it('leaves out what prints alike, and says how many', () => {
        const [section] = sectionsOf(compared(shed, shed.replace('0.40 kN/m2', '0.4001 kN/m2'))).filter(({ title }) => title === 'What came out');
        expect(section!.rows.every(({ before: one, after: other }) => one !== other)).toBe(true);
        expect(section!.note).toMatch(/^\d+ checks by less than 1 %$/);
    });
});

describe('no change', () => {
    const unchanged = (before: string, after: string) => {
        const comparison = compared(before, after);
        expect([sectionsOf(comparison), isChanged(comparison)]).toEqual([[], false]);
    };
    it('is white space and remarks', () => {
        unchanged(granary, granary.replace(/\/\/.*/g, '/* said otherwise */').replace(/ {2,}(?=\S)/g, ' ').replace(/(?<=section .*|bearing \d+) mm/g, 'mm'));
        unchanged(loft, formatText(loft.replace(/ {2,}/g, '\t'), 'x').text);
    });
    it('is the order of declarations', () => fc.assert(fc.property(fc.constantFrom(loft, granary, shed), fc.infiniteStream(fc.nat()), (text, stream) => {
        const declarations = text.split(/^(?=[a-z])/m);
        const key = new Map(declarations.map(one => [one, stream.next().value as number]));
        const shuffled = [...declarations].sort((a, b) => key.get(a)! - key.get(b)!);
        // Stages run in the order of writing.
        const stages = declarations.filter(one => one.startsWith('stage'));
        unchanged(text, shuffled.map(one => one.startsWith('stage') ? stages.shift()! : one).join('\n'));
    }), { numRuns: 12 }));
    it('is the order of statements in a member', () => unchanged(shed, shed.replace(/( {2}on west.*\n)( {2}on east.*\n)/g, '$2$1').replace('  of pine\n  section 100 x 250 mm (measured "tape")\n', '  section 100 x 250 mm (measured "tape")\n  of pine\n')));
});
