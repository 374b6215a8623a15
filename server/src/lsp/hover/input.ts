import type { Evidence } from '../../../../language/src/model.js';
import { escape } from '../markdown.js';
import { holds, type HoverOf } from './place.js';

/** An input of consequence: what it is called and how it is known. */
export const hoverInput: HoverOf = ({ computed: { results, text }, offset }) => {
    const given = results.ledger
        .filter(({ source }) => source.file === results.file && holds(source, offset))
        .sort((a, b) => (a.source.end - a.source.start) - (b.source.end - b.source.start))[0];
    if (!given) {
        return undefined;
    }
    const { start, end } = given.source;
    const written = text.getText().slice(start, end);
    return { markdown: `**${escape(given.path)}** ${escape(written)}\n\n${escape(known(given.evidence))}`, source: given.source };
};

function known({ word, note, stated }: Evidence): string {
    if (!stated) {
        return 'Nothing says how this is known: it counts as assumed.';
    }
    return note === undefined ? `Evidence: ${word}` : `Evidence: ${word}, "${note}"`;
}
