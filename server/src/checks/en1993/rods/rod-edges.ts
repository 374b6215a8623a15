import { unsound, type Problem } from '../../verdict.js';
import { loadedEnd, spacingAcross, spacingAlong, unloadedEdge } from '../../en1995/fasteners/spacing.js';
import type { SizeFinding } from '../../en1995/fasteners/holes-and-washers.js';

/** A rod through a timber, down its depth. mm from the middle of the rod; undefined where there is no such neighbour. */
export interface RodThroughTimber {
    readonly d: number;
    /** To the nearer side face. */
    readonly edge: number;
    /** To the nearer end. */
    readonly end: number;
    readonly nextAlong?: number;
    readonly nextAcross?: number;
    /** Diameter or side of the washer; the plate's width across the grain counts by itself. */
    readonly washer?: number;
}

const clause = 'EN 1995-1-1 Table 8.4 for a bolt across the grain, applied to a rod in tension: common practice, no source';

/**
 * Distances of a rod through timber. EN 1995-1-1 has none for a rod that is only pulled; those of a bolt loaded
 * across the grain are asked for here. A washer has to bear with its whole face, 10.4.3(2).
 */
export function rodEdges({ d, edge, end, nextAlong, nextAcross, washer }: RodThroughTimber): readonly SizeFinding[] | Problem {
    const bad = unsound('positive', {
        'the diameter of the rod': d, 'the distance to the side face': edge, 'the distance to the end': end,
        ...(nextAlong !== undefined && { 'the spacing along the grain': nextAlong }),
        ...(nextAcross !== undefined && { 'the spacing across the grain': nextAcross }),
        ...(washer !== undefined && { 'the washer': washer })
    });
    const finding = (what: string, required: number, provided: number, by = clause): SizeFinding =>
        ({ what, required, provided, ok: provided >= required, clause: by });
    return bad ?? [
        finding('rod to side face', unloadedEdge(d), edge),
        finding('rod to end', loadedEnd(d), end),
        ...(nextAlong === undefined ? [] : [finding('rods along the grain', spacingAlong(d, Math.PI / 2), nextAlong)]),
        ...(nextAcross === undefined ? [] : [finding('rods across the grain', spacingAcross(d), nextAcross)]),
        ...(washer === undefined ? [] : [finding('washer within the side face', washer / 2, edge, 'EN 1995-1-1 10.4.3(2)')])
    ];
}
