import type { Problem } from '../../verdict.js';
import { badPattern, type DrilledBolt, type DrilledPattern, type Piece } from './drilled-pattern.js';
import type { Force } from './force.js';
import { loadedEdge, loadedEnd, spacingAcross, spacingAlong, unloadedEdge, unloadedEnd } from './spacing.js';

export type DistanceRule = 'a1' | 'a2' | 'a3,t' | 'a3,c' | 'a4,t' | 'a4,c';
export type Towards = 'start' | 'end' | 'bottom' | 'top' | { readonly bolt: number };

export interface DistanceFinding {
    /** Index into the pattern's bolts. */
    readonly bolt: number;
    readonly rule: DistanceRule;
    readonly towards: Towards;
    /** mm. */
    readonly required: number;
    readonly provided: number;
    readonly ok: boolean;
}

export const distancesClause = 'EN 1995-1-1 8.5.1.1(3), Table 8.4';

/** Drilled to the tenth of a millimetre at best: less than this is no shortfall. */
const tolerance = 1e-6;

/**
 * Every bolt's distances to the ends, edges and nearest bolt of a piece, required against provided.
 * `loads[i]` are the forces that bolt i puts on the piece (N, x towards the piece's end, z upwards), one for each
 * load case; only their directions count, each distance is the greatest that any of them asks for. A bolt with no
 * force needs the unloaded distances. The standard has no rule for staggered bolts: rows nearer than a2 count as
 * one row here, which is on the safe side.
 */
export function distances(pattern: DrilledPattern, loads: readonly (readonly Force[])[]): readonly DistanceFinding[] | Problem {
    const { d, piece, bolts } = pattern;
    const wrong = badPattern(pattern, loads);
    if (wrong) {
        return wrong;
    }
    const needs = bolts.map((_, i) => needsOf(d, loads[i]!));
    const order = bolts.map((_, i) => i).sort((i, j) => bolts[i]!.station - bolts[j]!.station);
    return order.flatMap((i, rank) => [
        ...sides(piece, bolts[i]!, needs[i]!).map(side => finding(i, side.rule, side.towards, side.required, side.provided)),
        ...nearest(d, order, rank, bolts, needs)
    ]);
}

interface SideNeed { readonly rule: DistanceRule; readonly required: number }

/** What the forces of one bolt ask for, mm. */
interface Needs {
    readonly a1: number;
    readonly towards: Readonly<Record<'start' | 'end' | 'bottom' | 'top', SideNeed>>;
}

function needsOf(d: number, forces: readonly Force[]): Needs {
    let a1 = 4 * d;
    let start: SideNeed = { rule: 'a3,c', required: unloadedEnd(d, 0) };
    let end = start;
    let bottom: SideNeed = { rule: 'a4,c', required: unloadedEdge(d) };
    let top = bottom;
    const greater = (most: SideNeed, rule: DistanceRule, required: number): SideNeed => required > most.required ? { rule, required } : most;
    const towardsEnd = (most: SideNeed, pushes: boolean, angle: number): SideNeed =>
        pushes ? greater(most, 'a3,t', loadedEnd(d)) : greater(most, 'a3,c', unloadedEnd(d, angle));
    for (const { x, z } of forces) {
        if (x === 0 && z === 0) {
            continue;
        }
        const angle = Math.atan2(Math.abs(z), Math.abs(x));
        const across = 1e-9 * Math.abs(z);
        a1 = Math.max(a1, spacingAlong(d, angle));
        start = towardsEnd(start, -x >= -across, angle);
        end = towardsEnd(end, x >= -across, angle);
        if (z < 0) bottom = greater(bottom, 'a4,t', loadedEdge(d, angle));
        if (z > 0) top = greater(top, 'a4,t', loadedEdge(d, angle));
    }
    return { a1, towards: { start, end, bottom, top } };
}

function sides({ start, end, bottom, top }: Piece, { station, height }: DrilledBolt, { towards }: Needs) {
    return [
        { towards: 'start' as const, provided: station - start, ...towards.start },
        { towards: 'end' as const, provided: end - station, ...towards.end },
        { towards: 'bottom' as const, provided: height - bottom, ...towards.bottom },
        { towards: 'top' as const, provided: top - height, ...towards.top }
    ];
}

/** The neighbour that comes nearest to its spacing, along the grain or across it. */
function nearest(d: number, order: readonly number[], rank: number, bolts: readonly DrilledBolt[], needs: readonly Needs[]): readonly DistanceFinding[] {
    const self = order[rank]!;
    let best: DistanceFinding | undefined;
    for (const direction of [-1, 1]) {
        for (let other = order[rank + direction], at = rank; other !== undefined; at += direction, other = order[at + direction]) {
            const along = Math.abs(bolts[other]!.station - bolts[self]!.station);
            const across = Math.abs(bolts[other]!.height - bolts[self]!.height);
            if (best && along / (5 * d) >= best.provided / best.required) {
                break;
            }
            const a1 = Math.max(needs[self]!.a1, needs[other]!.a1);
            const a2 = spacingAcross(d);
            const one = along / a1 >= across / a2
                ? finding(self, 'a1', { bolt: other }, a1, along) : finding(self, 'a2', { bolt: other }, a2, across);
            best = !best || one.provided / one.required < best.provided / best.required ? one : best;
        }
    }
    return best ? [best] : [];
}

function finding(bolt: number, rule: DistanceRule, towards: Towards, required: number, provided: number): DistanceFinding {
    return { bolt, rule, towards, required, provided, ok: provided >= required - tolerance };
}
