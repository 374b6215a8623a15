/** Hazards of the order of work. Forces by statics: a member on three supports or hung is left to tests/oracle. */
import { describe, expect, it } from 'vitest';
import { hazardOf, hazardsOf, relief, resultsOf, told, type Change } from './job.js';

const order = (stages: string, change: Change = {}): Change => ({ added: relief, stages: `stage found { T }\n${stages}`, ...change });
const sound = order('stage propped { prop T at 2.00 m lift 3 mm }\nstage hung { N, H1, H2  tighten H1, H2 to 0.4 kN }\nstage relieved { release props }');
const heavy = 'load floor permanent 12 kN/m on T';

describe('a relief in good order', () => {
    it('has no hazards but those of props, fire and signature', () => {
        const results = resultsOf(sound);
        expect(results.checks.filter(({ pass }) => !pass).map(({ id, stage }) => `${id} ${stage}`)).toEqual([]);
        expect(results.hazards.map(told)).toEqual([
            'warn prop-footing-unknown T', 'note steel-bare-in-fire H1, H2', 'note engineer-must-sign T, N'
        ]);
    });
});

describe('a stage that fails', () => {
    it('stops the work where a strength fails and another stage follows', () => {
        const change = order('stage propped { prop T at 2.00 m }', { loads: heavy, added: '' });
        const failing = resultsOf(change).checks.filter(({ pass, stage }) => !pass && stage === 'found').map(({ id }) => id);
        expect(failing).toContain('T.bending');
        expect(hazardOf('work-in-failing-stage', change)).toMatchObject({ severity: 'stop', subject: 'T', message: expect.stringContaining('in stage found: T.bending') });
    });

    it('is told apart where it is the last', () => {
        const change = order('stage used { }', { loads: 'load crowd imposed C 14 kN/m on T', added: '' });
        expect(hazardsOf(change).filter(text => text.includes('fail'))).toEqual(['stop stage-fails T']);
    });

    it('endangers nobody where it only sags too far', () => {
        const change = order('stage used { }', { loads: 'load floor permanent 3.5 kN/m on T', added: '', old: 'of larch section 200 x 170 mm length 4.00 m restrained' });
        const { checks, hazards } = resultsOf(change);
        expect(checks.filter(({ pass, stage }) => !pass && stage === 'found').map(({ check }) => check)).toEqual(['final']);
        expect(hazards.map(({ code }) => code)).toContain('stage-fails');
        expect(hazards.map(({ code }) => code)).not.toContain('work-in-failing-stage');
    });

    it('is not told of a file without stages', () => {
        expect(hazardsOf({ loads: heavy }).filter(text => text.includes('fail'))).toEqual([]);
    });
});

describe('what is left without support', () => {
    const hung = 'member K { of larch section 100 x 150 mm length 3.00 m on west at 0.10 m bearing 100 mm restrained }\n'
        + 'hanger H carries K at 2.80 m from T at 2.00 m { rods 2 M12 grade 4.6 head plate 70 x 12 x 240 mm steel S275 foot plate 70 x 12 x 190 mm steel S275 washers 40 x 6 mm }';

    it('stops the work', () => {
        const change = { added: hung, stages: 'stage found { T, K, H }\nstage cut { remove H }' };
        expect(hazardOf('stage-unsupported', change)).toMatchObject({ severity: 'stop', subject: 'K', message: expect.stringContaining('K can rotate about west') });
    });

    it('is not told while it hangs', () => {
        expect(hazardsOf({ added: hung, stages: 'stage found { T, K, H }\nstage used { }' }).filter(text => text.includes('unsupported'))).toEqual([]);
    });
});

describe('taking out before relief', () => {
    it('stops where loads stand on what goes', () => {
        const change = order('stage strengthened { N }\nstage cleared { remove T }', { added: relief.split('\n')[0]! });
        expect(hazardOf('removed-before-relief', change)).toMatchObject({ severity: 'stop', subject: 'T', message: 'T is taken out in stage cleared while it still carries floor' });
    });

    it('stops where a hanger still pulls, and tells by how much', () => {
        const change = order('stage hung { N, H1, H2  tighten H1, H2 to 1.5 kN }\nstage cleared { remove H1, H2 }');
        const pull = resultsOf(change).hangers.find(({ name, stage }) => name === 'H1' && stage === 'hung')!.force.max;
        const found = resultsOf(change).hazards.filter(({ code }) => code === 'removed-before-relief');
        expect(found.map(({ subject }) => subject)).toEqual(['H1', 'H2']);
        expect(Number(/pull of ([\d.]+) kN/.exec(found[0]!.message)![1])).toBeGreaterThanOrEqual(pull.value * (pull.unit === 'N' ? 1e-3 : 1));
    });

    it('stops where another member rests on what goes', () => {
        const joist = 'member J { of larch section 60 x 150 mm length 2.00 m on west at 0.10 m bearing 100 mm on T at 1.90 m crossing at 2.00 m bearing 100 mm restrained }\nload boards permanent 1 kN/m on J';
        const change = { added: joist, loads: '', stages: 'stage found { T, J }\nstage cleared { remove J, T }' };
        expect(hazardOf('removed-before-relief', change)?.message).toContain('while it still carries');
        expect(hazardsOf(change).filter(text => text.includes('removed')).length).toBe(2);
    });

    it('is quiet where nothing was on it', () => {
        const change = order('stage strengthened { N }\nstage cleared { remove T }', { added: relief.split('\n')[0]!, loads: 'load floor permanent 0.8 kN/m on N' });
        expect(hazardsOf(change).filter(text => text.includes('removed'))).toEqual([]);
    });
});

describe('props', () => {
    it('are said to stand on what nobody knows, with their force', () => {
        const found = hazardOf('prop-footing-unknown', sound)!;
        expect(found).toMatchObject({ severity: 'warn', subject: 'T' });
        const push = Number(/T at 2\.00 m pushes down with ([\d.]+) kN/.exec(found.message)![1]);
        // A prop that lifts a sound timber by w at the middle takes 48 EI w / L³ (statics); shear takes a little of it off.
        const lift = 48 * 11000 * (150 * 220 ** 3 / 12) * 3 / 3800 ** 3 / 1000;
        expect(push).toBeGreaterThan(0.9 * lift);
        expect(push).toBeLessThan(1.01 * lift + 0.1);
    });

    it('under a lost bottom stop, under another loss warn, beside it neither', () => {
        const under = (loss: string, at: string) => hazardsOf({ extra: `loss 1.50 m .. 2.50 m { ${loss} } (probed)`, stages: `stage found { T }\nstage propped { prop T at ${at} }` }).filter(text => text.includes('prop-under'));
        expect(under('bottom 15 mm', '2.00 m')).toEqual(['stop prop-under-loss T']);
        expect(under('top 15 mm', '2.00 m')).toEqual(['warn prop-under-loss T']);
        expect(under('bottom 15 mm', '1.00 m')).toEqual([]);
    });

    it('that lift more than 1/500 of the span are told: 3.80 m / 500 = 7.6 mm', () => {
        const lifting = (lift: string) => hazardsOf({ stages: `stage found { T }\nstage propped { prop T at 2.00 m lift ${lift} }` }).filter(text => text.includes('jacked'));
        expect(lifting('7.7 mm')).toEqual(['warn jacked-too-far T']);
        expect(lifting('7.5 mm')).toEqual([]);
    });

    it('that would pull stop: the new hangers lift the old timber off them', () => {
        const change = order('stage propped { prop T at 2.00 m }\nstage hung { N, H1, H2  tighten H1, H2 to 6 kN }\nstage relieved { release props }');
        expect(hazardOf('prop-lifts-off', change)).toMatchObject({ severity: 'stop', subject: 'T', message: expect.stringContaining('T at 2.00 m in stage hung') });
        expect(hazardsOf(sound).filter(text => text.includes('lifts-off'))).toEqual([]);
    });
});

describe('hangers', () => {
    it('that would push stop: a lifted old timber presses on them when only the new one is loaded', () => {
        const change = order('stage hung { N, H1, H2 }\nstage used { }', { loads: 'load crowd imposed C 4 kN/m on N' });
        expect(hazardOf('hanger-slack', change)).toMatchObject({ severity: 'stop', subject: 'H1, H2', message: expect.stringMatching(/H1 in stage used by [\d.]+ kN/) });
        expect(hazardsOf(sound).filter(text => text.includes('slack'))).toEqual([]);
    });

    it('lose their tightening where timber dries: by the strain of 0.25 % for 1 % against the give of the rods', () => {
        const drying = (moisture: string) => hazardOf('tightening-dries-out', { ...order('stage hung { N, H1, H2  tighten H1, H2 to 6 kN }'), materials: `timber larch { grade C24 (graded) moisture ${moisture} (measured) }\nmasonry stone { fk 4 MPa (tested) }` });
        expect(drying('19 %')).toMatchObject({ severity: 'warn', subject: 'H1, H2' });
        expect(drying('18.01 %')).toMatchObject({ severity: 'note' });
        expect(drying('18 %')).toBeUndefined();
    });
});

describe('a change that is to be signed', () => {
    it('is noted where a later stage brings or takes a member, and where one is hung from another', () => {
        expect(hazardsOf({ added: relief })).toContain('note engineer-must-sign T, N');
        expect(hazardsOf(order('stage strengthened { N }', { added: relief.split('\n')[0]! }))).toContain('note engineer-must-sign N');
    });

    it('is not noted of what is only there', () => {
        expect(hazardsOf({ stages: 'stage found { T }' })).toEqual([]);
    });
});
