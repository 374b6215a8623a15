import type { Notch } from '../../../../language/src/model.js';
import type { MemberResult } from '../../results.js';
import { r, type Frame } from './frame.js';

/** The visible outline with its notches, as a path. A notch that starts or ends within the length is tapered at that end. */
export function outlinePath(frame: Frame, { notches, length, depth }: MemberResult): string {
    const edge = (face: 'top' | 'bottom'): string[] => {
        const sign = face === 'top' ? -1 : 1;
        const points = notches.filter(notch => notch.face === face).flatMap(notch => notchPoints(notch, length, depth));
        return [[0, 0] as const, ...points.sort((a, b) => a[0] - b[0]), [length, 0] as const]
            .map(([at, cut]) => `${r(frame.along(at))} ${r(sign * (frame.halfDepth - frame.along(cut)))}`);
    };
    return `M${[...edge('top'), ...edge('bottom').reverse()].join('L')}Z`;
}

/** Stations and depths of cut, mm. */
function notchPoints(notch: Notch, length: number, depth: number): (readonly [at: number, cut: number])[] {
    const from = Math.max(0, notch.from.value);
    const to = Math.min(length, notch.to.value);
    const cut = Math.min(notch.depth.value, depth);
    const taper = Math.min(notch.taper.value, to - from);
    return [
        ...(from > 0 ? [[from, 0], [from + taper, cut]] as const : [[0, cut]] as const),
        ...(to < length ? [[to - taper, cut], [to, 0]] as const : [[length, cut]] as const)
    ];
}
