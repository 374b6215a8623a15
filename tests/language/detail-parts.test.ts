/** Members, loads, walls and materials in details: as if the file said them, with errors told at both places. */
import { readFileSync } from 'node:fs';
import { globSync } from 'tinyglobby';
import { describe, expect, it } from 'vitest';
import { evaluateText, formatText } from '../../language/src/index.js';
import type { Evaluation } from '../../language/src/index.js';
import { compute } from '../../server/src/compute.js';
import { root } from '../command/run.js';
import { soundJob } from './check.js';

const evaluated = (text: string, files: Readonly<Record<string, string>> = {}) => evaluateText(text, 'job.padstone', path => files[path]);
const errors = ({ findings }: Evaluation) => findings.filter(({ severity }) => severity === 'error').map(({ message }) => message);
const beam = 'detail across (one: wall, other: wall, clear: length from 1 m to 4 m, wood: timber = C24) {\n  member beam {\n    of wood\n    section 75 x 200 mm\n    length clear + 0.3 m\n    on one at 0.1 m bearing 100 mm\n    on other at clear + 0.2 m bearing 100 mm\n  }\n}\n';
const use = 'use across X1 (one: north, other: south, clear: 2.4 m)\n';
/** What comes out, wherever it stands in the text. */
const results = (evaluation: Evaluation, rename: (name: string) => string = name => name) => {
    const { checks, members } = compute(evaluation);
    return [checks.map(({ id, utilisation }) => [rename(id), utilisation]), members.map(({ name, reactions }) => [rename(name), reactions.map(({ at, min, max }) => [at, min, max])])];
};

describe('what a detail holds', () => {
    it('comes out as the same said in full', () => {
        const said = `${soundJob}member X1 {\n  of C24\n  section 75 x 200 mm\n  length 2.4 m + 0.3 m\n  on north at 0.1 m bearing 100 mm\n  on south at 2.4 m + 0.2 m bearing 100 mm\n}\nload q permanent 1 kN/m on X1\n`;
        const detailed = evaluated(`${soundJob}${beam}${use}load q permanent 1 kN/m on X1\n`);
        expect(errors(detailed)).toEqual([]);
        expect(results(detailed)).toEqual(results(evaluated(said)));
    });
    it('is called as the use where it is one, by both names where it is several, and refers to its own first', () => {
        const two = 'let depth = 1 m\ndetail frame (wall: wall, deep: length, held: force) {\n  let half = deep / 2\n  masonry stone { fk 8 MPa (tested) }\n  wall pier { of stone thick 300 mm }\n  member low { of C24 section 100 mm x deep length 2 m on wall at 0.1 m bearing 100 mm on pier at 1.9 m bearing 100 mm }\n  member high { of C24 section 100 mm x half length 1 m on low at 0.1 m crossing at 0.5 m bearing 50 mm on low at 0.9 m crossing at 1.3 m bearing 50 mm }\n  load top permanent held at high.length / 2 on high\n}\n';
        const evaluation = evaluated(`${soundJob}${two}use frame F (wall: north, deep: 200 mm, held: 3 kN)\nstage a { J1, J2 }\nstage b { F }\nrequire F.high.bending <= 90 %\nrequire F.low.final <= span/300\n`);
        expect(errors(evaluation)).toEqual([]);
        const { members, walls, loads, materials, stages, requirements } = evaluation.model;
        expect(members.map(({ name }) => name)).toEqual(['J1', 'J2', 'F.low', 'F.high']);
        expect(members[2]!.supports.map(({ on }) => on)).toEqual(['north', 'F.pier']);
        expect(members[3]!.supports.map(({ on, kind }) => [on, kind])).toEqual([['F.low', 'member'], ['F.low', 'member']]);
        expect(members[3]!.section).toMatchObject({ depth: { value: 100 } });
        expect([walls.at(-1)!.name, materials[0]!.name, loads.at(-1)]).toMatchObject(['F.pier', 'F.stone', { name: 'F.top', member: 'F.high', point: { force: 3000, at: 500 } }]);
        expect(stages[1]!.steps).toMatchObject([{ kind: 'add', elements: ['F.low', 'F.high'] }]);
        expect(requirements.map(({ left }) => left)).toMatchObject([{ subject: 'F.high', check: 'bending' }, { subject: 'F.low', check: 'final' }]);
        expect(compute(evaluation).checks.some(({ id, stage }) => id === 'F.low.bending' && stage === 'b')).toBe(true);
    });
    it('is made by details of details, with what they are given', () => {
        const outer = 'detail pair (wall: wall, far: wall, clear: length) {\n  let more = clear + 0.5 m\n  use across short (one: wall, other: far, clear: clear)\n  use across long (one: wall, other: far, clear: more, wood: C30)\n}\n';
        const { model, ...rest } = evaluated(`${soundJob}${outer}${beam}use pair P (wall: north, far: south, clear: 2 m)\nrequire P.long.bending <= 90 %\n`);
        expect(errors({ model, ...rest })).toEqual([]);
        expect(model.members.slice(2).map(({ name, length, material }) => [name, length.value, material])).toEqual([['P.short', 2300, 'C24'], ['P.long', 2800, 'C30']]);
    });
    it('hangs from, and holds, what the detail holds itself', () => {
        const hung = 'detail over (old: member, wall: wall, far: wall) {\n  member new { of C24 section 100 x 250 mm length 4 m on wall at 0.1 m bearing 100 mm on far at 3.9 m bearing 100 mm }\n  hanger rod carries old at 2 m from new at 2 m { rods 2 M12 grade 4.6 head plate 70 x 10 x 250 mm steel S275 foot plate 70 x 10 x 250 mm steel S275 }\n}\n';
        const evaluation = evaluated(`${soundJob}${hung}use over O (old: J1, wall: north, far: south)\nstage a { J1, J2 }\nstage b { O  tighten O to 1 kN }\n`);
        expect(errors(evaluation)).toEqual([]);
        expect(evaluation.model.hangers).toMatchObject([{ name: 'O.rod', carries: 'J1', from: 'O.new' }]);
        expect(evaluation.model.stages[1]!.steps).toMatchObject([{ elements: ['O.new', 'O.rod'] }, { kind: 'tighten', hangers: ['O.rod'] }]);
    });
});

describe('what is wrong', () => {
    const wrong = (text: string) => evaluated(`${soundJob}${text}`).findings.find(({ severity }) => severity === 'error')!;
    it('inside points at the use and at the line of the detail, through every use between', () => {
        const inside = wrong(`${beam.replace('75 x 200 mm', '75 x 200 kN')}${use}`);
        expect(inside.source).toMatchObject({ line: `${soundJob}${beam}`.split('\n').length });
        expect(inside.related).toMatchObject([{ message: 'here, in the detail across', source: { line: soundJob.split('\n').length + 3 } }]);
        const deeper = wrong(`detail outer (w: wall) {\n  use across k (one: w, other: w, clear: 2 m)\n}\n${beam.replace('bearing 100 mm', 'bearing 100 kN')}use outer O (w: north)\n`);
        expect(deeper.related!.map(({ message }) => message)).toEqual(['here, in the detail across', 'used here, in the detail outer']);
    });
    it.each([
        [{ clear: '0.5 m' }, 'clear is 500 mm: this detail is made for 1 m to 4 m'],
        [{ clear: '4.1 m' }, 'clear is 4.1 m: this detail is made for 1 m to 4 m']
    ])('out of range: %j', ({ clear }, message) => {
        const finding = wrong(`${beam}${use.replace('2.4 m', clear)}`);
        expect(finding).toMatchObject({ code: 'out-of-range', message, related: [{ message: 'the parameter clear' }] });
        expect(evaluated(`${soundJob}${beam}${use.replace('2.4 m', clear)}`).model.members.map(({ name }) => name)).toEqual(['J1', 'J2']);
    });
    it.each([
        ['a default out of range', 'detail d (x: length = 5 m from 1 m to 4 m) { }\n', 'x is 5 m: this detail is made for 1 m to 4 m'],
        ['a range upside down', 'detail d (x: length from 4 m to 1 m) { }\n', 'the lower end of a range stands first'],
        ['a range of another kind', 'detail d (x: length from 1 kN to 4 m) { }\n', 'expected a length, found a force'],
        ['a range of a name', 'detail d (x: wall from north to south) { }\n', 'only a quantity has a range'],
        ['what expands for ever', 'detail d (w: wall) {\n  member m { of C24 section 75 x 200 mm length 2 m on w at 0.1 m bearing 100 mm on w at 1.9 m bearing 100 mm }\n  use d k (w: w)\n}\nuse d X (w: north)\n', 'this detail expands for ever: d → d'],
        ['an unknown wood', `${beam}${use.replace('clear: 2.4 m', 'clear: 2.4 m, wood: C99')}`, 'unknown name \'C99\'']
    ])('%s', (_, text, message) => expect(wrong(text).message).toContain(message));
    it('leaves what it would have made, and what meets it, without results', () => {
        const { model, broken } = evaluated(`${soundJob}${beam.replace('length clear + 0.3 m', 'length clear + 0.3 kN')}${use}load q permanent 1 kN/m on X1\n`);
        expect(model.members.map(({ name }) => name)).toEqual(['J1', 'J2']);
        expect(broken.map(({ name }) => name)).toEqual(['X1']);
    });
});

describe('the library of details', () => {
    const library = globSync('samples/details/*.padstone', { cwd: root });
    const jobs = globSync('samples/details/jobs/*.padstone', { cwd: root });
    const read = (path: string) => { try { return readFileSync(root + path, 'utf8'); } catch { return undefined; } };
    const at = (path: string, text = read(path)!) => evaluateText(text, path, read);
    it('has a job for each', () => expect(jobs.map(path => path.split('/').at(-1)).sort()).toEqual(library.map(path => path.split('/').at(-1)).sort()));
    it.each(library)('%s says what it is, has a range for each quantity, and is set right', path => {
        const text = read(path)!;
        expect(text).toMatch(/^\/\*\*[^]+?\*\/\ndetail /);
        expect(text.match(/: (length|force|stress|angle|mass|time|number)\b/g)?.length ?? 0).toBe(text.match(/ from [\d.]+ \S+ to [\d.]+ \S+,?$/gm)?.length ?? 0);
        expect(formatText(text, path).text).toBe(text);
        expect(errors(at(path))).toEqual([]);
    });
    it.each(jobs)('%s passes', path => {
        const { verdict, verdictReason } = compute(at(path));
        expect([verdict, verdictReason]).toEqual(['pass', verdictReason]);
    });
    it.each(jobs)('%s is stopped where it goes beyond the range of its detail', path => {
        const text = read(path)!;
        const [given, name] = /\b(\w+): [\d.]+ (?:m|mm)(?=[,)])/.exec(text.slice(text.indexOf('\nuse ')))!;
        expect(errors(at(path, text.replace(given, `${name}: 90 m`)))).toContainEqual(expect.stringContaining(`${name} is 90 m: this detail is made for`));
    });
});
