/** The rectangle that a check looks at. Lengths mm. */
import type { Member, RectangularSection } from '../../../../language/src/model.js';
import type { Segment } from '../../analysis/actions.js';
import { rolledSection } from '../../catalog/rolled-sections.js';
import type { Term } from '../../results.js';
import { term } from '../steps.js';

interface Size { readonly b: number; readonly h: number }

/** The timber rectangle: the whole section, or one leaf; undefined where there is none. */
function rectangleOf({ section }: Member): Pick<RectangularSection, 'breadth' | 'depth'> | undefined {
    return section.shape === 'rolled' ? undefined : section;
}

/** Breadth and depth of the whole section, or of one whole leaf; NaN of steel, so that nothing passes on it. */
export function wholeSection(member: Member): Size {
    const found = rectangleOf(member);
    return found ? { b: found.breadth.value, h: found.depth.value } : { b: NaN, h: NaN };
}

/** Breadth and depth over everything: all leaves and plates, or the outline of a rolled section. */
export function outline({ section }: Member): Size {
    switch (section.shape) {
        case 'rectangle': return { b: section.breadth.value, h: section.depth.value };
        case 'plies': return { b: section.count * section.breadth.value, h: section.depth.value };
        case 'flitch': return {
            b: section.leaves * section.breadth.value + section.plates * section.thickness.value,
            h: Math.max(section.depth.value, section.plateDepth.value)
        };
        case 'rolled': {
            const { b = NaN, h = NaN } = rolledSection(section.designation) ?? {};
            return { b, h };
        }
    }
}

/** How many rectangles of timber lie side by side. */
export function leafCount({ section }: Member): number {
    return section.shape === 'plies' ? section.count : section.shape === 'flitch' ? section.leaves : 1;
}

/** Terms for breadth and depth; only those of a whole section lead back to the input. */
export function sectionTerms(member: Member, segment: Segment): { readonly b: Term; readonly h: Term } {
    const source = segment.weakened ? undefined : rectangleOf(member);
    const one = leafCount(member) > 1 ? ' of one leaf' : '';
    return {
        b: term('b', segment.b, 'mm', `breadth${one}`, source?.breadth.source),
        h: term('h', segment.h, 'mm', `depth${one}`, source?.depth.source)
    };
}

/** Says so where the section is what a loss or a notch leaves. */
export function residualNote(segment: Segment): string | undefined {
    return segment.weakened ? `residual section from ${metres(segment.from)} to ${metres(segment.to)} m` : undefined;
}

const metres = (mm: number): string => (mm / 1000).toFixed(3);
