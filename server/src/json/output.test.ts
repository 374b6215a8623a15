import Ajv from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { check, finding, job, member } from '../../../tests/command/results-fixture.js';
import type { Amount, LeafResult } from '../results.js';
import { noResults } from '../no-results.js';
import { noCapacity } from './amounts.js';
import { toOutput } from './output.js';
import { outputSchema } from './schema.js';

const validate = new Ajv({ strict: true, allowUnionTypes: true, allErrors: true }).compile(outputSchema);

/** As a reader gets it: through text. */
const printed = (...files: Parameters<typeof toOutput>[0][number][]) => JSON.parse(JSON.stringify(toOutput(files)));

function expectValid(output: unknown): void {
    validate(output);
    expect(validate.errors ?? []).toEqual([]);
}

describe('JSON output', () => {
    test('a whole job follows the schema, key by key', () => {
        const output = printed(job({
            findings: [finding('hazard', 'timber-wet', 'T2 is wet', 4)],
            hazards: [{ code: 'timber-wet', severity: 'warn', subject: 'T2', message: 'T2 is wet', action: 'Dry it.', decider: 'you', source: finding('hazard', '', '', 4).source }],
            unchecked: [{ text: 'fire resistance', blocking: false }]
        }));
        expectValid(output);
        expect(output.files[0]).toMatchObject({
            file: 'loft.padstone',
            job: { title: 'Loft floor', revision: 'B', basis: 'EN1995' },
            verdict: 'pass',
            diagnostics: [{ severity: 'hazard', code: 'timber-wet', message: 'T2 is wet', line: 4, column: 3 }],
            hazards: [{ code: 'timber-wet', severity: 'warn', subject: 'T2', line: 4 }],
            unchecked: ['fire resistance']
        });
        expect(output.files[0].checks[0]).toEqual({
            id: 'T2.bending', subject: 'T2', check: 'bending', stage: null, option: null, utilisation: 0.8201, pass: true,
            demand: { value: 8.201, unit: 'MPa' }, capacity: { value: 10, unit: 'MPa' }, combination: '1.35 G + 1.5 storage',
            duration: 'medium-term', at: { value: 2.1, unit: 'm' }, clause: 'EN 1995-1-1 6.1.6', line: 12
        });
        expect(output.files[0].members[0]).toEqual({
            name: 'T2', stage: null, weight: { value: 0.9, unit: 'kN' },
            reactions: [{ support: 'north', at: { value: 0.1, unit: 'm' }, min: { value: 1, unit: 'kN' }, max: { value: 5.2, unit: 'kN' } }],
            moment: { min: { value: -0.4, unit: 'kNm' }, max: { value: 6, unit: 'kNm' } },
            shear: { min: { value: -5, unit: 'kN' }, max: { value: 5, unit: 'kN' } },
            deflection: { instant: { value: 6.2, unit: 'mm' }, final: { value: 9.9, unit: 'mm' } }
        });
    });

    test.each([Infinity, NaN, -Infinity])('a utilisation of %s is a finite number above 1 that does not pass', utilisation => {
        const output = printed(job({ checks: [check('T2.bending', utilisation, { pass: true, capacity: { value: utilisation, unit: 'MPa' } })] }));
        expectValid(output);
        expect(output.files[0].checks[0]).toMatchObject({ utilisation: noCapacity, pass: false, capacity: { value: null } });
    });

    test('a member of leaves has each leaf and the stiffness ratio, once for each stage', () => {
        const [kNm, kN, mm] = ['kNm', 'kN', 'mm'].map(unit => (value: number) => ({ value, unit })) as [(value: number) => Amount, (value: number) => Amount, (value: number) => Amount];
        const leaf = (number: number, deflection?: LeafResult['deflection']): LeafResult => ({
            leaf: number, breadth: 63, pieces: [{ from: 0, to: 4900 }], moment: { min: kNm(0), max: kNm(number) }, shear: { min: kN(-1), max: kN(1) },
            deflection, diagrams: { N: [], V: [], M: [], instant: [], final: [] }
        });
        const leaves = [leaf(1, { instant: mm(3), final: mm(NaN) }), leaf(2)];
        const output = printed(job({ members: ['hung', 'relieved'].map(stage => member('R1', { stage, shape: 'plies', leaves, stiffnessRatio: stage === 'hung' ? NaN : 1.42 })) }));
        expectValid(output);
        const [hung, relieved] = output.files[0].members;
        expect([hung.stage, relieved.stage]).toEqual(['hung', 'relieved']);
        expect([hung['stiffness ratio'], relieved['stiffness ratio']]).toEqual([undefined, 1.42]);
        expect(relieved.leaves).toEqual([
            { leaf: 1, moment: { min: kNm(0), max: kNm(1) }, shear: { min: kN(-1), max: kN(1) }, deflection: { instant: mm(3), final: { value: null, unit: 'mm' } } },
            { leaf: 2, moment: { min: kNm(0), max: kNm(2) }, shear: { min: kN(-1), max: kN(1) } }
        ]);
    });

    test('a file without results follows the schema, and has no pass', () => {
        const output = printed(noResults('gone.padstone', 'cannot-read', 'there is no such file'));
        expectValid(output);
        expect(output.files[0]).toMatchObject({ job: null, verdict: 'incomplete', diagnostics: [{ code: 'cannot-read', line: 1, column: 1 }] });
    });

    test('a name without a revision has null', () => {
        const { job: head } = job();
        expect(printed(job({ job: { ...head!, revision: undefined } })).files[0].job.revision).toBeNull();
    });
});

describe('the schema', () => {
    const good = () => printed(job());
    const broken: readonly (readonly [string, (output: ReturnType<typeof good>) => void])[] = [
        ['another format number', output => { output.format = 2; }],
        ['no files', output => { delete output.files; }],
        ['a key that nobody knows', output => { output.files[0].extra = 1; }],
        ['an unknown verdict', output => { output.files[0].verdict = 'ok'; }],
        ['a check without its pass', output => { delete output.files[0].checks[0].pass; }],
        ['a utilisation in words', output => { output.files[0].checks[0].utilisation = 'high'; }],
        ['a utilisation of null', output => { output.files[0].checks[0].utilisation = null; }],
        ['a station in mm', output => { output.files[0].checks[0].at.unit = 'mm'; }],
        ['a moment in N·mm', output => { output.files[0].members[0].moment.max.unit = 'Nmm'; }],
        ['a line before the first', output => { output.files[0].checks[0].line = 0; }],
        ['an unknown severity', output => { output.files[0].diagnostics.push({ severity: 'fatal', code: 'x', message: '', line: 1, column: 1 }); }],
        ['a stiffness ratio in words', output => { output.files[0].members[0]['stiffness ratio'] = 'two'; }],
        ['a leaf that is not counted from 1', output => { const { moment, shear } = output.files[0].members[0]; output.files[0].members[0].leaves = [{ leaf: 0, moment, shear }]; }],
        ['a leaf without its shear', output => { output.files[0].members[0].leaves = [{ leaf: 1, moment: output.files[0].members[0].moment }]; }],
        ['a break-even without what it sets aside', output => { output.files[0].breakeven = [{ input: 'T2.loss.top', given: { value: 35, unit: 'mm' }, limit: null, check: 'T2.bending', stage: null, asked: true, sentence: '' }]; }],
        ['a load test with an outcome that nobody knows', output => { output.files[0].loadtests = [{ name: 'bench', outcome: 'good' }]; }],
        ['an answer without its evidence', output => { output.files[0].hazards = [{ code: 'x', severity: 'warn', subject: 'T2', message: '', line: 1, answer: { what: 'done', line: 1 } }]; }],
        ['a wrong shape of unchecked', output => { output.files[0].unchecked = [{ text: 'fire' }]; }]
    ];
    test.each(broken)('refuses %s', (_name, breakIt) => {
        const output = good();
        expectValid(output);
        breakIt(output);
        expect(validate(output)).toBe(false);
    });

    test('every property says what it is', () => {
        const undescribed: string[] = [];
        const walk = (schema: Record<string, any>, path: string): void => {
            for (const [name, property] of Object.entries<Record<string, any>>(schema.properties ?? {})) {
                if (!property.description && property.const === undefined) {
                    undescribed.push(`${path}.${name}`);
                }
                walk(property, `${path}.${name}`);
            }
            for (const inner of [schema.items, ...schema.anyOf ?? []].filter(Boolean)) {
                walk(inner, path);
            }
        };
        walk(outputSchema, '');
        expect(undescribed).toEqual([]);
    });
});
