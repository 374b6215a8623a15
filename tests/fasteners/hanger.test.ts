/** The checks of a hanger as the whole calculation runs them. */
import { describe, expect, test } from 'vitest';
import { runChecks, runHangerChecks } from '../../server/src/checks/runner.js';
import { hangerChecks } from '../../server/src/checks/index.js';
import { hangerElasticity } from '../../server/src/checks/hanger/elasticity.js';
import { tighteningOf } from '../../server/src/checks/hanger/tightening.js';
import { expectExplained } from '../checks/explained.js';
import { given, state } from '../checks/fixture.js';
import { memberOf } from '../steel/answers.js';
import { steelBeam } from '../steel/context.js';
import { within } from '../steel/cases.js';
import { hanger, hangerContext } from './hanger-context.js';
import { sound } from './sound.js';

const result = (context: ReturnType<typeof hangerContext>, check: string) => runHangerChecks(context).results.find(one => one.check === check);
const [N, d0] = [10_000, 13];
/** Between the rods: the plate less 1.2 d0 at each end. */
const spacing = 300 - 2 * 1.2 * d0;

describe('two rods with plates beside both timbers', () => {
    test('each check has a result, named by the hanger, that works out line by line', () => {
        const { results, lacking } = runHangerChecks(hangerContext());
        expect(results.map(({ id }) => id)).toEqual(hangerChecks.map(({ name }) => `H1.${name}`));
        expect(lacking).toEqual([]);
        results.forEach(expectExplained);
    });

    test('rods: half of the force each, on the thread', () => {
        within(result(hangerContext(), 'rods')!.utilisation, N / 2 / (0.9 * 400 * 84.3 / 1.25), 1e-9, 'rod');
    });

    test('plates: the narrower timber leaves the longer lever', () => {
        // F (2s − c)/8 on b t²/6 in the middle; the rods lie outside the contact.
        within(result(hangerContext(), 'plates')!.utilisation, N * (2 * spacing - 100) / 8 / (70 * 100 / 6 * 275), 1e-9, 'head plate');
        expect(result(hangerContext(), 'plates')!.steps[0]!.note).toContain('head plate at R1; rods 269 mm apart');
    });

    test('grain: 30 mm at either side, k_c,90 1.5 for softwood, the weaker of both', () => {
        const head = N / (130 * 100) / (1.5 * 2.5 * 0.8 / 1.3);
        const foot = N / (130 * 190) / (1.5 * 2.2 * 0.8 / 1.3);
        within(result(hangerContext(), 'grain')!.utilisation, Math.max(head, foot), 1e-9, 'grain');
    });

    test('the foot plate bears on what is left of the old timber, and its rods share unevenly', () => {
        const whole = hangerContext();
        const decayed = hangerContext({ old: { b: 60, shiftRight: 40 } });
        within(result(decayed, 'grain')!.utilisation, N / (130 * 60) / (1.5 * 2.2 * 0.8 / 1.3), 1e-9, 'residual');
        expect(result(decayed, 'grain')!.steps[0]!.note).toContain('bears on the 60 mm that are sound');
        within(result(decayed, 'rods')!.utilisation / result(whole, 'rods')!.utilisation, (0.5 + 40 / (60 + 2 * 40 + 12)) / 0.5, 1e-9, 'rods just beside what is sound');
    });

    test('edge: the rods clear the wider timber', () => {
        within(result(hangerContext(), 'edge')!.utilisation, Math.max((95 + 6) / (spacing / 2), 1.2 * d0 / 35), 1e-9, 'clearance');
    });

    test('a plate too short lets the rods through the timber, too near its face', () => {
        const short = hangerContext({ hanger: { footPlate: { ...hanger().footPlate!, length: given(190) }, headPlate: { ...hanger().headPlate!, length: given(190) } } });
        const edge = result(short, 'edge')!;
        expect(edge.pass).toBe(false);
        expect(edge.steps[0]!.note).toContain('rod to side face: 16 mm, at least 36 mm');
    });
});

describe('one rod through both timbers', () => {
    const single = { rods: { count: 1, size: 'M16', diameter: 16, grade: given('8.8') } } as const;
    const bare = { ...single, headPlate: undefined, footPlate: undefined, washers: { size: given(56), thickness: given(5) } };
    test('no plates: the washers bear on the grain', () => {
        const context = hangerContext({ hanger: bare });
        expect(result(context, 'plates')).toBeUndefined();
        expect(result(context, 'grain')).toBeUndefined();
        const area = Math.PI / 4 * (56 ** 2 - 17 ** 2);
        within(result(context, 'washers')!.utilisation, N / (3 * 2.2 * area * 0.8 / 1.3), 1e-9, 'washer');
        runHangerChecks(context).results.forEach(expectExplained);
    });
    test('a washer less than 3 d wide fails', () => {
        const small = hangerContext({ N: 10, hanger: { ...bare, washers: { size: given(40), thickness: given(5) } } });
        expect(result(small, 'washers')!.pass).toBe(false);
        expect(result(small, 'washers')!.steps[0]!.note).toContain('washer width');
    });
    test('a rod too near the end of a timber fails by Table 8.4', () => {
        const near = hangerContext({ hanger: { ...bare, carriesAt: given(90), fromAt: given(90) } });
        within(result(near, 'edge')!.utilisation, 112 / 90, 1e-9, '7 d to the end');
    });
    test('with plates its hole is taken out of the contact', () => {
        const area = 130 * 100 - Math.PI / 4 * 17 ** 2;
        within(result(hangerContext({ hanger: single }), 'grain')!.utilisation, N / area / (1.5 * 2.5 * 0.8 / 1.3), 1e-9, 'grain');
    });
});

describe('the timber that a rod passes down through', () => {
    const single = { rods: { count: 1, size: 'M16', diameter: 16, grade: given('8.8') } } as const;
    test('loses the rod of its breadth in bending; one that it passes beside loses nothing', () => {
        const member = (rods: Partial<ReturnType<typeof hanger>>) => {
            const { carried, carrier } = hangerContext({ hanger: rods });
            return { ...carried, members: [carried.member, carrier.member], actions: { ...carried.actions, stations: [{ x: 1500, segment: 0, states: [state({ M: 8e6 })] }] } };
        };
        const net = runChecks(member(single)).results.find(({ check }) => check === 'net section')!;
        within(net.demand.value, 8e6 / ((190 - 17) * 240 ** 2 / 6), 1e-9, 'stress');
        expectExplained(net);
        expect(runChecks(member({})).results.some(({ check }) => check === 'net section')).toBe(false);
    });
    test('of steel: said, for its flange', () => {
        const { lacking } = runHangerChecks(hangerContext({ hanger: single, context: { carrier: steelBeam({ name: 'HEA 140', length: 4900, member: { name: 'R1' } }) } }));
        expect(lacking).toContain('edge: rods through the flange of R1: its holes are not taken off');
    });
});

describe('from a steel beam', () => {
    const hung = () => hangerContext({ context: { carrier: steelBeam({ name: 'HEA 140', length: 4900, member: { name: 'R1' } }) } });
    test('the head plate bears over web and roots; no grain there', () => {
        const { results, lacking } = runHangerChecks(hung());
        expect(lacking).toEqual([]);
        const { section: { tw, r, tf } } = memberOf('HEA 140');
        const stiff = tw + 2 * r + 2 * tf;
        within(results.find(({ check }) => check === 'plates')!.utilisation, N * (2 * spacing - stiff) / 8 / (70 * 100 / 6 * 275), 1e-9, 'plate');
        within(results.find(({ check }) => check === 'grain')!.utilisation, N / (130 * 190) / (1.5 * 2.2 * 0.8 / 1.3), 1e-9, 'old timber');
    });
});

describe('what cannot be said is said', () => {
    test.each([
        ['an odd number of rods', { rods: { count: 3, size: 'M12', diameter: 12, grade: given('4.6') } }, 'how 3 rods stand is not known'],
        ['an unknown thread', { rods: { count: 2, size: 'M13', diameter: 13, grade: given('4.6') } }, 'no rod M13'],
        ['an unknown steel', { footPlate: { ...hanger().footPlate!, steel: 'S999' } }, 'S999 is no steel grade'],
        ['neither plate nor washer', { footPlate: undefined, washers: undefined }, 'neither plate nor washers are given, foot at T2'],
        ['a plate with no room for its rods', { footPlate: { ...hanger().footPlate!, length: given(30) } }, 'find no room']
    ] as const)('%s', (_, changes, words) => {
        const { lacking } = runHangerChecks(hangerContext({ hanger: changes }));
        expect(lacking.some(text => text.includes(words)), lacking.join()).toBe(true);
    });
    test('a slack hanger, a sloping member, and no force', () => {
        const context = hangerContext();
        expect(runHangerChecks({ ...context, actions: { ...context.actions, slack: true } }).lacking.join()).toContain('hangs slack');
        const sloping = { ...context.carried, member: { ...context.carried.member, slope: 0.3 } };
        expect(runHangerChecks({ ...context, carried: sloping }).lacking.join()).toContain('T2 is not level');
        expect(runHangerChecks({ ...context, actions: { ...context.actions, states: [] } })).toMatchObject({ results: [], lacking: ['there is no force in the hanger'] });
    });
    test('a force that is no number never passes', () => {
        const { results, lacking } = runHangerChecks(hangerContext({ N: NaN }));
        expect(results.filter(({ check }) => check !== 'edge')).toEqual([]);
        expect(lacking.join()).toContain('the force of the hanger has to be a number');
    });
});

describe('tightening', () => {
    const tightened = (moisture?: number) => hangerContext({ moisture, context: { tightening: 4000 } });
    test('0.25 % of both depths for 1 % of moisture, against what was stretched', () => {
        const loss = sound(tighteningOf(tightened(0.22))!);
        within(loss.slack, 0.25 * (240 * 0.10 + 200 * 0.02), 1e-9, 'from 22 and 14 to 12 %');
        expect(loss.left).toBe(0);
        const rods = result(tightened(0.22), 'rods')!;
        expect(rods.steps.map(({ symbol }) => symbol)).toContain('\\Delta T');
        expectExplained(rods);
    });
    test('a moisture that is not given is said', () => {
        expect(runHangerChecks(tightened()).lacking).toEqual(['rods: how much of the tightening drying takes: the moisture of T2 is not given']);
        expect(tighteningOf(hangerContext())).toBeUndefined();
    });
});

test('the spring of a hanger: stiff plates and stiff timber leave the rods alone', () => {
    const { carried, carrier } = hangerContext();
    const ends = { carrier: { member: carrier.member }, carried: { member: carried.member } };
    const thick = { ...hanger().headPlate!, thickness: given(80), width: given(5000) };
    const spring = sound(hangerElasticity(hanger({ headPlate: thick, footPlate: thick }), ends, [], 0.6));
    within(spring.initial, 2 * 210_000 * 84.3 / (240 + 200 + 160), 0.01, 'n E A_s / L');
    expect(spring.final).toBe(spring.initial);
    const real = sound(hangerElasticity(hanger(), { carrier: { ...ends.carrier, strength: (carrier as never as { strength: never }).strength }, carried: ends.carried }, [], 0.6));
    expect(real.final).toBeLessThan(real.initial);
    expect(real.initial).toBeLessThan(2 * 210_000 * 84.3 / 460);
});
