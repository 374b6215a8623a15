/** The schema of what `asked.ts` writes. */
import { amount, choice, list, nullable, object, orNull, place, text, type Schema } from './schema-words.js';

const input = (description: string): Schema => object(description, {
    value: { type: ['number', 'string'], description: 'A number, or the name of a class.' },
    unit: text('Unit of the value; empty for a class and for a plain number.')
});

export const breakeven = object('The value of an input at which the first check fails.', {
    input: text('The input, e.g. `T2.loss.top`.'),
    given: input('Its value in the file.'),
    limit: nullable('Null where no value within reach makes a check fail.', input('The last value that holds, not rounded; of a class the first one with the other verdict.')),
    check: orNull('The check that governs at the limit, or at the given value where there is none; null where no check depends on the input.'),
    stage: orNull('Stage of that check; null where the file has no stages.'),
    asked: { type: 'boolean', description: 'Whether a `breakeven` line asks for it; the others are those of guesses and of losses.' },
    aside: list('Checks that fail at the given value already and that no value of this input mends: the limit is that of all others.', { type: 'string' }),
    sentence: text('All of it in words.')
});

const shares = (description: string): Schema => nullable(description, object('Ratios.', {
    moment: { type: 'number', description: 'Of the greatest moment.' }, shear: { type: 'number', description: 'Of the greatest shear.' }
}));

export const loadtest = object('A proof load compared with its prediction.', {
    name: text('Name of the test.'),
    member: text('What is tested.'),
    outcome: choice('`in doubt` forbids a verdict of pass.', ['predicted', 'borne out', 'stiffer', 'in doubt', 'not computed']),
    points: list('One for each weight.', object('One step of the load.', {
        weight: amount('What was put on.', 'kg'),
        predicted: amount('Deflection with the mean stiffness.', 'mm'),
        low: amount('Lower end of the predicted band.', 'mm'),
        high: amount('Upper end of the predicted band.', 'mm'),
        read: nullable('What was read; null where nothing was.', amount('What was read.', 'mm'))
    })),
    E: nullable('Null where the readings do not tell.', amount('Stiffness back-figured from the readings.', 'MPa')),
    scatter: nullable('Null of fewer than two readings.', amount('Standard error of that.', 'MPa')),
    recovery: nullable('Null where nothing was read after unloading.', amount('Of the greatest deflection, after unloading.', '%')),
    shares: object('The test over what the member has to bear, its own weight counted in both.', {
        service: shares('Of the unfactored loads; null where the member has no results.'),
        design: shares('Of the design loads; null where the member has no results.')
    }),
    verdict: text('What the test says, in words.'),
    proves: list('What it proves, in words.', { type: 'string' }),
    doesNotProve: list('What it does not prove, in words.', { type: 'string' }),
    line: place('Line of the test')
});

export const option = object('One way to do it; all of its checks are among `checks`, under its name.', {
    option: orNull('Name of the option; null for the job as written.'),
    title: orNull('What it is.'),
    verdict: choice('Of the whole job with it.', ['pass', 'fail', 'incomplete']),
    worst: nullable('Null where nothing was checked.', object('The worst check.', {
        check: text('`SUBJECT.CHECK`.'), utilisation: { type: 'number', description: 'As in `checks`.' }
    })),
    deflection: nullable('Null where no member has results.', amount('The final deflection that is worst over its span.', 'mm')),
    mass: nullable('Null where the mass of a piece is not known.', amount('Of all pieces that are brought in.', 'kg')),
    heaviestPiece: nullable('Null where the mass of a piece is not known.', amount('The heaviest of them.', 'kg')),
    longestPiece: nullable('Null where nothing is brought in.', amount('The longest of them.', 'm')),
    parts: { type: 'integer', minimum: 0, description: 'Pieces, bolts, plates and rods of what is brought in.' },
    hazards: object('How many it has that are not answered.', Object.fromEntries(['stop', 'warn', 'note'].map(severity => [severity, { type: 'integer', minimum: 0, description: `Of severity ${severity}.` }]))),
    line: place('Line of the option, or of the job')
});
