/** What is worked out between keystrokes, over the real connection. */
import { HoverRequest, InlayHintRefreshRequest, WorkDoneProgress, WorkDoneProgressCreateRequest, type MarkupContent, type ProgressToken } from 'vscode-languageserver/node';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { previewRequest, sheetRequest, type Preview, type Sheet } from '../../server/src/protocol.js';
import { Client } from './client.js';
import { position, replacement, shed } from './jobs.js';

let client: Client;
let refreshes = 0;
const begun: ProgressToken[] = [];
const ended: ProgressToken[] = [];
beforeAll(async () => {
    client = await Client.start({ workspace: { inlayHint: { refreshSupport: true } }, window: { workDoneProgress: true } });
    client.connection.onRequest(InlayHintRefreshRequest.type, () => { refreshes += 1; });
    client.connection.onRequest(WorkDoneProgressCreateRequest.type, ({ token }) => {
        client.connection.onProgress(WorkDoneProgress.type, token, value => {
            if (value.kind === 'begin') begun.push(token);
            if (value.kind === 'end') ended.push(token);
        });
    });
});
afterAll(async () => { expect(await client.stop()).toBe(0); });

const loft = shed.replace('section 100 x 250 mm (measured "tape")', 'section 100 x 250 mm (measured "tape")\n  loss 1.80 m .. 2.40 m { top 30 mm } (probed "awl")')
    .replace('require', 'breakeven B1.loss.top\nrequire').replace('grade C24 (documented "stamped")', 'grade C24 (judged "no stamp")');
let documents = 0;
async function opened(text: string): Promise<string> {
    const uri = `file:///later/job-${++documents}.padstone`;
    await client.open(uri, text);
    return uri;
}
async function until(happened: () => boolean): Promise<void> {
    for (let i = 0; i < 500 && !happened(); i++) await new Promise(resolve => setTimeout(resolve, 20));
}
const whole = (uri: string, version: number) => client.when(() => client.notices.find(notice => notice.uri === uri && notice.version === version && notice.whole));

test('the first answer does not wait for break-evens; they follow for the same text, and the hints are asked for once more', async () => {
    const before = refreshes;
    const uri = await opened(loft);
    expect(await client.noticeOf(uri, 1)).toMatchObject({ whole: false });
    const early = await client.hintLabels(uri);
    expect(early.join('\n')).not.toMatch(/until/);
    await whole(uri, 1);
    const late = await client.hintLabels(uri);
    const line = loft.split('\n').findIndex(text => text.includes('top 30 mm'));
    expect(late).toEqual(expect.arrayContaining([...early, expect.stringMatching(new RegExp(`^${line}: passes until \\d+ mm$`))]));
    const asked = loft.split('\n').findIndex(text => text.startsWith('breakeven'));
    expect(late.find(label => label.startsWith(`${asked}: `))).toMatch(/: passes until the top loss is \d+ mm; 30 mm was probed; \w+ governs$/);
    expect(late.some(label => /passes down to C\d+$/.test(label))).toBe(true);
    await until(() => refreshes > before);
    expect(refreshes - before).toBe(1);
});

test('a key gives up what belongs to the old text', async () => {
    const uri = await opened(loft);
    await client.noticeOf(uri, 1);
    await client.change(uri, 2, replacement(loft, '1.50 kN/m2', '1.60 kN/m2'));
    await whole(uri, 2);
    expect(client.notices.filter(notice => notice.uri === uri && notice.whole).map(({ version }) => version)).toEqual([2]);
});

test('a text that comes back has its break-evens at once', async () => {
    const uri = await opened(loft.replace('1.50 kN/m2', '1.35 kN/m2'));
    await whole(uri, 1);
    await client.change(uri, 2, replacement(loft.replace('1.50 kN/m2', '1.35 kN/m2'), '1.35 kN/m2', '1.36 kN/m2'));
    expect(await client.noticeOf(uri, 2)).toMatchObject({ whole: false });
    await client.change(uri, 3, replacement(loft.replace('1.50 kN/m2', '1.36 kN/m2'), '1.36 kN/m2', '1.35 kN/m2'));
    expect(await client.noticeOf(uri, 3)).toMatchObject({ whole: true });
});

describe('the preview and the exported sheet', () => {
    test('have the limits of the inputs when they are known', async () => {
        const uri = await opened(loft.replace('Boat', 'Net'));
        const sheet = client.connection.sendRequest<Sheet>(sheetRequest, { uri });
        expect((await sheet).html).toMatch(/asses until the top loss is \d+ mm/);
        await whole(uri, 1);
        expect((await client.connection.sendRequest<Preview>(previewRequest, { uri })).html).toMatch(/asses until the top loss is \d+ mm/);
    });
});

test('a close one is a diagnostic, and a text with errors has none of it', async () => {
    const near = loft.replace('1.50 kN/m2', '3.30 kN/m2');
    const uri = await opened(near);
    await whole(uri, 1);
    const all = client.diagnostics.filter(params => params.uri === uri);
    const found = all.at(-1)!.diagnostics.filter(({ code }) => code === 'guess-close');
    expect(all[0]!.diagnostics.some(({ code }) => code === 'guess-close')).toBe(false);
    expect(found.length).toBeGreaterThan(0);
    expect(found[0]).toMatchObject({ severity: 3, message: expect.stringMatching(/until/) });
    const broken = await opened(loft.replace('length 4.00 m', 'length 4.00 kN'));
    await client.noticeOf(broken, 1);
    await new Promise(resolve => setTimeout(resolve, 600));
    expect(client.notices.filter(notice => notice.uri === broken).every(notice => !notice.whole)).toBe(true);
});

test('progress is told of what takes long, and can be cancelled', async () => {
    begun.length = ended.length = 0;
    const many = Array.from({ length: 60 }, (_, i) => `load l${i} imposed A 0.0${10 + i} kN at ${(0.5 + i / 20).toFixed(2)} m on B1 (assumed)`).join('\n');
    const uri = await opened(`${loft}\n${many}\n`);
    await until(() => begun.length > 0);
    expect(begun).toHaveLength(1);
    await client.connection.sendNotification('window/workDoneProgress/cancel', { token: begun[0]! });
    await until(() => ended.length > 0);
    expect(ended).toEqual(begun);
    expect(client.notices.filter(notice => notice.uri === uri && notice.whole)).toEqual([]);
});

test('hovers: an input with its limit, a guessed grade with what a lower one does, a proof load, an option', async () => {
    const text = `${loft.replace('Boat', 'Rope')}
loadtest yard "on blocks" {
  B2 on blocks at 0.20 m, 2.80 m
  weight 100 kg at 1.50 m
  read 100 kg 2.0 mm
}
option stout "a thicker trimmer" {
  replace B2 {
    of pine
    section 100 x 200 mm
    length 3.00 m
    on west at 0.10 m bearing 100 mm
    on east at 2.90 m bearing 100 mm
    restrained every 600 mm
  }
}
`;
    const uri = await opened(text);
    await whole(uri, 1);
    const hover = async (needle: string, offset: number) => ((await client.connection.sendRequest(HoverRequest.type, { textDocument: { uri }, position: position(text, needle, offset) }))?.contents as MarkupContent).value;
    expect(await hover('top 30 mm', 5)).toMatch(/^\*\*B1\.loss\.top\*\* 30 mm\n\nEvidence: probed, "awl"\n\npasses until the top loss is \d+ mm/);
    const grade = await hover('grade C24', 7);
    expect(grade).toMatch(/EN 338/);
    expect(grade).toMatch(/Evidence: judged, "no stamp"\n\npasses down to C\d+/);
    expect(grade).toMatch(/With C22: B1\.\w+ \d+ %/);
    expect(await hover('loadtest yard', 10)).toMatch(/\| 100 kg \| [\d.]+ mm \| [\d.]+ mm to [\d.]+ mm \| 2\.0 mm \|[\s\S]*E from the readings: \d+ MPa/);
    expect(await hover('option stout', 8)).toMatch(/^\*\*stout: a thicker trimmer\*\* \w+: [\s\S]*Worst check B\d\.\w+ \d+ %/);
});
