/** What an editor asks beyond one open document: diagnostics of a folder, results in words, files through the editor, mending. */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import {
    CancellationTokenSource, CodeActionRequest, CodeLensRequest, DiagnosticRefreshRequest, DidChangeWatchedFilesNotification, DocumentDiagnosticRequest, FileChangeType, LSPErrorCodes, WorkspaceDiagnosticRequest,
    type CodeAction, type FullDocumentDiagnosticReport, type InlayHintLabelPart, type WorkspaceFullDocumentDiagnosticReport
} from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
    breakEvenCommand, calculationRequest, jobsRequest, openSheetCommand, overviewRequest, readDirectoryRequest, readFileRequest,
    type EditorOffer, type Overview, type ReadDirectoryAnswer, type ReadParams
} from '../../server/src/protocol.js';
import { Client } from './client.js';
import { shed } from './jobs.js';

const heavy = shed.replace('1.50 kN/m2', '9.50 kN/m2');
const offer: EditorOffer = { files: true, commands: [openSheetCommand, breakEvenCommand], documentation: 'https://example.invalid/findings#{code}' };
const pulling = { textDocument: { diagnostic: {} }, workspace: { diagnostics: { refreshSupport: true } } };

let folder: string;
let client: Client;
const uriOf = (name: string): string => pathToFileURL(join(folder, name)).href;

beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'padstone folder '));
    await writeFile(join(folder, 'sound.padstone'), shed);
    await writeFile(join(folder, 'heavy.padstone'), heavy);
    await writeFile(join(folder, 'notes.txt'), 'member');
    client = await Client.start(pulling, undefined, { workspaceFolders: [{ uri: pathToFileURL(folder).href, name: 'jobs' }], initializationOptions: offer });
    client.connection.onRequest(DiagnosticRefreshRequest.type, () => {});
});
afterAll(async () => {
    expect(await client.stop()).toBe(0);
    await rm(folder, { recursive: true });
});

const pull = async (uri: string, previousResultId?: string) =>
    await client.connection.sendRequest(DocumentDiagnosticRequest.type, { textDocument: { uri }, previousResultId }) as FullDocumentDiagnosticReport;
const whole = async (previousResultIds: { uri: string; value: string }[] = []) => (await client.connection.sendRequest(WorkspaceDiagnosticRequest.type, { previousResultIds })).items;

describe('diagnostics that are asked for', () => {
    test('of a document: those that others are sent, each with where more is written, and none is sent besides', async () => {
        const uri = uriOf('heavy.padstone');
        await client.open(uri, heavy);
        const { kind, items, resultId } = await pull(uri);
        expect(kind).toBe('full');
        expect(items.find(({ code }) => code === 'check-fails')).toMatchObject({ severity: 1, codeDescription: { href: 'https://example.invalid/findings#check-fails' } });
        expect(await pull(uri, resultId)).toEqual({ kind: 'unchanged', resultId });
        await client.change(uri, 2, { text: shed });
        expect((await pull(uri, resultId)).kind).toBe('full');
        expect(client.diagnostics).toEqual([]);
        await client.close(uri);
    });

    test('given up for a newer text they end as given up, which an editor does not take for a failure', async () => {
        const uri = uriOf('typed.padstone');
        await client.open(uri, shed);
        await pull(uri);
        await client.change(uri, 2, { text: heavy });
        const giveUp = new CancellationTokenSource();
        const asked = client.connection.sendRequest(DocumentDiagnosticRequest.type, { textDocument: { uri } }, giveUp.token);
        giveUp.cancel();
        await expect(asked).rejects.toMatchObject({ code: LSPErrorCodes.RequestCancelled });
        expect((await pull(uri)).items.map(({ code }) => code)).toContain('check-fails');
        await client.close(uri);
    });

    test('of the folder: every calculation that is not open; the same is said once', async () => {
        const reports = await whole() as WorkspaceFullDocumentDiagnosticReport[];
        expect(reports.map(({ uri }) => uri).sort()).toEqual([uriOf('heavy.padstone'), uriOf('sound.padstone')]);
        const errors = Object.fromEntries(reports.map(({ uri, items }) => [uri, items.filter(({ severity }) => severity === 1).length]));
        expect(errors[uriOf('sound.padstone')]).toBe(0);
        expect(errors[uriOf('heavy.padstone')]).toBeGreaterThan(0);

        const known = reports.map(({ uri, resultId }) => ({ uri, value: resultId! }));
        expect((await whole(known)).map(({ kind }) => kind)).toEqual(['unchanged', 'unchanged']);
        await writeFile(join(folder, 'heavy.padstone'), shed);
        await client.connection.sendNotification(DidChangeWatchedFilesNotification.type, { changes: [{ uri: uriOf('heavy.padstone'), type: FileChangeType.Changed }] });
        expect(Object.fromEntries((await whole(known)).map(({ uri, kind }) => [uri, kind]))).toEqual({ [uriOf('heavy.padstone')]: 'full', [uriOf('sound.padstone')]: 'unchanged' });
        await writeFile(join(folder, 'heavy.padstone'), heavy);
        await client.connection.sendNotification(DidChangeWatchedFilesNotification.type, { changes: [{ uri: uriOf('heavy.padstone'), type: FileChangeType.Changed }] });
    });
});

describe('results in words', () => {
    test('of a file that nobody opened', async () => {
        expect(await client.connection.sendRequest(jobsRequest)).toEqual([uriOf('heavy.padstone'), uriOf('sound.padstone')]);
        const overview = await client.connection.sendRequest<Overview>(overviewRequest, { uri: uriOf('heavy.padstone') });
        expect(overview).toMatchObject({ title: 'Boat shed loft', verdict: 'fail', errors: [] });
        expect(overview.subjects.map(({ name, state }) => `${name} ${state}`)).toEqual(['B1 fails', 'B2 holds']);
        expect(overview.subjects[0]!.headline).toMatch(/^[a-z]+ \d{3} % FAILS · /);
        expect(overview.subjects[0]!.checks.find(({ check }) => check === 'bending')).toMatchObject({ id: 'B1.bending', pass: false, use: expect.stringMatching(/^\d{3} %$/), clause: expect.stringContaining('EN 1995-1-1') });
        expect(overview.requirements).toMatchObject([{ text: 'B1.bending <= 100 %', holds: false, line: heavy.split('\n').findIndex(line => line.startsWith('require')) + 1 }]);
        expect(overview.hazards.map(({ code }) => code)).toContain('bearing-on-weak-masonry');
    });

    test('a check with its numbers', async () => {
        const text = await client.connection.sendRequest<string>(calculationRequest, { uri: uriOf('heavy.padstone'), id: 'B1.bending' });
        expect(text).toMatch(/^\*\*B1\.bending\*\* \d{3} % \*\*FAILS\*\*[^]*σ_m,y,d = /);
        expect(await client.connection.sendRequest(calculationRequest, { uri: uriOf('heavy.padstone'), id: 'B9.bending' })).toBeNull();
    });

    test('of no file: none', async () => expect(await client.connection.sendRequest(overviewRequest, { uri: uriOf('none.padstone') })).toBeNull());
});

test('hints and lenses lead to the sheet', async () => {
    const uri = uriOf('sound.padstone');
    await client.open(uri, shed);
    const line = shed.split('\n').findIndex(text => text.startsWith('member B1')) + 1;
    const [hint] = await client.hints(uri);
    expect((hint!.label as InlayHintLabelPart[])[0]!.command).toMatchObject({ command: openSheetCommand, arguments: [uri, line] });
    const lenses = (await client.connection.sendRequest(CodeLensRequest.type, { textDocument: { uri } }))!;
    expect(lenses.map(({ command }) => `${command!.title} ${command!.arguments![1]}`)).toEqual(expect.arrayContaining(['$(open-preview) sheet 1', '$(pulse) break-evens 1', `$(open-preview) sheet here ${line}`]));
    await client.close(uri);
});

describe('mending', () => {
    let documents = 0;
    /** What each offered action makes of the text. */
    async function mended(text: string, code: string): Promise<Record<string, string>> {
        const uri = uriOf(`mend-${++documents}.padstone`);
        await client.open(uri, text);
        const { items } = await pull(uri);
        const finding = items.find(item => item.code === code)!;
        expect(finding, `there is a finding ${code} among ${items.map(item => item.code).join(', ')}`).toBeDefined();
        const actions = await client.connection.sendRequest(CodeActionRequest.type, { textDocument: { uri }, range: finding.range, context: { diagnostics: [finding] } }) as CodeAction[];
        const made = Object.fromEntries(actions.map(({ title, edit }) => [title, TextDocument.applyEdits(TextDocument.create(uri, 'padstone', 1, text), edit!.changes![uri]!)]));
        await client.close(uri);
        return made;
    }

    test('a member without supports gets one, then another', async () => {
        const none = shed.replace(/ {2}on (west|east) at 0.10 m bearing 100 mm\n| {2}on east at 2.90 m bearing 100 mm\n/g, '');
        const one = (await mended(none, 'no-support'))['Insert a bearing on west']!;
        expect(one).toContain('  length 3.00 m\n  on west at 0.10 m bearing 100 mm\n');
        const two = (await mended(one, 'mechanism'))['Insert a bearing on east']!;
        expect(two).toContain('  on west at 0.10 m bearing 100 mm\n  on east at 2.90 m bearing 100 mm\n');
    });

    test('a bearing that lifts is tied', async () => {
        const lifting = shed.replace('load boards', 'load gust wind -9 kN at 0.50 m on B2\nload boards');
        const tied = await mended(lifting, 'uplift-not-tied');
        expect(tied['Say that it is tied to west']).toContain('on west at 0.10 m bearing 100 mm tied\n');
        const uri = uriOf('tied.padstone');
        await client.open(uri, tied['Say that it is tied to west']!);
        expect((await pull(uri)).items.filter(({ message }) => message.startsWith('B2 lifts off west'))).toEqual([]);
        await client.close(uri);
    });
});

test('where there is no disk, files come through the editor', async () => {
    const files: Record<string, string> = { 'virtual:/loft/job.padstone': '', 'virtual:/loft/parts/walls.padstone': 'masonry brick { fk 3.0 MPa (assumed) }\nwall west { of brick thick 330 mm }\nwall east { of brick thick 330 mm }\n' };
    const job = shed.replace(/masonry brick.*\nwall west.*\nwall east.*\n/, 'include "parts/walls.padstone"\n');
    files['virtual:/loft/job.padstone'] = job;
    const virtual = await Client.start({}, undefined, { workspaceFolders: [{ uri: 'virtual:/loft', name: 'loft' }], initializationOptions: offer });
    virtual.connection.onRequest(readFileRequest, ({ uri }: ReadParams) => files[uri] ?? null);
    virtual.connection.onRequest(readDirectoryRequest, ({ uri }: ReadParams): ReadDirectoryAnswer =>
        uri.endsWith('loft') ? [{ uri: 'virtual:/loft/job.padstone', folder: false }, { uri: 'virtual:/loft/parts', folder: true }] : [{ uri: 'virtual:/loft/parts/walls.padstone', folder: false }]);
    expect(await virtual.connection.sendRequest(jobsRequest)).toEqual(['virtual:/loft/job.padstone', 'virtual:/loft/parts/walls.padstone']);
    await virtual.open('virtual:/loft/job.padstone', job);
    const { diagnostics } = await virtual.diagnosticsOf('virtual:/loft/job.padstone', 1);
    expect(diagnostics.filter(({ severity }) => severity === 1)).toEqual([]);
    expect((await virtual.hints('virtual:/loft/job.padstone'))).toHaveLength(2);
    expect(await virtual.stop()).toBe(0);
});
