/** What the extension says of itself: every word is there in both languages, every file is packed, every snippet reads. */
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import manifest from '../../package.json';
import english from '../../client/l10n/package.nls.json';
import german from '../../client/l10n/package.nls.de.json';
import bundle from '../../client/l10n/bundle.l10n.de.json';
import snippets from '../../client/snippets/padstone.json';
import { templates } from '../../client/src/templates.js';
import { evaluateText } from '../../language/src/index.js';
import { hazardRules } from '../../server/src/hazards/index.js';
import { padstone } from '../command/run.js';
import { shed } from '../lsp/jobs.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const read = (path: string): string => readFileSync(join(root, path), 'utf8');
const sources = (folder: string): string[] => readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).filter(path => /(?<!\.test)\.tsx?$/.test(path)).map(path => `${folder}/${path}`);
const { contributes } = manifest;

describe('words', () => {
    test('of the manifest stand in English and in German', () => {
        const used = [...read('package.json').matchAll(/"%([\w.-]+)%"/g)].map(([, key]) => key!);
        expect(used.length).toBeGreaterThan(20);
        for (const words of [english, german]) {
            expect(Object.keys(words).sort()).toEqual([...new Set(used)].sort());
        }
        expect(Object.keys(english).filter(key => german[key as keyof typeof german] === english[key as keyof typeof english])).toEqual([]);
    });

    test('of the extension stand in German', () => {
        const said = sources('client/src').flatMap(path => [...read(path).matchAll(/l10n\.t\(\s*'((?:[^'\\]|\\.)*)'/g)].map(([, text]) => text!));
        const offered = templates.flatMap(({ label, detail }) => [label, detail]);
        expect(Object.keys(bundle).sort()).toEqual([...new Set([...said, ...offered])].sort());
    });

    test('show nothing to a person that is not translated', () => {
        const bare = sources('client/src').flatMap(path => [...read(path).matchAll(/show(?:Information|Warning|Error)Message\(\s*['"`].*/g)].map(([text]) => `${path}: ${text}`));
        expect(bare).toEqual([]);
    });
});

describe('commands', () => {
    test('all have a title, an icon where they stand in a menu, and someone who does them', () => {
        const code = sources('client/src').map(read).join('\n');
        for (const { command, title, category } of contributes.commands) {
            expect(title).toMatch(/^%.*%$/);
            expect(category).toBe('Padstone');
            expect(code).toContain(`'${command}'`);
        }
        const known = contributes.commands.map(({ command }) => command);
        const inMenus = Object.values(contributes.menus).flat().map(({ command }) => command);
        expect(inMenus.filter(command => !known.includes(command))).toEqual([]);
        const shown = [...contributes.menus['editor/title'], ...contributes.menus['view/title']].map(({ command }) => command);
        expect(shown.filter(command => !contributes.commands.find(one => one.command === command && 'icon' in one))).toEqual([]);
    });

    test('that links of views and walkthroughs lead to are there', () => {
        const links = Object.values(english).flatMap(text => [...text.matchAll(/\(command:([\w.]+)\)/g)].map(([, command]) => command!));
        const views = contributes.views.padstone.map(({ id }) => `${id}.focus`);
        expect(links.filter(command => !contributes.commands.some(one => one.command === command) && !views.includes(command))).toEqual([]);
    });
});

test('every setting is described and read', () => {
    const code = [...sources('client/src'), ...sources('server/src/lsp')].map(read).join('\n');
    // The server asks for some as a group, `padstone.display`.
    const isRead = (name: string): boolean => code.includes(`'${name.replace('padstone.', '')}'`) || code.includes(`'${name.slice(0, name.lastIndexOf('.'))}'`) || code.includes(`'${name.slice(0, name.lastIndexOf('.')).replace('padstone.', '')}'`);
    for (const [name, setting] of Object.entries(contributes.configuration.properties)) {
        expect(setting.markdownDescription).toMatch(/^%.*%$/);
        expect(name === 'padstone.trace.server' || isRead(name), name).toBe(true);
    }
});

test('every file that the manifest names is there, and is packed', () => {
    const packed = read('.vscodeignore').split('\n').filter(line => line.startsWith('!')).map(line => new RegExp(`^${line.slice(1).replaceAll('.', '\\.').replaceAll('*', '[^/]*')}$`));
    const named = [...read('package.json').matchAll(/"(?:\.\/)?((?:client|language|dist)\/[\w./-]+\.\w+)"/g)].map(([, path]) => path!);
    expect(named.length).toBeGreaterThan(10);
    for (const path of [...named, 'client/l10n/bundle.l10n.de.json', 'package.nls.json', 'package.nls.de.json', 'client/documentation/findings.md', 'dist/padstone.cjs']) {
        expect(existsSync(join(root, path)), path).toBe(true);
        expect(packed.some(pattern => pattern.test(path)), `${path} is packed`).toBe(true);
    }
});

test.each(Object.entries(snippets))('the snippet %s reads as the language', (_, { body }) => {
    const text = body.join('\n').replace(/\$\{\d+\|([^,|}]*)[^}]*\|\}/g, '$1').replace(/\$\{\d+:([^}]*)\}/g, '$1').replace(/\$\d+/g, '');
    expect(evaluateText(text, 'snippet').findings.filter(({ code }) => ['syntax', 'unknown-unit', 'wrong-dimension', 'unit-missing'].includes(code))).toEqual([]);
});

describe('what is written about findings', () => {
    const headings = new Set([...read('client/documentation/findings.md').matchAll(/^## (.*)$/gm)].map(([, code]) => code!));

    test('has every hazard', () => expect(hazardRules.map(({ code }) => code).filter(code => !headings.has(code))).toEqual([]));

    test('has every code that the language and the analysis tell', () => {
        const told = [...sources('language/src'), ...sources('server/src')].map(read).join('\n');
        const codes = [...told.matchAll(/(?:\b(?:fail|failUnknown)\([\w.]+, |\brefuse\(\w+, \w+, |code: )'([a-z]+(?:-[a-z]+)+)'/g)].map(([, code]) => code!);
        expect(codes.length).toBeGreaterThan(80);
        expect([...new Set(codes)].filter(code => !headings.has(code))).toEqual([]);
    });
});

test('the problem matcher reads what the command prints', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'padstone-matcher-'));
    writeFileSync(join(folder, 'shed.padstone'), shed.replace('1.50 kN/m2', '9.50 kN/m2').replace('thick 330 mm', 'thick 330'));
    const { stdout } = await padstone(['check', 'shed.padstone'], { cwd: folder });
    rmSync(folder, { recursive: true });
    const { pattern } = contributes.problemMatchers[0]!;
    const found = stdout.split('\n').map(line => new RegExp(pattern.regexp).exec(line)).filter(match => match !== null);
    expect(found.length).toBeGreaterThan(1);
    for (const match of found) {
        expect(match[pattern.file]).toBe('shed.padstone');
        expect(Number(match[pattern.line])).toBeGreaterThan(0);
        expect(['error', 'warning', 'info']).toContain(match[pattern.severity]);
        expect(match[pattern.code]).toMatch(/^[a-z-]+$/);
    }
});
