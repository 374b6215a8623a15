/** Bad input, haste and disorder: the server lives on, and never answers about another text than the newest. */
import { CancellationTokenSource, InlayHintRequest, LSPErrorCodes } from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { previewRequest } from '../../server/src/protocol.js';
import { Client } from './client.js';
import { position, replacement, shed } from './jobs.js';

let client: Client;
beforeAll(async () => { client = await Client.start(); });
afterAll(async () => { expect(await client.stop()).toBe(0); });

let documents = 0;
const newUri = () => `file:///jobs/bad-${++documents}.padstone`;

/** The server still computes a sound job. */
async function expectAlive(): Promise<void> {
    const uri = newUri();
    await client.open(uri, shed);
    expect(await client.hintLabels(uri)).toHaveLength(2);
    await client.close(uri);
}

/** Pseudo-random, so that a failure can be seen again. */
function noise(length: number, seed = 1): string {
    let state = seed;
    return Array.from({ length }, () => {
        state = (state * 1103515245 + 12345) % 2147483648;
        return String.fromCharCode(state % 65536);
    }).join('');
}

const fiveMegabytes = 'load x permanent 1 kN at 1 m on B1\n'.repeat(150_000);
const bad: readonly (readonly [name: string, text: string, message: RegExp])[] = [
    ['an empty document', '', /no job/],
    ['binary noise', `\0${noise(20_000)}`, /binary/],
    ['noise without a nought', noise(20_000).replaceAll('\0', ''), /no meaning|not read/],
    ['5 MB of text', fiveMegabytes, /too long/],
    ['an endless line of brackets', `job "x" { ${'('.repeat(20_000)}`, /not a statement/],
    ['a text that is not closed', 'job "Boat shed', /not closed/],
    ['1e308', shed.replace('1.50 kN/m2', '1e308 kN/m2'), /too large/],
    ['1e999', shed.replace('100 x 250 mm', '1e999 x 250 mm'), /too large/],
    ['an unknown unit', shed.replace('4.00 m', '4.00 furlong'), /furlong/],
    ['a wrong dimension', shed.replace('4.00 m', '4.00 kN'), /length/],
    ['an unknown name', shed.replace('of pine', 'of oak'), /oak/],
    ['a member without supports', shed.replaceAll(/^ {2}on .*$/gm, ''), /has no support/],
    ['a support outside the member', shed.replace('3.90 m bearing', '9.90 m bearing'), /past the end/],
    ['a load on nothing', shed.replace('1.20 m on B1\nload gear', '1.20 m on B9\nload gear'), /B9/],
    ['a negative size', shed.replace('100 x 250 mm', '-100 x 250 mm'), /more than nought/],
    ['a circle of lets', `${shed}let a = b\nlet b = a\n`, /circle/i]
];

describe('bad input', () => {
    test.each(bad)('%s: an error, no pass, and the server lives on', async (_name, text, message) => {
        const uri = newUri();
        await client.open(uri, text);
        const { diagnostics } = await client.diagnosticsOf(uri, 1);
        const errors = diagnostics.filter(({ severity }) => severity === 1);
        expect(errors.map(error => error.message).join('\n')).toMatch(message);
        expect(diagnostics.length).toBeLessThanOrEqual(500);
        expect((await client.noticeOf(uri, 1)).verdict).not.toBe('pass');
        expect(await client.hints(uri)).toBeInstanceOf(Array);
        expect(await client.connection.sendRequest(previewRequest, { uri })).toMatchObject({ version: 1 });
        await client.close(uri);
        await expectAlive();
    });

    test('a text that grows too long and back is sound again', async () => {
        const uri = newUri();
        await client.open(uri, shed);
        const before = await client.hintLabels(uri);
        await client.change(uri, 2, { text: fiveMegabytes });
        expect(await client.hintLabels(uri)).toEqual([]);
        await client.change(uri, 3, { text: shed });
        expect(await client.hintLabels(uri)).toEqual(before);
    });
});

/** Takes a while to build. */
const long = shed + Array.from({ length: 3000 }, (_, i) => `load n${i} permanent 0.01 kN at 1.00 m on B2\n`).join('');

describe('haste', () => {
    test('hints after a burst of keys are those of the last', async () => {
        const uri = newUri();
        await client.open(uri, shed);
        const digit = position(shed, '1.50 kN/m2');
        const key = (version: number, text: string) => client.change(uri, version, { range: { start: digit, end: { ...digit, character: digit.character + 1 } }, text });
        for (let version = 2; version <= 40; version++) {
            void key(version, String(version % 10));
        }
        void key(41, '9');
        const labels = await client.hintLabels(uri);
        const fresh = newUri();
        await client.open(fresh, shed.replace('1.50 kN/m2', '9.50 kN/m2'));
        expect(labels).toEqual(await client.hintLabels(fresh));
        await client.noticeOf(uri, 41);
        const versions = client.notices.filter(notice => notice.uri === uri).map(notice => notice.version);
        expect(versions).toEqual([...versions].sort((a, b) => a - b));
        expect(new Set(versions).size).toBe(versions.length);
        expect(versions.length).toBeLessThan(41);
    });

    test('after any edits, what is shown is what a fresh document shows', async () => {
        const piece = fc.constantFrom('', ' ', '\n', '}', '{', '"', '// ', '/*', '*/', '1', ' mm', ' kN', 'member B3 { of pine }\n', 'load x permanent 1 kN at 1 m on B1\n', '😀', '\r\n');
        const edit = fc.record({ start: fc.nat(shed.length), length: fc.nat(12), text: piece });
        await fc.assert(fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 25 }), async edits => {
            const uri = newUri();
            let document = TextDocument.create(uri, 'padstone', 1, shed);
            void client.open(uri, shed);
            for (const { start, length, text } of edits) {
                const from = Math.min(start, document.getText().length);
                const range = { start: document.positionAt(from), end: document.positionAt(from + length) };
                document = TextDocument.update(document, [{ range, text }], document.version + 1);
                void client.change(uri, document.version, { range, text });
            }
            const labels = await client.hintLabels(uri);
            const { diagnostics } = await client.diagnosticsOf(uri, document.version);
            const fresh = newUri();
            await client.open(fresh, document.getText());
            expect(labels).toEqual(await client.hintLabels(fresh));
            expect(JSON.stringify(diagnostics).replaceAll(uri, fresh)).toBe(JSON.stringify((await client.diagnosticsOf(fresh, 1)).diagnostics));
            await Promise.all([client.close(uri), client.close(fresh)]);
        }), { numRuns: 40, seed: 2 });
    });

    test('a build that is behind the text is given up for the next', async () => {
        const uri = newUri();
        await client.open(uri, long);
        for (let version = 2; version <= 6; version++) {
            void client.change(uri, version, replacement(long, 'Boat shed loft', 'Boat shed loft'));
            await new Promise(resolve => setTimeout(resolve, 5));
        }
        await client.noticeOf(uri, 6);
        expect(client.notices.filter(notice => notice.uri === uri).length).toBeLessThan(6);
        expect(client.diagnostics.filter(params => params.uri === uri).map(params => params.version).at(-1)).toBe(6);
    });

    test('a request that is cancelled while it waits for a build ends as cancelled', async () => {
        const uri = newUri();
        void client.open(uri, long);
        const source = new CancellationTokenSource();
        const range = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } };
        const request = client.connection.sendRequest(InlayHintRequest.type, { textDocument: { uri }, range }, source.token);
        source.cancel();
        await expect(request).rejects.toMatchObject({ code: LSPErrorCodes.RequestCancelled });
        expect(await client.hintLabels(uri)).toHaveLength(2);
    });

    test('closing while it is built, and opening again under an older number', async () => {
        const uri = newUri();
        for (let round = 0; round < 5; round++) {
            void client.open(uri, shed, 7);
            void client.change(uri, 8, replacement(shed, '1.50 kN/m2', '2.50 kN/m2'));
            void client.close(uri);
        }
        await client.open(uri, shed, 1);
        expect(await client.hintLabels(uri)).toHaveLength(2);
        expect((await client.noticeOf(uri, 1)).uri).toBe(uri);
    });

    test('a request for a document that was just closed is refused, and the server lives on', async () => {
        const uri = newUri();
        void client.open(uri, shed);
        void client.close(uri);
        await client.connection.sendRequest(previewRequest, { uri }).catch(() => undefined);
        await expectAlive();
    });

    test('several documents at once each have their own', async () => {
        const jobs = ['1.50', '2.50', '3.50'].map(load => ({ uri: newUri(), text: shed.replace('1.50 kN/m2', `${load} kN/m2`) }));
        jobs.forEach(({ uri, text }) => void client.open(uri, text));
        const labels = await Promise.all(jobs.map(({ uri }) => client.hintLabels(uri)));
        expect(new Set(labels.map(([first]) => first)).size).toBe(3);
        expect(new Set(labels.map(([, second]) => second)).size).toBe(1);
    });
});
