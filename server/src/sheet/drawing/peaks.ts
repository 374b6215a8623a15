import type { DiagramPoint } from '../../analysis/actions.js';

export interface Curve {
    /** Put before each of its peaks where a diagram has more than one curve. */
    readonly label: string;
    readonly style: 'solid' | 'dashed';
    readonly points: readonly DiagramPoint[];
    readonly print: (value: number) => string;
    /** A peak that is less than this share of the one on the other side is not marked. */
    readonly slight: number;
}

export interface Peak {
    readonly x: number;
    readonly number: number;
    readonly value: string;
    readonly label: string;
    /** `greatest`, `least`. */
    readonly words: string;
}

/** The greatest and the least of an envelope, where they lie on their own side of the axis. */
export function peaksOf({ label, points, print, slight }: Curve): readonly Peak[] {
    const greatest = points.reduce<DiagramPoint | undefined>((most, point) => most && most.max >= point.max ? most : point, undefined);
    const least = points.reduce<DiagramPoint | undefined>((most, point) => most && most.min <= point.min ? most : point, undefined);
    if (!greatest || !least) {
        return [];
    }
    const threshold = slight * Math.max(Math.abs(greatest.max), Math.abs(least.min));
    const words = (word: string): string => [label, word].filter(Boolean).join(' ');
    return [
        ...(greatest.max > threshold ? [{ x: greatest.x, number: greatest.max, value: print(greatest.max), label, words: words('greatest') }] : []),
        ...(least.min < -threshold ? [{ x: least.x, number: least.min, value: print(least.min), label, words: words('least') }] : [])
    ];
}
