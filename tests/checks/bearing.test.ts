import { describe, expect, it } from 'vitest';
import { bearing, bearingStress } from '../../server/src/checks/en1995/bearing.js';
import { compressionStrengthAtAngle, effectiveContactLength, kc90At } from '../../server/src/checks/en1995/contact.js';
import { contactsOf } from '../../server/src/checks/en1995/contacts.js';
import { designStrength } from '../../server/src/checks/en1995/design-strength.js';
import { published } from './figures.js';
import { beam, pointLoad, strengthOf, support } from './fixture.js';

const free = { toEnd: Infinity, toNext: Infinity };

describe('published cases', () => {
    published('LVL-08', g => ({ sigma_c90: bearingStress(g('w') * g('L') * 1000 / 2, g('l_support') + g('l_add'), g('b')) }));
    published('LVL-11', g => ({ Fc_k: g('kc90') * g('fc90k') / bearingStress(1000, g('l') + g('l1_total'), g('b')) }));
    // LVL spreads across the grain too, by l2: that part is the source's own.
    for (const id of ['LVL-12', 'LVL-13']) {
        published(id, g => {
            const Aef = 1 / bearingStress(1, effectiveContactLength(g('l'), [free, free]), g('b')) + g('l') * g('l2');
            return { Aef, Fc_k: g('kc90') * g('fc90k') * Aef / 1000 };
        });
    }
    published('LVL-14', g => {
        const Aef = 1 / bearingStress(1, effectiveContactLength(g('l'), [free, free]), g('b'));
        return { Aef, Fc_k: g('kc90') * g('fc90k') * Aef / 1000 };
    });
    published('TB-01', g => {
        const lef = effectiveContactLength(g('l_bearing'), [{ toEnd: 0, toNext: Infinity }, free]);
        const R = (g('gG') * g('gk') + g('gQ') * g('qk')) / 1000 * g('s') * g('L') / 2;
        const sigma_c90 = bearingStress(R, lef, g('b'));
        return { lef, sigma_c90, util_c90: sigma_c90 / compressionStrengthAtAngle(1, designStrength(g('fc90k'), g('kmod'), g('gM')), g('kc90'), Math.PI / 2) };
    });
});

describe('effective contact length, EN 1995-1-1 6.1.5(1)', () => {
    it.each([
        ['30 mm a side', 100, free, free, 160],
        ['no more than the end leaves', 100, { toEnd: 12, toNext: Infinity }, free, 142],
        ['no more than the contact itself', 20, free, free, 60],
        ['no more than half the way to the next contact', 100, free, { toEnd: Infinity, toNext: 40 }, 150],
        ['nothing past the end', 100, { toEnd: -5, toNext: Infinity }, free, 130]
    ] as const)('%s', (_, length, before, after, expected) => {
        expect(effectiveContactLength(length, [before, after])).toBe(expected);
    });
});

describe('k_c,90, EN 1995-1-1 6.1.5(4)', () => {
    const softwood = strengthOf('C24');
    const oak = strengthOf('D30');
    const glulam = strengthOf('GL24h');
    it.each([
        ['solid softwood, next contact 2h away', softwood, 100, 400, 1.5],
        ['solid softwood, next contact nearer', softwood, 100, 399, 1],
        ['hardwood', oak, 100, Infinity, 1],
        ['glulam', glulam, 400, Infinity, 1.75],
        ['glulam on a long contact', glulam, 401, Infinity, 1]
    ] as const)('%s', (_, strength, length, toNext, expected) => {
        expect(kc90At(strength, length, toNext, 200)).toBe(expected);
    });
});

describe('contacts of a member', () => {
    const crossing = support('R1', 2000, 150, [8000], { kind: 'member' });
    const carried = beam({ b: 90, h: 200, length: 3000 }).member;
    const joist = (more: Parameters<typeof beam>[0]['context'] = {}, actions = {}) => beam({
        b: 75, h: 225, length: 4200,
        actions: { supports: [support('west', 100, 150, [5000]), support('east', 4100, 150, [5000])], ...actions }, context: more
    });

    it('end where the member ends', () => {
        const atEnd = joist({}, { supports: [support('west', 0, 100, [5000])] });
        expect(contactsOf(atEnd)[0]).toMatchObject({ length: 50, effective: 80 });
    });
    it('of a crossing member are as long as it is broad, and no wider than its bearing', () => {
        const carrier = joist({ members: [{ ...carried, name: 'R1' }] }, { crossings: [crossing] });
        expect(contactsOf(carrier).find(({ on }) => on === crossing)).toMatchObject({ length: 90, width: 75, effective: 150, kc90: 1.5, place: 'under R1' });
        const narrow = joist({ members: [{ ...carried, name: 'R1' }] }, { crossings: [{ ...crossing, bearing: 40 }] });
        expect(contactsOf(narrow).find(({ on }) => on.support === 'R1')).toMatchObject({ length: 90, width: 40 });
    });
    it('lose k_c,90 where a point load stands near', () => {
        expect(contactsOf(joist({ loads: [pointLoad(400)] }))[0]?.kc90).toBe(1);
        expect(contactsOf(joist({ loads: [pointLoad(2000)] }))[0]?.kc90).toBe(1.5);
        expect(contactsOf(joist({ loads: [pointLoad(100)] }))[0]).toMatchObject({ kc90: 1, toNext: 0, effective: 150 });
        expect(contactsOf(joist({ loads: [pointLoad(100)] }))[1]?.kc90).toBe(1.5);
    });
    it('of a post press its end grain', () => {
        const post = beam({
            b: 100, h: 120, length: 2500, member: { kind: 'post', slope: Math.PI / 2 },
            actions: { supports: [support('pad', 0, undefined, [20_000]), support('wall', 1200, undefined, [0])] }
        });
        expect(contactsOf(post).map(({ on, length, width, angle }) => [on.support, length, width, angle])).toEqual([['pad', 120, 100, 0]]);
        expect(bearing.outcomes(post)[0]?.utilisation).toBeCloseTo(20_000 / (120 * 100) / (0.8 * 21 / 1.3), 12);
    });
    it('between a beam and a post are no larger than either', () => {
        const post = beam({ b: 60, h: 120, length: 2500, member: { name: 'P1', kind: 'post', slope: Math.PI / 2 } }).member;
        const onPost = joist({ members: [post] }, { supports: [support('P1', 2000, 150, [5000], { kind: 'member' })] });
        expect(contactsOf(onPost)[0]).toMatchObject({ length: 120, width: 60 });
        const underPost = joist({ members: [post] }, { crossings: [support('P1', 2000, undefined, [5000], { kind: 'member' })] });
        expect(contactsOf(underPost).find(({ on }) => on.support === 'P1')).toMatchObject({ length: 120, width: 60 });
        const head = beam({
            b: 60, h: 120, length: 2500, member: { kind: 'post', slope: Math.PI / 2 },
            actions: { crossings: [support('R1', 2500, 150, [5000], { kind: 'member' })] }, context: { members: [{ ...carried, name: 'R1' }] }
        });
        expect(contactsOf(head)[0]).toMatchObject({ length: 120, width: 60, angle: 0 });
    });
    it('are as given on a member of unknown shape', () => {
        const steel = { ...carried, name: 'S1', section: { shape: 'rolled', designation: 'H', given: { ...carried.length, value: 'H' }, source: carried.source } } as const;
        const onSteel = joist({ members: [steel] }, { supports: [support('S1', 2000, 150, [5000], { kind: 'member' })] });
        expect(contactsOf(onSteel)[0]).toMatchObject({ length: 150, width: 75 });
    });
    it('of a sloping member take the strength at the angle, 6.2.2', () => {
        const slope = Math.PI / 6;
        const rafter = beam({ b: 75, h: 225, length: 4000, member: { slope }, actions: { supports: [support('plate', 1000, 80, [5000])] } });
        expect(bearing.outcomes(rafter)[0]?.capacity.value).toBeCloseTo(
            compressionStrengthAtAngle(0.8 * 21 / 1.3, 0.8 * 2.5 / 1.3, 1.5, Math.PI / 3), 9);
    });
});

describe('what bearing cannot do', () => {
    it('is said for a support without a length, a tie that lifts, and a thrust', () => {
        const context = beam({
            b: 75, h: 225, length: 4000, actions: {
                supports: [
                    support('west', 0, undefined, [5000]), support('middle', 2000, 100, [-300, 4000], { tied: true }),
                    support('east', 4000, 100, [5000], { horizontal: { min: -800, max: 0 } })
                ]
            }
        });
        expect(bearing.lacking?.(context)).toEqual([
            'bearing on west at 0.00 m: the length of the bearing is not given',
            'bearing on middle: the tie that holds it down',
            'bearing on east: what takes its horizontal force'
        ]);
        expect(bearing.outcomes(context)).toHaveLength(2);
    });
});
