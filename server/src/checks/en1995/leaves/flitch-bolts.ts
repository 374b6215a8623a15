/** The bolts that bring a flitch beam's plates their share: on the timber by 8.2, on the plates by EN 1993-1-8. */
import type { FlitchSection } from '../../../../../language/src/model.js';
import { plateBolts } from '../../../analysis/flitch.js';
import { normalHole } from '../../../analysis/splice-layout.js';
import { boltGrades, threads } from '../../../catalog/bolts.js';
import { bearingFactors, bearingResistance, boltOf, tooClose } from '../../en1993/bolts/bolt.js';
import type { MemberContext } from '../../check.js';
import type { Answer, Judged } from '../../judged.js';
import { kN, step } from '../../steps.js';
import { against, isProblem, problem } from '../../verdict.js';
import { magnitude, type Force } from '../fasteners/force.js';
import type { Leaf } from '../fasteners/leaf.js';
import { named, shearAnswers } from './bolt-answers.js';
import { distanceAnswers, type DrilledPiece } from './drilled.js';
import { boltStations, combinationsOf, momentAt, plateSteel, stiffestShares } from './flitch-shares.js';
import { boltName, fastenerOf, forceOnLeaf, timberLeaf, unknownBolts, type BoltCase, type ThroughBolt } from './through-bolts.js';

/** What the bolts go through, the bolts with their forces, and the timber that is drilled. */
interface Drilled {
    readonly parts: readonly Leaf[];
    readonly bolts: readonly ThroughBolt[];
    readonly pieces: readonly DrilledPiece[];
    readonly problems: readonly string[];
}

/** In words where the forces cannot be known. */
export function drilledFlitch(context: MemberContext, section: FlitchSection): Drilled | string {
    const parts = arranged(context, section);
    const shares = stiffestShares(context, section);
    if (typeof parts === 'string' || isProblem(shares)) {
        return typeof parts === 'string' ? parts : (shares as { readonly problem: string }).problem;
    }
    const stations = boltStations(section);
    const loaded = combinationsOf(context).map(combination => ({
        combination, forces: plateBolts(shares.steel, stations, at => momentAt(context, at, combination))
    }));
    const problems = loaded.flatMap(({ forces }) => isProblem(forces) ? [forces.problem] : []);
    const at = (x: number): readonly BoltCase[] => loaded.flatMap(({ combination, forces }) => isProblem(forces)
        ? [] : [{ combination, forces: planeForces(parts, (forces.find(one => one.at === x)?.force ?? 0) / abreast(section, x)) }]);
    const bolts = section.bolts.flatMap(row => row.places.flatMap(({ x, height }): ThroughBolt[] => {
        const fastener = fastenerOf(row);
        return fastener ? [{ name: boltName(row, x, height), x, height, d: row.diameter, fastener, cases: at(x) }] : [];
    }));
    const timber = parts.findIndex(({ kind }) => kind === 'timber') + 1;
    return { parts, bolts, pieces: [{ part: timber, from: 0, to: context.member.length.value }], problems };
}

export function flitchBolts(context: MemberContext, section: FlitchSection): Judged {
    const drilled = drilledFlitch(context, section);
    if (typeof drilled === 'string') {
        return { answers: [], lacking: [drilled] };
    }
    const { parts, bolts, pieces, problems } = drilled;
    return {
        answers: [
            ...shearAnswers(context, bolts, parts),
            ...distanceAnswers(context, bolts, pieces),
            ...bearingAnswers(context, section, bolts, parts.findIndex(({ kind }) => kind === 'steel') + 1)
        ],
        lacking: [...unknownBolts(section.bolts), ...new Set(problems)]
    };
}

const abreast = ({ bolts }: FlitchSection, x: number): number => bolts.flatMap(({ places }) => places).filter(place => place.x === x).length;

/** Leaves and plates in turn, the more numerous outside; in words where that cannot be. */
function arranged({ strength }: MemberContext, { leaves, plates, breadth, thickness, bolts }: FlitchSection): readonly Leaf[] | string {
    if (Math.abs(leaves - plates) > 1) {
        return `${leaves} leaves and ${plates} plates do not lie in turn: how they share their bolts is not known`;
    }
    const hole = Math.max(0, ...bolts.map(({ diameter }) => normalHole(diameter)));
    const timber = timberLeaf(strength, breadth.value);
    const steel: Leaf = { kind: 'steel', thickness: thickness.value, hole };
    return Array.from({ length: leaves + plates }, (_, i) => (i % 2 === 0) === (leaves >= plates) ? timber : steel);
}

/** Downwards on all plates together, equally; the leaves give it equally. */
function planeForces(parts: readonly Leaf[], force: number): readonly Force[] {
    const count = (kind: Leaf['kind']): number => parts.filter(part => part.kind === kind).length;
    let carried = 0;
    return parts.slice(0, -1).map(part => {
        carried += part.kind === 'steel' ? -force / count('steel') : force / count('timber');
        return { x: 0, z: -carried };
    });
}

function bearingAnswers(context: MemberContext, { thickness, plateDepth, bolts: rows }: FlitchSection, bolts: readonly ThroughBolt[], part: number): readonly Answer[] {
    const section = context.member.section as FlitchSection;
    const steel = plateSteel(context, section);
    return bolts.flatMap(bolt => bolt.cases.map(({ combination, forces }): Answer => {
        const where = { combination, at: bolt.x };
        const row = rows.find(({ places }) => places.some(({ x, height }) => x === bolt.x && height === bolt.height));
        const [thread, grade] = [threads.get(row?.size ?? ''), boltGrades.get(row?.grade.value ?? '')];
        if ('problem' in steel || steel.fu === undefined || !thread || !grade) {
            return { said: problem('bearing of the bolts on the plates: the tensile strength of the steel is not known'), where };
        }
        const inPlate = boltOf(thread, grade);
        // Across the plate: its edge is an end along the force.
        const distances = { e1: plateDepth.value / 2 - Math.abs(bolt.height), e2: Math.min(bolt.x, context.member.length.value - bolt.x) };
        const close = tooClose(inPlate, distances);
        const { fu } = steel;
        const { gammaM2 } = context.parameters.steel;
        const { k1, alphaB } = bearingFactors(inPlate, fu, distances);
        const capacity = close.length > 0 ? 0 : bearingResistance(inPlate, { t: thickness.value, fu }, distances, gammaM2);
        const clause = 'EN 1993-1-8 Table 3.4';
        return {
            said: named([bolt.name, 'bearing on a plate', ...close].join('; '), against(magnitude(forceOnLeaf(forces, part)), capacity, kN, clause, () => [
                step('F_{b,Rd}', '\\frac{k_1 \\alpha_b f_u d t}{\\gamma_{M2}}', [
                    ['k_1', k1, ''], ['\\alpha_b', alphaB, ''], ['f_u', fu, 'MPa'], ['d', inPlate.d, 'mm'], ['t', thickness.value, 'mm'], ['\\gamma_{M2}', gammaM2, '']
                ], kN(bearingResistance(inPlate, { t: thickness.value, fu }, distances, gammaM2)), { clause })
            ])), where
        };
    }));
}
