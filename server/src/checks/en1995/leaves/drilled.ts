/** Table 8.4 against the real pattern: every piece of every leaf, butts being ends like any other. */
import type { MemberContext } from '../../check.js';
import type { Answer } from '../../judged.js';
import { distanceVerdict } from '../../shortfall.js';
import { isProblem } from '../../verdict.js';
import { distances, distancesClause, type DistanceFinding } from '../fasteners/distances.js';
import type { Piece } from '../fasteners/drilled-pattern.js';
import { magnitude } from '../fasteners/force.js';
import { unloadedEnd } from '../fasteners/spacing.js';
import { forceOnLeaf, type ThroughBolt } from './through-bolts.js';

/** A piece of timber between its ends. */
export interface DrilledPiece {
    /** Which of the parts that the bolts go through, from 1. */
    readonly part: number;
    /** Of a member of leaves. */
    readonly leaf?: number;
    readonly from: number;
    readonly to: number;
}

export function piecesOfLeaves({ actions }: MemberContext): readonly DrilledPiece[] {
    return (actions.leaves ?? []).flatMap(({ leaf, pieces }) => pieces.map(({ from, to }) => ({ part: leaf, leaf, from, to })));
}

/** Those that are too small: a distance that is kept uses up nothing. */
export function distanceAnswers(context: MemberContext, bolts: readonly ThroughBolt[], pieces: readonly DrilledPiece[]): readonly Answer[] {
    return pieces.flatMap(piece => [...atEnds(bolts, piece), ...within(context, bolts, piece)]);
}

/** A bolt in the very end of a piece holds neither side. */
function atEnds(bolts: readonly ThroughBolt[], { from, to, leaf }: DrilledPiece): readonly Answer[] {
    return bolts.filter(({ x }) => x === from || x === to).flatMap(bolt => bolt.cases.slice(0, 1).map(({ combination }) => ({
        said: distanceVerdict({ rule: 'a3,c', required: unloadedEnd(bolt.d, 0), provided: 0, what: `${bolt.name}, in the end of a piece`, clause: distancesClause }),
        where: { combination, at: bolt.x, ...leaf === undefined ? {} : { leaf } }
    })));
}

function within(context: MemberContext, all: readonly ThroughBolt[], piece: DrilledPiece): readonly Answer[] {
    const { part, leaf, from, to } = piece;
    const ofLeaf = leaf === undefined ? {} : { leaf };
    const bolts = all.filter(({ x, cases }) => x > from && x < to && cases.length > 0);
    if (bolts.length === 0) {
        return [];
    }
    const loads = bolts.map(({ cases }) => cases.map(({ forces }) => forceOnLeaf(forces, part)));
    const d = Math.max(...bolts.map(bolt => bolt.d));
    const pattern = { d, piece: edgesOf(context, piece), bolts: bolts.map(({ x, height }) => ({ station: x, height })) };
    const found = distances(pattern, loads);
    if (isProblem(found)) {
        return [{ said: found, where: { combination: bolts[0]!.cases[0]!.combination, at: from, ...ofLeaf } }];
    }
    return found.filter(({ ok }) => !ok).map(finding => {
        const bolt = bolts[finding.bolt]!;
        const worst = bolt.cases.reduce((a, b) => magnitude(forceOnLeaf(b.forces, part)) > magnitude(forceOnLeaf(a.forces, part)) ? b : a);
        return { said: distanceVerdict({ ...finding, what: `${bolt.name}, ${towards(finding, bolts, context, piece)}`, clause: distancesClause }), where: { combination: worst.combination, at: bolt.x, ...ofLeaf } };
    });
}

/** The edges of what is left of a leaf, over the length of a piece. */
function edgesOf({ actions, member }: MemberContext, { leaf, from: start, to: end }: DrilledPiece): Piece {
    const left = actions.segments.filter(segment => segment.leaf === leaf && segment.from < end && segment.to > start);
    const half = member.section.shape === 'rolled' ? NaN : member.section.depth.value / 2;
    return {
        start, end,
        bottom: Math.max(-half, ...left.map(({ shiftUp, h }) => shiftUp - h / 2)),
        top: Math.min(half, ...left.map(({ shiftUp, h }) => shiftUp + h / 2))
    };
}

function towards({ towards: to }: DistanceFinding, bolts: readonly ThroughBolt[], { member }: MemberContext, { from, to: end }: DrilledPiece): string {
    const endName = (x: number): string => x > 0 && x < member.length.value ? `the butt at ${(x / 1000).toFixed(2)} m` : 'the end of the member';
    return typeof to === 'object' ? `to ${bolts[to.bolt]!.name}` : to === 'start' ? `to ${endName(from)}` : to === 'end' ? `to ${endName(end)}` : `to the ${to} edge`;
}
