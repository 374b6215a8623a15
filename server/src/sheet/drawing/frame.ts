/**
 * The frame that a member is drawn in: its own start at the origin, along it to the right, y down, in units of
 * the view box; the whole is then turned by its slope. One scale both ways.
 */
import type { MemberResult } from '../../results.js';

/** A drawing as wide as this is readable in a pane of 400 px and on paper. */
export const viewWidth = 440;
export const sideMargin = 26;
/** px per unit of the view box where there is room. */
export const naturalScale = 1.35;

const tallest = 300;
const deepest = 150;

export interface Frame {
    readonly length: number;
    readonly halfDepth: number;
    readonly slope: number;
    /** Posts and the like: loads stand beside them rather than on top. */
    readonly steep: boolean;
    /** Straight down, in this frame. */
    readonly down: readonly [x: number, y: number];
    readonly along: (mm: number) => number;
    readonly scale: number;
}

/** @param room for the member's own extent across the view */
export function frameOf({ length, depth, slope }: MemberResult, room = viewWidth - 2 * sideMargin): Frame {
    const scale = Math.min(room / (length * Math.max(Math.cos(slope), 1e-6)), tallest / (length * Math.max(Math.abs(Math.sin(slope)), 1e-6)), deepest / depth);
    return {
        scale,
        slope,
        length: length * scale,
        halfDepth: depth * scale / 2,
        steep: Math.abs(slope) > Math.PI / 3,
        down: [-Math.sin(slope), Math.cos(slope)],
        along: mm => mm * scale
    };
}

export interface ViewBox {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
}

/** Room for all between these edges of the turned frame. A level member keeps the same left edge as its diagrams. */
export function viewBoxOf({ length, slope }: Frame, above: number, below: number, beyond: number): ViewBox {
    if (slope === 0) {
        return { x: -sideMargin, y: -above, width: viewWidth, height: above + below };
    }
    const corners = [-sideMargin, length + beyond].flatMap(x => [-above, below].map(y => ({
        x: x * Math.cos(slope) + y * Math.sin(slope),
        y: y * Math.cos(slope) - x * Math.sin(slope)
    })));
    const left = Math.min(...corners.map(corner => corner.x));
    const top = Math.min(...corners.map(corner => corner.y));
    return { x: left, y: top, width: Math.max(...corners.map(corner => corner.x)) - left, height: Math.max(...corners.map(corner => corner.y)) - top };
}

/** A coordinate as printed. */
export const r = (value: number): number => Math.round(value * 10) / 10 + 0;

export const degrees = (radians: number): number => radians * 180 / Math.PI;
