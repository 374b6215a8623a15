/** Hazards of what is there: losses, holes, bearings, leaves, steel, pieces, survey. Each fires and is quiet. */
import { describe, expect, it } from 'vitest';
import { breakEven, worstFunction } from '../../server/src/certainty/index.js';
import { compute } from '../../server/src/compute.js';
import { computeWhole } from '../../server/src/whole.js';
import { evaluateText } from '../../language/src/index.js';
import { breakEvenClose } from '../../server/src/hazards/break-even-close.js';
import { hazardOf, hazardsOf, relief, resultsOf, sound, textOf, type Change } from './job.js';

const of = (code: string, change: Change): readonly string[] => hazardsOf(change).filter(text => text.split(' ')[1] === code);

it('a sound job has none', () => expect(hazardsOf()).toEqual([]));

const bearing = (first: string): Change => ({ supports: `on west at 0.10 m bearing ${first} on east at 3.90 m bearing 150 mm` });
const stone = (fk: string): Change => ({ materials: sound.materials.replace('fk 4 MPa (tested "two cores")', fk) });
const oak: Change = { materials: sound.materials.replace('C24', 'D30') };
const iron = (serviceClass: 1 | 2): Change => ({
    job: `job "Rope walk" { service class ${serviceClass} }`,
    added: 'steel old { properties { fy 180 MPa (tested) fu 300 MPa (tested) E 190 GPa (tested) rho 7850 kg/m3 (documented) } }\n'
        + 'member I { of old section HEA 140 length 4.00 m on west at 0.10 m bearing 150 mm on east at 3.90 m bearing 150 mm restrained '
        + 'splice at 1.00 m { web plate 80 x 8 x 300 mm steel S275 flange plate 140 x 10 x 400 mm steel S275 bolts 8 M16 grade 8.8 } }'
});
const beam = (splice: string): Change => ({ added: `member S { of S275 section HEA 140 length 4.00 m on west at 0.10 m bearing 150 mm on east at 3.90 m bearing 150 mm restrained ${splice} }` });
const endPlate = beam('splice at 1.00 m { end plate 150 x 12 mm bolts 4 M16 grade 8.8 }');
const covers = beam('splice at 1.00 m { web plate 80 x 8 x 300 mm flange plate 140 x 10 x 400 mm bolts 8 M16 grade 8.8 }');
const leaves = (butts: string, bolts = 'bolts M12 grade 8.8 every 200 mm'): Change => ({ old: `of larch plies 3 of 60 x 220 mm length 4.00 m restrained ${butts} ${bolts}` });
const floor = (line: string): Change => ({ survey: sound.survey.replace('asbestos', `${line}\nasbestos`) });
const staged = (access: string): Change => ({ added: relief.split('\n')[0]!, stages: 'stage found { T }\nstage strengthened { N }', access });

/** [code, what fires it, what it then is, the nearest that does not] */
const rules: readonly [code: string, fires: Change, expected: string, quiet: Change][] = [
    ['bearing-short', bearing('89 mm'), 'warn bearing-short T', bearing('90 mm')],
    ['bearing-on-weak-masonry', stone('fk 4 MPa (assumed)'), 'warn bearing-on-weak-masonry stone', stone('fk 4 MPa (judged)')],
    ['bearing-on-weak-masonry', stone('fk 0.99 MPa (tested)'), 'warn bearing-on-weak-masonry stone', stone('fk 1 MPa (tested)')],
    ['bearing-on-weak-masonry', stone('unit clay 10 MPa (tested) mortar 2 MPa'), 'warn bearing-on-weak-masonry stone', stone('unit clay 10 MPa (tested) mortar 2 MPa (judged)')],
    ['bearing-near-opening', bearing('150 mm from end 390 mm'), 'warn bearing-near-opening T', bearing('150 mm from end 400 mm')],
    ['hole-in-field', { extra: 'hole 60 mm at 2.00 m' }, 'warn hole-in-field T', { extra: 'hole 60 mm at 0.60 m' }],
    ['hole-in-field', { extra: 'hole 20 mm at 2.00 m height 60 mm' }, 'warn hole-in-field T', { extra: 'hole 20 mm at 2.00 m height 25 mm' }],
    ['notch-in-field', { extra: 'notch top 1.10 m .. 1.20 m deep 15 mm' }, 'warn notch-in-field T', { extra: 'notch top 0.90 m .. 1.00 m deep 15 mm' }],
    ['leaves-broken-together', leaves('ply 1 butt at 1.00 m ply 2 butt at 1.10 m ply 3 butt at 1.20 m'), 'stop leaves-broken-together T', leaves('ply 1 butt at 1.00 m ply 2 butt at 1.10 m ply 3 butt at 2.60 m')],
    ['bolts-near-edge', leaves('', 'bolts M12 grade 8.8 every 400 mm zigzag 95 mm'), 'warn bolts-near-edge T', leaves('', 'bolts M12 grade 8.8 every 400 mm zigzag 40 mm')],
    ['splice-play', covers, 'note splice-play S', endPlate],
    ['steel-bare-in-fire', endPlate, 'note steel-bare-in-fire S', {}],
    ['steel-bare-in-fire', { old: 'of larch flitch 2 of 75 x 220 mm with 1 steel S275 10 x 200 mm length 4.00 m restrained bolts M12 grade 8.8 every 400 mm' }, 'note steel-bare-in-fire T', leaves('')],
    ['tannin-on-steel', { ...oak, added: relief }, 'note tannin-on-steel T, N', { added: relief }],
    ['tannin-on-steel', { ...oak, extra: 'hole 12 mm at 0.60 m' }, 'note tannin-on-steel T', oak],
    ['dissimilar-metals', iron(2), 'note dissimilar-metals I', iron(1)],
    ['dissimilar-metals', iron(2), 'note dissimilar-metals I', covers],
    ['services-unknown', { survey: sound.survey.replace('services checked "none"', 'services not known'), added: relief }, 'warn services-unknown survey', { added: relief }],
    ['attic-floor-not-boarded', floor('attic floor not checked'), 'warn attic-floor-not-boarded survey', floor('attic floor checked "boarded all over"')],
    ['attic-floor-not-boarded', floor('loft boards not found'), 'warn attic-floor-not-boarded survey', floor('loft boards fixed "planks laid"')],
    ['piece-too-long', staged('access { piece <= 3.99 m }'), 'warn piece-too-long N', staged('access { piece <= 4.00 m }')],
    ['piece-too-heavy', staged('access { carry <= 60 kg }'), 'warn piece-too-heavy N', staged('access { carry <= 80 kg }')],
    ['piece-too-long', { access: 'access { piece <= 3.99 m }' }, 'note piece-too-long T', { access: '' }],
    ['proof-load', { stages: 'loadtest yard {\n T on blocks at 0.10 m, 3.90 m\n weight 100 kg at 2.00 m\n weight 200 kg at 2.00 m\n read 200 kg 2 mm\n}' }, 'warn proof-load yard', {}],
    ['grade-judged', { materials: sound.materials.replace('graded', 'judged'), loads: 'load floor permanent 5.2 kN/m on T' }, 'warn grade-judged T', { materials: sound.materials.replace('graded', 'judged'), loads: 'load floor permanent 2 kN/m on T' }]
];

describe.each(rules)('%s', (code, fires, expected, quiet) => {
    it(`is found: ${expected}`, () => expect(of(code, fires)).toEqual([expected]));
    it('is quiet beside it', () => expect(of(code, quiet)).toEqual([]));
});

describe('what cannot be carried', () => {
    it('is told with the people that it takes at 25 kg each, m_ref of ISO 11228-1 (from memory)', () => {
        // C24: 420 kg/m³ by EN 338; 18 % moisture against 12 %.
        const mass = 420 * (1.18 / 1.12) * 0.15 * 0.26 * 4;
        const found = hazardOf('piece-too-heavy', staged('access { carry <= 50 kg }'))!;
        expect(found.message).toContain(`N ${Math.ceil(mass)} kg, ${Math.ceil(mass / 25)} people at 25 kg`);
    });

    it('counts two people where the file sets no limit but says what is new', () => {
        expect(of('piece-too-heavy', staged(''))).toEqual(['warn piece-too-heavy N']);
        expect(of('piece-too-heavy', { access: '', old: sound.old.replace('150 x 220', '250 x 300') })).toEqual([]);
    });
});

it('lifting is told once, of the stage in which it is worst', () => {
    const found = resultsOf({ supports: 'on west at 0.10 m bearing 150 mm on east at 1.20 m bearing 150 mm', stages: 'stage found { T }\nstage used { }' }).hazards.filter(({ code }) => code === 'uplift-not-tied');
    expect(found).toMatchObject([{ severity: 'stop', subject: 'T', message: expect.stringContaining('lifts off west') }]);
});

describe('a break-even close to what was probed', () => {
    const change = (top: string): Change => ({ extra: `loss 1.50 m .. 2.50 m { top ${top} } (probed "awl")`, loads: 'load floor permanent 1 kN/m on T' });
    const found = (top: string) => {
        const evaluation = evaluateText(textOf(change(top)), 'rope-walk.padstone');
        const known = breakEven(evaluation.model, 'T.loss.top', { worst: worstFunction(evaluation.model, model => compute({ model, findings: [], broken: [] })) })!;
        return { known, hazards: breakEvenClose.find({ model: evaluation.model, loadTests: [], breakEvens: [known] }) };
    };
    const limit = Number(found('20 mm').known.limit);

    it('is a warning within 10 mm, or within a fifth of the depth', () => {
        expect(limit).toBeGreaterThan(66);
        for (const [short, fires] of [[8, true], [limit / 6 - 0.5, true], [Math.max(10, limit / 6) + 2, false]] as const) {
            expect(found(`${(limit - short).toFixed(1)} mm`).hazards.map(({ severity, subject }) => `${severity} ${subject}`)).toEqual(fires ? ['warn T'] : []);
        }
    });

    it('is told of the whole job, and can be answered, though what is on the typing path does not know it yet', () => {
        const answer = 'answer break-even-close on T "drilled from below" (probed)';
        const text = textOf({ ...change(`${(limit - 3).toFixed(1)} mm`), answers: answer });
        const evaluation = evaluateText(text, 'rope-walk.padstone');
        const early = compute(evaluation);
        expect(early.hazards.map(({ code }) => code)).not.toContain('break-even-close');
        expect(early.findings.map(({ code }) => code)).not.toContain('answer-to-nothing');
        expect(computeWhole(evaluation).hazards.find(({ code }) => code === 'break-even-close')).toMatchObject({ subject: 'T', answer: { what: 'drilled from below' } });
        const needless = evaluateText(textOf({ ...change('20 mm'), answers: answer }), 'rope-walk.padstone');
        expect(computeWhole(needless).findings.map(({ code }) => code)).toContain('answer-to-nothing');
    });
});
