/**
 * A bolted end-plate splice (EN 1993-1-8 6.2): tension rows by their T-stubs in proportion to their lever about the
 * compression flange (6.2.7.2(9), on the safe side for every row), bolts in shear and tension, bearing, punching,
 * beam web in tension and compression flange.
 */
import { misplacedRows, tensionRows, type EndPlateSplice, type TensionRow } from '../../../analysis/splice.js';
import { kN, kNm, plain, quotient, step, type TermRow } from '../../steps.js';
import { against, againstOne, problem, unsound, type NamedVerdict, type Problem } from '../../verdict.js';
import { bearingFactors, bearingResistance, combined, shearResistance, tensionResistance, tooClose, type Distances } from '../bolts/bolt.js';
import { momentResistance } from '../bending.js';
import { withClass } from '../classification.js';
import { explainRow, rowResistance, type EndPlateCheck, type RowResistance } from './tension-row.js';
import type { SpliceForces, SpliceResult } from './splice-result.js';

const notChecked = [
    'welds between end plate and beam',
    'the turn and the gap of end plates that do not lie close'
];

/** A problem for a section that is no I or H, for measures that make no splice, and where no row can pull. */
export function endPlateSplice(given: EndPlateCheck, forces: SpliceForces): SpliceResult | Problem {
    const { splice, bolt } = given;
    const { plate, rows, gauge } = splice;
    const bad = unsound('finite', { 'the axial force': forces.N, 'the shear force': forces.V, 'the moment': forces.M })
        ?? unsound('positive', {
            'the plate\'s width': plate.width, 'the plate\'s thickness': plate.thickness, 'the gauge of the bolts': gauge, 'the bolt\'s diameter': bolt.d
        })
        ?? unsound('not negative', { 'the weld\'s throat': splice.weldThroat, 'the plate above': plate.above, 'the plate below': plate.below })
        ?? faultOf(splice);
    if (bad) {
        return bad;
    }
    const pulled = tensionRows(splice, forces.M < 0 ? 'hogging' : 'sagging');
    if (pulled.length === 0 || pulled.some(({ m, e }) => m <= 0 || e <= 0)) {
        return problem('no row of bolts of the end plate can pull: they sit too close to web, flange or edge');
    }
    return withClass(given.beam.section, given.beam.steel, 0, found => {
        const resistances = pulled.map(row => rowResistance(given, row));
        const flange = momentResistance(given.beam, found.sectionClass) / (splice.beam.h - splice.beam.tf);
        return {
            verdicts: [...ofMoment(given, forces, resistances, flange), ofBolts(given, forces, resistances), ofBearing(given, forces, rows.length)],
            misplaced: [...new Set(rows.flatMap(height => tooClose(bolt, shearDistances(splice, height))))],
            notChecked
        };
    });
}

function faultOf(splice: EndPlateSplice): Problem | undefined {
    const misplaced = misplacedRows(splice);
    if (splice.beam.shape !== 'I') {
        return problem('an end-plate splice is computed for rolled I and H sections alone');
    }
    if (misplaced.length > 0) {
        return problem(`a row of bolts ${Math.round(misplaced[0]!)} mm from the beam's axis sits in a flange or off the plate`);
    }
    return new Set(splice.rows).size < splice.rows.length ? problem('two rows of bolts at the same height') : undefined;
}

/** Moment about the middle of the compression flange; an axial tension adds to it, a compression counts on that flange alone. */
const momentAtFlange = ({ splice: { beam } }: EndPlateCheck, { M, N }: SpliceForces): number =>
    Math.abs(M) + Math.max(N, 0) * (beam.h - beam.tf) / 2;

/** Force of each row for a unit moment, N per N mm. */
function shares(rows: readonly TensionRow[]): readonly number[] {
    const sum = rows.reduce((total, { lever }) => total + lever ** 2, 0);
    return rows.map(({ lever }) => lever / sum);
}

function ofMoment(given: EndPlateCheck, forces: SpliceForces, rows: readonly RowResistance[], flange: number): readonly NamedVerdict[] {
    const M = momentAtFlange(given, forces);
    const share = shares(rows.map(({ row }) => row));
    const capacities = rows.map(({ resistance }, i) => resistance / share[i]!);
    const capacity = Math.min(...capacities);
    const least = capacities.indexOf(capacity);
    const push = M * share.reduce((sum, one) => sum + one, 0) + Math.max(-forces.N, 0);
    const { h, tf } = given.splice.beam;
    return [{
        name: 'end plate and bolts in tension',
        ...against(M, capacity, kNm, 'EN 1993-1-8 6.2.4, 6.2.7.2', () => [...rows.flatMap(row => explainRow(given, row)), step('M_{j,Rd}', '\\frac{F_{t,r,Rd}}{h_r} \\sum h_r^2', [
            ['F_{t,r,Rd}', rows[least]!.resistance / 1e3, 'kN', 'of the row that governs'], ['h_r', rows[least]!.row.lever, 'mm'],
            ['\\sum h_r^2', rows.reduce((sum, { row }) => sum + row.lever ** 2, 0), 'mm2']
        ], kNm(capacity), { clause: 'EN 1993-1-8 6.2.7.2(9)', note: 'rows pull in proportion to their lever' })])
    }, {
        name: 'compression flange',
        ...against(push, flange, kN, 'EN 1993-1-8 6.2.6.7', () => [step('F_{c,Rd}', '\\frac{M_{c,Rd}}{h - t_f}', [
            ['M_{c,Rd}', flange * (h - tf) / 1e6, 'kNm'], ['h', h, 'mm'], ['t_f', tf, 'mm']
        ], kN(flange), { clause: 'EN 1993-1-8 (6.21)' })])
    }];
}

/** Shear on all bolts alike; the tension in a bolt, prying in it, is no more than F_t,Rd in the ratio of its row's force to its row's resistance. */
function ofBolts(given: EndPlateCheck, forces: SpliceForces, rows: readonly RowResistance[]): NamedVerdict {
    const { bolt, beam: { parameters: { gammaM2 } }, splice } = given;
    const v = Math.abs(forces.V) / (2 * splice.rows.length);
    const M = momentAtFlange(given, forces);
    const tensionRd = tensionResistance(bolt, gammaM2);
    const pull = Math.max(...shares(rows.map(({ row }) => row)).map((share, i) => quotient(share * M, rows[i]!.tStub.resistance) * tensionRd));
    const shearRd = shearResistance(bolt, gammaM2);
    const utilisation = combined(v, shearRd, pull, tensionRd);
    const tension: readonly TermRow[] = [['F_{t,Ed}', pull / 1e3, 'kN', 'prying in it'], ['F_{t,Rd}', tensionRd / 1e3, 'kN']];
    return {
        name: 'bolts in shear and tension',
        ...againstOne(utilisation, 'EN 1993-1-8 Table 3.4', () => [pull > tensionRd * utilisation * (1 - 1e-12)
            ? step('\\eta', '\\frac{F_{t,Ed}}{F_{t,Rd}}', tension, plain(utilisation), { clause: 'EN 1993-1-8 Table 3.4', note: 'tension by itself, more than with shear over 1.4' })
            : step('\\eta', '\\frac{F_{v,Ed}}{F_{v,Rd}} + \\frac{F_{t,Ed}}{1.4 F_{t,Rd}}', [
                ['F_{v,Ed}', v / 1e3, 'kN'], ['F_{v,Rd}', shearRd / 1e3, 'kN', bolt.name], ...tension
            ], plain(utilisation), { clause: 'EN 1993-1-8 Table 3.4', note: 'and F_t,Ed / F_t,Rd by itself' })])
    };
}

function ofBearing(given: EndPlateCheck, forces: SpliceForces, rows: number): NamedVerdict {
    const { bolt, splice, plateSteel, beam: { parameters: { gammaM2 } } } = given;
    const v = Math.abs(forces.V) / (2 * rows);
    const plate = { t: splice.plate.thickness, fu: plateSteel.fu };
    const bearing = splice.rows.map(height => bearingResistance(bolt, plate, shearDistances(splice, height), gammaM2));
    const capacity = Math.min(...bearing);
    const worstRow = bearingFactors(bolt, plate.fu, shearDistances(splice, splice.rows[bearing.indexOf(capacity)]!));
    return {
        name: 'end plate in bearing',
        ...against(v, capacity, kN, 'EN 1993-1-8 Table 3.4', () => [step('F_{b,Rd}', '\\frac{k_1 \\alpha_b f_u d t}{\\gamma_{M2}}', [
            ['k_1', worstRow.k1, ''], ['\\alpha_b', worstRow.alphaB, ''],
            ['f_u', plateSteel.fu, 'MPa'], ['d', bolt.d, 'mm'], ['t', splice.plate.thickness, 'mm'], ['\\gamma_{M2}', gammaM2, '']
        ], kN(capacity), { clause: 'EN 1993-1-8 Table 3.4' })])
    };
}

/** Seen along the shear force, that is upright. */
function shearDistances({ beam, plate, rows, gauge }: EndPlateSplice, height: number): Distances {
    const others = rows.filter(y => y !== height).map(y => Math.abs(y - height));
    const e1 = Math.min(beam.h / 2 + plate.above - height, beam.h / 2 + plate.below + height);
    return { e1, e2: (plate.width - gauge) / 2, p2: gauge, ...(others.length > 0 ? { p1: Math.min(...others) } : {}) };
}

