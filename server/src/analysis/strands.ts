/** A member's strands: one, or one a leaf. */
import type { Face, Member } from '../../../language/src/model.js';
import type { Segment } from './actions.js';
import type { ElasticProperties } from './elastic.js';
import type { Bolt, Strand } from './piece.js';
import { segmentsOf, type Gone } from './segments.js';

export interface Strands { readonly strands: readonly Strand[]; readonly gone: readonly Gone[] }

export function strandsOf(member: Member, elastic: ElasticProperties): Strands {
    const { section } = member;
    const splices = member.splices.flatMap((splice) => {
        const stiffness = elastic.splice?.(splice);
        return stiffness === undefined ? [] : [{ at: splice.at.value, stiffness }];
    });
    if (section.shape === 'plies') return leavesOf(member, section.count, section.breadth.value, section.depth.value);
    const size = section.shape === 'rectangle'
        ? { breadth: section.breadth.value, depth: section.depth.value }
        : { breadth: elastic.section?.breadth ?? NaN, depth: elastic.section?.depth ?? NaN };
    const { segments, gone } = segmentsOf(member, size);
    return { strands: [{ segments, share: 1, butts: [], splices, loose: [] }], gone };
}

function leavesOf(member: Member, count: number, breadth: number, depth: number): Strands {
    const made = Array.from({ length: count }, (_, i) => segmentsOf(member, { breadth, depth }, lossOfLeaf(i, count, breadth)));
    const butts = member.section.shape === 'plies' ? member.section.butts : [];
    return {
        strands: made.map(({ segments }, i): Strand => ({
            leaf: i + 1,
            segments: segments.map((segment): Segment => ({ ...segment, leaf: i + 1 })),
            share: 1 / count,
            butts: butts.flatMap(({ leaf, at }) => (leaf === i + 1 ? [at.value] : [])),
            splices: [], loose: []
        })),
        gone: made.flatMap(({ gone }) => gone)
    };
}

/** A loss from the left or right eats the leaves one after the other. */
function lossOfLeaf(index: number, count: number, breadth: number): (face: Face, loss: number) => number {
    const before: Partial<Record<Face, number>> = { left: index * breadth, right: (count - 1 - index) * breadth };
    return (face, loss) => Math.min(Math.max(0, loss - (before[face] ?? 0)), face in before ? breadth : loss);
}

export function boltsOf({ section }: Member, elastic: ElasticProperties): Bolt[] {
    if (section.shape !== 'plies') return [];
    return section.bolts.flatMap((row, r) => row.places.map(({ x, height }, place) => ({ row: r, place, x, height, slip: elastic.slip?.(row) ?? NaN })));
}
