/** One connected group of members, from its pieces to their actions. Pure: the same group gives the same outcome. */
import type { Job } from '../../../language/src/model.js';
import type { Parameters } from '../catalog/parameters.js';
import type { MemberActions, UnitCase } from './actions.js';
import { characteristicRules, combiner, creepRules, quasiPermanentRules, ultimateRules, type Relevant } from './combinations.js';
import { deflectionsOf } from './deflections.js';
import { effectsAt, scaleOf, type Scale } from './effects.js';
import { circleProblems, mechanismProblems } from './mechanisms.js';
import { meshOf, type Mesh, type Piece } from './mesh.js';
import { balanceProblems } from './balance.js';
import type { Problem } from './problems.js';
import { crossingActions, supportActions } from './reactions.js';
import { factorise } from './solver/system.js';
import { deflectionSpansOf, spansOf, tolerance } from './spans.js';
import { envelope, gridOf, jumpsOf, merge, peaksOf, permanentSum, stationsOf, withoutTwins } from './stations.js';
import { unitCases, weightPerLength, type UnitCases } from './unit-cases.js';
import { solveUnitCases, type UnitSolutions } from './unit-solutions.js';

export interface Group {
    readonly pieces: readonly Piece[];
    readonly equation: Job['combinations'];
}

export interface GroupActions {
    readonly cases: readonly UnitCase[];
    readonly members: readonly MemberActions[];
    /** Why there are no actions, where there are none. */
    readonly problems: readonly Problem[];
}

export function solveGroup(group: Group, parameters: Parameters): GroupActions {
    const mesh = meshOf(group.pieces);
    if (mesh.circles.length > 0) return unsolved(circleProblems(mesh));
    const system = factorise(mesh.size, mesh.held, mesh.blocks);
    if (system.mechanisms.length > 0) return unsolved(mechanismProblems(mesh, system.mechanisms));
    const units = unitCases(mesh, parameters);
    const solutions = solveUnitCases(mesh, system, units);
    const unbalanced = balanceProblems(mesh, solutions.ofCases);
    if (unbalanced.length > 0) return unsolved(unbalanced);
    const scales = solutions.ofCases.map((solution) => scaleOf(mesh.pieces, solution));
    const members = group.pieces.map((_, index) => memberActions({ mesh, units, solutions, scales, group, parameters }, index));
    return { cases: units.cases, members, problems: [] };
}

function unsolved(problems: readonly Problem[]): GroupActions {
    return { cases: [], members: [], problems };
}

/** Where a post is held sideways by what rests on it. */
function headsOf({ member, bearers }: Piece): number[] {
    return member.kind === 'post' ? bearers.map(({ at }) => at) : [];
}

interface Solved {
    readonly mesh: Mesh;
    readonly units: UnitCases;
    readonly solutions: UnitSolutions;
    readonly scales: readonly Scale[];
    readonly group: Group;
    readonly parameters: Parameters;
}

function memberActions({ mesh, units, solutions, scales, group, parameters }: Solved, index: number): MemberActions {
    const { cases, parts } = units;
    const pieceMesh = mesh.pieces[index]!;
    const { piece } = pieceMesh;
    const { member, elastic } = piece;
    const forced = parts.filter((part) => part.piece === index).flatMap((part) => part.points.map(({ node }) => node));
    const grid = gridOf(pieceMesh);
    const coarse = effectsAt(index, grid, solutions.ofCases, scales);
    const relevant = relevance(coarse, parts, index);
    const combine = combiner(cases, relevant);
    const rules = ultimateRules(cases, relevant, parameters, group.equation);
    const places = merge(withoutTwins(pieceMesh, grid, jumpsOf(pieceMesh, forced)), peaksOf(coarse, permanentSum(coarse, cases), rules), 1e-3 * tolerance(member));
    const effects = effectsAt(index, places, solutions.ofCases, scales);
    const stations = stationsOf(pieceMesh, effects, permanentSum(effects, cases), rules, combine);

    const reactions = { mesh, cases, parts, solutions, scales, rules, combine, relevant, parameters };
    const deflections = deflectionsOf({
        mesh: pieceMesh, index, cases, solutions: solutions.ofCases, scales, places, combine,
        spans: deflectionSpansOf(member, headsOf(piece))
    });
    const camber = member.precamber?.value ?? 0;
    const instant = deflections(characteristicRules(cases, relevant), 0);
    const final = deflections(quasiPermanentRules(cases, relevant, elastic.kdef), camber);
    const total = deflections(creepRules(cases, relevant, elastic.kdef), camber);
    return {
        member: member.name,
        stage: null,
        cases,
        segments: piece.segments,
        stations,
        spans: spansOf(member, headsOf(piece)),
        supports: supportActions(reactions, index),
        crossings: crossingActions(reactions, index),
        diagrams: {
            N: envelope(stations, ({ N }) => N),
            V: envelope(stations, ({ V }) => V),
            M: envelope(stations, ({ M }) => M),
            instant: instant.envelope,
            final: final.envelope
        },
        instant: instant.worst,
        final: final.worst,
        total: total.worst,
        weight: weightPerLength(piece) * member.length.value
    };
}

/** Cases that load the member, or do something to it through others. */
function relevance(effects: ReturnType<typeof effectsAt>, parts: UnitCases['parts'], index: number): Relevant {
    const acting = new Set(parts.filter(({ piece }) => piece === index).map(({ unit }) => unit));
    for (const values of [effects.N, effects.V, effects.M]) {
        values.forEach((value, i) => { if (value !== 0) acting.add(i % effects.cases); });
    }
    return ({ id }) => acting.has(id);
}
