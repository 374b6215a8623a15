/** Runs of a member with one residual rectangle: losses and notches taken off the whole section. */
import type { Face, Member, SourceRef } from '../../../language/src/model.js';
import type { Segment } from './actions.js';
import { tolerance } from './spans.js';

interface Cut { readonly from: number; readonly to: number; readonly faces: Readonly<Partial<Record<Face, number>>>; readonly source: SourceRef }

/** Places where nothing is left of the section. */
export interface Gone { readonly from: number; readonly to: number; readonly source: SourceRef }

export interface Segments { readonly segments: readonly Segment[]; readonly gone: readonly Gone[] }

/**
 * Where zones overlap, the deepest cut of each face counts. A notch is a loss of depth on its face.
 * `reaches` tells how much of a loss reaches this part of a member of leaves.
 */
export function segmentsOf(
    member: Member, section: { readonly breadth: number; readonly depth: number }, reaches = (_face: Face, loss: number): number => loss
): Segments {
    const length = member.length.value;
    const gap = tolerance(member);
    const cuts = cutsOf(member);
    const ends = [0, length];
    for (const { from, to } of cuts) for (const x of [from, to]) if (x > gap && x < length - gap) ends.push(x);
    ends.sort((a, b) => a - b);
    const places = ends.filter((x, i) => i === 0 || x - ends[i - 1]! > gap);

    const segments: Segment[] = [];
    const gone: Gone[] = [];
    for (let i = 0; i + 1 < places.length; i++) {
        const [from, to] = [places[i]!, places[i + 1]!];
        const here = cuts.filter((cut) => cut.from <= (from + to) / 2 && cut.to >= (from + to) / 2);
        const deepest = (face: Face): number => reaches(face, Math.max(0, ...here.map((cut) => cut.faces[face] ?? 0)));
        const [top, bottom, left, right] = [deepest('top'), deepest('bottom'), deepest('left'), deepest('right')];
        const b = section.breadth - left - right;
        const h = section.depth - top - bottom;
        if (!(b > 0 && h > 0)) gone.push({ from, to, source: here[0]?.source ?? member.source });
        segments.push({
            from, to, b, h,
            shiftUp: (bottom - top) / 2,
            shiftRight: (left - right) / 2,
            weakened: top + bottom + left + right > 0
        });
    }
    return { segments, gone };
}

function cutsOf(member: Member): Cut[] {
    const losses = member.losses.map((loss): Cut => ({
        from: loss.from.value,
        to: loss.to.value,
        faces: Object.fromEntries(Object.entries(loss.faces).map(([face, given]) => [face, given.value])),
        source: loss.source
    }));
    const notches = member.notches.map((notch): Cut => ({
        from: notch.from.value, to: notch.to.value, faces: { [notch.face]: notch.depth.value }, source: notch.source
    }));
    return [...losses, ...notches];
}
