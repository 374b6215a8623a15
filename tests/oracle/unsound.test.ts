/** What cannot be analysed is said by name and place; nothing throws and nothing comes out as NaN. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Finding, Member, Model } from '../../language/src/model.js';
import { analyse, type ElasticProperties } from '../../server/src/analysis/index.js';
import { elastic, given, load, member, model, recommended, solve, type LoadSketch, type MemberSketch } from './fixture.js';

const properties = elastic(11000);

function findings(members: readonly MemberSketch[], loads: readonly LoadSketch[] = []): readonly Finding[] {
    const actions = solve(model(members.map(member), loads), properties);
    const named = actions.members.filter((one) => actions.findings.some(({ message }) => message.startsWith(`${one.member} `)));
    expect(named).toEqual([]);
    return actions.findings;
}

const messages = (...of: Parameters<typeof findings>): string[] => findings(...of).map(({ message }) => message);

describe('mechanisms', () => {
    test('no support', () => {
        expect(messages([{ name: 'B2', length: 3000, supports: [] }])).toEqual(['B2 is held nowhere: it has no support']);
    });
    test('one support', () => {
        expect(messages([{ name: 'R1', length: 3000, supports: [{ at: 100, on: 'north' }] }]))
            .toEqual(['R1 can rotate about north: nothing holds its other end']);
    });
    test('one pin', () => {
        expect(messages([{ name: 'R1', length: 3000, supports: [{ at: 100, kind: 'pinned' }] }]))
            .toEqual(['R1 can rotate about pin: nothing holds its other end']);
    });
    test('one fixed end stands', () => {
        expect(messages([{ name: 'R1', length: 3000, supports: [{ at: 0, kind: 'fixed' }] }])).toEqual([]);
    });
    test('a post without anything at its head', () => {
        expect(messages([{ name: 'P1', kind: 'post', length: 2400, supports: [{ at: 0, on: 'floor' }] }]))
            .toEqual(['P1 can fall over about floor: nothing holds its head']);
    });
    test('who rests on a loose member has no results, but is not to blame', () => {
        const found = findings([
            { name: 'R1', length: 3000, supports: [{ at: 0, on: 'north' }] },
            { name: 'J1', length: 2000, supports: [{ at: 0 }, { at: 2000, kind: 'member', on: 'R1', onCarrierAt: 1500 }] },
            { name: 'sound', length: 2000, supports: [{ at: 0 }, { at: 2000 }] }
        ]);
        expect(found.map(({ message, severity }) => [severity, message])).toEqual([
            ['error', 'R1 can rotate about north: nothing holds its other end'],
            ['warning', 'J1 has no results: it is joined to R1, which has none']
        ]);
        expect(found[1]!.related).toEqual([{ message: found[0]!.message, source: found[0]!.source }]);
    });
    test('each loose member of a group is named', () => {
        expect(messages([
            { name: 'A', length: 3000, supports: [{ at: 0, kind: 'member', on: 'C', onCarrierAt: 1000 }] },
            { name: 'B', length: 3000, supports: [{ at: 0, kind: 'member', on: 'C', onCarrierAt: 2000 }] },
            { name: 'C', length: 3000, supports: [{ at: 0 }, { at: 3000 }] }
        ]).sort()).toEqual([
            'A can rotate about C: nothing holds its other end',
            'B can rotate about C: nothing holds its other end',
            'C has no results: it is joined to A, which has none'
        ].sort());
    });
    test('members that only rest on each other', () => {
        const rests = (on: string) => [{ at: 500, kind: 'member' as const, on, onCarrierAt: 500 }, { at: 2500, kind: 'member' as const, on, onCarrierAt: 2500 }];
        expect(messages([{ name: 'A', length: 3000, supports: rests('B') }, { name: 'B', length: 3000, supports: rests('A') }]))
            .toEqual(Array.from({ length: 2 }, () => 'A and B carry each other at one place: nothing holds them there'));
        const crossed = (on: string) => [{ at: 500, kind: 'member' as const, on, onCarrierAt: 1000 }, { at: 2500, kind: 'member' as const, on, onCarrierAt: 2000 }];
        expect(messages([{ name: 'A', length: 3000, supports: crossed('B') }, { name: 'B', length: 3000, supports: crossed('A') }]))
            .toContain('A and B rest on each other and nothing else holds them');
    });
    test('a ring of beams that each rest on the next and on a wall stands', () => {
        const ring = ['A', 'B', 'C', 'D'].map((name, i): MemberSketch => ({
            name, length: 3000, supports: [{ at: 0 }, { at: 3000, kind: 'member', on: 'ABCD'[(i + 1) % 4]!, onCarrierAt: 1500 }]
        }));
        const actions = solve(model(ring.map(member), ring.map(({ name }) => ({ on: name!, name: `q ${name}`, q: 1 }))), properties, recommended);
        expect(actions.findings).toEqual([]);
        // Each bears its own half and, through the middle, the end of the one before: R = 1500 + R/2.
        const R = 1.35 * 3000;
        for (const one of actions.members) expect(one.supports[1]!.design.max).toBeCloseTo(R, 6);
    });
});

describe('sizes and places', () => {
    const sound: MemberSketch = { name: 'T2', length: 4000, supports: [{ at: 0 }, { at: 4000 }] };
    const codes = (sketch: MemberSketch, loads: readonly LoadSketch[] = []): string[] => findings([sketch], loads).map(({ code }) => code);

    test('nothing left of the section', () => {
        expect(messages([{ ...sound, losses: [{ from: 1600, to: 2700, top: 120, bottom: 90 }] }]))
            .toEqual(['T2 has no section left between 1.60 m and 2.70 m: the losses and notches there take all of it']);
        expect(codes({ ...sound, losses: [{ from: 0, to: 100, left: 100 }] })).toEqual(['no-section-left']);
        expect(codes({ ...sound, losses: [{ from: 0, to: 1000, top: 150 }], notches: [{ face: 'bottom', from: 500, to: 600, depth: 50 }] })).toEqual(['no-section-left']);
    });
    test.each([0, -10, NaN, Infinity, 1e308])('a size of %f', (size) => {
        expect(codes({ ...sound, length: size })).toContain('bad-size');
        expect(codes({ ...sound, b: size })).toContain('bad-size');
        expect(codes({ ...sound, h: size })).toContain('bad-size');
    });
    test.each([NaN, Infinity, 1e308, -1e300])('a load of %f', (q) => {
        expect(codes(sound, [{ q }])).toEqual(['bad-load']);
        expect(codes(sound, [{ F: q, at: 100 }])).toEqual(['bad-load']);
    });
    test('a support or load outside the member', () => {
        expect(codes({ ...sound, supports: [{ at: -100 }, { at: 4000 }] })).toEqual(['support-outside']);
        expect(codes(sound, [{ F: 1, at: 4100 }])).toEqual(['load-outside']);
        expect(codes(sound, [{ q: 1, from: 3000, to: 1000 }])).toEqual(['load-outside']);
    });
    test('a spring without stiffness, two supports at one place, a carrier that is not there', () => {
        expect(codes({ ...sound, supports: [{ at: 0 }, { at: 4000, kind: 'spring', k: 0 }] })).toEqual(['bad-spring']);
        expect(codes({ ...sound, supports: [{ at: 0 }, { at: 0 }, { at: 4000 }] })).toEqual(['two-supports']);
        expect(codes({ ...sound, supports: [{ at: 0 }, { at: 4000, kind: 'member', on: 'ghost', onCarrierAt: 1 }] })).toEqual(['no-carrier']);
        expect(codes({ ...sound, supports: [{ at: 0 }, { at: 4000, kind: 'member', on: 'T2', onCarrierAt: 1 }] })).toEqual(['rests-on-itself']);
    });
    test('a material without stiffness, a section that is not computed', () => {
        const of = model([member(sound)], []);
        expect(analyse(of, { member: () => undefined, hanger: () => undefined }, recommended).findings.map(({ code, severity }) => [code, severity])).toEqual([['no-elastic-properties', 'warning']]);
        const rolled: Member = { ...member(sound), section: { shape: 'rolled', designation: 'HEA 140', given: given('HEA 140'), source: member(sound).source } };
        expect(analyse(model([rolled], []), { member: () => properties, hanger: () => undefined }, recommended).findings.map(({ code, severity }) => [code, severity])).toEqual([['no-elastic-properties', 'warning']]);
    });
    test('two members of one name', () => {
        const actions = solve(model([member(sound), member(sound)], []), properties);
        expect(actions.members).toHaveLength(1);
        expect(actions.findings.map(({ code }) => code)).toEqual(['duplicate-name']);
    });
});

const wild = fc.oneof(
    fc.double(), fc.constantFrom(0, -1, 1e308, -1e308, 1e-308, NaN, Infinity),
    fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 0, max: 5000 })
);
const names = fc.constantFrom('A', 'B', 'C');
const wildMember = fc.record({
    name: names, kind: fc.constantFrom('beam' as const, 'post' as const), length: wild, b: wild, h: wild, slope: fc.oneof(fc.constant(0), wild),
    supports: fc.array(fc.record({
        at: wild, kind: fc.constantFrom('wall' as const, 'member' as const, 'spring' as const, 'pinned' as const, 'fixed' as const),
        on: names, k: wild, onCarrierAt: wild, bearing: wild
    }), { maxLength: 4 }),
    losses: fc.array(fc.record({ from: wild, to: wild, top: wild }), { maxLength: 2 }),
    notches: fc.array(fc.record({ face: fc.constantFrom('top' as const, 'bottom' as const), from: wild, to: wild, depth: wild }), { maxLength: 1 }),
    selfWeight: fc.boolean(), precamber: fc.option(wild, { nil: undefined })
});
const wildLoads = fc.array(fc.record({
    on: names, q: fc.option(wild, { nil: undefined }), F: fc.option(wild, { nil: undefined }), at: wild, from: wild, to: wild,
    action: fc.constantFrom({ kind: 'permanent' as const }, { kind: 'imposed' as const, category: 'A' as const }, { kind: 'wind' as const })
}), { maxLength: 3 });
const wildElastic: fc.Arbitrary<ElasticProperties> = fc.record({ E: wild, G: wild, density: wild, kdef: wild });

/** Every number in a plain value. */
function numbersIn(value: unknown): number[] {
    if (typeof value === 'number') return [value];
    return value !== null && typeof value === 'object' ? Object.values(value).flatMap(numbersIn) : [];
}

test('whatever is written, it neither throws nor gives a number that is none, and every member has actions or a finding', () => {
    const sane = fc.constant(properties);
    fc.assert(fc.property(fc.array(wildMember, { maxLength: 3 }), wildLoads, fc.oneof(wildElastic, sane, sane), (members, loads, material) => {
        const made = members.map((sketch) => ({ ...member(sketch), bearing: given(1) }));
        const hosts = new Map(made.map((one) => [one.name, one]));
        const of: Model = {
            ...model(made, []),
            loads: loads.flatMap((sketch) => (hosts.has(sketch.on) ? [load(sketch, hosts.get(sketch.on)!)] : []))
        };
        const actions = analyse(of, { member: () => material, hanger: () => undefined }, recommended);
        for (const one of made) {
            expect(actions.members.some(({ member: name }) => name === one.name) || actions.findings.some(({ message }) => message.includes(one.name))).toBe(true);
        }
        for (const one of actions.members) {
            const { diagrams, supports, crossings, instant, final, total } = one;
            expect(numbersIn([diagrams, supports.map(({ design, equilibriumMin }) => [design, equilibriumMin]), crossings.map(({ design }) => design), instant.map(({ value }) => value), final.map(({ value }) => value), total.map(({ value }) => value)]).every(Number.isFinite)).toBe(true);
        }
        expect(() => JSON.stringify(actions)).not.toThrow();
    }), { numRuns: 2000 });
});

/** Beams on walls, springs and each other, as they come. */
const frame = fc.array(fc.record({
    length: fc.integer({ min: 1000, max: 5000 }),
    supports: fc.uniqueArray(fc.record({
        share: fc.integer({ min: 0, max: 10 }), kind: fc.constantFrom('wall' as const, 'wall' as const, 'member' as const, 'spring' as const, 'fixed' as const),
        on: fc.nat(4), crossing: fc.integer({ min: 0, max: 7 })
    }), { selector: ({ share }) => share, maxLength: 4 }),
    q: fc.integer({ min: 0, max: 5 })
}), { minLength: 1, maxLength: 5 });

test('members joined at random either cannot stand, by name, or carry their loads to the ground', () => {
    let stood = 0;
    fc.assert(fc.property(frame, (drawn) => {
        const members = drawn.map(({ length, supports }, i) => member({
            name: `M${i}`, length,
            supports: supports.map(({ share, kind, on, crossing }) => {
                const carrier = on % drawn.length;
                return kind === 'member' && carrier !== i
                    ? { at: share * length / 10, kind, on: `M${carrier}`, onCarrierAt: crossing * drawn[carrier]!.length / 7 }
                    : { at: share * length / 10, kind: kind === 'member' ? 'wall' : kind, k: 500 };
            })
        }));
        const { members: solved, findings: found } = solve(model(members, drawn.map(({ q }, i) => ({ on: `M${i}`, name: `q${i}`, q }))), properties, { ...recommended, gammaG: 1, gammaGfavourable: 1 });
        expect(found.filter(({ code }) => code === 'too-far-apart')).toEqual([]);
        for (const { name } of members) expect(solved.some((one) => one.member === name)).toBe(!found.some(({ message }) => message.includes(name)));
        const ground = solved.reduce((sum, one) => sum + one.supports.filter(({ kind }) => kind !== 'member').reduce((up, { design }) => up + design.max, 0), 0);
        const loads = solved.reduce((sum, one) => {
            const { length, q } = drawn[Number(one.member.slice(1))]!;
            return sum + length * q;
        }, 0);
        expect(Math.abs(ground - loads)).toBeLessThan(1e-6 * Math.max(1, ...solved.flatMap(({ supports }) => supports.map(({ design }) => Math.abs(design.max)))));
        if (solved.length > 0 && loads > 0) stood++;
    }), { numRuns: 300 });
    expect(stood).toBeGreaterThan(50);
});
