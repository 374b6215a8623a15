/** Bands of inputs through the whole calculation: against closed forms and dense grids of whole calculations. */
import Ajv from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { breakEven, withInput, worstFunction } from '../../server/src/certainty/index.js';
import { plainDisplay } from '../../server/src/sheet/index.js';
import { pageOf } from '../../server/src/command/format/page.js';
import { text } from '../../server/src/command/format/text.js';
import { toOutput } from '../../server/src/json/output.js';
import { outputSchema } from '../../server/src/json/schema.js';
import type { Results } from '../../server/src/results.js';
import { renderPreview } from '../../server/src/sheet/index.js';
import { beam, compute, mayDeflect, modelOf } from './jobs.js';

const use = (results: Results, id: string) => results.checks.find(check => check.id === id)!;
const computed = (text: string) => compute(modelOf(text));
const lossy = (top: string, more = '') => beam({ values: mayDeflect, statements: `loss 1.5 m .. 2.5 m { top ${top} } (probed)\n${more}` });

describe('a loss depth', () => {
    const banded = computed(lossy('20 mm .. 80 mm'));

    test('is worst at its greatest: the section modulus b (h - d)² / 6', () => {
        const bending = use(banded, 'B1.bending');
        const whole = use(computed(lossy('0 mm')), 'B1.bending').utilisation;
        expect(bending.utilisation).toBeCloseTo(whole * (300 / 220) ** 2, 6);
        expect(bending.corner).toEqual({
            at: [{ path: 'B1.loss.top', value: { value: 80, unit: 'mm' }, end: 'high' }], by: 'ends', sentence: 'worst with the top loss 80 mm'
        });
    });

    test('is told in the words of the calculation: the steps are those of the corner', () => {
        const steps = use(banded, 'B1.bending').steps.flatMap(({ terms }) => terms);
        expect(steps.some(({ amount }) => amount.value === 220)).toBe(true);
    });

    test('every check is that of the end that is worse, and of no other', () => {
        const [low, high] = ['20 mm', '80 mm'].map(top => computed(lossy(top)));
        for (const check of banded.checks) {
            const ends = [low!, high!].map(end => use(end, check.id).utilisation);
            expect(check.utilisation).toBeCloseTo(Math.max(...ends), 12);
            expect(check.corner === undefined).toBe(Math.abs(ends[0]! - ends[1]!) < 1e-9);
        }
    });

    test('a pass is never that of the middle', () => {
        const text = (top: string) => beam({ load: 'permanent 7 kN/m', values: mayDeflect, statements: `loss 1.5 m .. 2.5 m { top ${top} } (probed)` });
        const middle = computed(text('50 mm'));
        const found = computed(text('20 mm .. 80 mm'));
        expect(use(middle, 'B1.bending').pass).toBe(true);
        expect(use(found, 'B1.bending')).toMatchObject({ pass: false });
        expect(found.verdict).toBe('fail');
        expect(found.findings.some(({ code, message }) => code === 'check-fails' && message.includes('B1.bending'))).toBe(true);
    });

    test('that leaves no member is said to have no results, never the others alone', () => {
        const found = computed(lossy('20 mm .. 310 mm'));
        expect(found.missing).toMatchObject([{ name: 'B1' }]);
        expect(found.verdict).toBe('incomplete');
        expect(found.checks.filter(({ subject }) => subject === 'B1')).toEqual([]);
    });
});

test('a strength counts at its low end, and that is said', () => {
    const text = beam({ values: mayDeflect }).replace('wall a { thick 400 mm }', 'masonry stone { fk 1.5 .. 3.0 MPa (judged) }\nwall a { of stone thick 400 mm }');
    const found = computed(text);
    const [low, high] = ['1.5 MPa', '3.0 MPa'].map(fk => use(computed(text.replace('1.5 .. 3.0 MPa', fk)), 'B1.masonry').utilisation);
    expect(use(found, 'B1.masonry').utilisation).toBe(Math.max(low!, high!));
    expect(use(found, 'B1.masonry').corner!.sentence).toBe('worst with stone.fk 1.5 MPa');
    expect(use(found, 'B1.bending').corner).toBeUndefined();
    expect(found.bands).toEqual({ paths: ['stone.fk'], tried: 2, sentence: expect.stringContaining('of 2 sets of values that the whole was computed with; less of stone.fk is never better, so it counts at the low end') });
});

test('a load that moves is worst between the ends: P a (l - a) / l in the middle of the span', () => {
    const text = (at: string) => `${beam({ values: mayDeflect })}load chest permanent 4 kN at ${at} on B1 (assumed)\n`;
    const moment = (results: Results) => results.members[0]!.moment.max.value;
    const found = computed(text('0.8 m .. 3.0 m'));
    const middle = computed(text('2.0 m'));
    expect(use(found, 'B1.bending').corner).toMatchObject({ by: 'search', at: [{ path: 'chest.at', end: 'between' }] });
    expect(use(found, 'B1.bending').corner!.at[0]!.value.value).toBeCloseTo(2, 1);
    expect(use(found, 'B1.bending').utilisation).toBeGreaterThan(0.9995 * use(middle, 'B1.bending').utilisation);
    expect(moment(found)).toBeGreaterThan(0.9995 * moment(middle));
    expect(use(found, 'B1.shear').utilisation).toBe(Math.max(...['0.8 m', '3.0 m'].map(at => use(computed(text(at)), 'B1.shear').utilisation)));
});

test('three at once, against a dense grid of whole calculations', () => {
    const text = `${lossy('20 mm .. 60 mm', 'loss 0.6 m .. 1.2 m { bottom 10 mm .. 40 mm } (judged)')}load chest permanent 1 .. 3 kN at 2.4 m on B1 (assumed)\n`;
    const model = modelOf(text);
    const found = compute(model);
    const most = new Map<string, number>();
    const steps = [0, 1, 2, 3, 4];
    for (const top of steps) for (const bottom of steps) for (const chest of steps) {
        const at = withInput(withInput(withInput(model, 'B1.loss.top', 20 + 10 * top), 'B1.loss2.bottom', 10 + 7.5 * bottom), 'chest', 1000 + 500 * chest);
        for (const { id, utilisation } of compute(at).checks) most.set(id, Math.max(most.get(id) ?? 0, utilisation));
    }
    expect(most.size).toBeGreaterThan(5);
    for (const { id, utilisation } of found.checks) expect(utilisation).toBeGreaterThan(most.get(id)! * (1 - 1e-4));
    expect(found.bands!.tried).toBeLessThan(60);
});

test('a requirement has to hold in every corner', () => {
    const text = (top: string) => `${lossy(top)}require B1.final <= 3 mm\nrequire B1.bending <= 100 %\n`;
    const limit = (results: Results) => results.requirements[0]!;
    const [thin, thick] = [computed(text('80 mm')), computed(text('20 mm'))];
    const found = computed(text('20 mm .. 80 mm'));
    expect([limit(thick).holds, limit(thin).holds, limit(found).holds]).toEqual([true, false, false]);
    expect(limit(found).left!.value).toBeCloseTo(limit(thin).left!.value, 6);
    expect(found.verdict).toBe('fail');
});

test('a hazard that arises with some values is told', () => {
    const text = (moisture: string) => lossy('20 mm').replace('grade C24 (judged)', `grade C24 (judged) moisture ${moisture} (judged)`);
    const wet = (results: Results) => results.hazards.filter(({ code }) => code === 'timber-wet').length;
    expect([wet(computed(text('18 %'))), wet(computed(text('15 .. 21 %'))), wet(computed(text('21 %')))]).toEqual([0, 1, 1]);
});

test('forces and deflections take in all corners, and the account of a load its band', () => {
    const text = beam({ load: 'permanent 4 .. 6 kN/m' });
    const [low, high, found] = ['4 kN/m', '6 kN/m', '4 .. 6 kN/m'].map(load => computed(beam({ load: `permanent ${load}` })));
    expect(found!.members[0]!.moment.max.value).toBeCloseTo(high!.members[0]!.moment.max.value, 9);
    expect(found!.members[0]!.reactions[0]!.min.value).toBeCloseTo(low!.members[0]!.reactions[0]!.min.value, 9);
    expect(found!.members[0]!.deflection).toEqual(high!.members[0]!.deflection);
    expect(computed(text).loads[0]!.account).toBe('4 kN/m .. 6 kN/m');
});

test('a file without a band says nothing of bands', () => {
    const found = computed(lossy('20 mm'));
    expect(found.bands).toBeUndefined();
    expect(found.checks.every(({ corner }) => corner === undefined)).toBe(true);
});

test('what is printed for people and machines tells the corner', () => {
    const found = computed(lossy('20 mm .. 80 mm'));
    const corner = toOutput([found]).files[0]!.checks.find(({ id }) => id === 'B1.bending')!.corner;
    expect(corner).toEqual({ by: 'ends', inputs: [{ input: 'B1.loss.top', value: { value: 80, unit: 'mm' } }] });
    expect(new Ajv({ allowUnionTypes: true }).validate(outputSchema, JSON.parse(JSON.stringify(toOutput([found]))))).toBe(true);
    const printed = [text.part(found, pageOf({ width: 100, coloured: false, display: plainDisplay })), renderPreview(found).html];
    for (const view of printed) {
        expect(view).toContain('worst with the top loss 80 mm');
        expect(view).toContain('B1.loss.top is a band');
    }
});

test('the limit of a band is looked for from its worse end, and the band is said', () => {
    const worst = (text: string) => ({ worst: worstFunction(modelOf(text), changed => compute(changed)) });
    const [one, band] = ['50 mm', '20 mm .. 50 mm'].map(top => breakEven(modelOf(lossy(top)), 'B1.loss.top', worst(lossy(top)))!);
    expect(band).toMatchObject({ given: 50, band: { low: 20, high: 50 }, passes: true });
    expect(Number(band!.limit)).toBeCloseTo(Number(one!.limit), 4);
    expect(band!.sentence).toBe(one!.sentence.replace('50 mm was probed', '20 mm .. 50 mm, of which 50 mm is worse, was probed'));
    const failing = breakEven(modelOf(lossy('20 mm .. 120 mm')), 'B1.loss.top', worst(lossy('20 mm .. 120 mm')))!;
    expect(failing).toMatchObject({ given: 120, passes: false });
    expect(Number(failing.limit)).toBeCloseTo(Number(one!.limit), 1);
});

test('the ledger on the sheet has the band', () => {
    expect(renderPreview(computed(lossy('20 mm .. 80 mm'))).html).toContain('20 mm .. 80 mm');
});
