import type { Span } from './actions.js';

/** How far a member is bowed upwards at a station, mm, and its slope. */
export type Bow = (x: number) => { readonly w: number; readonly slope: number };

/** A parabola that rises `camber` in the middle of a span. */
export function bowOf(span: Span, camber: number): Bow {
    if (camber === 0) return level;
    const length = span.to - span.from;
    return (x) => {
        const t = (x - span.from) / length;
        return { w: 4 * camber * t * (1 - t), slope: (4 * camber * (1 - 2 * t)) / length };
    };
}

export const level: Bow = () => ({ w: 0, slope: 0 });
