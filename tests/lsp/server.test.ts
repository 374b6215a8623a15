/** The built server over a real pipe: what an editor sees. */
import { pathToFileURL } from 'node:url';
import { readFile } from 'node:fs/promises';
import {
    CodeActionRequest, CompletionRequest, DefinitionRequest, DocumentHighlightRequest, DocumentSymbolRequest, FoldingRangeRequest, HoverRequest,
    ReferencesRequest, RenameRequest,
    type CodeAction, type MarkupContent, type TextEdit
} from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import packageJson from '../../package.json';
import { previewRequest, sheetRequest, type Preview, type Sheet } from '../../server/src/protocol.js';
import { Client } from './client.js';
import { position, replacement, shed } from './jobs.js';

let client: Client;
beforeAll(async () => { client = await Client.start(); });
afterAll(async () => { expect(await client.stop()).toBe(0); });

let documents = 0;
/** Opens a text under a name of its own. */
async function opened(text: string): Promise<string> {
    const uri = `file:///jobs/job-${++documents}.padstone`;
    await client.open(uri, text);
    return uri;
}
const at = (uri: string, text: string, needle: string, offset = 0) => ({ textDocument: { uri }, position: position(text, needle, offset) });
const markdown = async (uri: string, text: string, needle: string, offset = 0): Promise<string> =>
    ((await client.connection.sendRequest(HoverRequest.type, at(uri, text, needle, offset)))?.contents as MarkupContent | undefined)?.value ?? '';
const preview = (uri: string): Promise<Preview> => client.connection.sendRequest(previewRequest, { uri });

test('says who it is and what it can do', () => {
    expect(client.initialized).toMatchObject({
        serverInfo: { name: 'padstone', version: packageJson.version },
        capabilities: { textDocumentSync: { change: 2, openClose: true }, inlayHintProvider: expect.anything(), hoverProvider: true, codeActionProvider: { codeActionKinds: ['quickfix'] } }
    });
});

describe('diagnostics', () => {
    test('a sound job has none that is an error, and says its version', async () => {
        const uri = await opened(shed);
        const { diagnostics } = await client.diagnosticsOf(uri, 1);
        expect(diagnostics.filter(({ severity }) => severity === 1)).toEqual([]);
        expect(await client.noticeOf(uri, 1)).toMatchObject({ uri, version: 1, summary: expect.stringMatching(/^(pass|incomplete): /) });
    });

    test('an error stands at its place, with code and source', async () => {
        const text = shed.replace('length 4.00 m', 'length 4.00 kN');
        const uri = await opened(text);
        const { diagnostics } = await client.diagnosticsOf(uri, 1);
        const error = diagnostics.find(({ severity }) => severity === 1)!;
        expect(error).toMatchObject({ source: 'padstone', code: expect.stringMatching(/^[a-z-]+$/) });
        expect(error.range.start.line).toBe(position(text, 'length 4.00 kN').line);
        expect(error.message).toMatch(/length/);
    });

    test('a name that is given twice is told with the place of the first', async () => {
        const text = `${shed}\nwall east { of brick thick 100 mm }\n`;
        const uri = await opened(text);
        const { diagnostics } = await client.diagnosticsOf(uri, 1);
        const twice = diagnostics.find(({ relatedInformation }) => relatedInformation?.length)!;
        expect(twice.message).toMatch(/east/);
        expect(twice.relatedInformation![0]!.location).toMatchObject({ uri, range: { start: { line: position(text, 'wall east').line } } });
    });

    test('are cleared when the document is closed', async () => {
        const uri = await opened('job "x" { basis EN1995 }\nmember M {');
        await client.diagnosticsOf(uri, 1);
        await client.close(uri);
        expect((await client.when(() => client.diagnostics.find(params => params.uri === uri && params.version === undefined))).diagnostics).toEqual([]);
    });
});

describe('inlay hints', () => {
    test('follow each member with its worst check and deflection', async () => {
        const uri = await opened(shed);
        const hints = await client.hints(uri);
        expect(hints.map(({ position: place }) => place)).toEqual([position(shed, 'member B1', 9), position(shed, 'member B2', 9)]);
        for (const { label } of hints) {
            expect(label).toMatch(/^[a-z]+ \d+ % · \d+\.\d mm = L\/\d+$/);
        }
        expect((hints[0]!.tooltip as MarkupContent).value).toMatch(/\| ok \| bending \| \d+ % \|/);
    });

    test('only those in the range that is asked for', async () => {
        const uri = await opened(shed);
        const range = { start: position(shed, 'member B2'), end: position(shed, 'load boards') };
        const hints = await client.connection.sendRequest<{ position: { line: number } }[]>('textDocument/inlayHint', { textDocument: { uri }, range });
        expect(hints.map(hint => hint.position.line)).toEqual([position(shed, 'member B2').line]);
    });

    test('are those of the text as it stands, also while it is built', async () => {
        const uri = await opened(shed);
        const [before] = await client.hints(uri);
        const heavier = replacement(shed, '1.50 kN/m2', '9.50 kN/m2');
        void client.change(uri, 2, heavier);
        const [after] = await client.hints(uri);
        expect(String(after!.label)).not.toBe(String(before!.label));
        expect(String(after!.label)).toMatch(/\d{3} % FAILS · /);
        const fresh = await opened(shed.replace('1.50 kN/m2', '9.50 kN/m2'));
        expect((await client.hints(fresh))[0]!.label).toBe(after!.label);
    });

    test('stand right after lines were put above them', async () => {
        const uri = await opened(shed);
        await client.hints(uri);
        void client.change(uri, 2, { range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }, text: '// a\n// b\n' });
        expect((await client.hints(uri))[0]!.position).toEqual({ ...position(shed, 'member B1', 9), line: position(shed, 'member B1').line + 2 });
    });

    test('a broken line costs its own member and no other', async () => {
        const whole = await client.hintLabels(await opened(shed));
        const text = shed.replace('section 75 x 200 mm', 'section 75 y y 200 mm');
        const broken = await client.hintLabels(await opened(text));
        expect(broken).toHaveLength(2);
        expect(broken).toContain(whole[0]);
        expect(broken.find(label => label !== whole[0])).toMatch(/^\d+: not computed: /);
    });

    test('say what they leave out', async () => {
        const text = shed.replace('restrained every 600 mm', 'restrained every 600 mm\n  fire 30 min');
        const [label] = await client.hintLabels(await opened(text));
        expect(label).toMatch(/ · incomplete$/);
    });
});

describe('hover', () => {
    test('on a member: all of its checks', async () => {
        const uri = await opened(shed);
        for (const needle of ['B1 "loft', 'B1\nload gear']) {
            const text = await markdown(uri, shed, needle, 1);
            expect(text).toContain('**B1**');
            for (const check of ['bending', 'shear', 'bearing', 'final']) {
                expect(text).toMatch(new RegExp(`\\| ${check} \\| \\d+ % \\|`));
            }
        }
    });

    test('on a check: formula, clause and numbers', async () => {
        const uri = await opened(shed);
        const text = await markdown(uri, shed, 'B1.bending <=', 5);
        expect(text).toMatch(/^\*\*B1\.bending\*\* \d+ % holds/);
        expect(text).toContain('EN 1995-1-1 6.1.6');
        expect(text).toMatch(/σ_m,y,d = .* = [\d.]+ MPa/);
    });

    test('on an input: how it is known', async () => {
        const uri = await opened(shed);
        expect(await markdown(uri, shed, '3.0 MPa', 1)).toBe('**brick.fk** 3.0 MPa\n\nEvidence: assumed');
    });

    test('on a strength class: its values and where they are from', async () => {
        const uri = await opened(shed);
        const text = await markdown(uri, shed, 'C24', 1);
        expect(text).toMatch(/f_m,k +24 MPa/);
        expect(text).toContain('EN 338');
    });

    test('on a quantity in other units: what it is in ours', async () => {
        const text = shed.replace('load boards  permanent 0.40', 'let reach = 10 ft\nload boards  permanent 0.40');
        expect(await markdown(await opened(text), text, '10 ft', 4)).toBe('10 ft = 3.048 m, a length: foot');
    });

    test('says nothing of a comment', async () => {
        const text = `// C24 and B1\n${shed}`;
        expect(await markdown(await opened(text), text, 'B1', 1)).toBe('');
    });
});

describe('quick fix', () => {
    test('writes the unit that is missing, and the job is sound', async () => {
        const text = shed.replace('section 100 x 250 mm', 'section 100 x 250');
        const uri = await opened(text);
        const { diagnostics } = await client.diagnosticsOf(uri, 1);
        const error = diagnostics.find(({ severity }) => severity === 1)!;
        const actions = await client.connection.sendRequest(CodeActionRequest.type, { textDocument: { uri }, range: error.range, context: { diagnostics: [error] } });
        const action = (actions ?? []).find((candidate): candidate is CodeAction => 'edit' in candidate)!;
        expect(action).toMatchObject({ kind: 'quickfix', isPreferred: true, diagnostics: [{ code: error.code }] });
        const edits = action.edit!.changes![uri] as TextEdit[];
        const mended = TextDocument.applyEdits(TextDocument.create(uri, 'padstone', 1, text), edits);
        expect(mended).toBe(shed);
        void client.change(uri, 2, ...edits.map(({ range, newText }) => ({ range, text: newText })));
        expect((await client.diagnosticsOf(uri, 2)).diagnostics.filter(({ severity }) => severity === 1)).toEqual([]);
    });

    test('none where nothing is wrong, or where another kind is asked for', async () => {
        const uri = await opened(shed.replace('section 100 x 250 mm', 'section 100 x 250'));
        const { diagnostics } = await client.diagnosticsOf(uri, 1);
        const ask = (line: number, only?: string[]) => client.connection.sendRequest(CodeActionRequest.type, {
            textDocument: { uri }, range: { start: { line, character: 0 }, end: { line, character: 1 } }, context: { diagnostics, only }
        });
        expect(await ask(1)).toEqual([]);
        const { line } = diagnostics.find(({ severity }) => severity === 1)!.range.start;
        expect(await ask(line, ['refactor'])).toEqual([]);
    });
});

describe('preview', () => {
    test('is that of the text, and says its version', async () => {
        const uri = await opened(shed);
        expect(await preview(uri)).toMatchObject({ uri, version: 1, title: 'Boat shed loft', html: expect.stringContaining('loft beam') });
        expect((await preview(uri)).stale).toBeUndefined();
    });

    test('while the text does not parse, the last good one with the reason; then the new one', async () => {
        const uri = await opened(shed);
        const good = await preview(uri);
        void client.change(uri, 2, replacement(shed, 'length 4.00 m', 'length 4.00 m } {'));
        await client.noticeOf(uri, 2);
        const stale = await preview(uri);
        expect(stale).toMatchObject({ version: 1, html: good.html, stale: expect.stringMatching(/does not parse: ./) });
        void client.change(uri, 3, { text: shed.replace('Boat shed loft', 'Boat shed attic') });
        await client.noticeOf(uri, 3);
        expect(await preview(uri)).toMatchObject({ version: 3, title: 'Boat shed attic' });
        expect((await preview(uri)).stale).toBeUndefined();
    });

    test('a value that is wrong is shown at once: the text parses', async () => {
        const uri = await opened(shed.replace('length 4.00 m', 'length 4.00 kN'));
        const { stale, html } = await preview(uri);
        expect(stale).toBeUndefined();
        expect(html).not.toMatch(/class="verdict pass"/);
    });

    test('the whole sheet is a page that stands alone, with the hash of its source', async () => {
        const uri = await opened(shed);
        const { html } = await client.connection.sendRequest<Sheet>(sheetRequest, { uri });
        expect(html).toMatch(/^<!DOCTYPE html>/);
        const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(shed));
        expect(html).toContain(Buffer.from(digest).toString('hex'));
    });

    test('a document that nobody opened is an error, and no crash', async () => {
        await expect(preview('file:///jobs/nowhere.padstone')).rejects.toThrow(/No document/);
    });
});

describe('what the language gives by itself', () => {
    test('definition, references, highlights and rename of a member', async () => {
        const uri = await opened(shed);
        const use = at(uri, shed, 'on B1', 4);
        const definition = await client.connection.sendRequest(DefinitionRequest.type, use);
        expect(definition).toMatchObject([{ targetSelectionRange: { start: position(shed, 'member B1', 7) } }]);
        const references = await client.connection.sendRequest(ReferencesRequest.type, { ...use, context: { includeDeclaration: true } });
        expect(references).toHaveLength(4);
        expect(await client.connection.sendRequest(DocumentHighlightRequest.type, use)).toHaveLength(4);
        const edit = await client.connection.sendRequest(RenameRequest.type, { ...use, newName: 'Beam' });
        const renamed = TextDocument.applyEdits(TextDocument.create(uri, 'padstone', 1, shed), edit!.changes![uri]!);
        expect(renamed).toBe(shed.replaceAll(/\bB1\b/g, 'Beam'));
    });

    test('outline, folding and completion', async () => {
        const uri = await opened(shed);
        const symbols = await client.connection.sendRequest(DocumentSymbolRequest.type, { textDocument: { uri } });
        expect(symbols!.map(({ name }) => name)).toEqual(expect.arrayContaining(['pine', 'west', 'B1', 'B2', 'boards']));
        const folds = await client.connection.sendRequest(FoldingRangeRequest.type, { textDocument: { uri } });
        expect(folds).toEqual(expect.arrayContaining([expect.objectContaining({ startLine: position(shed, 'member B1').line })]));
        const items = await client.connection.sendRequest(CompletionRequest.type, at(uri, shed, 'on B1', 3));
        expect(('items' in items! ? items.items : items!).map(({ label }) => label)).toEqual(expect.arrayContaining(['B1', 'B2']));
    });
});

test('the sail loft: every member has its hint, with the stage where it is not the last, and what is left out is said', async () => {
    const path = new URL('../../samples/sail-loft/sail-loft.padstone', import.meta.url);
    const uri = pathToFileURL(path.pathname).href;
    // Without the moisture of its new timbers, so that something is left out.
    const text = (await readFile(path, 'utf8')).replace(/\n  moisture 15 %.*/, '');
    await client.open(uri, text);
    const labels = await client.hintLabels(uri);
    expect(labels[0]).toMatch(new RegExp(`^${position(text, 'member T2').line}: [a-z]+ \\d+ %( FAILS)? · [\\d.]+ mm = L/\\d+ \\(found\\) · incomplete$`));
    expect(labels[1]).toMatch(new RegExp(`^${position(text, 'member R1').line}: butt \\d+ % FAILS · [\\d.]+ mm = L/\\d+`));
    expect((await client.noticeOf(uri, 1)).verdict).toBe('fail');

    const hanger = await markdown(uri, text, 'H1, H2', 0);
    expect(hanger).toMatch(/^\*\*H1\*\* 2 rods M12/);
    expect(hanger).toMatch(/Tension of all rods [\d.]+ to [\d.]+ kN/);
    expect(hanger).toMatch(/\| ok \| grain \| \d+ % \| .*stage relieved \| EN 1995-1-1/);
    const bending = await markdown(uri, text, 'T2.bending', 4);
    expect(bending.match(/Other stages: (.*)/)![1]!.split(', ').map(stage => stage.split(' ')[0]).sort()).toEqual(['found', 'hung', 'propped']);
    expect(bending).toContain('has to be ≤ 1');
});
