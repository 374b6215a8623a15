/** Bolts between leaves, butts, holes and flitch beams as the whole calculation checks them. */
import { describe, expect, test } from 'vitest';
import type { FlitchSection, Hole } from '../../language/src/model.js';
import { flitchShares } from '../../server/src/analysis/flitch.js';
import { rowAlongGrain } from '../../server/src/checks/en1995/fasteners/effective-number.js';
import { twoLeafCapacity } from '../../server/src/checks/en1995/fasteners/bolt-through-leaves.js';
import { netOf } from '../../server/src/checks/en1995/net-section.js';
import { forceOnLeaf, throughBolts, timberLeaf } from '../../server/src/checks/en1995/leaves/through-bolts.js';
import { runChecks } from '../../server/src/checks/runner.js';
import { bolt } from '../fasteners/bolt.js';
import { sound } from '../fasteners/sound.js';
import { within } from '../steel/cases.js';
import { expectExplained } from './explained.js';
import { beam, combination, given, source, state, strengthOf } from './fixture.js';
import { leaves } from './leaves-context.js';

const C24 = strengthOf('C24');
const result = (context: Parameters<typeof runChecks>[0], check: string) => runChecks(context).results.find(one => one.check === check);
const design = 0.8 / 1.3;
const apart = [{ x: 500 }, { x: 1200 }, { x: 2800 }, { x: 3500 }].map(place => ({ ...place, along: 0, across: 1000 }));

describe('bolts between leaves', () => {
    test('a bolt has the sum of both sides’ forces, and each leaf the opposite of the other', () => {
        const { section } = leaves(apart).member;
        const [first] = throughBolts(section.shape === 'plies' ? section.bolts : [], leaves(apart).actions.bolts!);
        const { forces } = first!.cases[0]!;
        expect([1, 2].map(leaf => forceOnLeaf(forces, leaf).z)).toEqual([1000, -1000]);
    });
    test('one force across the grain: 8.2.2 with no rope effect, k_mod and γ_M of a connection', () => {
        const one = sound(twoLeafCapacity({ fastener: bolt('M12', '8.8'), leaves: [timberLeaf(C24, 60), timberLeaf(C24, 60)], Fax_Rk: 0 }, { x: 0, z: 1 }));
        const plies = result(leaves(apart), 'plies')!;
        within(plies.utilisation, 1000 / (one.capacity * design), 1e-9, 'plies');
        expect(plies.steps[0]!.note).toContain('M12 at 0.50 m, on the axis');
        expectExplained(plies);
    });
    test('a row that pushes one way along the grain goes by its effective number', () => {
        const row = leaves([300, 380, 460, 540].map(x => ({ x, along: 2000, across: 0 })));
        const one = sound(twoLeafCapacity({ fastener: bolt('M12', '8.8'), leaves: [timberLeaf(C24, 60), timberLeaf(C24, 60)], Fax_Rk: 0 }, { x: 1, z: 0 }));
        const expected = sound(rowAlongGrain({ n: 4, a1: 80, d: 12 }, 8000, one.capacity * design)).utilisation;
        const plies = result(row, 'plies')!;
        within(plies.utilisation, expected, 1e-9, 'row');
        expect(plies.steps[0]!.note).toContain('row of 4 from 0.30 to 0.54 m, between leaf 1 and 2');
        expectExplained(plies);
    });
    test('pushes that turn round make two rows', () => {
        const turning = leaves([300, 380, 460, 540].map((x, i) => ({ x, along: i < 2 ? 2000 : -2000, across: 0 })));
        expect(result(turning, 'plies')!.steps[0]!.note).toContain('row of 2');
    });
    test('a bolt too near a butt fails and is named, with what Table 8.4 asks for', () => {
        const near = result(leaves([...apart, { x: 1950, along: 0, across: 10 }]), 'plies')!;
        // Across the grain every end is a loaded one: max(7 d; 80 mm) = 84 mm.
        within(near.utilisation, 84 / 50, 1e-9, 'a3,t');
        expect(near.pass).toBe(false);
        expect(near.steps[0]!.note).toContain('M12 at 1.95 m, on the axis, to the butt at 2.00 m: 50 mm, at least 84 mm');
        expectExplained(near);
    });
    test('away from the butt along the grain 4 d will do; towards it 7 d; only the broken leaf is concerned', () => {
        // On leaf 2 the force along is the opposite of that on leaf 1.
        expect(result(leaves([...apart, { x: 1940, along: 10, across: 0 }]), 'plies')!.pass).toBe(true);
        expect(result(leaves([...apart, { x: 1940, along: -10, across: 0 }]), 'plies')!.pass).toBe(false);
    });
    test('a bolt in the butt itself, too near the edge, too near another', () => {
        const bad = (x: number, height = 0, across = 10) => result(leaves([...apart, { x, height, along: 0, across }]), 'plies')!;
        expect(bad(2000).utilisation).toBe(Infinity);
        expect(bad(1600, 70).steps[0]!.note).toContain('to the top edge: 30 mm, at least 48 mm');
        expect(bad(1230).steps[0]!.note).toContain('to M12 at');
    });
    test('unknown bolts and missing forces are said', () => {
        expect(runChecks(leaves(apart, { size: 'M13' })).lacking).toContain('plies: no bolt M13 of grade 8.8 is in the tables');
        const context = leaves(apart);
        expect(runChecks({ ...context, actions: { ...context.actions, bolts: [] } }).lacking).toContain('plies: there are no forces of the bolts');
    });
});

describe('a butt', () => {
    const beside = (height: number) => leaves([...apart, { x: 1900, height, along: 0, across: 10 }, { x: 2100, height, along: 0, across: 10 }], { shear: 4000 });
    const F90 = (he: number) => 14 * 60 * Math.sqrt(he / (1 - he / 200)) * design;
    test('8.1.4: the shear of the leaf on the bolts beside it, from the edge that they push towards', () => {
        within(result(beside(0), 'butt')!.utilisation, 4000 / F90(100), 1e-9, 'on the axis');
        // Left of the butt they push down, right of it (V < 0 there) down too: low bolts have less to split off.
        within(result(beside(-40), 'butt')!.utilisation, 4000 / F90(60), 1e-9, 'low');
        within(result(beside(40), 'butt')!.utilisation, 4000 / F90(140), 1e-9, 'high');
        expect(result(beside(0), 'butt')!.steps[0]!.note).toContain('leaf 2, left of the butt at 2.00 m');
        expectExplained(result(beside(0), 'butt')!);
    });
    test('of hardwood: 8.1.4 is for softwood, said once', () => {
        const lacking = runChecks(leaves(apart, { strength: strengthOf('D30') })).lacking.filter(text => text.startsWith('butt'));
        expect(lacking).toEqual(['butt: EN 1995-1-1 8.1.4(3) gives the splitting capacity of softwood alone, not of hardwood']);
    });
    test('without butts there is no such check', () => {
        expect(result(beam({ b: 60, h: 200, length: 4000, states: [[0, state({ M: 1 })]] }), 'butt')).toBeUndefined();
    });
});

describe('leaves side by side', () => {
    test('bending is of the leaf that has most, by its number', () => {
        const context = leaves(apart);
        const more = context.actions.stations.map(station => station.leaf === 2 && station.x === 1000 ? { ...station, states: [state({ M: 3e6 })] } : station);
        const bending = result({ ...context, actions: { ...context.actions, stations: more } }, 'bending')!;
        within(bending.demand.value, 3e6 / (60 * 200 ** 2 / 6), 1e-9, 'one leaf');
        expect(bending.steps[0]!.note).toBe('leaf 2');
    });
    test('a leaf that is pushed while another is pulled buckles between bolts alone', () => {
        const pushed = (total: number) => {
            const context = leaves(apart);
            return {
                ...context,
                actions: {
                    ...context.actions, diagrams: { ...context.actions.diagrams, N: [{ x: 0, min: total, max: 0 }] },
                    stations: context.actions.stations.map(station => ({ ...station, states: [state({ M: 1e6, N: station.leaf === 1 ? -20_000 : 20_000 })] }))
                }
            };
        };
        expect(result(pushed(0), 'compression')!.utilisation).toBeLessThan(result(pushed(-20_000), 'compression')!.utilisation);
        expect(result(pushed(0), 'compression')!.steps.find(({ symbol }) => symbol === '\\lambda_z')!.terms[0]!.amount.value).toBe(1600);
    });
});

describe('net section', () => {
    const hole = (at: number, diameter: number, height = 0): Hole => ({ at: given(at), diameter: given(diameter), height: given(height), source });
    const holed = (...holes: readonly Hole[]) => beam({ b: 60, h: 200, length: 4000, member: { holes }, states: [[0, state({ V: 5000 })], [1000, state({ M: 5e6, V: 5000 })], [4000, state({ V: -5000 })]] });
    test('one hole on the axis: b (h³ − D³) / 12 (closed form)', () => {
        const net = netOf({ b: 60, h: 200, shiftUp: 0 }, [{ diameter: 40, height: 0 }]);
        within(net.I, 60 * (200 ** 3 - 40 ** 3) / 12, 1e-12, 'I');
        expect([net.A, Math.abs(net.shift), net.edge]).toEqual([60 * 160, 0, 100]);
    });
    test('a hole off the axis moves it: parallel axes, against a sum of two rectangles', () => {
        // Slot from 40 to 60 above the axis: rectangles 140 deep from −100 and 40 deep from 60.
        const net = netOf({ b: 60, h: 200, shiftUp: 0 }, [{ diameter: 20, height: 50 }]);
        const [A1, A2, z1, z2] = [60 * 140, 60 * 40, -30, 80];
        const z = (A1 * z1 + A2 * z2) / (A1 + A2);
        within(net.shift, z, 1e-12, 'middle');
        within(net.I, 60 * 140 ** 3 / 12 + A1 * (z1 - z) ** 2 + 60 * 40 ** 3 / 12 + A2 * (z2 - z) ** 2, 1e-12, 'I');
    });
    test('bending at the hole; with axial force a sum; shear on the depth that is left', () => {
        const bending = result(holed(hole(1000, 40)), 'net section')!;
        const sigma = 5e6 * 100 / (60 * (200 ** 3 - 40 ** 3) / 12);
        within(bending.utilisation, sigma / (24 * design), 1e-9, 'bending');
        expectExplained(bending);
        const shear = result(beam({ b: 60, h: 200, length: 4000, member: { holes: [hole(0, 40)] }, states: [[0, state({ V: 5000 })]] }), 'net section')!;
        within(shear.utilisation, 1.5 * 5000 / (0.67 * 60 * 160) / (4 * design), 1e-9, 'shear');
        expectExplained(shear);
        const pulled = result(beam({ b: 60, h: 200, length: 4000, member: { holes: [hole(0, 40)] }, states: [[0, state({ M: 5e6, N: 10_000 })]] }), 'net section')!;
        within(pulled.utilisation, sigma / (24 * design) + 10_000 / (60 * 160) / (14.5 * design), 1e-9, 'tension');
        expectExplained(pulled);
    });
    test('two holes close along the grain count together', () => {
        const apartHoles = result(holed(hole(1000, 20, 40), hole(1100, 20, -40)), 'net section')!.utilisation;
        const together = result(holed(hole(1000, 20, 40), hole(1030, 20, -40)), 'net section')!.utilisation;
        expect(together).toBeGreaterThan(apartHoles);
    });
    test('the holes of bolts, 1 mm over, in each leaf', () => {
        const net = result(leaves(apart), 'net section')!;
        within(net.utilisation, 2e6 * 100 / (60 * (200 ** 3 - 13 ** 3) / 12) / (24 * design), 1e-9, 'M12');
    });
    test('nothing is left, or the hole is larger than the rule covers', () => {
        expect(result(holed(hole(1000, 200)), 'net section')).toMatchObject({ utilisation: Infinity, pass: false });
        expect(runChecks(holed(hole(1000, 60))).lacking.some(text => text.startsWith('net section: no rule of EN 1995-1-1 covers a hole of 60 mm'))).toBe(true);
    });
});

describe('a flitch beam: two leaves and a plate between', () => {
    const M = 12e6;
    const flitch = (changes: Partial<FlitchSection> = {}, places = [200, 1000, 2000, 3000, 3800]): FlitchSection => ({
        shape: 'flitch', leaves: 2, breadth: given(75), depth: given(200), plates: 1, thickness: given(10), plateDepth: given(180), steel: given('S275'),
        bolts: [{ size: 'M12', diameter: 12, grade: given('8.8'), places: places.map(x => ({ x, height: 0, source })), source }], source, ...changes
    });
    // An even load on a simple span of 4 m.
    const moment = (x: number) => M * 4 * x * (4000 - x) / 4000 ** 2;
    const context = (section = flitch()) => beam({
        b: 160, h: 200, length: 4000, member: { section },
        states: [0, 200, 600, 1000, 1500, 2000, 2500, 3000, 3400, 3800, 4000].map(x => [x, state({ M: moment(x), V: M * 4 * (4000 - 2 * x) / 4000 ** 2 })] as const)
    });
    const parts = (E: number) => sound(flitchShares({ timber: { count: 2, b: 75, h: 200, E }, steel: { count: 1, b: 10, h: 180, E: 210_000 } }));

    test('the leaves take what the plate does not, at first; all of the shear', () => {
        const bending = result(context(), 'bending')!;
        within(bending.demand.value, M * (1 - parts(11_000).steel) / 2 / (75 * 200 ** 2 / 6), 1e-9, 'in the middle');
        within(result(context(), 'shear')!.demand.value, 1.5 * M * 4 / 4000 / 2 / (0.67 * 75 * 200), 1e-9, 'shear');
    });
    test('the plate takes most in the end, elastically, less the hole', () => {
        const plate = result(context(), 'plates')!;
        const share = parts(7400 / 1.6).steel;
        within(plate.utilisation, share * M / (2 / 180 * 10 * (180 ** 3 - 13 ** 3) / 12 * 275), 1e-9, 'plate');
        expectExplained(plate);
    });
    test('before its first bolt the plate carries nothing, so the leaves carry all there', () => {
        const late = context(flitch({}, [1000, 3000]));
        within(result(late, 'bending')!.demand.value, M / 2 / (75 * 200 ** 2 / 6), 1e-9, 'two bolts alone hand nothing over');
    });
    test('the bolts that make it so: forces in balance, two planes each', () => {
        const plies = result(context(), 'plies')!;
        expect(plies.utilisation).toBeGreaterThan(0);
        expectExplained(plies);
        const share = parts(7400 / 1.6).steel;
        // At the first bolt the plate's moment begins: its slope to the second one.
        const first = share * moment(1000) / 800;
        expect(plies.demand.value * 1e3).toBeLessThanOrEqual(first * (1 + 1e-9));
    });
    test('a bolt too near the end of the leaves fails', () => {
        expect(result(context(flitch({}, [40, 2000, 3960])), 'plies')!.pass).toBe(false);
    });
    test.each([
        ['one bolt', flitch({}, [2000]), 'plies: a plate needs bolts at two stations at least'],
        ['an unknown steel', flitch({ steel: given('S999') }), 'bending: S999 is no steel grade'],
        ['four plates on one leaf', flitch({ leaves: 1, plates: 4 }), 'do not lie in turn']
    ])('%s: said', (_, section, words) => {
        expect(runChecks(context(section)).lacking.some(text => text.includes(words)), runChecks(context(section)).lacking.join('\n')).toBe(true);
    });
});

test('combinations of one plane alone take the other’s greatest force, on the safe side', () => {
    const row = { size: 'M12', diameter: 12, grade: given('8.8'), places: [{ x: 500, height: 0, source }], source };
    const plane = (number: number, label: string, across: number) => ({
        row: 0, place: 0, x: 500, height: 0, plane: number, states: [{ combination: combination('medium-term', label), along: 0, across }]
    });
    const [found] = throughBolts([row], [plane(1, 'A', 100), plane(2, 'B', 300)]);
    expect(found!.cases.map(({ combination: { label }, forces }) => [label, ...forces.map(({ z }) => z)])).toEqual([['A', -100, -300], ['B', -100, -300]]);
});
