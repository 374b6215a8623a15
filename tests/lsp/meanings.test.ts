/** Hovers on whatever there is, and help with what stands in parentheses. */
import { HoverRequest, SignatureHelpRequest, type MarkupContent } from 'vscode-languageserver/node';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { examples } from '../../language/src/index.js';
import { constructNames } from '../../server/src/lsp/meaning/constructs.js';
import { isNamed, plainUnits } from '../../server/src/lsp/meaning/units.js';
import { Client } from './client.js';
import { position, shed } from './jobs.js';

let client: Client;
beforeAll(async () => { client = await Client.start(); });
afterAll(async () => { expect(await client.stop()).toBe(0); });

const uri = 'file:///jobs/meanings.padstone';
const text = `${shed}
let bay = 1.20 m
member F1 {
  of S275
  section HEA 140
  length 4.00 m
  on west at 0.10 m bearing 150 mm
  on east at 3.90 m bearing 150 mm
}
member P1 {
  of C24
  plies 2 of 63 x 200 mm
  length 3.00 m
  on west at 0.10 m bearing 150 mm
  on east at 2.90 m bearing 150 mm
  bolts M12 grade 8.8 every 350 mm
}
load snowDrift snow 0.8 kN/m2 strip bay on F1
`;
const hover = async (needle: string, offset = 0): Promise<string> =>
    ((await client.connection.sendRequest(HoverRequest.type, { textDocument: { uri }, position: position(text, needle, offset) }))?.contents as MarkupContent | undefined)?.value ?? '';

describe('hover', () => {
    beforeAll(() => client.open(uri, text));

    test.each([
        ['a strength class', 'C24', 1, /f_m,k +24 MPa/], ['a steel', 'S275', 1, /f_y +275 MPa/], ['a rolled section', 'HEA 140', 1, /h +133 mm/], ['its number', 'HEA 140', 5, /h +133 mm/],
        ['a bolt', 'M12', 1, /A_s +84\.3 mm²/], ['a grade of bolts', '8.8', 1, /f_ub +800 MPa/], ['a category', 'imposed E', 8, /storage[^]*ψ₀ 1, ψ₁ 0\.9, ψ₂ 0\.8/],
        ['a unit', '0.8 kN/m2', 5, /a stress or area load: kilonewton a square metre/],
        ['a let', 'strip bay', 7, /let bay = 1\.20 m/], ['a wall', 'on west', 4, /wall west \{ of brick thick 330 mm \}/],
        ['a load', 'snowDrift', 1, /load snowDrift[^]*0\.8 kN\/m² × 1\.2 m = 0\.96 kN\/m, short-term/],
        ['a word of the language', 'restrained', 1, /Lateral restraint[^]*restrained every 600 mm/], ['a word that begins a declaration', 'timber pine', 1, /strength class of EN 338/]
    ])('on %s', async (_, needle, offset, expected) => expect(await hover(needle, offset)).toMatch(expected));

    test('on white space: nothing', async () => expect(await hover('\nmember F1', 0)).toBe(''));
});

test('every unit has a name', () => expect(plainUnits.filter(unit => !isNamed(unit))).toEqual([]));
test('the words of the language lead to examples that there are', () => {
    expect(constructNames.filter(name => !examples.some(({ construct }) => construct === name))).toEqual([]);
});

describe('help with what stands in parentheses', () => {
    const detail = 'detail rodHanger (old: member, new: member, at: length, rod: thread = M12) {\n  hanger carries old at at from new at at { rods 2 rod }\n}\n';
    let documents = 0;
    const helped = async (line: string): Promise<string | undefined> => {
        const whole = `${shed}${detail}${line}`;
        const other = `file:///jobs/signature-${++documents}.padstone`;
        await client.open(other, whole.replace('|', ''));
        const found = await client.connection.sendRequest(SignatureHelpRequest.type, { textDocument: { uri: other }, position: position(whole, '|') });
        const [signature] = found?.signatures ?? [];
        const range = signature?.parameters?.[found!.activeParameter!]?.label as [number, number] | undefined;
        return signature && `${signature.label} > ${signature.label.slice(...range!)}`;
    };
    const whole = 'use rodHanger H1 (old: member, new: member, at: length, rod: thread = M12)';

    test.each([
        ['use rodHanger H1 (|', `${whole} > old: member`], ['use rodHanger H1 (old: B1, |', `${whole} > new: member`], ['use rodHanger H1 (old: B1, at: |', `${whole} > at: length`],
        ['use rodHanger H1 (at: max(1 m, 2 m), rod: |)', `${whole} > rod: thread = M12`],
        ['let a = max(1 m, |', 'max(a, b, …) > b'], ['let a = round(2.34 m, |to: 5 mm)', 'round(value, to: step) > to: step']
    ])('%s', async (line, expected) => expect(await helped(line)).toBe(expected));

    test.each(['use rodHanger H1 (old: B1)|', 'member X {|', 'load a imposed A 1 kN/m on B1 (|'])('none: %s', async line => expect(await helped(line)).toBeUndefined());
});
