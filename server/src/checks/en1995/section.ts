/** The rectangle that a check looks at. Lengths mm. */
import type { Member } from '../../../../language/src/model.js';
import type { Segment } from '../../analysis/actions.js';
import type { Term } from '../../results.js';
import { term } from '../steps.js';

/** Breadth and depth of the whole section; NaN where it is no rectangle, so that nothing passes on it. */
export function wholeSection({ section }: Member): { readonly b: number; readonly h: number } {
    return section.shape === 'rectangle' ? { b: section.breadth.value, h: section.depth.value } : { b: NaN, h: NaN };
}

/** Terms for breadth and depth; only those of a whole section lead back to the input. */
export function sectionTerms(member: Member, segment: Segment): { readonly b: Term; readonly h: Term } {
    const { section } = member;
    const source = section.shape === 'rectangle' && !segment.weakened ? section : undefined;
    return {
        b: term('b', segment.b, 'mm', 'breadth', source?.breadth.source),
        h: term('h', segment.h, 'mm', 'depth', source?.depth.source)
    };
}

/** Says so where the section is what a loss or a notch leaves. */
export function residualNote(segment: Segment): string | undefined {
    return segment.weakened ? `residual section from ${metres(segment.from)} to ${metres(segment.to)} m` : undefined;
}

const metres = (mm: number): string => (mm / 1000).toFixed(3);
