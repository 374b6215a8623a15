/** The names of supports, hangers and the like, and what is known of losses and notches, in rows below the member. */
import type { Loss } from '../../../../language/src/model.js';
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
    readonly line: number;
}

export function captionsOf(frame: Frame, member: MemberResult, props: readonly Prop[]): readonly Caption[] {
    const { supportSketches, losses, notches, hangerSketches, crossingSketches, butts = [] } = member;
    const found = [
        ...supportSketches.map(({ name, at, bearing, tied, source }) => ({
            at, text: [labelName(name), bearing === undefined ? '' : setOut(bearing), tied ? 'tied' : ''].filter(Boolean).join(', '), line: source.line
        })),
        ...losses.map(loss => ({ at: (loss.from.value + loss.to.value) / 2, text: `loss: ${facesOf(loss)}`, line: loss.source.line })),
        ...notches.map(({ from, to, face, depth, source }) => ({
            at: (from.value + to.value) / 2, text: `notch: ${face} ${setOut(depth.value)}`, line: source.line
        })),
        ...hangerSketches.map(hanger => ({ at: hanger.at, text: hangerWords(hanger), line: hanger.source.line })),
        ...props.map(prop => ({ at: prop.at, text: propWords(prop), line: prop.source.line })),
        ...crossingSketches.map(({ name, at, source }) => ({ at, text: `${labelName(name)} on it`, line: source.line })),
        ...buttsByStation(butts).map(({ at, leaves, source }) => ({ at, text: `butt ${leaves.join(', ')}`, line: source.line }))
    ].map(({ at, text, line }) => {
        const half = textWidth(text) / 2;
        const x = Math.max(half - 22, Math.min(frame.along(at), frame.length + 22 - half));
        return { x, text, line, from: x - half - 3, to: x + half + 3 };
    }).sort((a, b) => a.x - b.x);
    const rows = stack(found);
    return found.map(({ x, text, line }, i) => ({ x, text, line, row: rows[i]! }));
}

/** `top 35, left 20`: mm. */
export function facesOf({ faces }: Loss): string {
    return Object.entries(faces).map(([face, thickness]) => `${face} ${setOut(thickness.value)}`).join(', ');
}
