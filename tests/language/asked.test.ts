/** What is asked of a calculation: bands, break-evens, load tests, options and answers. */
import { describe, expect, it } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import type { Finding, Model } from '../../language/src/index.js';
import { sailLoft, soundJob } from './check.js';

const read = (text: string) => evaluateText(text, 'test.padstone');
const sound = (lines: string): Model => {
    const { model, findings } = read(`${soundJob}${lines}\n`);
    expect(findings).toEqual([]);
    return model;
};
const inputOf = (model: Model, path: string) => model.inputs.find(input => input.path === path);
const reasons = (model: Model) => model.notComputed.map(({ what }) => what);

describe('a band', () => {
    it.each([
        ['masonry b { fk 1.5 .. 3.0 MPa (judged "soft") }', 'b.fk', 2.25, 1.5, 3],
        ['masonry b { fk 1500 kPa .. 3 MPa }', 'b.fk', 2.25, 1.5, 3],
        ['timber o { grade C18 moisture 12 .. 18 % }', 'o.moisture', 0.15, 0.12, 0.18],
        ['load x permanent 1 .. 3 kN/m on J1', 'x', 2, 1, 3],
        ['load x permanent 80 .. 100 kg at 1 m on J1', 'x', 90 * 9.80665, 80 * 9.80665, 100 * 9.80665],
        ['load x permanent -3 .. -1 kN/m on J1', 'x', -2, -3, -1],
        ['load x permanent 1 kN/m2 strip 1.8 .. 2.2 m on J1', 'x.strip', 2000, 1800, 2200],
        ['load x permanent 1 kN at 1 .. 2 m on J1', 'x.at', 1500, 1000, 2000],
        ['let a = 1 m\nload x permanent 1 kN at a .. 2 * a on J1', 'x.at', 1500, 1000, 2000]
    ])('%s', (line, path, middle, low, high) => {
        const { model, findings } = read(`${soundJob}${line}\n`);
        expect(findings).toEqual([]);
        const input = inputOf(model, path)!;
        expect([input.value, input.band!.low, input.band!.high]).toEqual([middle, low, high].map(value => expect.closeTo(value, 9)));
        expect(reasons(model)).toEqual([]);
    });

    it('stands in a loss, with its place from end to end', () => {
        const text = `${soundJob}member K { of C24 section 100 x 200 mm length 4 m on north at 0.1 m on south at 3.9 m loss 1 m .. 2 m { top 25 mm .. 45 mm (judged) left 5 .. 9 mm } (probed) }\n`;
        const { model, findings } = read(text);
        expect(findings).toEqual([]);
        const { top, left } = model.members.at(-1)!.losses[0]!.faces;
        expect(top).toMatchObject({ value: 35, band: { low: 25, high: 45 }, evidence: { word: 'judged' } });
        expect(left).toMatchObject({ value: 7, band: { low: 5, high: 9 }, evidence: { word: 'probed' } });
        expect(text.slice(top!.source.start, top!.source.end)).toBe('25 mm .. 45 mm');
        expect(reasons(model)).toEqual([]);
        expect(model.inputs.filter(input => input.path === 'K.loss.top')).toHaveLength(1);
    });

    it('gives its middle to what is worked out from it, which is named', () => {
        const { model } = read(`${soundJob}member K { of C24 section 100 x 200 mm length 3 .. 5 m on north at 0.1 m on south at 2.9 m }\nload x permanent 1 kN at K.length / 4 on K\nload y permanent 2 .. 4 kN/m2 strip 1 .. 2 m on J1\n`);
        expect(model.loads.at(-2)!.point).toEqual({ force: 1000, at: 1000 });
        expect(model.loads.at(-1)!.line!.perLength).toBeCloseTo(3 / 1000 * 1500, 12);
        expect(reasons(model)).toEqual([expect.stringMatching(/^what is worked out from the band in line \d+$/)]);
    });
});

describe('inputs', () => {
    it('of a load each have a name', () => {
        const [spread, point] = sound('load s permanent 1 kN/m2 strip 2 m (judged "half bay") from 0.5 m to 2 m on J1\nload p snow 1 kN at 1 m on J1').loads.slice(-2);
        expect([spread!.amount.path, spread!.strip!.path, spread!.from!.path, spread!.to!.path, point!.at!.path]).toEqual(['s', 's.strip', 's.from', 's.to', 'p.at']);
        expect([spread!.strip!.evidence, spread!.amount.evidence]).toEqual([{ word: 'judged', note: 'half bay', stated: true }, { word: 'assumed', stated: false }]);
    });

    it('are in the ledger once if they say how they are known, whatever they are', () => {
        const text = `${soundJob}member K { of C24 section 100 x 200 mm length 4 m (judged) on north at 0.1 m (judged) bearing 100 mm (judged) on south at 3.9 m }\n`;
        expect(read(text).model.inputs.map(({ path }) => path).filter(path => path.startsWith('K.'))).toEqual(['K.grade', 'K.length', 'K.section', 'K.north', 'K.north.bearing']);
    });
});

describe('a break-even', () => {
    it.each([
        'boards', 'x.strip', 'x.at', 'J1.length', 'J1.section.depth', 'J1.section.breadth', 'J1.north', 'J1.north.bearing', 'J1.grade', 'R.bolts.every', 'R.plies.depth',
        'R.ply1.butt', 'o.moisture', 'o.grade', 'o.fm_k', 'o.E0_mean', 'b.fk', 'K.loss2.top'
    ].map(path => [path]))('of %s', path => {
        const rest = `timber o { grade C18 moisture 12 % }\nmasonry b { fk 2 MPa }
member R { of C24 plies 2 of 63 x 200 mm length 4 m on north at 0.1 m on south at 3.9 m ply 1 butt at 1 m bolts M12 every 400 mm }
member K { of o section 100 x 200 mm length 4 m on north at 0.1 m on south at 3.9 m loss 1 m .. 2 m { top 5 mm } loss 3 m .. 3.5 m { top 5 mm } }
load x permanent 1 kN/m2 strip 2 m on J1\n`.replace('load x permanent 1 kN/m2 strip 2 m on J1', path === 'x.at' ? 'load x snow 1 kN at 1 m on J1' : 'load x permanent 1 kN/m2 strip 2 m on J1');
        const text = `${soundJob}${rest}breakeven ${path}\n`;
        const { model, findings } = read(text);
        expect(findings).toEqual([]);
        expect(model.breakEvens.map(line => [line.path, text.slice(line.source.start, line.source.end)])).toEqual([[path, `breakeven ${path}`]]);
        expect(reasons(model)).toEqual([]);
    });
});

describe('a load test', () => {
    const bench = 'loadtest bench "in the yard" { J1 on blocks at 3.7 m, 0.3 m weight 240 kg (measured "scale") at 2 m spread 600 mm weight 4903.325 N at 2 m read 240 kg 4 mm (measured) read 500 kg 8 mm read 0 kg 0.5 mm }';

    it('has blocks in order, weights as masses, and readings', () => {
        const model = sound(bench);
        const [test] = model.loadTests;
        expect(test).toMatchObject({ name: 'bench', title: 'in the yard', member: 'J1' });
        expect([test!.leaves, test!.blocks.map(({ value }) => value)]).toEqual([undefined, [300, 3700]]);
        expect(test!.weights.map(({ mass, at, spread }) => [mass.value, at.value, spread?.value])).toEqual([[240, 2000, 600], [expect.closeTo(500, 9), 2000, undefined]]);
        expect(test!.weights[0]!.mass.evidence).toEqual({ word: 'measured', note: 'scale', stated: true });
        expect(test!.readings.map(({ mass, deflection }) => [mass.value, deflection.value])).toEqual([[240, 4], [500, 8], [0, 0.5]]);
        expect(model.inputs.filter(({ path }) => path.startsWith('bench'))).toEqual([]);
        expect(reasons(model)).toEqual([]);
    });

    it('may be of some leaves', () => {
        const [test] = read(sailLoft).model.loadTests;
        expect([test!.member, test!.leaves, test!.weights.length, test!.readings.length]).toEqual(['R1', [1, 2], 2, 3]);
    });

    it('is not in the model if it is wrong, or if what it tests is', () => {
        expect(read(`${soundJob}${bench.replace('0.3 m', '9 m')}\n`).model.loadTests).toEqual([]);
        expect(read(`${soundJob}${bench}\n`.replace('section 75 x 200 mm', 'section 75 x 200')).model.loadTests).toEqual([]);
    });
});

describe('an option', () => {
    const beam = (extra = '', length = 'length 4 m') => `{ of C24 section 100 x 250 mm ${length} on north at 0.1 m bearing 100 mm on south at 2.9 m bearing 100 mm ${extra} }`;

    it('is the whole calculation with another member', () => {
        const text = `${soundJob}let half = J1.depth * 5\nload x snow 1 kN at half on J2\noption deep "a deeper one" { replace J1 ${beam('', 'length 3 m')} }\n`;
        const { model, findings } = read(text);
        expect(findings).toEqual([]);
        const [option] = model.options;
        expect(option).toMatchObject({ name: 'deep', title: 'a deeper one' });
        expect(option!.replaced.map(({ name }) => name)).toEqual(['J1']);
        expect(text.slice(option!.replaced[0]!.nameSource.start, option!.replaced[0]!.nameSource.end)).toBe('J1');
        expect(option!.model.members.map(({ name, length, section }) => [name, length.value, section.shape === 'rectangle' && section.depth.value])).toEqual([['J1', 3000, 250], ['J2', 4000, 200]]);
        expect(option!.model.loads.map(({ line, point }) => line?.to ?? point?.at)).toEqual([3000, 4000, 1250]);
        expect(model.loads.map(({ line, point }) => line?.to ?? point?.at)).toEqual([4000, 4000, 1000]);
        expect(inputOf(option!.model, 'J1.section')!.value).toBe('100 × 250 mm');
        expect(inputOf(model, 'J1.section')!.value).toBe('75 × 200 mm');
        expect([option!.model.options, option!.model.loadTests, option!.model.breakEvens, reasons(option!.model)]).toEqual([[], [], [], []]);
        expect(reasons(model)).toEqual([]);
    });

    it('names by itself what of it is not computed', () => {
        const { model } = read(`${soundJob}option o { replace J1 ${beam('fire 30 min')} }\n`);
        expect([reasons(model), reasons(model.options[0]!.model)]).toEqual([[], ['J1.fire']]);
    });

    it('of the sail loft is of steel', () => {
        const { model } = read(sailLoft);
        expect(model.options.map(({ name, replaced }) => [name, replaced[0]!.material, replaced[0]!.section.shape])).toEqual([['steel', 'S275', 'rolled']]);
        expect(model.members.find(({ name }) => name === 'R1')!.section.shape).toBe('plies');
    });

    it.each([
        [`load x snow 1 kN at 3.5 m on J1\noption o { replace J1 ${beam('', 'length 3 m')} }`, 'load-outside', 'in option o: this load is 500 mm past the end (3 m) of J1'],
        [`hanger H carries J2 at 1 m from J1 at 3.5 m { rods 2 M12 }\noption o { replace J1 ${beam('', 'length 3 m')} }`, 'hanger-outside', 'in option o: this hanger is 500 mm past the end (3 m) of J1'],
        [`member R { of C24 plies 2 of 63 x 200 mm length 4 m on north at 0.1 m on south at 3.9 m bolts M12 every 400 mm }\nload x snow 1 kN at 1 m on R leaf 2\noption o { replace R ${beam()} }`, 'no-such-leaf', 'in option o: there is no leaf 2'],
        [`stage a { prop J1 at 3.5 m }\noption o { replace J1 ${beam('', 'length 3 m')} }`, 'prop-outside', 'in option o: this prop is 500 mm past the end (3 m) of J1']
    ])('%s', (lines, code, message) => {
        const { model, findings } = read(`${soundJob}${lines}\n`);
        const errors = findings.filter(({ severity }) => severity === 'error');
        expect(errors.map(finding => [finding.code, finding.message])).toEqual([[code, message]]);
        expect(errors[0]!.related![0]!.message).toBe('the option is here');
        expect(findings.filter(({ code: one }) => one === 'not-computed').map(({ message: text }) => text)).toEqual(['option o is not computed: it has an error']);
        expect(model.options).toEqual([]);
        expect(model.members.map(({ name }) => name)).toContain('J1');
    });

    it('tells once what is wrong with the rest of the file', () => {
        const { findings } = read(`${soundJob}let bad = 1 m + 1 kN\noption o { replace J1 ${beam()} }\n`);
        expect(findings.map(({ code }: Finding) => code)).toEqual(['wrong-dimension']);
    });
});

describe('an answer', () => {
    it('is of a hazard, or of one of those that it is about', () => {
        const { answers, notComputed } = sound('answer services-unknown "traced and isolated" (measured)\nanswer uplift-not-tied on J1 "strapped" (documented "invoice")\nanswer stage-fails "shored" (judged)');
        expect(answers.map(({ hazard, subject, what, evidence }) => [hazard, subject, what, evidence.word, evidence.note])).toEqual([
            ['services-unknown', undefined, 'traced and isolated', 'measured', undefined], ['uplift-not-tied', 'J1', 'strapped', 'documented', 'invoice'], ['stage-fails', undefined, 'shored', 'judged', undefined]
        ]);
        expect(notComputed).toEqual([]);
    });

    it('goes for the options too, and is not taken where it could not be read', () => {
        const text = `${soundJob}answer services-unknown "traced" (measured)\noption o { replace J1 { of C24 section 1 x 1 m length 4 m on north at 0.1 m on south at 3.9 m } }\n`;
        expect(read(text).model.options[0]!.model.answers).toHaveLength(1);
        expect(read(`${soundJob}answer services-unknown "traced" (measurd)\n`).model.answers).toEqual([]);
    });
});
