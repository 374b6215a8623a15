/** The names of supports, hangers and the like, and what is known of losses and notches, in rows below the member. */
import type { Loss, SourceRef } from '../../../../language/src/model.js';
import type { MemberResult } from '../../results.js';
import { setOut } from '../numbers.js';
import { buttsByStation } from './bolts.js';
import type { Frame } from './frame.js';
import { hangerWords } from './hangers.js';
import { labelName, stack, textWidth } from './labels.js';
import { propWords, type Prop } from './props.js';

export interface Caption {
    /** Middle of the text. */
    readonly x: number;
    readonly row: number;
    readonly text: string;
    readonly source: SourceRef;
}

export function captionsOf(frame: Frame, member: MemberResult, props: readonly Prop[]): readonly Caption[] {
    const { supportSketches, losses, notches, hangerSketches, crossingSketches, butts = [] } = member;
    const found = [
        ...supportSketches.map(({ name, at, bearing, tied, source }) => ({
            at, text: [labelName(name), bearing === undefined ? '' : setOut(bearing), tied ? 'tied' : ''].filter(Boolean).join(', '), source
        })),
        ...losses.map(loss => ({ at: (loss.from.value + loss.to.value) / 2, text: `loss: ${facesOf(loss)}`, source: loss.source })),
        ...notches.map(({ from, to, face, depth, source }) => ({
            at: (from.value + to.value) / 2, text: `notch: ${face} ${setOut(depth.value)}`, source
        })),
        ...hangerSketches.map(hanger => ({ at: hanger.at, text: hangerWords(hanger), source: hanger.source })),
        ...props.map(prop => ({ at: prop.at, text: propWords(prop), source: prop.source })),
        ...crossingSketches.map(({ name, at, source }) => ({ at, text: `${labelName(name)} on it`, source })),
        ...buttsByStation(butts).map(({ at, leaves, source }) => ({ at, text: `butt ${leaves.join(', ')}`, source }))
    ].map(({ at, text, source }) => {
        const half = textWidth(text) / 2;
        const x = Math.max(half - 22, Math.min(frame.along(at), frame.length + 22 - half));
        return { x, text, source, from: x - half - 3, to: x + half + 3 };
    }).sort((a, b) => a.x - b.x);
    const rows = stack(found);
    return found.map(({ x, text, source }, i) => ({ x, text, source, row: rows[i]! }));
}

/** `top 35, left 20`: mm. */
export function facesOf({ faces }: Loss): string {
    return Object.entries(faces).map(([face, thickness]) => `${face} ${setOut(thickness.value)}`).join(', ');
}
