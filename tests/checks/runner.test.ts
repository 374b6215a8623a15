import { describe, expect, it } from 'vitest';
import type { MemberCheck, MemberContext } from '../../server/src/checks/check.js';
import { memberChecks } from '../../server/src/checks/index.js';
import { runChecks } from '../../server/src/checks/runner.js';
import { inBase, worked } from './formula.js';
import { beam, combination, deflection, given, lineLoad, load, segment, source, state, strengthOf, support } from './fixture.js';

const outcomes = (...utilisations: number[]) => {
    const explained: number[] = [];
    const check: MemberCheck = {
        name: 'bending', clause: 'test',
        outcomes: () => utilisations.map((utilisation, i) => ({
            utilisation, demand: { value: utilisation, unit: 'MPa' }, capacity: { value: 1, unit: 'MPa' }, combination: combination(), at: 1000 * i,
            explain: () => {
                explained.push(utilisation);
                return [];
            }
        }))
    };
    return { explained, ...runChecks(beam({ b: 50, h: 200, length: 4000, states: [[0, state({})]] }), [check]) };
};

describe('the runner', () => {
    it('keeps the worst outcome and explains that one alone, once it is asked', () => {
        const { results, explained } = outcomes(0.2, 0.9, 0.4);
        expect(results).toMatchObject([{ id: 'J1.bending', utilisation: 0.9, pass: true, at: { value: 1, unit: 'm' }, stage: null, option: null }]);
        expect(explained).toEqual([]);
        expect(results[0]!.steps).toBe(results[0]!.steps);
        expect(explained).toEqual([0.9]);
    });
    it.each([[1, true], [1 + Number.EPSILON, false], [Infinity, false]])('at %d passes: %s', (utilisation, pass) => {
        expect(outcomes(utilisation).results[0]).toMatchObject({ utilisation, pass });
    });
    it('never passes what is not a number, and says that it could not be computed', () => {
        const { results, lacking } = outcomes(0.5, NaN, 7);
        expect(results[0]).toMatchObject({ utilisation: Infinity, pass: false });
        expect(lacking).toEqual(['bending could not be computed at 1.00 m: a number it needs is missing or below nought']);
    });
    it('takes a utilisation below nought for an input that is wrong', () => {
        expect(outcomes(0.5, -7).results[0]).toMatchObject({ utilisation: Infinity, pass: false });
    });
    it('has no result for a check that does not concern the member', () => {
        expect(outcomes().results).toEqual([]);
    });
    it('says so where no forces are known', () => {
        const { results, lacking } = runChecks(beam({ b: 50, h: 200, length: 4000 }), memberChecks);
        expect(results).toEqual([]);
        expect(lacking).toEqual([
            'bending and shear: there are no forces along the member', 'instant: no deflection was computed', 'final: no deflection was computed'
        ]);
    });
});

/** Bending, shear, axial force either way, a loss on one side, a notch, a floor, a wall: every check at work. */
function everything(strength = strengthOf('C24'), M = 4e6): MemberContext {
    const notch = { face: 'bottom', from: given(0), to: given(150), depth: given(40), taper: given(20), source } as const;
    return beam({
        b: 60, h: 140, length: 4000, strength,
        member: {
            notches: [notch], systemStrength: true, restraint: given(1500), slope: 0,
            floor: { width: given(5000), spacing: given(400), massPerArea: given(100e-6), transverseStiffness: given(3e6), damping: given(0.01), source }
        },
        actions: {
            segments: [segment(0, 150, 60, 100, { weakened: true }), segment(150, 3000, 50, 140, { weakened: true, shiftRight: 5 }), segment(3000, 4000, 60, 140)],
            spans: [{ from: 50, to: 3500, overhang: false }, { from: 3500, to: 4000, overhang: true }],
            supports: [support('west', 50, 100, [6000]), support('east', 3500, 120, [9000])],
            instant: [deflection(8, 50, 3500), deflection(-2, 3500, 4000, true)], final: [deflection(12, 50, 3500)]
        },
        context: { loads: [lineLoad(0, 4000), load({ action: { kind: 'imposed', category: 'A' } })], masonryOf: () => ({ fk: 4, thickness: 215, height: 2400, group1: true, source }) },
        states: [
            [50, state({ V: 6000 })], [100, state({ V: 5800, M: 1e5 })], [1800, state({ M, N: -9000 }), state({ M, N: 4000 })],
            [3500, state({ V: -7000, M: -M / 2 })]
        ]
    });
}

describe('an explanation', () => {
    const run = runChecks(everything(), memberChecks);

    it('is there for every check', () => {
        const ofLeaves = ['net section', 'plies', 'butt', 'plates'];
        expect(run.results.map(({ check }) => check)).toEqual(memberChecks.map(({ name }) => name).filter(name => !ofLeaves.includes(name)));
        expect(run.lacking).toEqual([]);
        expect(run.results.every(({ clause }) => /^EN 199[56]-1-1 /.test(clause))).toBe(true);
    });
    it.each([['C24', 4e6], ['D30', -4e6], ['GL24h', 9e5]])('of %s works out from its terms alone, line by line, to the utilisation', (grade, M) => {
        for (const result of runChecks(everything(strengthOf(grade), M), memberChecks).results) {
            expect(result.steps.at(-1)?.symbol, result.id).toBe('\\eta');
            expect(result.steps.at(-1)?.result.value, result.id).toBeCloseTo(result.utilisation, 9);
            for (const step of result.steps) {
                const what = `${result.id}: ${step.symbol} = ${step.formula}`;
                expect(step.result.value).not.toBeNaN();
                expect(worked(step) / inBase(step.result), what).toBeCloseTo(1, 9);
                for (const { symbol } of step.terms) {
                    expect(step.formula, what).toContain(symbol);
                }
            }
        }
    });
    it('uses no symbol before it is worked out or given with its meaning', () => {
        const derived = /^(\\sigma|\\tau|f_\{[a-z,0]+,d\}|k_\{crit\}|\\lambda|W_y|l_\{ef\}|R_)/;
        for (const { id, steps } of run.results) {
            const known = new Set<string>();
            for (const step of steps) {
                for (const { symbol } of step.terms) {
                    expect(!derived.test(symbol) || known.has(symbol), `${id}: ${symbol} in ${step.symbol}`).toBe(true);
                }
                known.add(step.symbol);
            }
        }
    });
});

describe('what cannot be computed', () => {
    const dead = { ...strengthOf('C24'), fm_k: 0, fv_k: 0, fc90_k: 0 };
    it('has no capacity: infinite, and fails', () => {
        const { results } = runChecks(everything(dead), memberChecks);
        for (const check of ['bending', 'shear', 'stability', 'bearing', 'notch']) {
            expect(results.find(result => result.check === check), check).toMatchObject({ utilisation: Infinity, pass: false });
        }
    });
    it('has no number: fails, and is listed', () => {
        const { results, lacking } = runChecks(everything(strengthOf('C24'), NaN), memberChecks);
        for (const check of ['bending', 'stability', 'compression', 'tension']) {
            expect(results.find(result => result.check === check), check).toMatchObject({ utilisation: Infinity, pass: false });
            expect(lacking.some(text => text.startsWith(`${check} could not be computed`)), check).toBe(true);
        }
    });
    it('has lost all of its section, even on both sides of nought: fails', () => {
        const context = beam({ b: 50, h: 200, length: 4000, actions: { segments: [segment(0, 4000, -10, -20)] }, states: [[2000, state({ M: 1e3, V: 1 })]] });
        for (const { id, check, pass } of runChecks(context, memberChecks).results) {
            expect(pass, `${id} ${check}`).toBe(false);
        }
    });
    it('is of a section that is no rectangle: fails', () => {
        const context = beam({
            b: 50, h: 200, length: 4000, member: { section: { shape: 'rolled', designation: 'H', given: { value: 'H', evidence: { word: 'assumed', stated: false }, source, path: 'J1.section' }, source } },
            states: [[2000, state({ M: 1e6, V: 100 })]]
        });
        expect(runChecks(context, memberChecks).results.find(({ check }) => check === 'stability')?.pass).toBe(false);
    });
});
