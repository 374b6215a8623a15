import type { LeafCstNode } from 'langium';
import type { SourceRef } from '../../../../language/src/model.js';
import type { Computed } from '../computed-documents.js';

/** Where the pointer is. */
export interface Place {
    readonly computed: Computed;
    readonly offset: number;
    /** The word under the pointer; undefined in a comment or between words. */
    readonly word: LeafCstNode | undefined;
}

export interface Hovered {
    readonly markdown: string;
    readonly source: Pick<SourceRef, 'start' | 'end'>;
}

/** One kind of thing that a hover tells of; undefined where the pointer is on something else. */
export type HoverOf = (place: Place) => Hovered | undefined;

export function holds({ start, end }: Pick<SourceRef, 'start' | 'end'>, offset: number): boolean {
    return start <= offset && offset < end;
}

export function sourceOf(word: LeafCstNode): Hovered['source'] {
    return { start: word.offset, end: word.end };
}
