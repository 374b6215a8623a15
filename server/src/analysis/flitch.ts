/**
 * Flitch beams: timber leaves and steel plates that bend alike (transformed section), and the bolts that make it so.
 * Plates on edge beside the leaves as a rule; one of another height (flush with the soffit, or flat beneath it) too,
 * and then the bolts also carry the pull between timber and steel along the beam. N, mm, MPa. Cases FL-01 to FL-03.
 */
import { problem, unsound, type Problem } from './problem.js';

export interface FlitchPart {
    readonly count: number;
    /** Breadth of a leaf, thickness of a plate on edge. */
    readonly b: number;
    readonly h: number;
    readonly E: number;
    /** Height of its middle above that of the leaves, mm; 0 unless given. */
    readonly offset?: number;
}

export interface Flitch { readonly timber: FlitchPart; readonly steel: FlitchPart }

export interface FlitchShares {
    /** Of the whole, N mm². */
    readonly EI: number;
    /** Neutral axis above the middle of the leaves, mm. */
    readonly axis: number;
    /** Parts of the moment: in bending of the leaves, in bending of the plates, and as a couple of pull and push between them; together 1. */
    readonly timber: number;
    readonly steel: number;
    readonly couple: number;
    /** Stress at top and bottom edge for a unit of sagging moment, MPa per N mm, tension positive. */
    readonly stress: Readonly<Record<'timber' | 'steel', { readonly top: number; readonly bottom: number }>>;
}

/**
 * Who takes what, the bolts being rigid. With E_mean at first; in the end with the timber's E after creep
 * (`modulusAfter` of layered.ts), which leaves more to the steel; E_0,05 of the timber bounds the steel's share too.
 */
export function flitchShares({ timber, steel }: Flitch): FlitchShares | Problem {
    return unsoundPart(timber) ?? unsoundPart(steel) ?? sharesOf(timber, steel);
}

function unsoundPart({ count, b, h, E, offset = 0 }: FlitchPart): Problem | undefined {
    return unsound('positive', { 'a leaf\'s breadth': b, 'a leaf\'s depth': h, E, 'the number of leaves and plates': count })
        ?? unsound('finite', { 'the offset': offset });
}

function sharesOf(timber: FlitchPart, steel: FlitchPart): FlitchShares {
    const stretch = ({ count, b, h, E }: FlitchPart): number => count * E * b * h;
    const bend = (part: FlitchPart): number => stretch(part) * part.h ** 2 / 12;
    const middle = ({ offset = 0 }: FlitchPart): number => offset;
    const axis = (stretch(timber) * middle(timber) + stretch(steel) * middle(steel)) / (stretch(timber) + stretch(steel));
    const shift = (part: FlitchPart): number => stretch(part) * (middle(part) - axis) ** 2;
    const EI = bend(timber) + bend(steel) + shift(timber) + shift(steel);
    const edges = (part: FlitchPart) => ({
        top: part.E * (axis - middle(part) - part.h / 2) / EI,
        bottom: part.E * (axis - middle(part) + part.h / 2) / EI
    });
    return {
        EI, axis, timber: bend(timber) / EI, steel: bend(steel) / EI, couple: (shift(timber) + shift(steel)) / EI,
        stress: { timber: edges(timber), steel: edges(steel) }
    };
}

export interface PlateBolt {
    /** Station, mm. */
    readonly at: number;
    /** What the bolts here put on all plates together, N, downwards positive. */
    readonly force: number;
}

/**
 * Forces that the bolts have to bring to the plates (all plates together, all bolts of a station together) so that
 * these take their share of the moment at every bolt: the plates' moment is a chain of straight lines through
 * `share × M` at the inner bolts, and 0 at their first and last. The forces are in balance by themselves.
 * Rigid bolts: slip makes the plates take less.
 * @param stations of the bolts, in order, two at least; also a support that the plates themselves stand on
 * @param moment of the whole beam at a station, N mm
 */
export function plateBolts(share: number, stations: readonly number[], moment: (at: number) => number): readonly PlateBolt[] | Problem {
    const disordered = stations.some((x, i) => !Number.isFinite(x) || (i > 0 && x <= stations[i - 1]!));
    if (stations.length < 2 || disordered) {
        return problem('a plate needs bolts at two stations at least, in order');
    }
    const last = stations.length - 1;
    const M = stations.map((x, i) => i === 0 || i === last ? 0 : share * moment(x));
    const slope = (i: number): number => i < 0 || i >= last ? 0 : (M[i + 1]! - M[i]!) / (stations[i + 1]! - stations[i]!);
    return unsound('finite', { 'the plates\' share of the moment': M.reduce((sum, m) => sum + m, 0) })
        ?? stations.map((at, i) => ({ at, force: slope(i - 1) - slope(i) }));
}
