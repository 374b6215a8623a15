/** Details that are used and files that are included: real elements with names of their own, errors at both places. */
import { describe, expect, it } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import type { Evaluation, Finding } from '../../language/src/index.js';
import { applyFix, hangers, marked, sailLoft, soundJob } from './check.js';

type Files = Readonly<Record<string, string>>;
const evaluated = (text: string, files: Files = {}, file = 'job.padstone') => evaluateText(text, file, path => files[path]);
const errors = ({ findings }: Evaluation) => findings.filter(({ severity }) => severity === 'error').map(({ code, message, source }) => [source.file, code, message]);
const firstError = ({ findings }: Evaluation) => findings.find(({ severity }) => severity === 'error');
const rods = 'rods 2 M12 grade 4.6';
const one = `detail one (old: member, new: member, at: length) {\n  hanger carries old at at from new at at { ${rods} }\n}\n`;
const names = ({ model }: Evaluation) => model.hangers.map(hanger => hanger.name);
const textOf = (text: string, { start, end }: Finding['source']) => text.slice(start, end);

describe('the sail loft with its details', () => {
    const { model, findings, broken } = evaluated(sailLoft, { 'details/hangers.padstone': hangers }, 'sail-loft.padstone');

    it('has its two hangers, as the detail says and the uses give', () => {
        expect([findings, broken]).toEqual([[], []]);
        expect(model.hangers.map(hanger => [hanger.name, hanger.carries, hanger.carriesAt.value, hanger.from, hanger.fromAt.value])).toEqual([['H1', 'T2', 1500, 'R1', 1500], ['H2', 'T2', 2800, 'R1', 2800]]);
        expect(model.hangers[0]).toMatchObject({
            rods: { count: 2, size: 'M12', diameter: 12, grade: { value: '4.6' } }, gap: { value: 0 }, washers: { size: { value: 40 }, thickness: { value: 6 } },
            headPlate: { width: { value: 70 }, thickness: { value: 10 }, length: { value: 300 }, steel: 'S275' }, footPlate: { length: { value: 300 } }
        });
    });

    it('knows for each hanger the line of the detail and the use', () => {
        const [first, second] = model.hangers;
        expect([first!.source.file, textOf(hangers, first!.source).slice(0, 19)]).toEqual(['details/hangers.padstone', 'hanger carries old ']);
        expect([second!.usedAt!.file, textOf(sailLoft, second!.usedAt!)]).toEqual(['sail-loft.padstone', 'use twinRodHanger H2 (old: T2, new: R1, at: 2.80 m)']);
    });

    it('names its files', () => expect(model.files).toEqual(['sail-loft.padstone', 'details/hangers.padstone']));

    it('has the bolts of its relief beam', () => {
        // 7 · 12 = 84 mm; (4900 − 2 · 84) / 350 = 13.52, so 14 spaces of 338 mm and 15 bolts.
        const { section } = model.members[1]!;
        expect(section.shape === 'plies' && section.bolts.map(row => row.places.map(({ x, height }) => [x, height]))).toEqual([[
            [84, 50], [422, 0], [760, -50], [1098, 0], [1436, 50], [1774, 0], [2112, -50], [2450, 0], [2788, 50], [3126, 0], [3464, -50], [3802, 0], [4140, 50], [4478, 0], [4816, -50]
        ]]);
        expect(section.shape === 'plies' && section.butts.map(({ leaf, at }) => [leaf, at.value])).toEqual([[1, 1900], [3, 1900], [2, 3000]]);
    });

    it('is built in four stages', () => {
        expect(model.stages.map(({ name, steps }) => [name, steps.map(({ source: _, ...step }) => step)])).toMatchObject([
            ['found', [{ kind: 'add', elements: ['T2'] }]],
            ['propped', [{ kind: 'prop', member: 'T2', at: { value: 2150 }, lift: { value: 3 } }]],
            ['hung', [{ kind: 'add', elements: ['R1', 'H1', 'H2'] }, { kind: 'tighten', hangers: ['H1', 'H2'], force: { value: 2500 } }]],
            ['relieved', [{ kind: 'release', members: 'all' }]]
        ]);
    });

    it('has the inputs of each hanger in its ledger', () =>
        expect(model.inputs.map(input => input.path).filter(path => path.startsWith('H'))).toEqual(['H1.rods.grade', 'H2.rods.grade']));
});

describe('a detail', () => {
    const use = 'use one H1 (old: J1, new: J2, at: 2 m)\n';
    it('takes a default where the use says nothing', () => {
        const thread = one.replace('at: length', 'at: length = 1 m, rod: thread = M16').replace('M12', 'rod');
        expect(evaluated(`${soundJob}${thread}use one H1 (old: J1, new: J2)\n`).model.hangers[0]).toMatchObject({ carriesAt: { value: 1000 }, rods: { size: 'M16' } });
        expect(evaluated(`${soundJob}${thread}use one H1 (old: J1, new: J2, rod: M20, at: 1.5 m)\n`).model.hangers[0]).toMatchObject({ carriesAt: { value: 1500 }, rods: { size: 'M20' } });
    });

    it('calls the only hanger as the use, several by their own names or their order', () => {
        const several = one.replace('}\n}', '}\n  hanger left carries old at at + 0.5 m from new at at + 0.5 m { rods 1 M12 }\n}');
        const evaluation = evaluated(`${soundJob}${several}${use}require H1.left.rods <= 90 %\n`);
        expect([names(evaluation), errors(evaluation)]).toEqual([['H1.1', 'H1.left'], []]);
        expect(evaluation.model.requirements[0]!.left).toMatchObject({ subject: 'H1.left', check: 'rods' });
        expect(errors(evaluated(`${soundJob}${several}${use}require H1.rods <= 90 %\n`))).toEqual([['job.padstone', 'unknown-check', 'H1 is several: H1.1, H1.left']]);
    });

    it('has values of its own, and hides the file\'s', () => {
        const own = 'let at = 3 m\ndetail own (old: member, new: member, at: length) {\n  let beyond = at + old.depth\n  hanger carries old at beyond from new at at { rods 1 M12 }\n}\nuse own H1 (old: J1, new: J2, at: 1 m)\n';
        expect(evaluated(`${soundJob}${own}`).model.hangers[0]).toMatchObject({ carriesAt: { value: 1200 }, fromAt: { value: 1000 } });
        const inner = soundJob.replace('length 4 m', 'length at + 1 m');
        expect(evaluated(`${inner}${own}`).model.hangers[0]).toMatchObject({ carriesAt: { value: 1200 } });
    });

    it('uses other details', () => {
        const pair = 'detail pair (old: member, new: member, at: length) {\n  use one left (old: old, new: new, at: at)\n  use one right (old: old, new: new, at: at + 1 m)\n}\nuse pair P (old: J1, new: J2, at: 1 m)\n';
        const evaluation = evaluated(`${soundJob}${pair}${one}stage a { J1, J2, P }\n`);
        expect(evaluation.model.hangers.map(({ name, carriesAt }) => [name, carriesAt.value])).toEqual([['P.left', 1000], ['P.right', 2000]]);
        expect(evaluation.model.stages[0]!.steps).toMatchObject([{ elements: ['J1', 'J2', 'P.left', 'P.right'] }]);
        expect(evaluation.findings).toEqual([]);
    });

    it.each([
        ['itself', 'detail d (old: member) { use d k (old: old) }\nuse d H1 (old: J1)\n', 'd → d'],
        ['two that use each other', 'detail d (old: member) { use e k (old: old) }\ndetail e (old: member) { use d k (old: old) }\nuse d H1 (old: J1)\n', 'd → e → d']
    ])('that expands for ever is an error: %s', (_, text, circle) =>
        expect(errors(evaluated(`${soundJob}${text}`))).toEqual([['job.padstone', 'detail-circle', `this detail expands for ever: ${circle}`]]));

    it('that makes more than any building has is an error', () => {
        const doubling = Array.from({ length: 40 }, (_, i) => `detail d${i} (old: member) { use d${i + 1} a (old: old)  use d${i + 1} b (old: old) }\n`).join('');
        const text = `${soundJob}${doubling}detail d40 (old: member) { hanger carries old at 1 m from J2 at 1 m { rods 1 M12 } }\nuse d0 H1 (old: J1)\n`;
        expect(errors(evaluated(text))).toEqual([['job.padstone', 'detail-too-large', 'the details of this file make more than 5000 elements']]);
    });

    it('with an error inside points at the use and at the line of the detail', () => {
        const text = `${soundJob}${one.replace('from new at at', 'from new at at + 3 m')}${use}`;
        const finding = firstError(evaluated(text));
        expect(finding).toMatchObject({ code: 'hanger-outside', message: 'this hanger is 1 m past the end (4 m) of J2' });
        expect(textOf(text, finding!.source)).toBe(use.trim());
        expect(finding!.related!.map(({ message, source }) => [message, textOf(text, source)])).toEqual([['here, in the detail one', 'at + 3 m']]);
        expect(finding!.fix).toBeUndefined();
    });

    it('in a detail points at all three', () => {
        const outer = 'detail outer (old: member, new: member) {\n  use one k (old: old, new: new, at: 7 m)\n}\nuse outer H1 (old: J1, new: J2)\n';
        const finding = firstError(evaluated(`${soundJob}${one}${outer}`));
        expect(finding!.related!.map(({ message }) => message)).toEqual(['here, in the detail one', 'used here, in the detail outer']);
    });

    it('leaves the members that it would hold without results when it is wrong', () => {
        const { model, broken } = evaluated(`${soundJob}${one}use one H1 (old: J1, new: J2, at: 9 m)\n`);
        expect([model.hangers, model.members, broken.map(({ name }) => name)]).toEqual([[], [], ['J1', 'J2']]);
    });

    it.each([
        ['use one H1 (old: J1, new: J2, at: ⟦3 kN⟧)', 'wrong-dimension', 'expected a length, found a force', 'the parameter at'],
        ['use one H1 (old: ⟦north⟧, new: J2, at: 1 m)', 'wrong-kind', '\'north\' is a wall, not a member', 'the parameter old'],
        ['use one ⟦H1⟧ (old: J1, new: J2)', 'missing-parameter', 'H1 does not say at of one', 'the parameter at'],
        ['use one H1 (old: J1, new: J2, at: 1 m, ⟦at⟧: 2 m)', 'said-twice', '\'at\' is given twice', 'the parameter at']
    ])('with a wrong argument says so at the use: %s', (line, code, message, related) => {
        const { text, start, end } = marked(`${soundJob}${one}${line}\n`);
        const finding = firstError(evaluated(text));
        expect([finding!.code, finding!.message, finding!.source.start, finding!.source.end]).toEqual([code, message, start, end]);
        expect(finding!.related!.map(place => place.message)).toContain(related);
    });
});

describe('an include', () => {
    const job = (path: string) => `job "Test"\ninclude "${path}"\n${soundJob.replace('job "Test"\n', '')}`;

    it('joins its declarations to the model, each with its file', () => {
        const { model, findings } = evaluated(`${job('lib/stuff.padstone')}load more snow 1 kN/m on J9\n`, { 'lib/stuff.padstone': soundJob.replace(/J1/g, 'J9').replace(/member J2[\s\S]*/, '').replace(/.*\n.*\n.*\n/, '') });
        expect(findings).toEqual([]);
        expect(model.members.map(({ name, source }) => [name, source.file])).toEqual([['J9', 'lib/stuff.padstone'], ['J1', 'job.padstone'], ['J2', 'job.padstone']]);
    });

    it('is read once, however often and from where it is included', () => {
        const files = { 'a/one.padstone': 'include "../b/two.padstone"\nlet a = two', 'b/two.padstone': 'let two = 2 m\n' };
        const evaluation = evaluated(`${job('a/one.padstone')}include "b/two.padstone"\nload x snow 1 kN at a on J1\n`, files);
        expect([evaluation.findings, evaluation.model.files]).toEqual([[], ['job.padstone', 'a/one.padstone', 'b/two.padstone']]);
        expect(evaluation.model.loads.at(-1)!.point).toEqual({ force: 1000, at: 2000 });
    });

    it('starts from the folder of the file that includes', () => {
        const asked: string[] = [];
        evaluateText(job('../lib/./a.padstone'), 'jobs/loft/job.padstone', path => { asked.push(path); return undefined; });
        evaluateText(job('a.padstone'), '/jobs/job.padstone', path => { asked.push(path); return undefined; });
        expect(asked).toEqual(['jobs/lib/a.padstone', '/jobs/a.padstone']);
    });

    it.each([
        ['itself', {}, 'job.padstone', 'circle of includes: job.padstone → job.padstone', 'job.padstone'],
        ['one that includes it', { 'a.padstone': 'include "b.padstone"', 'b.padstone': 'include "a.padstone"' }, 'a.padstone', 'circle of includes: a.padstone → b.padstone → a.padstone', 'b.padstone']
    ])('in a circle is an error that names it: %s', (_, files, path, message, file) =>
        expect(errors(evaluated(job(path), files))).toEqual([[file, 'include-circle', message]]));

    it.each([
        ['gone.padstone', 'include-missing', 'there is no file gone.padstone'],
        ['https://example.org/a.padstone', 'include-refused', 'nothing is fetched: an include is a path relative to this file'],
        ['file:///a.padstone', 'include-refused', 'nothing is fetched: an include is a path relative to this file'],
        ['//host/a.padstone', 'include-refused', 'nothing is fetched: an include is a path relative to this file'],
        ['/etc/a.padstone', 'include-refused', 'an include is a path relative to this file, with / between its parts'],
        ['lib\\\\a.padstone', 'include-refused', 'an include is a path relative to this file, with / between its parts'],
        ['', 'include-refused', 'this names no file']
    ])('that cannot be read is an error there: %j', (path, code, message) => {
        const evaluation = evaluated(job(path));
        expect(errors(evaluation)).toEqual([['job.padstone', code, message]]);
        expect(evaluation.findings[0]!.source.line).toBe(2);
    });

    it('that may not be read says why', () => {
        const { findings } = evaluateText(job('../../a.padstone'), 'job.padstone', () => ({ refused: 'outside the workspace' }));
        expect(findings).toMatchObject([{ code: 'include-refused', message: '../../a.padstone: outside the workspace' }]);
    });

    it.each([['too long', 'x'.repeat(2_000_001), /^big\.padstone: this file is too long/], ['binary', 'a\0b', /^big\.padstone: this file is binary/]])('that is %s is refused', (_, text, message) =>
        expect(evaluated(job('big.padstone'), { 'big.padstone': text }).findings).toMatchObject([{ severity: 'error', code: 'not-read', message: expect.stringMatching(message) as string }]));

    it('with errors has them in its own file, the main file\'s first', () => {
        const found = errors(evaluated(`${job('a.padstone')}load x snow 1 kN on J1\n`, { 'a.padstone': 'let a = 1 m + 1 kN\nlet b = \n' }));
        expect(found.map(([file, code]) => [file, code])).toEqual([['job.padstone', 'load-without-place'], ['a.padstone', 'wrong-dimension'], ['a.padstone', 'syntax']]);
    });

    it('that declares a name again says where the first is', () => {
        const [finding] = evaluated(job('a.padstone'), { 'a.padstone': 'let J1 = 1 m\n' }).findings;
        expect(finding).toMatchObject({ code: 'duplicate-name', source: { file: 'job.padstone' }, related: [{ source: { file: 'a.padstone' } }] });
    });

    it('that is a job of its own gives no settings', () => {
        const { model, findings } = evaluated(job('a.padstone'), { 'a.padstone': 'job "Other" { service class 3 }\n' });
        expect([model.job.title, model.job.serviceClass]).toEqual(['Test', 2]);
        expect(findings).toMatchObject([{ severity: 'warning', code: 'included-job', source: { file: 'a.padstone' } }]);
    });

    it('brings values', () => {
        const { model } = evaluated(job('nation.padstone'), { 'nation.padstone': 'values { gamma_M solid 1.25 }\n' });
        expect(model.values).toMatchObject([{ name: 'gamma_M solid', value: 1.25, source: { file: 'nation.padstone' } }]);
    });

    it('stays named as not computed where nothing is read', () => {
        const { model, findings } = evaluateText(`${job('a.padstone')}use d H1 (old: J1)\n`, 'job.padstone');
        expect([findings, model.notComputed.map(({ what }) => what)]).toEqual([[], ['detail use H1', 'include "a.padstone"']]);
    });

    it('keeps its fixes in its own file', () => {
        const text = 'let a = 1 m\nlet b = aa + 1 m\n';
        const [finding] = evaluated(job('a.padstone'), { 'a.padstone': text }).findings;
        expect(finding!.fix!.at.file).toBe('a.padstone');
        expect(applyFix(text, finding!)).toBe('let a = 1 m\nlet b = a + 1 m\n');
    });
});
