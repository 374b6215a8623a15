/** The table at the head of index.ts tells of every rule, and every rule is a file of its own. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { hazardRules, lateHazardRules } from '../../server/src/hazards/index.js';

const folder = new URL('../../server/src/hazards/', import.meta.url);
const codes = [...hazardRules, ...lateHazardRules].map(({ code }) => code);

it('each code stands once in the table and once in the list', () => {
    const table = [...readFileSync(new URL('index.ts', folder), 'utf8').matchAll(/^ \* \| ([a-z-]+) +\| (?:stop|warn|note)/gm)].map(match => match[1]);
    expect(table.sort()).toEqual([...codes].sort());
    expect(new Set(codes).size).toBe(codes.length);
});

it('each rule is in a file that is named as its code', () => {
    const files = readdirSync(folder);
    expect(codes.filter(code => !files.includes(`${code}.ts`))).toEqual([]);
    for (const code of codes) {
        expect(readFileSync(new URL(`${code}.ts`, folder), 'utf8')).toContain(`code: '${code}'`);
    }
});
