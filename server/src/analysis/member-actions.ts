/** The actions of one member in one stage, from the solutions of its group. */
import type { Job } from '../../../language/src/model.js';
import type { Parameters } from '../catalog/parameters.js';
import type { Diagrams, MemberActions, Range } from './actions.js';
import { boltActions } from './bolt-actions.js';
import { characteristicRules, combiner, creepRules, quasiPermanentRules, ultimateRules } from './combinations.js';
import { deflectionsOf, greatestOf, type Deflections } from './deflections.js';
import { effectsAt, sumOf, type Effects, type Scale } from './effects.js';
import type { UnitSolutions } from './history.js';
import { viewOf } from './member-view.js';
import { placeIndex, type Mesh } from './mesh.js';
import type { Piece } from './piece.js';
import { crossingActions, supportActions, type ReactionContext } from './reactions.js';
import { deflectionSpansOf, spansOf, tolerance } from './spans.js';
import type { StagePlan } from './stages.js';
import { gridOf, jumpsOf, merge, peaksOf, stationsOf, steadyOf, withoutTwins, type Along } from './stations.js';
import { weightPerLength, type UnitCases } from './unit-cases.js';

export interface SolvedStiffness {
    readonly mesh: Mesh;
    readonly solutions: UnitSolutions;
    readonly scales: readonly Scale[];
}

export interface SolvedStage {
    readonly plan: StagePlan;
    readonly units: UnitCases;
    readonly equation: Job['combinations'];
    readonly states: 'worst' | 'every';
    readonly parameters: Parameters;
    readonly ratios: readonly (number | undefined)[];
    readonly instant: SolvedStiffness;
    /** Where creep shifts what is carried. */
    readonly final?: SolvedStiffness;
    readonly ultimate: readonly { readonly solved: SolvedStiffness; readonly crept: boolean }[];
}

/** Where a post is held sideways by what rests on it. */
function headsOf({ member, bearers }: Piece): number[] {
    return member.kind === 'post' ? bearers.map(({ at }) => at) : [];
}

export function memberActions(group: SolvedStage, index: number): MemberActions {
    const view = viewOf(group, index);
    const { plan, units: { cases, parts }, equation, states, parameters, instant, final, ultimate } = view.stage;
    const mesh = instant.mesh.pieces[index]!;
    const { piece, strands } = mesh;
    const { member, elastic } = piece;
    const forced = parts.filter((part) => part.piece === index).flatMap((part) => part.points.map(({ dofs }) => placeIndex(mesh.places, dofs.x)));
    const jumps = jumpsOf(mesh, forced);
    const grid = gridOf(mesh);
    const effects = (places: Effects['places']) => ultimate.map(({ solved }) => solved.mesh.pieces[index]!.strands.map((strand) =>
        effectsAt(strand, places, solved.solutions.ofCases, solved.scales)));
    const coarse = effects(grid);
    const combines = ultimate.map(({ crept }) => combiner(cases, { crept, of: view }));
    const combine = combines[0]!;
    const rules = ultimateRules(cases, parameters, equation);
    const peaks = coarse.flatMap((ofStrands) => [...new Set([sumOf(ofStrands), ...ofStrands])].flatMap((one) => peaksOf(one, steadyOf(one, cases), rules)));
    const places = merge(withoutTwins(grid, jumps), peaks, 1e-3 * tolerance(member));
    const fine = effects(places);
    const loaded = (pick: (ofStrands: readonly Effects[]) => Effects) => fine.map((ofStrands, i) => {
        const one = pick(ofStrands);
        return { effects: one, steady: steadyOf(one, cases), combine: combines[i]! };
    });
    // The plates of a flitch beam hand over at their bolts what changes between them.
    const own = { cases, ids: view.ids };
    const joint = elastic.section !== undefined;
    const whole = stationsOf(strands[0]!, loaded(sumOf), own, rules, { joint, keep: strands.length > 1 ? 'none' : member.section.shape === 'flitch' ? 'followed' : states });
    const leaves = strands.length > 1 ? strands.map((strand, i) => stationsOf(strand, loaded((ofStrands) => ofStrands[i]!), own, rules, { joint, keep: states })) : [];

    const context: ReactionContext = {
        mesh: instant.mesh, cases, parts, rules, parameters, kept: states,
        loaded: ultimate.map(({ solved }, i) => ({ ...solved, combine: combines[i]! }))
    };
    const bent = (solved: SolvedStiffness) => ({ mesh: solved.mesh.pieces[index]!, solutions: solved.solutions.ofCases, scales: solved.scales });
    const sagging = {
        cases, places, combine, kdef: elastic.kdef, instant: bent(instant), ...(final ? { final: bent(final) } : {}),
        spans: deflectionSpansOf(member, headsOf(piece))
    };
    const camber = member.precamber?.value ?? 0;
    const [short, long, creeping] = [characteristicRules(cases), quasiPermanentRules(cases), creepRules(cases)];
    const sags = strands.map((_, i) => {
        const by = deflectionsOf(sagging, i);
        return { instant: by(short, 0), final: by(long, camber), total: by(creeping, camber) };
    });
    const [now, later, total] = [greatestOf(sags.map((one) => one.instant)), greatestOf(sags.map((one) => one.final)), greatestOf(sags.map((one) => one.total))];
    return {
        member: member.name,
        stage: plan.name,
        cases: view.all,
        ...segmentsAndStations(piece, whole, leaves),
        spans: spansOf(member, headsOf(piece)),
        supports: supportActions(context, index),
        crossings: crossingActions(context, index, plan.steps.at(-1)!.standing),
        diagrams: diagramsOf(whole, now, later),
        instant: now.worst,
        final: later.worst,
        total: total.worst,
        weight: weightPerLength(piece) * member.length.value,
        ...(leaves.length === 0 ? {} : {
            leaves: leaves.map((along, i) => {
                const diagrams = diagramsOf(along, sags[i]!.instant, sags[i]!.final);
                return { leaf: i + 1, pieces: runsOf(piece, i), diagrams, moment: rangeOf(diagrams.M), shear: rangeOf(diagrams.V) };
            }),
            bolts: boltActions({ ...context, ids: view.ids }, index),
            ...optional('stiffnessRatio', view.stage.ratios[index])
        })
    };
}

/** Of leaves one after the other, where it is of leaves. */
function segmentsAndStations({ strands }: Piece, whole: Along, leaves: readonly Along[]): Pick<MemberActions, 'segments' | 'stations'> {
    if (leaves.length === 0) return { segments: strands[0]!.segments, stations: whole.stations };
    const before = strands.map((_, i) => strands.slice(0, i).reduce((sum, { segments }) => sum + segments.length, 0));
    return {
        segments: strands.flatMap(({ segments }) => segments),
        stations: leaves.flatMap(({ stations }, i) => stations.map((station) => ({ ...station, segment: station.segment + before[i]! })))
    };
}

function diagramsOf({ envelopes }: Along, instant: Deflections, final: Deflections): Diagrams {
    return { ...envelopes, instant: instant.envelope, final: final.envelope };
}

/** Of a leaf, between its ends and butts. */
function runsOf({ member, strands }: Piece, leaf: number): { readonly from: number; readonly to: number }[] {
    const ends = [0, ...[...strands[leaf]!.butts].sort((a, b) => a - b), member.length.value];
    return ends.slice(1).map((to, i) => ({ from: ends[i]!, to }));
}

function rangeOf(points: Diagrams['M']): Range {
    return { min: points.reduce((least, { min }) => Math.min(least, min), 0), max: points.reduce((most, { max }) => Math.max(most, max), 0) };
}

function optional<K extends string, T>(key: K, value: T | undefined): Partial<Record<K, T>> {
    return value === undefined ? {} : { [key]: value } as Record<K, T>;
}
