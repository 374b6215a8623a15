import { escape } from '../markdown.js';
import { certaintyOf, inputAt } from './certainty.js';
import type { HoverOf } from './place.js';

/** An input of consequence: what it is called and how sure it is. */
export const hoverInput: HoverOf = ({ computed: { results, text }, offset }) => {
    const given = inputAt(results, offset);
    if (!given) {
        return undefined;
    }
    const { start, end } = given.source;
    const written = text.getText().slice(start, end);
    return { markdown: `**${escape(given.path)}** ${escape(written)}\n\n${certaintyOf(results, given)}`, source: given.source };
};
