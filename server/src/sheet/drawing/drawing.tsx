import type { ComponentChildren } from 'preact';
import { degrees, naturalScale, r, type ViewBox } from './frame.js';

interface Props {
    readonly id: string;
    readonly title: string;
    /** Says in words all that the drawing says. */
    readonly description: string;
    readonly view: ViewBox;
    /** Radians that the drawing is turned by, counter-clockwise. */
    readonly turn?: number;
    readonly children: ComponentChildren;
}

/** A drawing that shrinks with its pane and is read out as its description. */
export function Drawing({ id, title, description, view, turn = 0, children }: Props) {
    return (
        <svg
            xmlns="http://www.w3.org/2000/svg" class="drawing" role="img" aria-labelledby={`${id}-title`} aria-describedby={`${id}-desc`}
            viewBox={[view.x, view.y, view.width, view.height].map(r).join(' ')} width={Math.round(view.width * naturalScale)} height={Math.round(view.height * naturalScale)}
        >
            <title id={`${id}-title`}>{title}</title>
            <desc id={`${id}-desc`}>{description}</desc>
            {turn === 0 ? children : <g transform={`rotate(${r(-degrees(turn))})`}>{children}</g>}
        </svg>
    );
}

/** The hatches, once in a document. */
export function Patterns() {
    return (
        <svg class="patterns" width="0" height="0" aria-hidden="true" focusable="false">
            <defs>
                <Hatch id="hatch-loss" spacing={3.5} angle={45} />
                <Hatch id="hatch-side" spacing={8} angle={45} />
                <Hatch id="hatch-masonry" spacing={4.5} angle={-45} />
                <Hatch id="hatch-steel" spacing={2.2} angle={45} />
                <Hatch id="hatch-over" spacing={4} angle={45} />
            </defs>
        </svg>
    );
}

function Hatch({ id, spacing, angle }: { readonly id: string; readonly spacing: number; readonly angle: number }) {
    return (
        <pattern id={id} width={spacing} height={spacing} patternUnits="userSpaceOnUse" patternTransform={`rotate(${angle})`}>
            <path class={id} d={`M0 0V${spacing}`} />
        </pattern>
    );
}
