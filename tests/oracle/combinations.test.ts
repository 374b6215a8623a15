/** Combinations: cases AC-* and BE-* of reference-cases.json. Sources and provenance as stored there. */
import { describe, expect, test } from 'vitest';
import type { Action } from '../../language/src/model.js';
import type { ActionState, MemberActions } from '../../server/src/analysis/actions.js';
import { createParameters } from '../../server/src/catalog/parameters.js';
import { input, referenceCase } from './cases.js';
import { elastic, member, model, recommended, single, solve, type LoadSketch } from './fixture.js';
import { close, greatest } from './figures.js';

const imposedA: Action = { kind: 'imposed', category: 'A' };
const L = 4000;

/** States in the middle of a simply supported beam as line loads: M / (L²/8). */
function lineLoads(of: MemberActions): { readonly load: number; readonly state: ActionState }[] {
    const middle = of.stations.find(({ x }) => Math.abs(x - L / 2) < 1e-6)!;
    return middle.states.map((state) => ({ load: state.M / (L * L / 8), state }));
}

function beam(loads: readonly LoadSketch[], parameters = recommended, equation: '6.10' | '6.10a/b' = '6.10'): MemberActions {
    const [only] = solve(model([member({ length: L, supports: [{ at: 0 }, { at: L }] })], loads, equation), elastic(11000), parameters).members;
    return only!;
}

const labelled = (of: MemberActions, label: string): number => {
    const found = lineLoads(of).find(({ state }) => state.combination.label === label);
    if (!found) throw new Error(`no ${label} among ${lineLoads(of).map(({ state }) => state.combination.label).join(', ')}`);
    return found.load;
};

describe('EN 1990', () => {
    test('AC-01 ULS and SLS combinations, category A (6.10, 6.10a, 6.10b, characteristic, quasi-permanent)', () => {
        const of = referenceCase('AC-01');
        expect(recommended.psi('imposed A')).toEqual([input(of, 'psi0'), input(of, 'psi1'), input(of, 'psi2')]);
        const loads = [{ name: 'dead', q: input(of, 'Gk') }, { name: 'live', q: input(of, 'Qk'), action: imposedA }];
        const plain = beam(loads);
        close(Math.max(...lineLoads(plain).map(({ load }) => load)), of.results['uls_6_10']);
        close(labelled(plain, '1.35 G + 1.5 live'), of.results['uls_6_10']);
        const split = beam(loads, recommended, '6.10a/b');
        close(labelled(split, '1.35 G + 1.05 live'), of.results['uls_6_10a']);
        close(labelled(split, '1.1475 G + 1.5 live'), of.results['uls_6_10b']);
        // Deflections are linear in the load: 1 N/mm of permanent load alone measures them.
        const unit = beam([{ q: 1 }]).instant[0]!.value;
        close(plain.instant[0]!.value / unit, of.results['sls_char']);
        close(plain.final[0]!.value / unit / (1 + 0.8), of.results['sls_qp']);
        close(plain.total[0]!.value / unit, { value: of.results['sls_char']!.value + 0.8 * of.results['sls_qp']!.value, tolerance_rel: 1e-6 });
    });
    test('AC-02 permanent-only governs through kmod', () => {
        const of = referenceCase('AC-02');
        const actions = beam([{ q: input(of, 'Gk') }, { name: 'live', q: input(of, 'Qk'), action: imposedA }]);
        const kmod = { 'permanent': input(of, 'kmod_perm'), 'medium-term': input(of, 'kmod_med') } as Readonly<Record<string, number>>;
        const over = lineLoads(actions).map(({ load, state }) => ({ ratio: load / kmod[state.combination.duration]!, state }));
        const worst = over.reduce((a, b) => (a.ratio > b.ratio ? a : b));
        close(worst.ratio, of.results['perm_ratio']);
        expect(worst.state.combination.label).toBe('1.35 G');
        close(Math.max(...over.filter(({ state }) => state.combination.duration === 'medium-term').map(({ ratio }) => ratio)), of.results['full_ratio']);
    });
    test('AC-03 snow and wind lead in turn', () => {
        const of = referenceCase('AC-03');
        const actions = beam([
            { q: input(of, 'G') },
            { name: 'snow', q: input(of, 'S'), action: { kind: 'snow' } },
            { name: 'wind', q: input(of, 'W'), action: { kind: 'wind' } }
        ]);
        close(labelled(actions, '1.35 G + 1.5 snow + 0.9 wind'), of.results['snow_leading']);
        close(labelled(actions, '1.35 G + 0.75 snow + 1.5 wind'), of.results['wind_leading']);
    });
});

describe('pre-design of a timber hall, TU Delft open textbook "Structural Design Essentials" (seen in source)', () => {
    test('BE-01 glulam roof beam: moment, deflection with creep', () => {
        const of = referenceCase('BE-01');
        const [span, b, h] = [input(of, 'L'), input(of, 'b'), input(of, 'h')];
        const { parameters } = createParameters([{ name: 'gamma_G', value: input(of, 'gG'), dimension: [0, 0, 0, 0, 0], source: { file: '', start: 0, end: 0, line: 1, column: 1 } }]);
        expect(parameters.gammaG).toBe(input(of, 'gG'));
        // The source leaves shear deformation out.
        const properties = elastic(input(of, 'E'), { G: 1e12, kdef: input(of, 'kdef') });
        const roof = (loads: readonly LoadSketch[]): MemberActions =>
            single({ length: span, b, h, supports: [{ at: 0 }, { at: span }] }, loads, properties, parameters);
        const dead = { name: 'dead', q: input(of, 'g') };
        const snow = { name: 'snow', q: input(of, 'q_snow'), action: { kind: 'snow' } as const };
        const both = roof([dead, snow]);
        const M = greatest(both.diagrams.M).max;
        close(M / (span ** 2 / 8), of.results['qd']);
        close(M / 1e6, of.results['Md']);
        const { b: left, h: deep } = both.segments[0]!;
        close(M / (left * deep ** 2 / 6), of.results['sigma']);
        const bare = roof([dead]);
        close(bare.instant[0]!.value, of.results['w_g']);
        close(bare.final[0]!.value - bare.instant[0]!.value, of.results['w_creep']);
        close(both.instant[0]!.value - bare.instant[0]!.value, of.results['w_snow']);
        close(both.total[0]!.value, of.results['w_tot']);
    });
    test('BE-02 column under wind: lateral moment and deflection of a post', () => {
        const of = referenceCase('BE-02');
        const height = input(of, 'L');
        const post = member({ name: 'P1', kind: 'post', length: height, b: input(of, 'b'), h: input(of, 'h'), supports: [{ at: 0 }, { at: height }] });
        const actions = solve(model([post], [{ name: 'wind', q: input(of, 'q_k'), action: { kind: 'wind' } }]), elastic(input(of, 'E'), { G: 1e12 }), recommended).members[0]!;
        const M = greatest(actions.diagrams.M).max;
        close(M / (height ** 2 / 8), of.results['qd']);
        close(M / 1e6, of.results['Md']);
        close(M / (input(of, 'b') * input(of, 'h') ** 2 / 6), of.results['sigma']);
        close(actions.instant[0]!.value, of.results['w']);
        expect(actions.supports.map(({ horizontal }) => horizontal!.min)).toEqual([-1.5 * 5.5 * height / 2, -1.5 * 5.5 * height / 2].map((R) => expect.closeTo(R, 4)));
    });
});
