import { describe, expect, test } from 'vitest';
import { rootDiameter, stressArea, threads } from '../../server/src/catalog/bolts.js';
import { axialCapacity, washerArea } from '../../server/src/checks/en1995/fasteners/axial.js';
import { effectiveNumber } from '../../server/src/checks/en1995/fasteners/effective-number.js';
import { embedment, type Wood } from '../../server/src/checks/en1995/fasteners/embedment.js';
import type { Side } from '../../server/src/checks/en1995/fasteners/plane-reading.js';
import { planeCapacity } from '../../server/src/checks/en1995/fasteners/shear-plane.js';
import { slipModulus } from '../../server/src/checks/en1995/fasteners/slip.js';
import { leastDistances } from '../../server/src/checks/en1995/fasteners/spacing.js';
import { splittingCapacity } from '../../server/src/checks/en1995/fasteners/splitting.js';
import { bendingYieldMoment } from '../../server/src/checks/en1995/fasteners/yield-moment.js';
import { plateOnGrain } from '../../server/src/checks/en1993/rods/grain.js';
import { rodTension } from '../../server/src/checks/en1993/rods/rod-tension.js';
import { washerOnGrain } from '../../server/src/checks/en1993/rods/washer-on-grain.js';
import { published } from './published.js';
import { degrees, sound } from './sound.js';

type Given = (name: string) => number;

const fh = (d: number, rho_k: number, angle: number, wood: Wood = 'softwood') => sound(embedment({ d, rho_k, wood, angle: degrees(angle) }));
const timber = (thickness: number, fh_k: number, held = false): Side => ({ kind: 'timber', thickness, fh_k, held });
const plate = (thickness: number, held = false): Side => ({ kind: 'steel', thickness, clearance: 1, held });

function modesOf(d: number, My_Rk: number, Fax_Rk: number, near: Side, far: Side): { capacity: number; values: Record<string, number> } {
    const { capacity, modes } = sound(planeCapacity({ d, My_Rk, Fax_Rk }, near, far));
    return { capacity, values: Object.fromEntries(modes.map(mode => [`F_${mode.letter}`, mode.capacity])) };
}

describe('embedment, EN 1995-1-1 8.5.1.1', () => {
    const embedded = (wood: Wood) => (given: Given) => {
        const { fh0_k, k90, fh_k } = fh(given('d'), given('rho_k'), given('alpha'), wood);
        return { fh0k: fh0_k, k90, fhak: fh_k };
    };
    published('EM-s10-0', embedded('softwood'));
    published('EM-s16-45', embedded('softwood'));
    published('EM-s20-90', embedded('softwood'));
    published('EM-h16-90', embedded('hardwood'));
});

describe('timber on timber, EN 1995-1-1 8.2.2', () => {
    published('BT-11', given => {
        const d = given('d');
        const [fh1k, fh2k] = [fh(d, given('rho_k'), given('alpha1')).fh_k, fh(d, given('rho_k'), given('alpha2')).fh_k];
        const My_Rk = bendingYieldMoment(given('fuk'), d);
        const washer = { kind: 'washer', outer: given('washer_d'), hole: d + 1, fc90_k: given('fc90k') } as const;
        const { Fax_Rk } = sound(axialCapacity({ d, As: given('As'), fu_k: given('fuk'), ends: [washer, washer] }));
        const { capacity, values } = modesOf(d, My_Rk, Fax_Rk, timber(given('t1'), fh1k), timber(given('t2'), fh2k));
        return { fh1k, fh2k, My_Rk, Fax_Rk, Fv_Rk: capacity, ...values };
    });
    const double = (given: Given) => {
        const d = given('d');
        const [fh1k, fh2k] = [fh(d, given('rho_k'), given('alpha1')).fh_k, fh(d, given('rho_k'), given('alpha2')).fh_k];
        const My_Rk = bendingYieldMoment(given('fuk'), d);
        const { capacity, values } = modesOf(d, My_Rk, 0, timber(given('t1'), fh1k), timber(given('t2'), fh2k, true));
        return { fh1k, fh2k, My_Rk, Fv_Rk_per_plane: capacity, Fv_Rk_per_bolt: 2 * capacity, ...values };
    };
    published('BT-20', double);
    published('BT-21', double);
});

describe('steel on timber, EN 1995-1-1 8.2.3', () => {
    const steel = (plateSide: Side, timberHeld = false) => (given: Given) => {
        const My_Rk = bendingYieldMoment(given('fuk'), given('d'));
        const { capacity, values } = modesOf(given('d'), My_Rk, 0, plateSide, timber(given('t_timber'), fh(given('d'), given('rho_k'), 0).fh_k, timberHeld));
        return { Fv_Rk_per_plane: capacity, ...values };
    };
    published('BT-30', steel(plate(6)));
    published('BT-31', steel(plate(12)));
    published('BT-32', steel(plate(3, true)));
    published('BT-33', steel(plate(6), true));
    published('BT-34', steel(plate(12), true));
    published('BT-01', given => {
        const d = given('d');
        const end = { kind: 'plate', thickness: given('t_steel'), hole: d + 1, fc90_k: given('fc90k') } as const;
        const axial = sound(axialCapacity({ d, As: given('As'), fu_k: given('fuk'), ends: [end, end] }));
        // The extreme bolt of a 3 x 3 pattern without its middle one, by the polar method; its force to the grain.
        const [x, y, n, planes] = [given('x'), given('y'), given('n_bolts'), given('n_planes')];
        const polar = 4 * (x ** 2 + y ** 2) + 2 * x ** 2 + 2 * y ** 2;
        const turn = given('Md') * 1e6 / planes / polar;
        const force = { x: given('Hd') * 1e3 / planes / n + turn * y, z: given('Vd') * 1e3 / planes / n + turn * x };
        const fha = sound(embedment({ d, rho_k: given('rho_k'), wood: 'softwood', angle: Math.atan2(force.z, force.x) })).fh_k;
        const side = timber(97, fha, true);
        const dowel = { d, My_Rk: bendingYieldMoment(given('fuk'), d), Fax_Rk: axial.Fax_Rk };
        const m = sound(planeCapacity(dowel, plate(given('t_steel')), side)).modes.find(mode => mode.letter === 'm')!;
        expect(m.capacity, 'limited to 25 % of the Johansen part').toBeCloseTo(1.25 * m.johansen, 6);
        return { Fax_bolt: axial.bolt, Fax_washer: axial.bearing[0], Fv_Rk_m_before_rope_limit: m.johansen + axial.Fax_Rk / 4 };
    });
});

describe('effective number, EN 1995-1-1 (8.34)', () => {
    for (const id of ['NE-2', 'NE-4', 'NE-6']) {
        published(id, given => Object.fromEntries([0, 30, 90].map(angle => [
            `nef_${angle}`, sound(effectiveNumber({ n: given('n'), a1: given('a1'), d: given('d'), angle: degrees(angle) })).nef
        ])));
    }
});

describe('spacings, EN 1995-1-1 Table 8.4', () => {
    published('SPC-01', given => {
        const at = (angle: number) => sound(leastDistances(given('d'), degrees(angle)));
        return {
            a1_0: at(0).a1, a1_90: at(90).a1, a1_30: at(30).a1, a2: at(0).a2, a3t: at(0).a3t,
            a3c_90: at(90).a3c, a3c_180: at(180).a3c, a4t_90: at(90).a4t, a4t_0: at(0).a4t, a4c: at(0).a4c
        };
    });
});

describe('splitting, EN 1995-1-1 8.1.4', () => {
    published('SPL-01', given => ({
        F90_Rk: splittingCapacity({ b: given('b'), h: given('h'), he: given('he'), wood: 'softwood' }) as number
    }));
});

describe('washers on timber, EN 1995-1-1 8.5.2, and rods in tension, EN 1993-1-8 Table 3.4', () => {
    for (const id of ['WA-M12', 'WA-M16', 'WA-M20']) {
        published(id, given => {
            const washer = { kind: 'washer', outer: given('washer_d'), hole: given('hole'), fc90_k: given('fc90k') } as const;
            const rod = { name: id, d: given('d'), d0: given('hole'), As: given('As'), fub: given('fub'), alphaV: 0.6, across: 0 };
            const [factors, unit] = [{ kmod: given('kmod'), gammaM: given('gM') }, 1000];
            return {
                A_washer: washerArea(washer),
                F_washer_Rk: sound(axialCapacity({ d: given('d'), As: 1e9, fu_k: 1e3, ends: [washer, washer] })).Fax_Rk,
                F_washer_Rd: sound(washerOnGrain(washer, unit, factors)).capacity.value * 1e3,
                Ft_Rd: sound(rodTension({ rod, rods: 1, force: unit, gammaM2: given('gM2') })).capacity.value * 1e3
            };
        });
    }
});

describe('slip, EN 1995-1-1 Table 7.1', () => {
    for (const id of ['KS-C24-C24', 'KS-C24-D30']) {
        published(id, given => {
            const both = sound(slipModulus(given('d'), { rho_mean: given('rho1') }, { rho_mean: given('rho2') }));
            const steel = sound(slipModulus(given('d'), { rho_mean: given('rho1') }, 'steel'));
            return { rho_m: both.rho_m, Kser: both.K_ser, Ku: both.K_u, Kser_steel_timber: steel.K_ser };
        });
    }
});

describe('compression across the grain under a plate, EN 1995-1-1 6.1.5', () => {
    for (const id of ['LVL-11', 'LVL-14']) {
        published(id, given => {
            const verdict = sound(plateOnGrain({
                force: 1000, effectiveLength: given('l') + given('l1_total'), width: given('b'), holes: [], kc90: given('kc90'), fc90_d: given('fc90k')
            }));
            const area = 1000 / verdict.demand.value;
            return { Aef: area, Fc_k: area * verdict.capacity.value / 1e3 };
        });
    }
});

describe('threads, ISO 898-1', () => {
    for (const [name, { d, pitch, As }] of threads) {
        test(`${name}: the table fits π/4 (d − 0.9382 P)² to its rounding`, () => {
            expect(Math.abs(stressArea(d, pitch) - As) / As).toBeLessThan(0.004);
        });
    }
    for (const id of ['BO-M8', 'BO-M10', 'BO-M12', 'BO-M20', 'BO-M24']) {
        published(id, given => ({ As: threads.get(`M${given('d')}`)!.As }));
    }
    test('a root is thinner than the stress area says, and that than the shank', () => {
        for (const thread of threads.values()) {
            expect(rootDiameter(thread) ** 2 * Math.PI / 4).toBeLessThan(thread.As);
            expect(thread.As).toBeLessThan(Math.PI / 4 * thread.d ** 2);
        }
    });
});
