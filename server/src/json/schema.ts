/** The JSON Schema (draft 2020-12) of what `padstone check --format json` prints; `padstone schema` publishes it. */
import { durations, evidenceWords } from '../../../language/src/model.js';
import { noCapacity } from './amounts.js';
import { breakeven, loadtest, option } from './asked-schema.js';
import { outputFormat } from './output.js';
import { amount, choice, list, object, orNull, place, range, text } from './schema-words.js';

const diagnostic = object('Something to say at a place in the text.', {
    severity: choice('An error makes the exit code 1 (a check fails) or 2 (the text is not understood).', ['error', 'warning', 'info', 'hazard']),
    code: text('Stable name of the kind of message, in kebab-case.'),
    message: text('What is wrong, in words.'),
    line: place('Line'),
    column: place('Column')
});

const check = object('One check of one subject, at the place and in the combination where it is worst.', {
    id: text('`SUBJECT.CHECK`.'),
    subject: text('Name of the member or part that is checked.'),
    check: text('Name of the check, e.g. `bending`.'),
    stage: orNull('Stage of the work; null where the file has no stages.'),
    option: orNull('Name of the option; null for the job as written.'),
    utilisation: { type: 'number', description: `Demand over capacity, not rounded: at most 1 holds. ${noCapacity} stands for no capacity at all, or for no result.` },
    pass: { type: 'boolean', description: 'Whether the check holds.' },
    demand: amount('What the check has to bear.'),
    capacity: amount('What it can bear.'),
    combination: text('The combination of actions that governs.'),
    duration: text(`The load duration that sets kmod (${durations.join(', ')}); empty where none does.`),
    at: amount('Station along the member from its start.', 'm'),
    clause: text('The clause of the standard, or the source of the rule.'),
    line: place('Line of the subject'),
    corner: object('Where inputs are bands that the check feels: their values with which it is worst.', {
        by: { enum: ['ends', 'search'], description: 'ends: over the values tried, more of each input only made it better or only worse; search: the worst that a search found.' },
        inputs: list('The inputs that it feels.', object('One input.', { input: text('Its name, e.g. `T2.loss.top`.'), value: amount('Its value there.') }))
    })
}, ['corner']);

const reaction = object('Envelope of the design reaction of one support, upwards positive.', {
    support: text('Name of the wall, member, prop or spring.'),
    at: amount('Station along the member from its start.', 'm'),
    min: amount('Least value; negative is uplift.', 'kN'),
    max: amount('Greatest value.', 'kN')
});

const bending = {
    moment: range('Envelope over the ultimate combinations, sagging positive.', 'kNm'),
    shear: range('Envelope over the ultimate combinations.', 'kN'),
    deflection: object('The greatest deflections, downwards positive.', {
        instant: amount('In the characteristic combination, without creep.', 'mm'),
        final: amount('In the quasi-permanent combination with creep (EN 1995-1-1 2.2.3).', 'mm')
    })
};

const leaf = object('What one leaf takes for itself.', {
    leaf: { type: 'integer', minimum: 1, description: 'Counted from the left, seen from the member\'s start.' },
    ...bending
}, ['deflection']);

const member = object('What one member bears in one stage, and how far it bends; of a member of leaves, all together.', {
    name: text('Name of the member.'),
    stage: orNull('Stage of the work; null where the file has no stages.'),
    weight: amount('Self weight of the whole member.', 'kN'),
    reactions: list('One for each support, in the order of the file.', reaction),
    ...bending,
    leaves: list('The leaves of a built-up member.', leaf),
    'stiffness ratio': {
        type: 'number',
        description: 'Of a built-up member: deflection of one unbroken leaf alone over that of the built-up member under the same load.'
    }
}, ['leaves', 'stiffness ratio']);

const hazard = object('A danger that the rules found.', {
    code: text('Stable name of the rule.'),
    severity: choice('`stop` forbids a verdict of pass.', ['stop', 'warn', 'note']),
    subject: text('What it is about.'),
    message: text('What is dangerous, in words.'),
    line: place('Line of its cause'),
    answer: object('What the file says was done about it: a `stop` that is answered is a `warn`.', {
        what: text('In the words of the file.'),
        evidence: choice('How that is known.', evidenceWords),
        note: text('On the evidence.'),
        line: place('Line of the answer')
    }, ['note'])
}, ['answer']);

const file = object('One file of the command line.', {
    file: text('The name as it was given.'),
    job: {
        anyOf: [
            object('The head of the file.', { title: text('Title of the job.'), revision: orNull('Mark of the revision.'), basis: text('The standard that rules.') }),
            { type: 'null' }
        ],
        description: 'Null where the file could not be read, or names no job.'
    },
    verdict: choice('`pass` only where everything was understood, computed and held.', ['pass', 'fail', 'incomplete']),
    diagnostics: list('Everything to say at a place of the text.', diagnostic),
    checks: list('Every check that was computed, in every stage; then those of each option.', check),
    members: list('Every member that was computed, in every stage.', member),
    breakeven: list('Solved limits: those asked for, then guesses, the nearest to its limit first. Empty where the text has errors, as are the next two.', breakeven),
    loadtests: list('Proof loads.', loadtest),
    options: list('The job as written, then every option; empty where the file has none.', option),
    hazards: list('Dangers that the rules found.', hazard),
    unchecked: list('What was not checked, in words.', { type: 'string' })
});

export const outputSchema = {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Output of padstone check --format json',
    ...object('Results of one or more files. The number of the format changes when a reader of an older one would misread it.', {
        format: { const: outputFormat },
        files: list('One for each file, in the order of the command line.', file)
    })
} as const;
