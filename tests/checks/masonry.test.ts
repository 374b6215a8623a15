import { describe, expect, it } from 'vitest';
import type { Masonry } from '../../language/src/model.js';
import { isGroup1, longitudinalJointFactor, masonryCharacteristicStrength, masonryStrength } from '../../server/src/catalog/masonry.js';
import type { MasonryBearing } from '../../server/src/checks/check.js';
import { concentratedLoadResistance, loadSpread } from '../../server/src/checks/en1996/concentrated-load.js';
import { masonry } from '../../server/src/checks/en1996/masonry.js';
import { published } from './figures.js';
import { beam, given, source, support } from './fixture.js';

describe('published cases', () => {
    published('MA-01', g => {
        const fk = masonryCharacteristicStrength(g('K'), g('fb'), g('fm'));
        const fd = fk / g('gM');
        // The beam end goes through the whole wall: 150 mm along it, 215 mm across.
        const { lefm, share, calculated, limit, beta } = loadSpread({ along: g('lb'), across: g('bb'), thickness: g('t'), hc: g('hc'), a1: g('a1') });
        return { fk, fd, lefm, Ab_Aef: share, beta_calc: calculated, beta_max: limit, beta, NRdc: concentratedLoadResistance(beta, g('lb') * g('bb'), fd) / 1000 };
    });
    published('MA-02', g => {
        const { share, beta } = loadSpread({ along: g('l'), across: g('b'), thickness: g('t'), hc: g('hc'), a1: g('a1') });
        return { Ab: g('l') * g('b'), Ab_Aef: share, beta, NRdc: concentratedLoadResistance(beta, g('l') * g('b'), g('fd')) / 1000 };
    });
    published('MA-03', g => ({ l_req: g('R') / concentratedLoadResistance(1, g('b'), g('fd')) }));
});

describe('strength of masonry', () => {
    const of = (kind: string): Masonry => ({ kind: 'masonry', name: 'old', unit: { strength: given(15), mortar: given(5), kind }, source });
    it('is as given, or by unit and mortar with a joint along the face', () => {
        expect(masonryStrength({ ...of('clay'), fk: given(2) })).toBe(2);
        expect(masonryStrength(of('clay'))).toBeCloseTo(longitudinalJointFactor * 5.933591, 5);
        expect(masonryStrength(of('cheese'))).toBeUndefined();
        expect(masonryStrength({ kind: 'masonry', name: 'old', source })).toBeUndefined();
    });
    it('counts mortar up to 2 f_b and 20 MPa, and units up to 75 MPa', () => {
        expect(masonryCharacteristicStrength(0.5, 5, 30)).toBe(masonryCharacteristicStrength(0.5, 5, 10));
        expect(masonryCharacteristicStrength(0.5, 90, 30)).toBe(masonryCharacteristicStrength(0.5, 75, 20));
    });
    it('knows solid units', () => {
        expect([isGroup1(of('clay')), isGroup1(of('clay3')), isGroup1({ ...of('clay'), unit: undefined })]).toEqual([true, false, false]);
    });
});

describe('masonry under a bearing', () => {
    const wall: MasonryBearing = { fk: 6, thickness: 215, height: 2400, group1: true, source };
    const outcome = (change: Partial<MasonryBearing>, bearing = 215, fromWallEnd: number | null = 500) => {
        const base = beam({
            b: 150, h: 225, length: 4000, actions: { supports: [support('west', 500, bearing, [40_000])] }, context: { masonryOf: () => ({ ...wall, ...change }) }
        });
        const supports = base.member.supports.map(one => ({ ...one, fromWallEnd: fromWallEnd === null ? undefined : given(fromWallEnd) }));
        return masonry.outcomes({ ...base, member: { ...base.member, supports } })[0];
    };
    const plain = 150 * 215 * 6 / 3 / 1000;

    it('spreads through solid units over the whole thickness as MA-01 does', () => {
        expect(outcome({})?.capacity.value).toBeCloseTo(1.354167 * plain, 4);
        expect(outcome({})?.demand).toEqual({ value: 40, unit: 'kN' });
    });
    it.each([
        ['units that may be hollow', { group1: false }, 215, 500, plain, 'Group 1'],
        ['an unknown height', { height: undefined }, 215, 500, plain, 'height'],
        ['an unknown distance to the end', {}, 215, null, plain, 'distance'],
        ['a load near the face', {}, 100, 500, plain * 100 / 215, 'quarter of the thickness']
    ])('takes β = 1 for %s', (_, change, bearing, end, expected, why) => {
        const found = outcome(change, bearing, end);
        expect(found?.capacity.value).toBeCloseTo(expected, 9);
        expect(found?.explain().find(({ symbol }) => symbol === '\\beta')?.note).toContain(why);
    });
    it('does not bear past the far face', () => {
        expect(outcome({}, 400)?.capacity.value).toBeCloseTo(1.354167 * plain, 4);
    });
    it('of a wall that nothing is known of is said to be unchecked', () => {
        const context = beam({ b: 150, h: 225, length: 4000, actions: { supports: [support('west', 500, 150, [1])] }, context: { masonryOf: () => undefined } });
        expect(masonry.outcomes(context)).toEqual([]);
        expect(masonry.lacking?.(context)).toEqual(['masonry under west: its strength or thickness is not given']);
    });
});
