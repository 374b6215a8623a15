/** Names over files: definition, references, rename, who uses a detail, symbols of the folder. */
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import {
    CallHierarchyIncomingCallsRequest, CallHierarchyOutgoingCallsRequest, CallHierarchyPrepareRequest, DefinitionRequest, DidChangeWatchedFilesNotification, DocumentLinkRequest,
    FileChangeType, LinkedEditingRangeRequest, PrepareRenameRequest, ReferencesRequest, RenameRequest, WorkspaceSymbolRequest,
    type Location, type LocationLink
} from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Client } from './client.js';
import { position } from './jobs.js';

const details = `detail rodHanger (old: member, new: member, at: length, rod: thread = M12) {
  hanger carries old at at from new at at {
    rods 2 rod grade 4.6
    washers 40 x 6 mm
  }
}
detail pair (old: member, new: member, at: length) {
  let half = 0.30 m
  use rodHanger left (old: old, new: new, at: at - half)
  use rodHanger right (old: old, new: new, at: at + half)
}
`;
const member = (name: string, at: string): string => `member ${name} {
  of C24
  section 100 x 200 mm (measured)
  length 4.00 m
  on west at 0.10 m bearing 150 mm
  on east at 3.90 m bearing 150 mm
}
${at}`;
const loft = `job "Rope walk, loft" {
  service class 2
}
include "details/hangers.padstone"
wall west { thick 330 mm }
wall east { thick 330 mm }
${member('Old', '')}${member('New', '')}use pair P (old: Old, new: New, at: 2.00 m)
use rodHanger H (old: Old, new: New, at: 1.00 m, rod: M16)
load boards permanent 0.50 kN/m on Old
require P.left.rods <= 90 %
`;
const shed = loft.replace('Rope walk, loft', 'Rope walk, shed').replace(/use pair.*\n/, '').replace(/require.*\n/, '');

let folder: string;
let client: Client;
const uriOf = (name: string): string => pathToFileURL(join(folder, name)).href;
const texts: Record<string, string> = { 'loft.padstone': loft, 'shed.padstone': shed, 'details/hangers.padstone': details };
const at = (name: string, needle: string, offset = 0) => ({ textDocument: { uri: uriOf(name) }, position: position(texts[name]!, needle, offset) });

beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'padstone names '));
    await mkdir(join(folder, 'details'));
    await mkdir(join(folder, 'node_modules'));
    await writeFile(join(folder, 'node_modules/other.padstone'), details);
    for (const [name, text] of Object.entries(texts)) {
        await writeFile(join(folder, name), text);
    }
    client = await Client.start({ workspace: { workspaceFolders: true } }, undefined, { workspaceFolders: [{ uri: pathToFileURL(folder).href, name: 'jobs' }] });
    // The job alone is open: the rest is on the disk.
    await client.open(uriOf('loft.padstone'), loft);
});
afterAll(async () => {
    expect(await client.stop()).toBe(0);
    await rm(folder, { recursive: true });
});

const definition = (name: string, needle: string, offset = 0) => client.connection.sendRequest(DefinitionRequest.type, at(name, needle, offset)) as Promise<LocationLink[] | null>;
const references = async (name: string, needle: string, offset = 0): Promise<string[]> => {
    const found = await client.connection.sendRequest(ReferencesRequest.type, { ...at(name, needle, offset), context: { includeDeclaration: true } }) as Location[];
    return found.map(({ uri, range }) => `${uri.slice(pathToFileURL(folder).href.length + 1)}:${range.start.line}`);
};
const lineOf = (name: string, needle: string): number => position(texts[name]!, needle).line;

describe('definition', () => {
    test.each([
        ['use pair', 5, 'details/hangers.padstone', 'detail pair', 7],
        ['at: 2.00', 1, 'details/hangers.padstone', 'pair (old: member, new: member, at', 32],
        ['P.left', 3, 'details/hangers.padstone', 'rodHanger left', 10],
        ['on Old', 4, 'loft.padstone', 'member Old', 7],
        ['on west', 4, 'loft.padstone', 'wall west', 5]
    ])('of what stands at %s leads to its name', async (needle, offset, file, target, inside) => {
        const [link] = (await definition('loft.padstone', needle, offset))!;
        expect(link).toMatchObject({ targetUri: uriOf(file), targetSelectionRange: { start: position(texts[file]!, target, inside) } });
    });

    test('of an include is the file', async () => {
        const [link] = (await definition('loft.padstone', '"details', 4))!;
        expect(link!.targetUri).toBe(uriOf('details/hangers.padstone'));
        const links = await client.connection.sendRequest(DocumentLinkRequest.type, { textDocument: { uri: uriOf('loft.padstone') } });
        expect(links).toMatchObject([{ target: uriOf('details/hangers.padstone'), range: { start: { line: lineOf('loft.padstone', 'include') } } }]);
    });

    test('of a strength class there is none', async () => expect(await definition('loft.padstone', 'of C24', 4)).toBeNull());
});

describe('references', () => {
    test('of a detail stand in every file of the folder, and in no other', async () => {
        expect((await references('loft.padstone', 'use rodHanger', 5)).sort()).toEqual([
            'details/hangers.padstone:0', 'details/hangers.padstone:8', 'details/hangers.padstone:9',
            `loft.padstone:${lineOf('loft.padstone', 'use rodHanger')}`, `shed.padstone:${lineOf('shed.padstone', 'use rodHanger')}`
        ].sort());
    });

    test('of a member are those of its own file', async () => {
        const lines = ['member Old', 'use pair', 'use rodHanger', 'on Old'].map(needle => `loft.padstone:${lineOf('loft.padstone', needle)}`);
        expect((await references('loft.padstone', 'on Old', 4)).sort()).toEqual(lines.sort());
    });

    test('of a parameter are in its detail and in the uses of that detail', async () => {
        await client.open(uriOf('details/hangers.padstone'), details);
        expect((await references('details/hangers.padstone', 'rod: thread', 1)).sort()).toEqual([
            'details/hangers.padstone:0', 'details/hangers.padstone:2', `loft.padstone:${lineOf('loft.padstone', 'use rodHanger')}`, `shed.padstone:${lineOf('shed.padstone', 'use rodHanger')}`
        ].sort());
        await client.close(uriOf('details/hangers.padstone'));
    });
});

describe('rename', () => {
    const rename = (newName: string, needle = 'use rodHanger', offset = 5) => client.connection.sendRequest(RenameRequest.type, { ...at('loft.padstone', needle, offset), newName });

    test('of a detail changes every file that uses it', async () => {
        const { changes } = (await rename('twoRods'))!;
        const renamed = Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, TextDocument.applyEdits(TextDocument.create('', '', 1, text), changes![uriOf(name)] ?? [])]));
        expect(renamed).toEqual(Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, text.replaceAll('rodHanger', 'twoRods')])));
    });

    test.each([['member', /word of the language/], ['2rods', /cannot be a name/], ['pair', /already the name/]])('to %s is refused', async (newName, message) => {
        await expect(rename(newName)).rejects.toThrow(message);
    });

    test('is offered where a name stands, and nowhere else', async () => {
        const prepare = (needle: string, offset: number) => client.connection.sendRequest(PrepareRenameRequest.type, at('loft.padstone', needle, offset));
        expect(await prepare('on Old', 4)).toMatchObject({ start: position(loft, 'on Old', 3), end: position(loft, 'on Old', 6) });
        expect(await prepare('section 100', 3)).toBeNull();
        expect(await prepare('of C24', 4)).toBeNull();
    });

    test('while typing is for what no other file names', async () => {
        const linked = (needle: string, offset: number) => client.connection.sendRequest(LinkedEditingRangeRequest.type, at('loft.padstone', needle, offset));
        expect((await linked('member Old', 8))!.ranges).toHaveLength(4);
        expect(await linked('use rodHanger', 5)).toBeNull();
    });
});

test('a detail tells who uses it, and what it uses', async () => {
    const [item] = (await client.connection.sendRequest(CallHierarchyPrepareRequest.type, at('loft.padstone', 'use rodHanger', 5)))!;
    expect(item).toMatchObject({ name: 'rodHanger', detail: '(old: member, new: member, at: length, rod: thread = M12)', uri: uriOf('details/hangers.padstone') });
    const users = await client.connection.sendRequest(CallHierarchyIncomingCallsRequest.type, { item: item! });
    expect(users!.map(({ from, fromRanges }) => `${from.name} ${fromRanges.length}`).sort()).toEqual(['Rope walk, loft 1', 'Rope walk, shed 1', 'pair 2']);
    const pair = users!.find(({ from }) => from.name === 'pair')!.from;
    const used = await client.connection.sendRequest(CallHierarchyOutgoingCallsRequest.type, { item: pair });
    expect(used).toMatchObject([{ to: { name: 'rodHanger' }, fromRanges: [{ start: { line: 8 } }, { start: { line: 9 } }] }]);
});

test('symbols of the folder are those of every file; a new file is among them', async () => {
    const symbols = async (query: string) => (await client.connection.sendRequest(WorkspaceSymbolRequest.type, { query }))!.map(({ name, containerName }) => `${name} (${containerName ?? ''})`).sort();
    expect(await symbols('Old')).toEqual(['Old (Rope walk, loft)', 'Old (Rope walk, shed)']);
    expect(await symbols('rodHanger')).toEqual(['rodHanger ()']);
    await writeFile(join(folder, 'barn.padstone'), 'job "Barn" { service class 2 }\nlet bay = 2 m\n');
    await client.connection.sendNotification(DidChangeWatchedFilesNotification.type, { changes: [{ uri: uriOf('barn.padstone'), type: FileChangeType.Created }] });
    expect(await symbols('bay')).toEqual(['bay (Barn)']);
});
