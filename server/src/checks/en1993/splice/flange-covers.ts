/** The flange covers of a splice: bolts in shear and bearing, net section, block tearing, buckling between bolts. */
import { kN, step, type TermRow } from '../../steps.js';
import { against, type NamedVerdict } from '../../verdict.js';
import { bearingResistance, longJoint, shearResistance, type Distances } from '../bolts/bolt.js';
import { blockTearing, grossResistance, netResistance, type PlateSteel } from '../bolts/plate-tension.js';
import { imperfection, reduction } from '../buckling-curves.js';
import { epsilon } from '../steel-member.js';
import type { CoverCheck, SplitForces } from './cover-check.js';

/** Seen along the beam. */
export function flangeDistances({ splice: { flange, beam } }: CoverCheck): readonly { where: 'flange' | 'flange cover'; distances: Distances }[] {
    const along = { p2: flange.gauge, ...(flange.pairs > 1 ? { p1: flange.pitch } : {}) };
    return [
        { where: 'flange', distances: { ...along, e1: flange.beamEnd, e2: (beam.b - flange.gauge) / 2 } },
        { where: 'flange cover', distances: { ...along, e1: flange.coverEnd, e2: (flange.width - flange.gauge) / 2 } }
    ];
}

export function flangeVerdicts(given: CoverCheck, { pull, push }: SplitForces): readonly NamedVerdict[] {
    const { beam: { section, steel }, beamFu, splice: { flange }, coverSteel } = given;
    return [
        bolts(given, Math.max(pull, push)),
        tension(given, 'flange at its holes', pull, { t: section.tf, width: section.b, end: flange.beamEnd, steel: { fy: steel.fy, fu: beamFu }, middle: false }),
        tension(given, 'flange cover in tension', pull, { t: flange.thickness, width: flange.width, end: flange.coverEnd, steel: coverSteel, middle: true }),
        compression(given, push)
    ];
}

function bolts(given: CoverCheck, force: number): NamedVerdict {
    const { beam: { section, parameters: { gammaM2 } }, beamFu, bolt, splice: { flange }, coverSteel } = given;
    const n = 2 * flange.pairs;
    const beta = longJoint(bolt, (flange.pairs - 1) * flange.pitch);
    const shear = beta * shearResistance(bolt, gammaM2);
    const [inFlange, inCover] = flangeDistances(given).map(({ where, distances }) => bearingResistance(bolt,
        where === 'flange' ? { t: section.tf, fu: beamFu } : { t: flange.thickness, fu: coverSteel.fu }, distances, gammaM2)) as [number, number];
    const one = Math.min(shear, inFlange, inCover);
    return {
        name: 'flange bolts',
        ...against(force, n * one, kN, 'EN 1993-1-8 Table 3.4, 3.8', () => [step('F_{Rd}', 'n \\min(\\beta_{Lf} F_{v,Rd}, F_{b,Rd,f}, F_{b,Rd,c})', [
            ['n', n, '', 'bolts on one side'], ['\\beta_{Lf}', beta, ''], ['F_{v,Rd}', shear / beta / 1e3, 'kN', bolt.name],
            ['F_{b,Rd,f}', inFlange / 1e3, 'kN', 'bearing on the flange'], ['F_{b,Rd,c}', inCover / 1e3, 'kN', 'bearing on the cover']
        ], kN(n * one), { clause: 'EN 1993-1-8 Table 3.4, 3.8' })])
    };
}

interface Torn {
    readonly t: number;
    readonly width: number;
    readonly end: number;
    readonly steel: PlateSteel;
    /** The strip between the bolts may tear out: not where the web holds it. */
    readonly middle: boolean;
}

function tension({ beam: { parameters }, bolt, splice: { flange } }: CoverCheck, name: string, force: number, { t, width, end, steel, middle }: Torn): NamedVerdict {
    const edges = (width - flange.gauge - bolt.d0) * t;
    const between = (flange.gauge - bolt.d0) * t;
    const sheared = 2 * t * (end + (flange.pairs - 1) * flange.pitch - (flange.pairs - 0.5) * bolt.d0);
    const gross = grossResistance(width * t, steel, parameters);
    const net = netResistance((width - 2 * bolt.d0) * t, steel, parameters);
    const block = blockTearing(middle ? Math.min(edges, between) : edges, sheared, steel, parameters);
    const capacity = Math.min(gross, net, block);
    const terms: readonly TermRow[] = [['N_{pl,Rd}', gross / 1e3, 'kN'], ['N_{u,Rd}', net / 1e3, 'kN'], ['V_{eff,1,Rd}', block / 1e3, 'kN', 'block tearing']];
    return {
        name,
        ...against(force, capacity, kN, 'EN 1993-1-1 6.2.3, EN 1993-1-8 3.10.2', () => [
            step('N_{t,Rd}', '\\min(N_{pl,Rd}, N_{u,Rd}, V_{eff,1,Rd})', terms, kN(capacity), { clause: 'EN 1993-1-1 (6.6), (6.7), EN 1993-1-8 (3.9)' })
        ])
    };
}

/** Table 3.3 note 2: between two bolts the cover is a strut of 0.6 of their distance, unless that is at most 9 ε t. */
function compression({ beam: { parameters }, splice: { flange, gap }, coverSteel }: CoverCheck, force: number): NamedVerdict {
    const clear = Math.max(gap + 2 * flange.beamEnd, flange.pairs > 1 ? flange.pitch : 0);
    const slenderness = 0.6 * clear * Math.sqrt(12) / flange.thickness / (Math.PI * Math.sqrt(210_000 / coverSteel.fy));
    const chi = clear <= 9 * epsilon(coverSteel.fy) * flange.thickness ? 1 : reduction(slenderness, imperfection.c);
    const capacity = chi * flange.width * flange.thickness * coverSteel.fy / parameters.gammaM1;
    return {
        name: 'flange cover in compression',
        ...against(force, capacity, kN, 'EN 1993-1-1 6.3.1, EN 1993-1-8 Table 3.3', () => [step('N_{b,Rd}', '\\chi \\frac{A f_y}{\\gamma_{M1}}', [
            ['\\chi', chi, '', `between bolts ${clear} mm apart`], ['A', flange.width * flange.thickness, 'mm2'],
            ['f_y', coverSteel.fy, 'MPa'], ['\\gamma_{M1}', parameters.gammaM1, '']
        ], kN(capacity), { clause: 'EN 1993-1-1 6.3.1' })])
    };
}
