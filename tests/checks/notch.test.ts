import { describe, expect, it } from 'vitest';
import type { Notch } from '../../language/src/model.js';
import { notch } from '../../server/src/checks/en1995/notch.js';
import { notchFactor } from '../../server/src/checks/en1995/notch-factor.js';
import { shearStress } from '../../server/src/checks/en1995/shear.js';
import { published } from './figures.js';
import { beam, given, segment, source, state, support } from './fixture.js';

describe('published cases', () => {
    published('NO-01', g => ({ alpha: g('hef') / g('h'), kv: notchFactor({ h: g('h'), hef: g('hef'), x: g('x'), i: g('i') }, g('kn')) }));
    for (const id of ['NO-10', 'NO-11', 'NO-13']) {
        published(id, g => ({
            alpha: g('hef') / g('h'),
            kv: notchFactor({ h: g('h'), hef: g('hef'), x: g('x'), i: g('i') }, g('kn')),
            tau: shearStress(g('V'), g('b'), g('hef'), 0.67)
        }));
    }
});

describe('k_v', () => {
    it('is 1 for no notch, and never more', () => {
        expect(notchFactor({ h: 200, hef: 200, x: 50, i: 0 }, 5)).toBe(1);
        expect(notchFactor({ h: 200, hef: 199.9, x: 1, i: 0 }, 5)).toBe(1);
    });
    it('is 1 for a gentle taper', () => {
        expect(notchFactor({ h: 225, hef: 165, x: 60, i: 10 }, 5)).toBe(1);
    });
    it('is nought for a notch through the whole depth', () => {
        expect(notchFactor({ h: 200, hef: 0, x: 50, i: 0 }, 5)).toBe(0);
    });
});

const notchOf = (face: Notch['face'], from: number, to: number, depth: number, taper = 0): Notch =>
    ({ face, from: given(from), to: given(to), depth: given(depth), taper: given(taper), source });

/** 75 × 225 over 4 m with one notch; V falls from 5 kN to nought at mid-span. */
function notched(one: Notch) {
    const [from, to] = [one.from.value, one.to.value];
    const cut = segment(from, to, 75, 225 - one.depth.value, { weakened: true });
    const segments = [...from > 0 ? [segment(0, from, 75, 225)] : [], cut, segment(to, 4000, 75, 225)];
    const stations = [0, 50, 110, 1000, 1900, 2000, 2100, 4000];
    return beam({
        b: 75, h: 225, length: 4000, member: { notches: [one] },
        actions: { segments, supports: [support('west', 50, 100, [5000]), support('east', 4000, 100, [5000])] },
        states: stations.map(x => [x, state({ V: 5000 * (1 - x / 2000), M: x * (4000 - x) })] as const)
    });
}

describe('a notch in a member', () => {
    it('at the bottom over a support has k_v with x from the reaction to its corner, (6.62)', () => {
        const [outcome, ...others] = notch.outcomes(notched(notchOf('bottom', 0, 110, 60)));
        expect(others).toEqual([]);
        const kv = notchFactor({ h: 225, hef: 165, x: 60, i: 0 }, 5);
        expect(outcome?.at).toBe(50);
        expect(outcome?.utilisation).toBeCloseTo(shearStress(5000 * (1 - 50 / 2000), 75, 165, 0.67) / (kv * 0.8 * 4 / 1.3), 12);
        expect(notch.lacking?.(notched(notchOf('bottom', 0, 110, 60)))).toEqual([]);
    });
    it('on the side away from the support has k_v = 1 on the depth that is left, 6.5.2(2)', () => {
        const [outcome] = notch.outcomes(notched(notchOf('top', 0, 110, 60)));
        expect(outcome?.capacity.value).toBeCloseTo(0.8 * 4 / 1.3, 12);
        expect(outcome?.explain()[0]?.note).toContain('away from the support on west');
    });
    it('in the field on the tension side is not covered, and is said', () => {
        const context = notched(notchOf('bottom', 1900, 2100, 40));
        expect(notch.outcomes(context)).toEqual([]);
        expect(notch.lacking?.(context)).toEqual([
            'notch: no rule of EN 1995-1-1 covers the one in the bottom from 1.90 to 2.10 m, on the tension side away from a support'
        ]);
    });
    it('in the field on the compression side, or with a taper of 1:10, asks for nothing, 6.5.1(2)', () => {
        expect(notch.lacking?.(notched(notchOf('top', 1900, 2100, 40)))).toEqual([]);
        expect(notch.lacking?.(notched(notchOf('bottom', 1900, 2100, 10, 100)))).toEqual([]);
    });
});
