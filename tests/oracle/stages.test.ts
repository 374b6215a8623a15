/** Hangers and stages against statics by hand: springs in a row and side by side. Figures worked out beside each test. */
import { describe, expect, test } from 'vitest';
import { elastic, member } from './fixture.js';
import { add, inStage, prop, release, remove, solveRetrofit, stage, tension, thrust, tighten, type Retrofit } from './retrofit.js';

const length = 4000;
const EI = 11000 * 100 * 200 ** 3 / 12;
/** N/mm of each beam in its middle, bending alone: 48 EI / L³. */
const kBeam = 48 * EI / length ** 3;
const beam = (name: string, over = {}) => member({ name, length, supports: [{ at: 0 }, { at: length }], ...over });
/** An old beam T under a new one R, hung by H in the middle. */
const pair = (over: Partial<Retrofit> = {}): Retrofit => ({
    members: [beam('T'), beam('R')],
    loads: [{ name: 'dead', on: 'T', F: 10_000, at: length / 2 }],
    hangers: [{ name: 'H', carries: 'T', at: length / 2, from: 'R', fromAt: length / 2, k: 5000 }],
    properties: () => elastic(11000, { G: 1e9, kdef: 0 }),
    ...over
});
/** Share of a load on T in its middle that goes through a hanger of stiffness k: that of R and H in a row beside T. */
const row = (...k: number[]): number => 1 / k.reduce((sum, one) => sum + 1 / one, 0);
const share = (k: number): number => row(k, kBeam) / (row(k, kBeam) + kBeam);
const moment = (actions: ReturnType<typeof solveRetrofit>, name: string, of: string | null): number => Math.max(...inStage(actions, name, of).diagrams.M.map(({ max }) => max));

describe('a hung pair', () => {
    test('there at once, the hanger carries by stiffness', () => {
        const actions = solveRetrofit(pair());
        expect(tension(actions, 'H')).toBeCloseTo(10_000 * share(5000), 2);
        expect(moment(actions, 'R', null)).toBeCloseTo(10_000 * share(5000) * length / 4, 0);
        expect(moment(actions, 'T', null)).toBeCloseTo(10_000 * (1 - share(5000)) * length / 4, 0);
        expect(inStage(actions, 'R', null).supports[0]!.design.max).toBeCloseTo(10_000 * share(5000) / 2, 2);
    });
    test('a very stiff hanger shares evenly, a very soft one not at all', () => {
        const force = (k: number): number => tension(solveRetrofit(pair({ hangers: [{ ...pair().hangers![0]!, k }] })), 'H');
        expect(force(1e8)).toBeCloseTo(5000, 0);
        expect(force(0.001)).toBeLessThan(1);
    });
    test('added snug under existing load it carries none of it, and its share of what comes after', () => {
        const actions = solveRetrofit(pair({
            loads: [...pair().loads, { name: 'storage', on: 'T', F: 3000, at: length / 2, action: { kind: 'imposed', category: 'E' } }],
            stages: [stage('found', add('T')), stage('hung', add('R', 'H'))]
        }));
        expect(tension(actions, 'H', 'hung', '1.0 G')).toBe(0);
        expect(tension(actions, 'H', 'hung', '1.0 G + 1.5 storage')).toBeCloseTo(1.5 * 3000 * share(5000), 2);
        expect(actions.members.map(({ member: name, stage: of }) => [name, of])).toEqual([['T', 'found'], ['T', 'hung'], ['R', 'hung']]);
        // Storage comes when the building is done.
        expect(moment(actions, 'T', 'found')).toBeCloseTo(10_000 * length / 4, 0);
        expect(moment(actions, 'R', 'hung')).toBeCloseTo(1.5 * 3000 * share(5000) * length / 4, 0);
    });
    test('construction loads act while there is building, on what stands then', () => {
        const actions = solveRetrofit(pair({
            loads: [...pair().loads, { name: 'tools', on: 'T', F: 1000, at: length / 2, action: { kind: 'construction' } }],
            stages: [stage('found', add('T')), stage('hung', add('R', 'H')), stage('done')]
        }));
        expect(moment(actions, 'T', 'found')).toBeCloseTo((10_000 + 1500) * length / 4, 0);
        expect(tension(actions, 'H', 'hung', '1.0 G + 1.5 tools')).toBeCloseTo(1500 * share(5000), 2);
        expect(moment(actions, 'T', 'done')).toBeCloseTo(10_000 * length / 4, 0);
    });
});

describe('tightening', () => {
    const tightened = (...steps: Parameters<typeof stage>[1][]) => solveRetrofit(pair({ stages: [stage('found', add('T')), stage('hung', add('R', 'H'), ...steps), stage('used')] }));
    test('gives exactly its force', () => {
        const actions = tightened(tighten(2500, 'H'));
        expect(tension(actions, 'H', 'hung')).toBeCloseTo(2500, 6);
        expect(tension(actions, 'H', 'used')).toBeCloseTo(2500, 6);
        expect(moment(actions, 'T', 'hung')).toBeCloseTo((10_000 - 2500) * length / 4, 0);
        expect(inStage(actions, 'T', 'hung').stations[5]!.states[0]!.combination.label).toBe('1.0 G + 1.0 tightening');
    });
    test('of two at once gives each its own, one after the other does not', () => {
        const two = (...steps: Parameters<typeof stage>[1][]) => solveRetrofit(pair({
            hangers: [1500, 2500].map((at, i) => ({ name: `H${i + 1}`, carries: 'T', at, from: 'R', fromAt: at, k: 5000 })),
            stages: [stage('found', add('T')), stage('hung', add('R', 'H1', 'H2'), ...steps)]
        }));
        const together = two(tighten(2000, 'H1', 'H2'));
        expect([tension(together, 'H1', 'hung'), tension(together, 'H2', 'hung')]).toEqual([expect.closeTo(2000, 6), expect.closeTo(2000, 6)]);
        const apart = two(tighten(2000, 'H1'), tighten(2000, 'H2'));
        expect(tension(apart, 'H2', 'hung')).toBeCloseTo(2000, 6);
        expect(tension(apart, 'H1', 'hung')).toBeLessThan(1900);
    });
    test('anew replaces what was there', () => {
        expect(tension(tightened(tighten(2500, 'H'), tighten(1000, 'H')), 'H', 'used')).toBeCloseTo(1000, 6);
    });
    test('less than nothing is slack', () => {
        const actions = solveRetrofit(pair({
            loads: [{ name: 'dead', on: 'R', F: 10_000, at: length / 2 }]
        }));
        expect(actions.hangers![0]).toMatchObject({ slack: true });
        expect(solveRetrofit(pair()).hangers![0]).toMatchObject({ slack: false });
    });
});

describe('props', () => {
    test('lifted by d and released after hanging, the hanger takes what statics says', () => {
        const d = 3;
        const actions = solveRetrofit(pair({ stages: [stage('found', add('T')), stage('propped', prop('T', length / 2, d)), stage('hung', add('R', 'H')), stage('relieved', release)] }));
        // Lifting by d takes a force of k d; released, that goes to T, and to R through H, by stiffness.
        expect(thrust(actions, 'propped')).toBeCloseTo(kBeam * d, 2);
        expect(thrust(actions, 'hung')).toBeCloseTo(kBeam * d, 2);
        expect(tension(actions, 'H', 'hung')).toBe(0);
        expect(tension(actions, 'H', 'relieved')).toBeCloseTo(kBeam * d * share(5000), 2);
        expect(moment(actions, 'T', 'relieved')).toBeCloseTo((10_000 - kBeam * d * share(5000)) * length / 4, 0);
        // It settles by what R and H give under that.
        const before = 10_000 / kBeam;
        expect(inStage(actions, 'T', 'propped').instant[0]!.value).toBeCloseTo(Math.abs(before - d), 0);
        const sag = Math.max(...inStage(actions, 'T', 'relieved').diagrams.instant.map(({ max }) => max));
        expect(sag).toBeCloseTo(before - kBeam * d * share(5000) / kBeam, 3);
        expect(actions.props!.map(({ stage: of, at, slack }) => [of, at, slack])).toEqual([['propped', 2000, false], ['hung', 2000, false]]);
        expect(inStage(actions, 'T', 'propped').stations.some(({ states }) => states.some(({ combination }) => combination.label === '1.0 G + 1.0 lift'))).toBe(true);
    });
    test('without lift it carries nothing of what was there', () => {
        const actions = solveRetrofit(pair({ hangers: [], stages: [stage('found', add('T')), stage('propped', prop('T', 1300)), stage('done', release)] }));
        expect(thrust(actions, 'propped')).toBeCloseTo(0, 6);
        expect(moment(actions, 'T', 'done')).toBeCloseTo(10_000 * length / 4, 0);
    });
    test('put there and taken away again without anything hung, all is as before', () => {
        const actions = solveRetrofit(pair({ hangers: [], stages: [stage('found', add('T')), stage('propped', prop('T', 1300, 4)), stage('done', release)] }));
        expect(moment(actions, 'T', 'done')).toBeCloseTo(10_000 * length / 4, 0);
    });
    test('a prop that is lowered pulls: it is slack', () => {
        const actions = solveRetrofit(pair({ stages: [stage('found', add('T')), stage('propped', prop('T', 1300, -1))] }));
        expect(actions.props![0]!.slack).toBe(true);
    });
    test('two props, one released by its member', () => {
        const actions = solveRetrofit(pair({
            hangers: [],
            stages: [stage('found', add('T', 'R')), stage('propped', prop('T', 2000, 2), prop('R', 2000, 1)), stage('one', { kind: 'release', members: ['T'], source: beam('x').source })]
        }));
        expect(actions.props!.filter(({ stage: of }) => of === 'one').map(({ member: name, states }) => [name, states[0]!.R])).toEqual([['R', expect.closeTo(kBeam, 2)]]);
    });
});

describe('what comes and goes', () => {
    test('a member is free of stress when it comes, and bends under its own loads alone', () => {
        const actions = solveRetrofit(pair({
            loads: [...pair().loads, { name: 'deck', on: 'R', F: 2000, at: length / 2 }],
            stages: [stage('found', add('T')), stage('hung', add('R', 'H'))]
        }));
        // R bends under its deck before H is made snug.
        expect(tension(actions, 'H', 'hung')).toBe(0);
        expect(moment(actions, 'R', 'hung')).toBeCloseTo(2000 * length / 4, 0);
    });
    test('removing a hanger gives its share back', () => {
        const actions = solveRetrofit(pair({ stages: [stage('found', add('T', 'R', 'H')), stage('cut', remove('H'))] }));
        expect(tension(actions, 'H', 'found')).toBeCloseTo(10_000 * share(5000), 2);
        expect(moment(actions, 'T', 'cut')).toBeCloseTo(10_000 * length / 4, 0);
        expect(moment(actions, 'R', 'cut')).toBeCloseTo(0, 3);
    });
    test('removing a member gives its share back, and it has no results any more', () => {
        const actions = solveRetrofit(pair({ stages: [stage('found', add('T', 'R', 'H')), stage('gone', remove('R'))] }));
        expect(moment(actions, 'T', 'gone')).toBeCloseTo(10_000 * length / 4, 0);
        expect(actions.members.map(({ member: name, stage: of }) => `${name} ${of}`)).toEqual(['T found', 'R found', 'T gone']);
    });
    test('what rests on a member stays behind when it goes only if it can stand', () => {
        const joist = member({ name: 'J', length: 3000, supports: [{ at: 0 }, { at: 3000, kind: 'member', on: 'T', onCarrierAt: 1000 }] });
        const actions = solveRetrofit(pair({ members: [beam('T'), beam('R'), joist], stages: [stage('found'), stage('gone', remove('T', 'H'))] }));
        expect(actions.members).toEqual([]);
        expect(actions.findings.map(({ code, message }) => [code, message])).toEqual(expect.arrayContaining([['mechanism', expect.stringMatching(/^J .*\(stage gone\)$/)]]));
    });
    test('the order matters', () => {
        const after = (...order: ReturnType<typeof stage>[]): number => tension(solveRetrofit(pair({ stages: [stage('found', add('T')), ...order] })), 'H', 'end');
        const lifted = after(stage('a', prop('T', 2000, 3)), stage('b', add('R', 'H')), stage('end', release));
        const snug = after(stage('a', add('R', 'H')), stage('b', prop('T', 2000, 3)), stage('end', release));
        expect(lifted).toBeCloseTo(kBeam * 3 * share(5000), 2);
        expect(snug).toBeCloseTo(0, 6);
    });
    test('a member that only hangers hold comes with them', () => {
        const hungUp = member({ name: 'N', length: 2000, supports: [] });
        const hangers = [500, 1500].map((at, i) => ({ name: `H${i + 1}`, carries: 'N', at, from: 'R', fromAt: 1000 + at, k: 5000 }));
        const actions = solveRetrofit({
            members: [beam('R'), hungUp], hangers, loads: [{ name: 'floor', on: 'N', q: 2 }],
            stages: [stage('found', add('R')), stage('hung', add('N', 'H1', 'H2'))],
            properties: () => elastic(11000, { G: 1e9, kdef: 0 })
        });
        expect(actions.findings).toEqual([]);
        expect([tension(actions, 'H1', 'hung'), tension(actions, 'H2', 'hung')]).toEqual([expect.closeTo(2000, 4), expect.closeTo(2000, 4)]);
        expect(inStage(actions, 'R', 'hung').supports.map(({ design }) => design.max)).toEqual([expect.closeTo(2000, 4), expect.closeTo(2000, 4)]);
    });
    test('without stages everything is there from the start, and null is its stage', () => {
        expect(solveRetrofit(pair()).members.map(({ stage: of }) => of)).toEqual([null, null]);
    });
});

describe('what cannot stand or hang is told by name and place', () => {
    const told = (over: Partial<Retrofit>) => solveRetrofit(pair(over)).findings.map(({ code, message }) => `${code}: ${message}`);
    const one = pair().hangers![0]!;
    test('a hanger to itself, to nothing, outside, without stiffness', () => {
        expect(told({ hangers: [{ ...one, from: 'T' }] })).toContain('hangs-from-itself: T has no results: the hanger H cannot hang a member from itself');
        expect(told({ hangers: [{ ...one, from: 'ghost' }] })).toContain('no-hanger-end: T has no results: the hanger H hangs from ghost and carries T, and one of them is not there');
        expect(told({ hangers: [{ ...one, fromAt: 4500 }] })).toContain('hanger-outside: T has no results: the hanger H is at 4.50 m of R, outside its length of 4.00 m');
        expect(told({ hangers: [{ ...one, k: 0 }] })).toContain('no-hanger-stiffness: T has no results: the hanger H has a stiffness that is not a positive number');
    });
    test('a prop outside its member', () => {
        expect(told({ stages: [stage('found', prop('T', 4100))] })).toContain('prop-outside: T has no results: its prop at 4.10 m is outside its length of 4.00 m');
    });
    test('a member that a released prop leaves without hold', () => {
        const found = told({
            members: [member({ name: 'T', length, supports: [{ at: 0, on: 'north' }] }), beam('R')], hangers: [],
            stages: [stage('propped', prop('T', 3000)), stage('bare', release)]
        });
        // It cannot even be there before its prop.
        expect(found).toEqual(['mechanism: T can rotate about north: nothing holds its other end (stage propped)']);
    });
});
