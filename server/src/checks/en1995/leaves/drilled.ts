/** Table 8.4 against the real pattern: every piece of every leaf, butts being ends like any other. */
import type { BoltDistance } from '../../../results.js';
import type { MemberContext } from '../../check.js';
import type { Answer } from '../../judged.js';
import { distanceVerdict } from '../../shortfall.js';
import { isProblem, type Problem } from '../../verdict.js';
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

/** The bolts within a piece, and every one of their distances there. */
interface DrilledBolts {
    readonly bolts: readonly ThroughBolt[];
    readonly edges: Piece;
    readonly found: readonly DistanceFinding[] | Problem;
}

function drilledIn(context: MemberContext, all: readonly ThroughBolt[], piece: DrilledPiece): DrilledBolts {
    const { part, from, to } = piece;
    const edges = edgesOf(context, piece);
    const bolts = all.filter(({ x, cases }) => x > from && x < to && cases.length > 0);
    const loads = bolts.map(({ cases }) => cases.map(({ forces }) => forceOnLeaf(forces, part)));
    const d = Math.max(...bolts.map(bolt => bolt.d));
    return { bolts, edges, found: bolts.length === 0 ? [] : distances({ d, piece: edges, bolts: bolts.map(({ x, height }) => ({ station: x, height })) }, loads) };
}

/** All of them, for the drawing of the pattern: nothing of a piece whose pattern cannot be judged. */
export function drilledDistances(context: MemberContext, all: readonly ThroughBolt[], pieces: readonly DrilledPiece[]): readonly BoltDistance[] {
    return pieces.flatMap(piece => {
        const { bolts, edges, found } = drilledIn(context, all, piece);
        const inEnd = all.filter(({ x }) => x === piece.from || x === piece.to).map(({ x, height, d }) => ({
            x, height, leaf: piece.leaf, rule: 'a3,c', to: { x, height }, towards: 'in the end of a piece', required: unloadedEnd(d, 0), provided: 0, ok: false
        }));
        return isProblem(found) ? inEnd : [...inEnd, ...found.map(finding => {
            const { x, height } = bolts[finding.bolt]!;
            const { rule, required, provided, ok } = finding;
            return { x, height, leaf: piece.leaf, rule, to: placeOf(finding, bolts, edges), towards: towards(finding, bolts, context, piece), required, provided, ok };
        })];
    });
}

function placeOf({ towards: to, bolt }: DistanceFinding, bolts: readonly ThroughBolt[], { start, end, bottom, top }: Piece): BoltDistance['to'] {
    const { x, height } = bolts[bolt]!;
    switch (to) {
        case 'start': return { x: start, height };
        case 'end': return { x: end, height };
        case 'bottom': return { x, height: bottom };
        case 'top': return { x, height: top };
        default: return { x: bolts[to.bolt]!.x, height: bolts[to.bolt]!.height };
    }
}

function within(context: MemberContext, all: readonly ThroughBolt[], piece: DrilledPiece): readonly Answer[] {
    const { part, leaf, from } = piece;
    const ofLeaf = leaf === undefined ? {} : { leaf };
    const { bolts, found } = drilledIn(context, all, piece);
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
