/** What is offered where: the cursor stands at `|`. */
import { CompletionRequest, CompletionResolveRequest, type CompletionItem, type MarkupContent } from 'vscode-languageserver/node';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Client } from './client.js';
import { shed } from './jobs.js';

let client: Client;
beforeAll(async () => { client = await Client.start(); });
afterAll(async () => { expect(await client.stop()).toBe(0); });

let documents = 0;
/** Typed into `good`, where that is given: what was known of it is known still. */
async function offered(text: string, trigger?: string, good?: string): Promise<CompletionItem[]> {
    const at = text.indexOf('|');
    expect(at, 'the text has a cursor').toBeGreaterThanOrEqual(0);
    const uri = `file:///jobs/offered-${++documents}.padstone`;
    await client.open(uri, good ?? text.replace('|', ''));
    if (good !== undefined) {
        await client.noticeOf(uri, 1);
        await client.change(uri, 2, { text: text.replace('|', '') });
    }
    const before = text.slice(0, at).split('\n');
    const position = { line: before.length - 1, character: before.at(-1)!.length };
    const context = trigger === undefined ? { triggerKind: 1 as const } : { triggerKind: 2 as const, triggerCharacter: trigger };
    const found = await client.connection.sendRequest(CompletionRequest.type, { textDocument: { uri }, position, context });
    return [...(found === null ? [] : 'items' in found ? found.items : found)].sort((a, b) => (a.sortText ?? a.label) < (b.sortText ?? b.label) ? -1 : 1);
}
const labels = async (text: string, trigger?: string): Promise<string[]> => (await offered(text, trigger)).map(({ label }) => label);
/** The shed with a line put in before its loads. */
const withLine = (line: string): string => shed.replace('load boards', `${line}\nload boards`);
const inMember = (line: string): string => shed.replace('  length 4.00 m\n', `  length 4.00 m\n  ${line}\n`);

describe('words of the language', () => {
    test('at the beginning of a line: those that begin a declaration', async () => {
        const found = await labels(withLine('|'));
        expect(found).toEqual(expect.arrayContaining(['member', 'wall', 'timber', 'load', 'require', 'stage', 'option', 'use']));
        expect(found).not.toContain('section');
    });

    test('in a member: its statements, with what they are for', async () => {
        const found = await offered(inMember('|'));
        const names = found.map(({ label }) => label);
        expect(names).toEqual(expect.arrayContaining(['loss', 'notch', 'restrained', 'on', 'bolts']));
        expect(names).not.toContain('mortar');
        expect((found.find(({ label }) => label === 'loss')!.documentation as MarkupContent).value).toMatch(/Depths lost from the faces[^]*```padstone/);
    });

    test('where a name is given: none', async () => expect(await labels(withLine('member |'))).toEqual([]));

    test('in a comment and in a text: nothing', async () => {
        expect(await labels(withLine('// mem|'))).toEqual([]);
        expect(await labels(shed.replace('"loft beam"', '"loft |"'))).toEqual([]);
    });

    test('although the text above does not parse', async () => {
        expect(await labels(`member X { section } } 12 12\n${withLine('load a |')}`)).toEqual(expect.arrayContaining(['permanent', 'imposed', 'snow', 'wind', 'construction']));
    });

    test('a space brings what is wanted, and no bare words', async () => {
        expect(await labels(inMember('on west at 0.10 |').replace('length 4.00 m\n', 'length 4.00 m\n'), ' ')).toContain('m');
        expect(await labels(withLine('load a |'), ' ')).toEqual([]);
    });
});

describe('names', () => {
    test('what carries: walls and other members', async () => {
        const found = await labels(inMember('on |'));
        expect(found).toEqual(expect.arrayContaining(['west', 'east', 'B2']));
        expect(found).not.toContain('B1');
        expect(found).not.toContain('pine');
    });

    test('what a load is on: members', async () => {
        const found = await labels(withLine('load x permanent 1 kN/m on |'));
        expect(found).toEqual(['B1', 'B2']);
    });

    test('of a member: a timber, a steel, or a class with its values', async () => {
        const found = await offered(shed.replace('of pine\n  section 75', 'of |\n  section 75'));
        const names = found.map(({ label }) => label);
        expect(names).toEqual(expect.arrayContaining(['pine', 'C24', 'D30', 'GL24h', 'S275']));
        expect(names).not.toContain('brick');
        const c24 = found.find(({ label }) => label === 'C24')!;
        expect(c24.detail).toMatch(/f_m,k 24 MPa/);
        expect((c24.documentation as MarkupContent).value).toMatch(/E_0,mean +11000 MPa/);
    });

    test('in an expression: what has a value', async () => {
        expect(await labels(withLine('let half = |'))).toEqual(expect.arrayContaining(['boards', 'B1', 'west', 'brick', 'max']));
        expect(await labels(withLine('let half = B1.|'), '.')).toEqual(['length', 'span', 'breadth', 'depth']);
    });

    test('in a requirement: the checks there are, with what they are now', async () => {
        const found = await offered(withLine('require B1.|'), '.', shed);
        expect(found.map(({ label }) => label)).toEqual(expect.arrayContaining(['bending', 'shear', 'final']));
        expect(found.find(({ label }) => label === 'bending')!.detail).toMatch(/^\d+ %, EN 1995-1-1 6/);
    });

    test('in a break-even: the inputs', async () => {
        expect(await labels(withLine('breakeven pine.|'), '.')).toContain('grade');
    });

    test('in the use of a detail: its parameters, then what each wants', async () => {
        const detail = 'detail rodHanger (old: member, new: member, at: length, rod: thread = M12) {\n  hanger carries old at at from new at at { rods 2 rod }\n}\n';
        const use = (inside: string): string => withLine(`${detail}use rodHanger H1 (${inside}`);
        expect(await labels(use('|)'))).toEqual(expect.arrayContaining(['old', 'new', 'at', 'rod']));
        expect(await labels(use('old: B1, |)'))).not.toContain('old');
        const members = await labels(use('old: |)'));
        expect(members).toEqual(expect.arrayContaining(['B1', 'B2']));
        expect(members).not.toContain('west');
        expect(await labels(use('rod: |)'))).toEqual(expect.arrayContaining(['M12', 'M20']));
        expect((await labels(use('at: 2 |)'), ' '))[0]).toBe('m');
    });
});

describe('units', () => {
    test.each([
        ['member length', inMember('precamber 5 |'), 'mm', 'kN'], ['station', inMember('hole 20 mm at 1.20 |'), 'm', 'MPa'],
        ['stiffness', inMember('spring 500 |'), 'N/mm', 'mm'], ['strength', withLine('masonry m { fk 2 |'), 'MPa', 'm'],
        ['moisture', withLine('timber t { moisture 15 |'), '%', 'mm'], ['density', withLine('timber t { properties { rho_k 350 |'), 'kg/m3', 'MPa'],
        ['force on a strip', shed.replace('0.40 kN/m2 strip', '0.40 | strip'), 'kN/m2', 'mm'], ['mass', withLine('access { carry <= 50 |'), 'kg', 'm'],
        ['angle', inMember('slopes 30 |'), 'deg', 'm']
    ])('of a %s: the usual one first, and none that does not fit', async (_, text, first, never) => {
        const found = await labels(text, ' ');
        expect(found[0]).toBe(first);
        expect(found).not.toContain(never);
    });

    test('say what they are', async () => {
        expect((await offered(withLine('let a = 2.0 |')))!.find(({ label }) => label === 'kN/m2')!.detail).toBe('kilonewton a square metre, a stress or area load');
    });

    test('close to the number get the space that is missing', async () => {
        const [first] = await offered(inMember('precamber 5|'));
        expect(first).toMatchObject({ label: 'mm', textEdit: { newText: ' mm' } });
    });
});

describe('sizes, classes, bolts', () => {
    test('a section: sizes, each with the use that it would have', async () => {
        const found = await offered(shed.replace('section 100 x 250 mm', 'section | 100 x 250 mm'));
        const trial = (label: string) => client.connection.sendRequest(CompletionResolveRequest.type, found.find(item => item.label === label)!);
        const [small, same] = [await trial('75 x 200 mm'), await trial('100 x 250 mm')];
        expect(small.detail).toMatch(/^[a-z]+ \d+ %.* · .* = L\/\d+/);
        const uri = `file:///jobs/as-it-is.padstone`;
        await client.open(uri, shed);
        expect(same.detail).toBe((await client.hintLabels(uri))[0]!.replace(/^\d+: /, ''));
        const use = (item: CompletionItem): number => Number(/(\d+) %/.exec(item.detail!)![1]);
        expect(use(small)).toBeGreaterThan(use(same));
        expect((small.documentation as MarkupContent).value).toMatch(/\| bending \|/);
    });

    test('a section of steel: rolled sections with their properties', async () => {
        const text = shed.replace('of pine\n  section 100 x 250 mm (measured "tape")', 'of S275\n  section |');
        const found = await offered(text);
        expect(found.map(({ label }) => label)).toEqual(expect.arrayContaining(['IPE 200', 'HEA 140', 'UPN 160']));
        const item = await client.connection.sendRequest(CompletionResolveRequest.type, found.find(({ label }) => label === 'HEA 140')!);
        expect((item.documentation as MarkupContent).value).toMatch(/W_el,y +155\.\d cm³/);
        expect(item.detail).toMatch(/\d+ %/);
    });

    test('bolts and their grades', async () => {
        const plies = (line: string): string => shed.replace('section 75 x 200 mm (measured "tape")', `plies 2 of 63 x 200 mm\n  ${line}`);
        const sizes = await offered(plies('bolts |'));
        expect(sizes.find(({ label }) => label === 'M12')!.detail).toMatch(/A_s 84.3 mm²/);
        const grades = await offered(plies('bolts M12 grade |'));
        expect(grades.find(({ label }) => label === '8.8')!.detail).toBe('f_yb 640 MPa, f_ub 800 MPa');
    });

    test('a property of timber', async () => expect(await labels(withLine('timber old { properties { fm_k 20 MPa\n  |'))).toEqual(expect.arrayContaining(['E0_mean', 'rho_k'])));

    test('a hazard that there is, to be answered', async () => {
        const found = await offered(withLine('answer |'));
        expect(found.map(({ label }) => label)).toContain('bearing-on-weak-masonry');
    });

    test('a grade of timber, a category of load, a survey, a parameter of the code', async () => {
        expect(await labels(withLine('timber old { grade |'))).toEqual(expect.arrayContaining(['C18', 'D18']));
        expect(await labels(withLine('load x imposed |'))).toEqual(expect.arrayContaining(['A', 'E', 'H']));
        expect(await labels(withLine('survey { services |'))).toEqual(expect.arrayContaining(['checked', 'not checked']));
        expect(await labels(withLine('values { |'))).toEqual(expect.arrayContaining(['gamma_M solid', 'psi0 imposed A']));
    });
});
