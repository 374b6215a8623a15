/**
 * A bolted splice with a cover on each flange and a pair on the web (EN 1993-1-8 3, 6.2.7.1 by an elastic split):
 * the web covers take the shear, the web's share of the moment (I_web / I) and of the axial force, and the shear times
 * its way to the bolts; the flange covers take the rest as a couple (case SP-01).
 */
import type { CoverSplice } from '../../../analysis/splice-covers.js';
import { problem, unsound, type Problem } from '../../verdict.js';
import { tooClose } from '../bolts/bolt.js';
import { webDepth } from '../steel-member.js';
import type { CoverCheck, SplitForces } from './cover-check.js';
import { flangeDistances, flangeVerdicts } from './flange-covers.js';
import { webDistances, webVerdicts } from './web-covers.js';
import type { SpliceForces, SpliceResult } from './splice-result.js';

/** Elastic split of the forces at the joint's middle. */
export function splitForces({ beam: { section }, splice }: Pick<CoverCheck, 'beam' | 'splice'>, { N, V, M }: SpliceForces): SplitForces {
    const hw = webDepth(section);
    const ofWeb = Math.abs(M) * section.tw * hw ** 3 / 12 / section.Iy;
    const webN = N * hw * section.tw / section.A;
    const couple = (Math.abs(M) - ofWeb) / (section.h - section.tf);
    const flangeN = (N - webN) / 2;
    return {
        pull: Math.max(couple + flangeN, 0), push: Math.max(couple - flangeN, 0),
        web: { N: webN, V, M: ofWeb + Math.abs(V) * wayToBolts(splice) }
    };
}

/** From the middle of the joint to the middle of the web's bolts on one side, mm. */
export const wayToBolts = ({ gap, web }: CoverSplice): number => gap / 2 + web.beamEnd + (web.lines - 1) * web.linePitch / 2;

const notChecked = ['gap that stays open in the holes until the bolts bear (see the play of the splice)', 'preloading of the bolts'];

/** A problem for a section that is no I or H and for measures that make no splice. */
export function coverSplice(given: CoverCheck, forces: SpliceForces): SpliceResult | Problem {
    const { flange, web } = given.splice;
    const bad = unsound('finite', { 'the axial force': forces.N, 'the shear force': forces.V, 'the moment': forces.M })
        ?? unsound('positive', {
            'the flange cover\'s width': flange.width, 'the flange cover\'s thickness': flange.thickness, 'the bolts of a flange cover': flange.pairs,
            'the gauge': flange.gauge, 'the pitch': flange.pitch, 'the end distance': Math.min(flange.coverEnd, flange.beamEnd, web.coverEnd, web.beamEnd),
            'the web cover\'s depth': web.depth, 'the web cover\'s thickness': web.thickness, 'the bolts of a web cover': Math.min(web.rows, web.lines),
            'the pitch of the web\'s bolts': Math.min(web.rowPitch, web.linePitch), 'the strength of the beam': given.beamFu
        }) ?? unsound('not negative', { 'the gap': given.splice.gap }) ?? faultOf(given);
    return bad ?? {
        verdicts: [...flangeVerdicts(given, splitForces(given, forces)), ...webVerdicts(given, splitForces(given, forces).web)],
        misplaced: [...flangeDistances(given), ...webDistances(given)].flatMap(({ where, distances }) =>
            tooClose(given.bolt, distances).map(text => `${where}: ${text}`)),
        notChecked
    };
}

function faultOf({ splice: { beam, flange, web }, bolt }: CoverCheck): Problem | undefined {
    if (beam.shape !== 'I') {
        return problem('a splice with covers is computed for rolled I and H sections alone');
    }
    if (!Number.isInteger(flange.pairs) || !Number.isInteger(web.rows) || !Number.isInteger(web.lines)) {
        return problem('the bolts of a splice come in whole numbers');
    }
    if (web.rows * web.lines < 2) {
        return problem('a web cover needs two bolts at least on each side: one alone holds no moment');
    }
    const room = (flange.gauge - beam.tw) / 2 - beam.r - bolt.d;
    return web.depth > webDepth(beam) - 2 * beam.r
        ? problem(`a web cover ${web.depth} mm deep does not fit between the root radii of ${beam.name}`)
        : room < 0 ? problem('the bolts of the flange cover sit in the root of the flange') : undefined;
}
