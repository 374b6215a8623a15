/** How far the compressed edge of a beam is free to move sideways, EN 1995-1-1 6.3.3 and Table 6.1. Lengths mm. */
import type { Span } from '../../analysis/actions.js';
import type { MemberContext } from '../check.js';
import { segmentsIn, spansAt } from './free-length.js';
import { criticalStress, kcrit, relativeSlendernessInBending } from './lateral-buckling.js';
import { wholeSection } from './section.js';

export interface CompressionEdge {
    /** Between what holds the edge sideways. */
    readonly length: number;
    /** l_ef / l of Table 6.1. */
    readonly ratio: number;
    readonly lef: number;
    readonly b: number;
    readonly h: number;
    readonly critical: number;
    readonly lambdaRel: number;
    readonly kcrit: number;
    readonly note: string;
}

/**
 * The least favourable of the lengths that meet at a station, with the weakest section along each.
 * Sagging compresses the top, which `restrained` holds; hogging the bottom, which nothing holds between supports.
 */
export function compressionEdgeAt(context: MemberContext, x: number, hogging: boolean): CompressionEdge {
    const { member, actions } = context;
    const edges = spansAt(actions, x, member.length.value).flatMap(span => {
        const free = freeEdge(context, span, hogging);
        return segmentsIn(actions, span).map(({ b, h }) => edgeOf(context, free, b, h));
    });
    return edges.reduce((most, edge) => edge.lambdaRel <= most.lambdaRel ? most : edge, edges[0] ?? edgeOf(context, unknown, NaN, NaN));
}

interface FreeEdge { readonly length: number; readonly ratio: number; readonly note: string }

const unknown: FreeEdge = { length: NaN, ratio: NaN, note: '' };

function freeEdge(context: MemberContext, span: Span, hogging: boolean): FreeEdge {
    const { restraint } = context.member;
    const length = span.to - span.from;
    const where = span.overhang ? 'overhang' : 'span';
    if (hogging) {
        const held = restraint ? `the restraint of the top does not hold the bottom, so the whole ${where} counts` : `the whole ${where} counts`;
        return { length, ratio: ratioOf(context, span, true), note: `hogging compresses the bottom edge: ${held}` };
    }
    return restraint && restraint.value < length
        ? { length: restraint.value, ratio: 1, note: 'between restraints, the moment taken as constant' }
        : { length, ratio: ratioOf(context, span, false), note: `nothing holds the top edge within the ${where}` };
}

/** Table 6.1. Loads that are not spread evenly over all of the member take the larger ratio of their kind. */
function ratioOf({ loads, actions, member }: MemberContext, span: Span, hogging: boolean): number {
    const even = actions.crossings.length === 0
        && loads.every(({ line }) => line && line.from <= span.from && line.to >= span.to);
    if (span.overhang) {
        return even ? 0.5 : 0.8;
    }
    return even && !hogging && member.kind === 'beam' ? 0.9 : 1;
}

function edgeOf({ strength, member }: MemberContext, { length, ratio, note }: FreeEdge, b: number, h: number): CompressionEdge {
    const lef = ratio * length + 2 * wholeSection(member).h;
    const critical = criticalStress(strength, b, h, lef);
    const lambdaRel = relativeSlendernessInBending(strength.fm_k, critical);
    return { length, ratio, lef, b, h, critical, lambdaRel, kcrit: kcrit(lambdaRel), note };
}
