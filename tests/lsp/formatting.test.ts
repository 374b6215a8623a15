/** The formatter as an editor asks for it. */
import { DocumentFormattingRequest, DocumentOnTypeFormattingRequest, DocumentRangeFormattingRequest, type TextEdit } from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { formatText } from '../../language/src/index.js';
import { Client } from './client.js';
import { position, shed } from './jobs.js';

let client: Client;
beforeAll(async () => { client = await Client.start(); });
afterAll(async () => { expect(await client.stop()).toBe(0); });

const options = { tabSize: 2, insertSpaces: true };
let documents = 0;
async function opened(text: string) {
    const uri = `file:///jobs/set-${++documents}.padstone`;
    await client.open(uri, text);
    const applied = (edits: TextEdit[] | null) => TextDocument.applyEdits(TextDocument.create(uri, 'padstone', 1, text), edits ?? []);
    return { textDocument: { uri }, applied };
}
const untidy = shed.replaceAll('  section', '\tsection').replaceAll(' mm', 'mm').replace('{ grade', '{grade');

test('a whole document, as the command would', async () => {
    const { textDocument, applied } = await opened(untidy);
    const text = applied(await client.connection.sendRequest(DocumentFormattingRequest.type, { textDocument, options }));
    expect(text).toBe(formatText(untidy, 'x').text);
    expect(text).toBe(shed);
});

test('a selection, and nothing outside it', async () => {
    const { textDocument, applied } = await opened(untidy);
    const line = position(untidy, 'member B2').line;
    const range = { start: { line, character: 0 }, end: { line: line + 3, character: 0 } };
    const lines = applied(await client.connection.sendRequest(DocumentRangeFormattingRequest.type, { textDocument, options, range })).split('\n');
    expect(lines.slice(line, line + 3)).toEqual(shed.split('\n').slice(line, line + 3));
    expect([lines.slice(0, line), lines.slice(line + 4)]).toEqual([untidy.split('\n').slice(0, line), untidy.split('\n').slice(line + 4)]);
});

test.each([['\n', 'the line before', 1], ['}', 'the line itself', 0]] as const)('after %j %s', async (ch, _what, after) => {
    const { textDocument, applied } = await opened(untidy);
    const line = untidy.split('\n').findIndex(text => text.startsWith('timber'));
    const place = ch === '}' ? position(untidy, '"stamped") }', 12) : { line: line + after, character: 0 };
    const lines = applied(await client.connection.sendRequest(DocumentOnTypeFormattingRequest.type, { textDocument, options, position: place, ch })).split('\n');
    expect(lines[line]).toBe('timber pine { grade C24 (documented "stamped") }');
    expect(lines.filter((_, i) => i !== line)).toEqual(untidy.split('\n').filter((_, i) => i !== line));
});

test('a text that does not parse is left as it is', async () => {
    const { textDocument } = await opened(untidy.replace('4.00 m', '}'));
    expect(await client.connection.sendRequest(DocumentFormattingRequest.type, { textDocument, options })).toEqual([]);
});
