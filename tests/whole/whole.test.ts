/** What a file asks for beyond its checks, from its text to results and JSON. */
import Ajv from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import { compute } from '../../server/src/compute.js';
import { toOutput } from '../../server/src/json/output.js';
import { outputSchema } from '../../server/src/json/schema.js';
import { computeWhole, wholeSteps, type Doing } from '../../server/src/whole.js';
import { beam, earlyOf, option, sunk, wholeOf, yard } from './job.js';

describe('break-evens', () => {
    const { certainty, ledger, verdict } = wholeOf('breakeven B.section.depth\nbreakeven deck\n');

    it('are found of what is asked for, in the order of the file, and of every guess and loss', () => {
        expect(certainty!.asked.map(({ path }) => path)).toEqual(['B.section.depth', 'deck']);
        expect(certainty!.ledger.flatMap(({ breakEvens }) => breakEvens.map(({ path }) => path)).sort()).toEqual(['B.loss.top', 'B.section.depth', 'deck', 'pine.grade']);
        expect(certainty!.ledger.map(({ input }) => input.path).sort()).toEqual(ledger.map(({ path }) => path).sort());
        expect(verdict).toBe('pass');
    });

    it('hold where the text says so: 1 mm less of depth than the limit fails, the limit passes', () => {
        const limit = Number(certainty!.asked[0]!.limit);
        const at = (depth: number) => compute(evaluateText(beam.replace('100 x 240 mm', `100 mm x ${depth.toFixed(4)} mm`), 'ferry.padstone')).checks.every(({ pass }) => pass);
        expect([at(limit + 0.001), at(limit - 0.01)]).toEqual([true, false]);
    });

    it('tell what a guessed grade one class lower does', () => {
        expect(certainty!.sensitivities).toMatchObject([{ path: 'pine.grade', grade: 'C24', lowerClass: { with: 'C22', changesVerdict: false } }]);
    });

    it('are none where the text has errors', () => {
        const broken = wholeOf('breakeven deck\nmember X { length 4 kN }\n');
        expect(broken.understood).toBe(false);
        expect(broken.certainty).toBeUndefined();
    });
});

describe('a load test', () => {
    it('that bears the prediction out lets the job pass; before it is compared nothing does', () => {
        const early = earlyOf(yard(sunk));
        expect([early.verdict, early.verdictReason]).toEqual(['incomplete', 'not checked: load test yard: its readings are compared once the checks are made']);
        const whole = wholeOf(yard(sunk));
        expect([whole.verdict, whole.loadTests![0]!.outcome]).toEqual(['pass', 'borne out']);
        expect(whole.loadTests![0]!.E!.value / 11_000).toBeCloseTo(1, 2);
    });

    it('in doubt stops the job, until that is answered', () => {
        const soft = yard(3 * sunk);
        const doubted = wholeOf(soft);
        expect([doubted.verdict, doubted.hazards[0]]).toMatchObject(['incomplete', { severity: 'stop', code: 'proof-load-in-doubt', subject: 'B' }]);
        const answer = 'answer proof-load-in-doubt on B "a block had sunk; read again from the beam" (measured)\n';
        expect(wholeOf(soft + answer)).toMatchObject({ verdict: 'pass' });
        expect(wholeOf(soft + answer).hazards.find(({ code }) => code === 'proof-load-in-doubt')).toMatchObject({ severity: 'warn', answer: { what: 'a block had sunk; read again from the beam' } });
        expect(earlyOf(soft + answer).findings.map(({ code }) => code)).not.toContain('answer-to-nothing');
        expect(wholeOf(yard(sunk) + answer).findings.map(({ code }) => code)).toContain('answer-to-nothing');
    });

    it('that cannot be computed is named, and nothing passes without it', () => {
        // A leaf that is broken in the middle and lies on its ends alone falls down.
        const leaves = `member R {
  of C24
  plies 2 of 63 x 240 mm
  length 4.00 m
  on west at 0.10 m bearing 150 mm
  on east at 3.90 m bearing 150 mm
  ply 1 butt at 1.90 m
  bolts M12 grade 8.8 every 200 mm zigzag 50 mm
  restrained
}
loadtest alone { plies 1 of R on blocks at 0.20 m, 3.80 m  weight 50 kg at 1.50 m }
`;
        const { verdict, loadTests, unchecked } = wholeOf(leaves);
        expect(loadTests).toMatchObject([{ outcome: 'not computed' }]);
        expect(verdict).not.toBe('pass');
        expect(unchecked.filter(({ text }) => text.startsWith('load test alone: Not computed'))).toMatchObject([{ blocking: true, members: ['R'] }]);
    });
});

describe('options', () => {
    it('are whole calculations beside what is drawn, and do not change its verdict', () => {
        const weak = option.replace('100 x 300', '40 x 60');
        const { verdict, options, checks } = wholeOf(option + weak.replace('deep "a new one"', 'weak'));
        expect(options!.map(({ name, verdict: one }) => [name, one])).toEqual([[null, 'pass'], ['deep', 'pass'], ['weak', 'fail']]);
        expect(options![1]!.checks.find(({ id }) => id === 'B.bending')!.utilisation).toBeLessThan(checks.find(({ id }) => id === 'B.bending')!.utilisation);
        expect(verdict).toBe('pass');
        expect(earlyOf(option).options).toBeUndefined();
    });
});

describe('the steps', () => {
    it('are many, tell what is done, and end as in one go', () => {
        const evaluation = evaluateText(beam + option + yard(sunk), 'ferry.padstone');
        const told: Doing[] = [];
        const steps = wholeSteps(evaluation);
        let step = steps.next();
        for (; !step.done; step = steps.next()) told.push(step.value);
        expect(new Set(told.map(({ what }) => what))).toEqual(new Set(['load tests', 'pine.grade', 'B.loss.top', 'option deep']));
        expect(told.every(({ done, of }) => done <= of)).toBe(true);
        expect(told.length).toBeGreaterThan(20);
        expect(JSON.parse(JSON.stringify(step.value))).toEqual(JSON.parse(JSON.stringify(computeWhole(evaluation))));
    });
});

describe('JSON', () => {
    const output = JSON.parse(JSON.stringify(toOutput([wholeOf(`breakeven B.loss.top\nbreakeven pine.grade\n${yard(sunk)}${option}answer proof-load "barriers and catch props stand" (documented "method statement")\n`)])));
    const [file] = output.files;

    it('follows the schema', () => {
        const validate = new Ajv({ strict: true, allowUnionTypes: true, allErrors: true }).compile(outputSchema);
        validate(output);
        expect(validate.errors ?? []).toEqual([]);
    });

    it('has break-evens in the units of the file, a class by its name, never without what is set aside', () => {
        expect(file.breakeven.slice(0, 2)).toMatchObject([
            { input: 'B.loss.top', given: { value: 20, unit: 'mm' }, limit: { unit: 'mm' }, check: expect.stringMatching(/^B\./), asked: true, aside: [] },
            { input: 'pine.grade', given: { value: 'C24', unit: '' }, limit: null, asked: true, aside: [] }
        ]);
        expect(file.breakeven[0].limit.value).toBeGreaterThan(20);
        expect(file.breakeven[0].sentence).toContain('20 mm was probed');
    });

    it('has the load test with its points, E and verdict', () => {
        expect(file.loadtests).toMatchObject([{
            name: 'yard', outcome: 'borne out', E: { unit: 'MPa' }, verdict: expect.stringContaining('bear the prediction out'),
            points: [{ weight: { value: 100, unit: 'kg' }, read: { unit: 'mm' } }, { weight: { value: 200, unit: 'kg' } }]
        }]);
        expect(file.loadtests[0].points[1].predicted.value).toBeCloseTo(sunk, 9);
    });

    it('has the checks of an option under its name, and the answer with its hazard', () => {
        const bending = file.checks.filter((check: { id: string }) => check.id === 'B.bending');
        expect(bending.map((check: { option: string | null }) => check.option)).toEqual([null, 'deep']);
        expect(bending[1].utilisation).toBeLessThan(bending[0].utilisation);
        expect(file.options.map((one: { option: string | null }) => one.option)).toEqual([null, 'deep']);
        expect(file.hazards.find((hazard: { code: string }) => hazard.code === 'proof-load').answer)
            .toMatchObject({ what: 'barriers and catch props stand', evidence: 'documented', note: 'method statement' });
    });
});

describe('a job with more guesses than can be looked at', () => {
    const many = 24;
    const joists = Array.from({ length: many }, (_, i) => `member J${i} { of pine section 75 x 175 mm length 3.00 m on west at 0.10 m bearing 100 mm on B at 2.90 m crossing at ${(0.2 + 0.15 * i).toFixed(2)} m bearing 75 mm restrained }`);
    const { certainty, unchecked, verdict } = wholeOf(`breakeven J${many - 1}.west.bearing\n${joists.join('\n')}`);

    it('has the limits of what is asked for and of what was guessed in words, and names the rest', () => {
        expect(certainty!.asked).toHaveLength(1);
        expect(certainty!.ledger.find(({ input }) => input.path === 'pine.grade')!.breakEvens).toHaveLength(1);
        expect(certainty!.left.length).toBeGreaterThan(0);
        expect(certainty!.left.some(path => certainty!.ledger.some(({ breakEvens }) => breakEvens.some(one => one.path === path)))).toBe(false);
        const guessed = certainty!.ledger.filter(({ guess }) => guess).length;
        expect(certainty!.left.length).toBeLessThan(2 * guessed);
        expect(unchecked.find(({ text }) => text.includes('too many guesses'))).toMatchObject({ blocking: false, text: expect.stringContaining(certainty!.left[0]!) });
        expect(verdict).not.toBe('incomplete');
    }, 120_000);
});
