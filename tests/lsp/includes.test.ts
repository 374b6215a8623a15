/** What a calculation includes: read from the disk or from the editor, and computed again when it changes. */
import { mkdtemp, mkdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { DidChangeWatchedFilesNotification, FileChangeType, InlayHintRefreshRequest } from 'vscode-languageserver/node';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { previewRequest, sheetRequest, type Preview, type Sheet } from '../../server/src/protocol.js';
import { padstone } from '../command/run.js';
import { Client } from './client.js';
import { shed } from './jobs.js';

const walls = 'masonry brick { fk 3.0 MPa (assumed) }\nwall west { of brick thick 330 mm }\nwall east { of brick thick 330 mm }\n';
const job = shed.replace(walls, 'include "parts/walls.padstone"\n');
const include = job.split('\n').findIndex(line => line.startsWith('include'));

let folder: string;
beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'padstone includes '));
    await mkdir(join(folder, 'parts'));
});
afterAll(() => rm(folder, { recursive: true }));

const uriOf = (name: string): string => pathToFileURL(join(folder, name)).href;
const save = (name: string, text: string): Promise<void> => writeFile(join(folder, name), text);

test('the scenario includes its walls', () => expect(job).not.toContain('masonry'));

describe.each([
    ['that tells of changed files', { workspace: { didChangeWatchedFiles: { dynamicRegistration: true }, inlayHint: { refreshSupport: true } } }],
    ['that tells nothing', {}]
])('with an editor %s', (_, capabilities) => {
    let client: Client;
    beforeAll(async () => { client = await Client.start(capabilities); });
    afterAll(async () => { expect(await client.stop()).toBe(0); });

    test('editor and command agree on a job whose walls are in another file', async () => {
        await save('parts/walls.padstone', walls);
        await save('same.padstone', job);
        const uri = uriOf('same.padstone');
        await client.open(uri, job);
        const labels = await client.hintLabels(uri);
        expect(labels).toHaveLength(2);
        const { diagnostics } = await client.diagnosticsOf(uri, 1);
        expect(diagnostics.filter(({ severity }) => severity === 1)).toEqual([]);
        const { stdout } = await padstone(['check', '--format', 'json', join(folder, 'same.padstone')]);
        const file = JSON.parse(stdout).files[0];
        expect(file.checks.map(({ check }: { check: string }) => check)).toContain('masonry');
        expect(file.verdict).toBe((await client.noticeOf(uri, 1)).verdict);
        await client.close(uri);
    });

    test('a file that is not there is an error at its include, until it is', async () => {
        const text = job.replace('walls.padstone', 'later.padstone');
        const uri = uriOf('late.padstone');
        await rm(join(folder, 'parts/later.padstone'), { force: true });
        await client.open(uri, text);
        const missing = (await client.diagnosticsOf(uri, 1)).diagnostics.find(({ code }) => code === 'include-missing')!;
        expect(missing.range.start.line).toBe(include);
        await save('parts/later.padstone', walls);
        await client.connection.sendNotification(DidChangeWatchedFilesNotification.type, { changes: [{ uri: uriOf('parts/later.padstone'), type: FileChangeType.Created }] });
        await client.change(uri, 2, { text: `${text}\n` });
        expect((await client.diagnosticsOf(uri, 2)).diagnostics.filter(({ code }) => code === 'include-missing')).toEqual([]);
        await client.close(uri);
    });

    test('what is wrong in an included file is said where it is included, and leads there', async () => {
        await save('parts/wrong.padstone', walls.replace('330 mm', '330 kN'));
        const text = job.replace('walls.padstone', 'wrong.padstone');
        const uri = uriOf('wrong.padstone');
        await client.open(uri, text);
        const wrong = (await client.diagnosticsOf(uri, 1)).diagnostics.find(({ message }) => message.startsWith('parts/wrong.padstone line 2:'))!;
        expect(wrong).toMatchObject({ severity: 1, range: { start: { line: include, character: 0 } } });
        expect(wrong.relatedInformation![0]!.location).toMatchObject({ uri: uriOf('parts/wrong.padstone'), range: { start: { line: 1 } } });
        await client.close(uri);
    });

    test('while an included file is not there or does not parse, the preview shows the last good sheet with the reason', async () => {
        await save('parts/walls.padstone', walls);
        const [uri, part] = [uriOf('stale.padstone'), uriOf('parts/walls.padstone')];
        const preview = () => client.connection.sendRequest<Preview>(previewRequest, { uri });
        await client.open(uri, job);
        await client.noticeOf(uri, 1);
        const good = await preview();
        expect(good.stale).toBeUndefined();
        await client.change(uri, 2, { text: job.replace('walls.padstone', 'nowhere.padstone') });
        await client.noticeOf(uri, 2);
        expect(await preview()).toMatchObject({ version: 1, html: good.html, stale: expect.stringMatching(/included file is not read: there is no file parts\/nowhere/) });
        await client.change(uri, 3, { text: job });
        await client.noticeOf(uri, 3);
        expect((await preview()).stale).toBeUndefined();
        await client.open(part, walls);
        await client.change(part, 2, { text: `${walls}wall {{` });
        await client.hints(uri);
        expect(await preview()).toMatchObject({ html: good.html, stale: expect.stringMatching(/parts\/walls\.padstone does not parse, line 4/) });
        await client.close(part);
        await client.close(uri);
    });

    test('what is typed in an included file counts at once, and no more when it is closed unsaved', async () => {
        await save('parts/walls.padstone', walls);
        const [uri, part] = [uriOf('live.padstone'), uriOf('parts/walls.padstone')];
        await client.open(uri, job);
        const members = async () => (await client.hintLabels(uri)).filter(label => label.includes(' % · '));
        const before = await members();
        const masonry = async () => (await client.connection.sendRequest<Sheet>(sheetRequest, { uri })).html.match(/B1\.masonry<\/b> <b class="number">([^<]*)/)?.[1];
        const use = await masonry();
        await client.open(part, walls);
        await client.change(part, 2, { text: walls.replace('3.0 MPa', '0.3 MPa') });
        expect(await masonry()).not.toBe(use);
        await client.close(part);
        expect(await masonry()).toBe(use);
        expect(await members()).toEqual(before);
        expect(before).toHaveLength(2);
        await client.close(uri);
    });
});

test('a change on the disk is shown without a key being pressed, and hints are asked for anew', async () => {
    const client = await Client.start({ workspace: { didChangeWatchedFiles: { dynamicRegistration: true }, inlayHint: { refreshSupport: true } } });
    let refreshed = 0;
    const asked = new Promise<void>(resolve => client.connection.onRequest(InlayHintRefreshRequest.type, () => {
        refreshed += 1;
        resolve();
    }));
    await client.when(() => client.registrations.find(({ method }) => method === DidChangeWatchedFilesNotification.method));
    await save('parts/walls.padstone', walls);
    const uri = uriOf('watched.padstone');
    await client.open(uri, job);
    await client.hints(uri);
    const told = client.notices.length;
    await save('parts/walls.padstone', walls.replace('3.0 MPa', '0.1 MPa'));
    await client.connection.sendNotification(DidChangeWatchedFilesNotification.type, { changes: [{ uri: uriOf('parts/walls.padstone'), type: FileChangeType.Changed }] });
    await client.when(() => client.notices.slice(told).find(({ summary }) => /B1\.masonry/.test(summary)));
    expect(await client.hintLabels(uri)).toEqual(expect.arrayContaining([expect.stringMatching(/masonry \d+ % FAILS/)]));
    await asked;
    expect(refreshed).toBeLessThanOrEqual(2);
    expect(await client.stop()).toBe(0);
});
