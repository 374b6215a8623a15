/** How sure an input is: its evidence, the value at which a check fails, and of a guessed grade what a lower one does. */
import type { Evidence, Given } from '../../../../language/src/model.js';
import type { Variant } from '../../certainty/index.js';
import { percentUp } from '../../sheet/numbers.js';
import type { Results } from '../../results.js';
import { escape } from '../markdown.js';
import { holds } from './place.js';

/** The smallest one that stands at the place. */
export function inputAt({ ledger, file }: Results, offset: number): Given<number | string> | undefined {
    return ledger.filter(({ source }) => source.file === file && holds(source, offset))
        .sort((a, b) => (a.source.end - a.source.start) - (b.source.end - b.source.start))[0];
}

/** Markdown. */
export function certaintyOf({ certainty }: Results, { path, evidence }: Given<number | string>): string {
    const entry = certainty?.ledger.find(({ input }) => input.path === path);
    const grade = certainty?.sensitivities.find(one => one.path === path);
    return [
        known(evidence),
        ...entry?.breakEvens.map(({ sentence }) => sentence) ?? [],
        ...grade ? [grade.lowerClass, grade.lowModulus].flatMap(variant => variant ? [variantInWords(variant)] : []) : []
    ].map(escape).join('\n\n');
}

function known({ word, note, stated }: Evidence): string {
    if (!stated) {
        return 'Nothing says how this is known: it counts as assumed.';
    }
    return note === undefined ? `Evidence: ${word}` : `Evidence: ${word}, "${note}"`;
}

function variantInWords({ with: instead, worst: { check, utilisation }, changesVerdict }: Variant): string {
    return check === '' ? `With ${instead}: no check depends on it` : `With ${instead}: ${check} ${percentUp(utilisation)}${changesVerdict ? ', which changes the verdict' : ''}`;
}
