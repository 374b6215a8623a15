/** What a stage may say of what is there, and what is wrong with it, by place. */
import { describe, expect, it } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import { marked, soundJob } from './check.js';

const hung = `${soundJob}member T { of C24 section 75 x 200 mm length 4 m on north at 0.1 m bearing 100 mm on south at 3.9 m bearing 100 mm loss 1 m .. 2 m { bottom 20 mm } (probed) }
member S { of C24 section 75 x 200 mm length 4 m on J1 at 0 m crossing at 2 m on north at 3.9 m bearing 100 mm }
hanger H carries T at 2.5 m from J2 at 2.5 m { rods 2 M12 }
`;
const evaluated = (stages: string) => evaluateText(`${hung}${stages}\n`, 'test.padstone');

describe('stages that hold together', () => {
    it.each([
        ['add all', 'stage a { J1, J2, T, S, H }'],
        ['name nothing of what is there from the first', 'stage a { prop J1 at 2 m }\nstage b { release props }'],
        ['add a hanger with its member, in any order', 'stage a { T }\nstage b { tighten H to 2 kN  H, J2 }'],
        ['remove what was there from the first', 'stage a { prop T at 2.2 m }\nstage b { remove H }'],
        ['add again what was removed', 'stage a { H }\nstage b { remove H }\nstage c { H }'],
        ['prop twice, and release one member', 'stage a { prop J1 at 2 m  prop J1 at 3 m  prop J2 at 1 m }\nstage b { release J1 }\nstage c { release J2 }'],
        ['prop with a lift, below a loss that is not at the bottom', 'stage a { prop T at 2.001 m lift 3 mm }'],
        ['tighten to nought', 'stage a { tighten H to 0 kN }']
    ])('%s', (_, stages) => {
        const { model, findings, broken } = evaluated(stages);
        expect([findings, broken]).toEqual([[], []]);
        expect(model.stages.length).toBeGreaterThan(0);
    });

    it('has a lift of nought unless it is said', () =>
        expect(evaluated('stage a "propping" { prop J1 at 2 m }').model.stages).toMatchObject([{ name: 'a', title: 'propping', steps: [{ kind: 'prop', member: 'J1', at: { value: 2000 }, lift: { value: 0 } }] }]));

    it('releases all props, or those of members', () =>
        expect(evaluated('stage a { prop J1 at 2 m  prop J2 at 1 m }\nstage b { release J1 }\nstage c { release props }').model.stages.slice(1).map(({ steps }) => steps)).toMatchObject([
            [{ kind: 'release', members: ['J1'] }], [{ kind: 'release', members: 'all' }]
        ]));
});

/** Stages with the marked range, code, message. */
type Row = readonly [stages: string, code: string, message: string];

const wrong: readonly Row[] = [
    ['stage a { ⟦J8⟧ }', 'unknown-name', 'unknown name \'J8\': did you mean \'J1\'?'],
    ['stage a { remove ⟦R9⟧ }', 'unknown-name', 'unknown name \'R9\''],
    ['stage a { ⟦north⟧ }', 'wrong-kind', '\'north\' is a wall, not a member or a hanger'],
    ['stage a { ⟦boards⟧ }', 'wrong-kind', '\'boards\' is a load, not a member or a hanger'],
    ['stage a { tighten ⟦J1⟧ to 2 kN }', 'wrong-kind', '\'J1\' is a member, not a hanger'],
    ['stage a { tighten ⟦K⟧ to 2 kN }', 'unknown-name', 'unknown name \'K\': did you mean \'H\'?'],
    ['stage a { prop ⟦H⟧ at 1 m }', 'wrong-kind', '\'H\' is a hanger, not a member'],
    ['stage a { tighten H to ⟦-2 kN⟧ }', 'negative', '-2 kN is negative: this cannot be'],
    ['stage a { tighten H to ⟦2 m⟧ }', 'wrong-dimension', 'expected a force, found a length'],
    ['stage a { prop J1 at 2 m lift ⟦-3 mm⟧ }', 'negative', '-3 mm is negative: this cannot be'],
    ['stage a { J1 }\nstage b { ⟦J1⟧ }', 'added-twice', 'J1 is there already in stage b'],
    ['stage a { J1, ⟦J1⟧ }', 'added-twice', 'J1 is there already in stage a'],
    ['stage a { remove H }\nstage b { remove ⟦H⟧ }', 'never-there', 'H is not there in stage b: nothing has added it before'],
    ['stage a { remove ⟦H⟧ }\nstage b { H }', 'never-there', 'H is not there in stage a: nothing has added it before'],
    ['stage a { tighten ⟦H⟧ to 2 kN }\nstage b { H }', 'not-there', 'H is not there in stage a: add it before, or in this stage'],
    ['stage a { ⟦prop J1 at 2 m⟧ }\nstage b { J1, S }', 'not-there', 'J1 is not there in stage a: add it before, or in this stage'],
    ['stage a { J1 }\nstage b { remove ⟦J2⟧ }', 'not-there', 'H hangs from J2, which is not there in stage b'],
    ['stage a { ⟦H⟧ }\nstage b { J2 }', 'not-there', 'H hangs from J2, which is not there in stage a'],
    ['stage a { ⟦S⟧ }\nstage b { J1 }', 'not-there', 'S stands on J1, which is not there in stage a'],
    ['⟦stage a { prop J2 at 2 m }⟧\nstage b { J1 }', 'not-there', 'S stands on J1, which is not there in stage a'],
    ['stage a { ⟦release props⟧ }', 'no-prop', 'no prop stands in stage a'],
    ['stage a { prop J1 at 2 m }\nstage b { release ⟦J2⟧ }', 'no-prop', 'no prop stands under J2 in stage b'],
    ['stage a { prop J1 at 2 m }\nstage b { release props }\nstage c { ⟦release props⟧ }', 'no-prop', 'no prop stands in stage c'],
    ['stage a { prop J1 at ⟦4.5 m⟧ }\nstage b { release props }', 'prop-outside', 'this prop is 500 mm past the end (4 m) of J1'],
    ['stage a { prop J1 at ⟦-0.1 m⟧ }', 'prop-outside', 'this prop is 100 mm before the start of J1'],
    ['stage a { prop J1 at ⟦0.1 m⟧ }', 'duplicate-support', 'J1 has a support at this station already'],
    ['stage a { prop J1 at 2 m }\nstage b { prop J1 at ⟦2 m⟧ }', 'duplicate-support', 'J1 has a support at this station already'],
    ['stage a { J1 }\nstage ⟦a⟧ { J2, H }', 'duplicate-name', '\'a\' is already the name of something else']
];

describe('stages that do not', () => {
    it.each(wrong.map(row => [row[0], row] as const))('%s', (_, [stages, code, message]) => {
        const { text, start, end } = marked(`${hung}${stages}\n`);
        const { findings, model } = evaluateText(text, 'test.padstone');
        const finding = findings.find(found => found.code === code && found.message === message);
        expect(finding, JSON.stringify(findings.map(found => [found.code, found.message]))).toMatchObject({ severity: 'error' });
        expect(text.slice(finding!.source.start, finding!.source.end)).toBe(text.slice(start, end));
        const names = [...model.members, ...model.hangers].map(element => element.name);
        model.stages.flatMap(stage => stage.steps).forEach(step => {
            const used = step.kind === 'add' || step.kind === 'remove' ? step.elements : step.kind === 'tighten' ? step.hangers : step.kind === 'prop' ? [step.member] : [];
            used.forEach(name => expect(names).toContain(name));
        });
    });

    it.each(['stage a { prop J8 at 1 m }', 'stage a { prop J1 at 3 kN }', 'stage a { prop J1 at 9 m }'])('%s brings no second error about its release', stage =>
        expect(evaluated(`${stage}\nstage b { release props }`).findings.filter(({ severity }) => severity === 'error')).toHaveLength(1));

    it('a prop under wood that is lost at the bottom: a warning, and never a pass', () => {
        const { findings, model } = evaluated('stage a { prop T at 1.5 m }');
        expect(findings).toMatchObject([{ severity: 'warning', code: 'prop-under-loss', related: [{ message: 'the loss is here' }] }]);
        expect(model.notComputed).toContainEqual(expect.objectContaining({ what: 'T.prop at 1.5 m', members: ['T'] }));
    });

    it('leaves the members that are named without results, and not the others', () => {
        const { model, broken } = evaluated('stage a { J1 }\nstage b { J1 }');
        expect(broken.map(({ name }) => name)).toEqual(['J1', 'S']);
        expect(model.members.map(({ name }) => name)).toEqual(['J2', 'T']);
    });

    it('leaves what hangs from a broken member without results', () =>
        expect(evaluateText(hung.replace('member J2 {', 'member J2 {\n  precamber 3 kN'), 'test.padstone').broken.map(({ name }) => name)).toEqual(['J2', 'T']));
});
