/** The web covers of a splice: the group of bolts in double shear and bearing, bending with shear, block tearing. */
import type { Step } from '../../../results.js';
import { kN, kNm, quotient, step, type TermRow } from '../../steps.js';
import { against, againstOne, worst, type NamedVerdict } from '../../verdict.js';
import { bearingResistance, shearResistance, type Distances } from '../bolts/bolt.js';
import { groupForces } from '../bolts/group.js';
import { blockTearing } from '../bolts/plate-tension.js';
import type { CoverCheck, SplitForces } from './cover-check.js';

type WebForces = SplitForces['web'];
type Place = 'web' | 'web cover';

/** Seen along the beam and upright: e and p change places. The web has no upright end: its flanges hold it. */
export function webDistances({ splice: { web } }: CoverCheck): readonly { where: Place; distances: Distances }[] {
    const along = web.lines > 1 ? web.linePitch : undefined;
    const up = web.rows > 1 ? web.rowPitch : undefined;
    const edge = (web.depth - (web.rows - 1) * web.rowPitch) / 2;
    return [
        { where: 'web', distances: defined({ e1: web.beamEnd, p1: along, p2: up }) },
        { where: 'web', distances: defined({ p1: up, e2: web.beamEnd, p2: along }) },
        { where: 'web cover', distances: defined({ e1: web.coverEnd, p1: along, e2: edge, p2: up }) },
        { where: 'web cover', distances: defined({ e1: edge, p1: up, e2: web.coverEnd, p2: along }) }
    ];
}

const defined = (distances: { readonly [K in keyof Distances]: number | undefined }): Distances =>
    Object.fromEntries(Object.entries(distances).filter(([, value]) => value !== undefined));

export function webVerdicts(given: CoverCheck, forces: WebForces): readonly NamedVerdict[] {
    return [bolts(given, forces), covers(given, forces), tearing(given, forces)];
}

/** The resultant against the lesser of the resistances along and across: on the safe side. */
function bolts(given: CoverCheck, { N, V, M }: WebForces): NamedVerdict {
    const { beam: { section, parameters: { gammaM2 } }, beamFu, bolt, splice: { web }, coverSteel } = given;
    const places = Array.from({ length: web.rows * web.lines }, (_, i) => ({ x: Math.floor(i / web.rows) * web.linePitch, y: i % web.rows * web.rowPitch }));
    const force = Math.max(...groupForces(places, { Fx: Math.abs(N), Fy: Math.abs(V), M }).map(({ force: one }) => one));
    const shear = 2 * shearResistance(bolt, gammaM2);
    const bearing = Math.min(...webDistances(given).map(({ where, distances }) => bearingResistance(bolt,
        where === 'web' ? { t: section.tw, fu: beamFu } : { t: 2 * web.thickness, fu: coverSteel.fu }, distances, gammaM2)));
    const capacity = Math.min(shear, bearing);
    const note = `most loaded of ${places.length} bolts ${(force / 1e3).toFixed(2)} kN by the polar method, M = ${(M / 1e6).toFixed(2)} kNm about their middle`;
    return {
        name: 'web bolts',
        ...against(force, capacity, kN, 'EN 1993-1-8 Table 3.4', () => [step('F_{Rd}', '\\min(2 F_{v,Rd}, F_{b,Rd})', [
            ['F_{v,Rd}', shear / 2e3, 'kN', bolt.name], ['F_{b,Rd}', bearing / 1e3, 'kN', 'least of web and covers, either way']
        ], kN(capacity), { clause: 'EN 1993-1-8 Table 3.4', note })])
    };
}

/** Both covers at the line of bolts: elastic bending of the net depth, the axial force, and shear by the rule of 6.2.8. */
function covers({ beam: { parameters }, bolt, splice: { web }, coverSteel: { fy, fu } }: CoverCheck, { N, V, M }: WebForces): NamedVerdict {
    const t = 2 * web.thickness;
    const holes = web.rows * bolt.d0;
    const upright = Array.from({ length: web.rows }, (_, i) => (i - (web.rows - 1) / 2) * web.rowPitch);
    const I = t * web.depth ** 3 / 12 - t * upright.reduce((sum, y) => sum + bolt.d0 ** 3 / 12 + bolt.d0 * y ** 2, 0);
    const net = Math.max(web.depth - holes, 0) * t;
    // Gross by 1.27 and net: "Steel Buildings in Europe", multi-storey part 5, 3.2.2.
    const shear = Math.min(web.depth * t * fy / (1.27 * Math.sqrt(3) * parameters.gammaM0), net * fu / (Math.sqrt(3) * parameters.gammaM2));
    const share = quotient(Math.abs(V), shear);
    const left = share > 0.5 ? Math.max(1 - (2 * share - 1) ** 2, 0) : 1;
    const bending = Math.max(2 * I / web.depth, 0) * fy / parameters.gammaM0;
    const ofMoment = quotient(M, left * bending) + quotient(Math.abs(N), left * net * fy / parameters.gammaM0);
    return {
        name: 'web covers',
        ...againstOne(Math.max(share, ofMoment), 'EN 1993-1-1 6.2.5, 6.2.6, 6.2.8', () => [
            step('V_{Rd}', '\\min\\left( \\frac{d t f_y}{1.27 \\sqrt{3} \\gamma_{M0}}, \\frac{A_{net} f_u}{\\sqrt{3} \\gamma_{M2}} \\right)', [
                ['d', web.depth, 'mm'], ['t', t, 'mm', 'both covers'], ['f_y', fy, 'MPa'], ['f_u', fu, 'MPa'], ['A_{net}', net, 'mm2'],
                ['\\gamma_{M0}', parameters.gammaM0, ''], ['\\gamma_{M2}', parameters.gammaM2, '']
            ], kN(shear), { clause: 'EN 1993-1-1 6.2.6' }),
            step('M_{V,Rd}', '(1 - \\rho) W_{net} \\frac{f_y}{\\gamma_{M0}}', [
                ['\\rho', 1 - left, ''], ['W_{net}', 2 * I / web.depth, 'mm3'], ['f_y', fy, 'MPa'], ['\\gamma_{M0}', parameters.gammaM0, '']
            ], kNm(left * bending), { clause: 'EN 1993-1-1 6.2.5, 6.2.8' })
        ])
    };
}

/** Upright: a corner of both covers tears out, (3.10). Along the beam: a block of the web, (3.9). */
function tearing({ beam: { section, steel, parameters }, beamFu, bolt, splice: { web }, coverSteel }: CoverCheck, { N, V }: WebForces): NamedVerdict {
    const edge = (web.depth - (web.rows - 1) * web.rowPitch) / 2;
    const along = web.coverEnd + (web.lines - 1) * web.linePitch - (web.lines - 0.5) * bolt.d0;
    const up = edge + (web.rows - 1) * web.rowPitch - (web.rows - 0.5) * bolt.d0;
    const corner = blockTearing(2 * web.thickness * along, 2 * web.thickness * up, coverSteel, parameters, true);
    const inTension = section.tw * (web.rows - 1) * (web.rowPitch - bolt.d0);
    const inShear = 2 * section.tw * (web.beamEnd + (web.lines - 1) * web.linePitch - (web.lines - 0.5) * bolt.d0);
    const block = blockTearing(inTension, inShear, { fy: steel.fy, fu: beamFu }, parameters);
    const clause = 'EN 1993-1-8 3.10.2';
    const terms: readonly TermRow[] = [['\\gamma_{M2}', parameters.gammaM2, ''], ['\\gamma_{M0}', parameters.gammaM0, '']];
    const explain = (): readonly Step[] => [
            step('V_{eff,2,Rd}', '\\frac{0.5 f_u A_{nt}}{\\gamma_{M2}} + \\frac{f_y A_{nv}}{\\sqrt{3} \\gamma_{M0}}', [
                ['f_u', coverSteel.fu, 'MPa'], ['A_{nt}', 2 * web.thickness * along, 'mm2'],
                ['f_y', coverSteel.fy, 'MPa'], ['A_{nv}', 2 * web.thickness * up, 'mm2'], ...terms
            ], kN(corner), { clause: 'EN 1993-1-8 (3.10)', note: 'upright, both covers' }),
            step('V_{eff,1,Rd}', '\\frac{f_u A_{nt}}{\\gamma_{M2}} + \\frac{f_y A_{nv}}{\\sqrt{3} \\gamma_{M0}}', [
                ['f_u', beamFu, 'MPa'], ['A_{nt}', inTension, 'mm2'], ['f_y', steel.fy, 'MPa'], ['A_{nv}', inShear, 'mm2'], ...terms
            ], kN(block), { clause: 'EN 1993-1-8 (3.9)', note: 'along the beam, the web' })
    ];
    return {
        name: 'block tearing of the web and its covers',
        ...worst(against(Math.abs(V), corner, kN, clause, explain), against(Math.max(N, 0), block, kN, clause, explain))
    };
}
