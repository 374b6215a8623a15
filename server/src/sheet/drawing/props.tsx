/** Props of every stage on the one drawing of a member: dashed where they are gone in the end. */
import type { MemberResult, PropSketch } from '../../results.js';
import { setOut } from '../numbers.js';
import { r, type Frame } from './frame.js';
import { supportHeight } from './supports.js';
import { useLineOf } from '../parts.js';

export interface Prop extends PropSketch {
    /** The stages that it stands in, in words. */
    readonly stages: string;
    readonly stays: boolean;
}

/** Each place once, with the greatest lift that it was given. */
export function propsOf(stages: readonly MemberResult[]): readonly Prop[] {
    const last = stages.at(-1);
    const places = new Map<number, Prop>();
    for (const member of stages) {
        for (const prop of member.propSketches) {
            const before = places.get(prop.at);
            places.set(prop.at, {
                ...prop,
                lift: Math.max(prop.lift, before?.lift ?? 0),
                stages: [before?.stages, member.stage].filter(Boolean).join(', '),
                stays: member === last
            });
        }
    }
    return [...places.values()];
}

/** `prop, lift 3, in propped`: mm. */
export function propWords({ lift, stages, stays }: Prop): string {
    return `prop${lift === 0 ? ', snug' : `, lift ${setOut(lift)}`}${stays || stages === '' ? '' : ` (${stages})`}`;
}

/** A screw prop: head plate, spindle and tube on a foot plate. */
export function Props({ frame, props }: { readonly frame: Frame; readonly props: readonly Prop[] }) {
    const lineOf = useLineOf();
    return (
        <g>
            {props.map(({ at, stays, source }) => (
                <g class={stays ? 'prop' : 'prop passing'} data-line={lineOf(source)} transform={`translate(${r(frame.along(at))} ${r(frame.halfDepth)})`}>
                    <path class="plate" d={`M-5 1H5M-6 ${supportHeight}H6`} />
                    <path class="symbol" d={`M-1 1V7M1 1V7M-3 7H3M-2 7V${supportHeight}M2 7V${supportHeight}`} />
                </g>
            ))}
        </g>
    );
}
