import { describe, expect, test } from 'vitest';
import { boltGrades, threads } from '../../server/src/catalog/bolts.js';
import { bearingFactors, bearingResistance, boltOf, combined, longJoint, punchingResistance, shearResistance, tensionResistance, tooClose, type Bolt } from '../../server/src/checks/en1993/bolts/bolt.js';
import { groupForces } from '../../server/src/checks/en1993/bolts/group.js';
import { blockTearing, grossResistance, netResistance } from '../../server/src/checks/en1993/bolts/plate-tension.js';
import { tStub } from '../../server/src/checks/en1993/bolts/t-stub.js';
import { referenceCase, within } from './cases.js';

const bolt = (name: string, grade: string): Bolt => boltOf(threads.get(name)!, boltGrades.get(grade)!);
const factors = { gammaM0: 1, gammaM2: 1.25 };

describe('EN 1993-1-8 Table 3.4', () => {
    test.each([['M16', '8.8'], ['M20', '8.8'], ['M12', '10.9'], ['M16', '10.9'], ['M20', '10.9']])('BS-%s-%s', (name, grade) => {
        const reference = referenceCase(`BS-${name}-${grade}`);
        const one = { ...bolt(name, grade), As: reference.input('As'), fub: reference.input('fub'), alphaV: reference.input('alpha_v') };
        expect(one).toEqual(bolt(name, grade));
        reference.expect('Fv_Rd', shearResistance(one, reference.input('gM2')) / 1e3);
        reference.expect('Ft_Rd', tensionResistance(one, reference.input('gM2')) / 1e3);
    });

    test('BS-comb: shear with tension', () => {
        const reference = referenceCase('BS-comb');
        reference.expect('util', combined(reference.input('FvEd'), reference.input('FvRd'), reference.input('FtEd'), reference.input('FtRd')));
        expect(combined(0, 60, 100, 90)).toBeCloseTo(100 / 90);
    });

    test('SC-01: bearing on a fin plate, "Steel Buildings in Europe" multi-storey part 5 p. 5-41', () => {
        const reference = referenceCase('SC-01');
        const { e1, p1, e2, p2 } = { e1: reference.input('e1'), p1: reference.input('p1'), e2: reference.input('e2'), p2: reference.input('p2') };
        const plate = { t: reference.input('t'), fu: reference.input('fu') };
        const M20 = bolt('M20', '8.8');
        expect([M20.d, M20.d0, M20.fub]).toEqual([20, 22, 800]);
        // Upright force: the end is e1. Level force: the end is e2, the neighbours change places.
        const upright = { e1, p1, e2, p2 };
        const level = { e1: e2, p1: p2, e2: e1, p2: p1 };
        reference.expect('k1_ver', bearingFactors(M20, plate.fu, upright).k1);
        reference.expect('alpha_b_ver', bearingFactors(M20, plate.fu, upright).alphaB);
        reference.expect('Fb_ver', bearingResistance(M20, plate, upright, 1.25) / 1e3);
        reference.expect('k1_hor', bearingFactors(M20, plate.fu, level).k1);
        reference.expect('alpha_b_hor', bearingFactors(M20, plate.fu, level).alphaB);
        reference.expect('Fb_hor', bearingResistance(M20, plate, level, 1.25) / 1e3);
    });

    test('the same guide p. 5-17 (seen): end plate 12 mm, edge bolts 107 kN at the end, 142 kN inside', () => {
        const plate = { t: 12, fu: 430 };
        // α_b = 0.606 is printed and used as 0.61.
        within(bearingResistance(bolt('M20', '8.8'), plate, { e1: 40, e2: 30 }, 1.25) / 1e3, 107, 0.01, 'end');
        within(bearingResistance(bolt('M20', '8.8'), plate, { p1: 70, e2: 30 }, 1.25) / 1e3, 142, 0.005, 'inner');
    });

    test('punching, long joints, least distances (closed forms of Tables 3.3, 3.4 and 3.8)', () => {
        const M16 = bolt('M16', '8.8');
        within(punchingResistance(M16, { t: 10, fu: 430 }, 1.25), 0.6 * Math.PI * 24 * 10 * 430 / 1.25, 1e-12, 'Bp,Rd');
        expect([longJoint(M16, 240), longJoint(M16, 400), longJoint(M16, 5000)]).toEqual([1, 1 - 160 / 3200, 0.75]);
        expect(tooClose(M16, { e1: 21.6, e2: 21.6, p1: 39.6, p2: 43.2 })).toEqual([]);
        expect(tooClose(M16, { e1: 21, e2: 21, p1: 39, p2: 43 })).toHaveLength(4);
    });

    test('hole clearance: EN 1090-2 as printed in the guide, 5-5', () => {
        expect(['M12', 'M16', 'M24', 'M27'].map(name => bolt(name, '4.6').d0)).toEqual([13, 18, 26, 30]);
    });
});

describe('groups', () => {
    test('BG-01: two lines of three under moment and shear', () => {
        const reference = referenceCase('BG-01');
        const places = reference.list('x').flatMap(x => reference.list('y').map(y => ({ x, y })));
        const forces = groupForces(places, { Fx: 0, Fy: reference.input('V'), M: reference.input('M') });
        const most = forces.reduce((a, b) => b.force > a.force ? b : a);
        reference.expect('F_max', most.force);
        reference.expect('alpha_to_x', Math.atan(Math.abs(most.fy / most.fx)) * 180 / Math.PI);
        within(forces.reduce((sum, { fy }) => sum + fy, 0), reference.input('V'), 1e-12, 'ΣFy');
        within(forces.reduce((sum, { x, y, fx, fy }) => sum + x * fy - y * fx, 0), reference.input('M'), 1e-12, 'ΣM');
    });

    test('SC-02, SC-03: ten bolts of a fin plate at 80 mm (the distance that gives the printed α and β)', () => {
        const places = Array.from({ length: 10 }, (_, i) => ({ x: i < 5 ? 0 : 60, y: i % 5 * 70 }));
        const forces = groupForces(places, { Fx: 0, Fy: 1, M: 80 });
        const bolts = referenceCase('SC-03');
        const M20 = bolt('M20', '8.8');
        bolts.expect('Fv_Rd', shearResistance(M20, 1.25) / 1e3);
        bolts.expect('V_Rd', shearResistance(M20, 1.25) / 1e3 / Math.max(...forces.map(({ force }) => force)));
        const bearing = referenceCase('SC-02');
        const share = forces.map(({ fx, fy }) => Math.hypot(fx / bearing.input('Fb_hor'), fy / bearing.input('Fb_ver')));
        bearing.expect('V_Rd', 1 / Math.max(...share));
    });

    test('one bolt carries no moment', () => {
        expect(groupForces([{ x: 5, y: 7 }], { Fx: 3, Fy: 4, M: 0 })[0]!.force).toBe(5);
        expect(groupForces([{ x: 5, y: 7 }], { Fx: 3, Fy: 4, M: 1 })[0]!.force).toBe(Infinity);
    });
});

describe('plates in tension', () => {
    test('SP-02: EN 1993-1-1 6.2.3, two M12 holes across', () => {
        const reference = referenceCase('SP-02');
        const steel = { fy: reference.input('fy'), fu: reference.input('fu') };
        const [b, t, d0, n] = ['b', 't', 'd0', 'n_holes'].map(reference.input) as [number, number, number, number];
        reference.expect('Npl_Rd', grossResistance(b * t, steel, factors) / 1e3);
        reference.expect('Nu_Rd', netResistance((b - n * d0) * t, steel, factors) / 1e3);
    });

    test('block tearing 483 kN: "Steel Buildings in Europe" multi-storey part 5 p. 5-43 (seen)', () => {
        within(blockTearing(770, 2210, { fy: 275, fu: 430 }, factors, true) / 1e3, 483, 0.002, 'VRd,b');
        expect(blockTearing(770, 2210, { fy: 275, fu: 430 }, factors)).toBeGreaterThan(blockTearing(770, 2210, { fy: 275, fu: 430 }, factors, true));
    });
});

describe('T-stub, EN 1993-1-8 Table 6.2 (formulas read in the guide, p. 5-12, and in a draft of EN 1993-1-8, 6.2.4)', () => {
    const stub = { t: 12, fy: 275, m: 37.25, e: 35, leff1: 128.375, leff2: 128.375, boltTension: 90_432, boltArea: 157, boltLength: 42.4 };

    test('modes by hand', () => {
        // Mpl = 0.25 · 128.375 · 12² · 275 = 1 270 913; n = 35.
        const { modes, governing, resistance, prying } = tStub(stub, 1);
        expect(prying).toBe(true);
        within(modes[0]!.resistance, 4 * 1_270_912.5 / 37.25, 1e-9, 'mode 1');
        within(modes[1]!.resistance, (2 * 1_270_912.5 + 35 * 180_864) / 72.25, 1e-9, 'mode 2');
        expect(modes[2]!.resistance).toBe(180_864);
        expect([governing, resistance]).toEqual(['2', modes[1]!.resistance]);
    });

    test('thin plate: mode 1; thick plate: the bolts', () => {
        expect(tStub({ ...stub, t: 5 }, 1).governing).toBe('1');
        const thick = tStub({ ...stub, t: 40 }, 1);
        expect([thick.governing, thick.resistance, thick.prying]).toEqual(['3', 180_864, false]);
    });

    test('prying ends at the thickness that it names', () => {
        const { thicknessWithoutPrying: t } = tStub(stub, 1);
        expect([tStub({ ...stub, t: t - 0.01 }, 1).prying, tStub({ ...stub, t: t + 0.01 }, 1).prying]).toEqual([true, false]);
    });
});
