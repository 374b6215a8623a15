import { unsound, type Problem } from '../../verdict.js';

/** What a size must be, and what it is, mm. */
export interface SizeFinding {
    readonly what: string;
    readonly required: number;
    readonly provided: number;
    readonly ok: boolean;
    readonly clause: string;
}

/** Least washer under head and nut on timber: 3 d wide, 0.3 d thick. EN 1995-1-1 10.4.3(2). */
export function washerSize(
    d: number, { outer, thickness }: { readonly outer: number; readonly thickness: number }
): readonly SizeFinding[] | Problem {
    const clause = 'EN 1995-1-1 10.4.3(2)';
    return unsound('positive', { 'the bolt diameter': d, 'the washer size': outer, 'the washer thickness': thickness }) ?? [
        { what: 'washer width', required: 3 * d, provided: outer, ok: outer >= 3 * d, clause },
        { what: 'washer thickness', required: 0.3 * d, provided: thickness, ok: thickness >= 0.3 * d, clause }
    ];
}

/** The widest hole that a bolt may have in timber, mm: 1 mm over. EN 1995-1-1 10.4.3(1). */
export const greatestHole = (d: number): number => d + 1;

/**
 * Greatest hole for a bolt: in timber 1 mm over the bolt, in steel the greater of 2 mm and 0.1 d over.
 * EN 1995-1-1 10.4.3(1). `required` is the upper limit here; a hole below the bolt's own diameter is none.
 */
export function holeSize(d: number, hole: number, material: 'timber' | 'steel'): SizeFinding | Problem {
    const required = material === 'timber' ? greatestHole(d) : d + Math.max(2, 0.1 * d);
    return unsound('positive', { 'the bolt diameter': d, 'the hole': hole }) ?? {
        what: `hole in ${material}`, required, provided: hole, ok: hole >= d && hole <= required, clause: 'EN 1995-1-1 10.4.3(1)'
    };
}
