/** What the file asks for and has no answer, or none yet. */
import type { Model } from '../../../language/src/model.js';
import type { Results, Unchecked } from '../results.js';

/** Of what is undefined nothing is found yet. */
export function openAsked(model: Model, { loadTests, certainty }: Pick<Results, 'certainty' | 'loadTests'>): readonly Unchecked[] {
    return [
        ...loadTests
            ? loadTests.filter(({ outcome }) => outcome === 'not computed').map(({ name, member, verdict, source }) => ({ text: `load test ${name}: ${verdict}`, blocking: true, members: [member], source }))
            // What was read may speak against the member.
            : model.loadTests.filter(({ readings }) => readings.length > 0).map(({ name, source }) => ({ text: `load test ${name}: its readings are compared once the checks are made`, blocking: true, source })),
        ...certainty ? model.breakEvens.filter(({ path }) => !certainty.asked.some(one => one.path === path))
            .map(({ path, source }) => ({ text: `break-even ${path}: it has no value that can be varied`, blocking: false, source })) : [],
        ...certainty && certainty.left.length > 0 ? [{ text: tooMany(certainty.left), blocking: false }] : []
    ];
}

function tooMany(paths: readonly string[]): string {
    const [some, rest] = [paths.slice(0, 4), paths.length - 4];
    return `at what value a check fails was not looked for of ${some.join(', ')}${rest > 0 ? ` and ${rest} more` : ''}, for there are too many guesses: a breakeven line asks for one by name`;
}
