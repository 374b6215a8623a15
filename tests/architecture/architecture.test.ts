import { mkdir, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { rules } from './rules.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

async function cruised(baseDir: string): Promise<ICruiseResult> {
    const { output } = await cruise(['language', 'server', 'client'], {
        baseDir,
        ruleSet: { forbidden: rules },
        validate: true,
        tsPreCompilationDeps: true,
        doNotFollow: { path: 'node_modules' },
        enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.js', '.mjs', '.cjs', '.json'], conditionNames: ['import', 'node', 'default'], exportsFields: ['exports'] }
    }, { extensionAlias: { '.js': ['.ts', '.tsx', '.js'] } });
    return output as ICruiseResult;
}

const broken = ({ summary }: ICruiseResult) => summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`);

describe('the architecture', () => {
    let house: ICruiseResult;
    beforeAll(async () => { house = await cruised(root); });

    test('every import keeps the rules', () => {
        expect(broken(house)).toEqual([]);
    });

    test('every import was resolved, so that the rules see it', () => {
        const modules = house.modules.filter(module => /^(language|server|client)\//.test(module.source));
        const unresolved = modules.flatMap(module => module.dependencies.filter(to => to.couldNotResolve).map(to => `${module.source} -> ${to.module}`));
        expect(unresolved.filter(path => !path.endsWith(' -> vscode'))).toEqual([]);
        expect(modules.length).toBeGreaterThan(50);
    });

    test('nothing but the entry points reads the process', async () => {
        const files = house.modules.map(module => module.source).filter(path =>
            /^(language|server|client)\/.*\.tsx?$/.test(path) && !/\.test\.tsx?$|^server\/src\/(main\.node\.ts|command\/)|extension\.node\.ts$/.test(path));
        const guilty: string[] = [];
        for (const path of files) {
            if (/\bprocess\.(env|argv|cwd|exit|stdout|stderr|platform)\b/.test(await readFile(join(root, path), 'utf8'))) {
                guilty.push(path);
            }
        }
        expect(guilty).toEqual([]);
    });
});

/** A small house that breaks one rule in each of these files. */
const offences: readonly (readonly [rule: string, from: string, imports: string])[] = [
    ['language-stands-alone', 'language/src/bad.ts', '../../server/src/results.js'],
    ['catalog-and-analysis-know-no-check-and-no-view', 'server/src/analysis/bad.ts', '../lsp/hints.js'],
    ['checks-read-actions-and-tables-only', 'server/src/checks/bad.ts', '../sheet/index.js'],
    ['views-compute-no-engineering', 'server/src/sheet/bad.ts', '../analysis/solve.js'],
    ['views-do-not-know-each-other', 'server/src/lsp/bad.ts', '../command/main.js'],
    ['sheet-knows-no-editor-and-no-command', 'server/src/sheet/worse.ts', '../lsp/hints.js'],
    ['client-knows-the-protocol-only', 'client/src/bad.ts', '../../server/src/results.js'],
    ['platform-in-entries-only', 'server/src/sheet/worst.ts', 'node:fs'],
    ['no-circle-between-folders', 'server/src/lsp/circle.ts', './hover/back.js'],
    ['no-undeclared-package', 'server/src/lsp/dev.ts', 'vitest']
];
const sound: Readonly<Record<string, string>> = {
    'server/src/results.ts': 'export const results = 1;',
    'server/src/protocol.ts': 'export const protocol = 1;',
    'server/src/lsp/hints.ts': 'export const hints = 1;',
    'server/src/lsp/hover/back.ts': "import { value } from '../circle.js'; export const back = value;",
    'server/src/json/one.ts': "import { two } from './two.js'; export const one = (): unknown => two;",
    'server/src/json/two.ts': "import { one } from './one.js'; export const two = (): unknown => one;",
    'server/src/sheet/index.ts': 'export const sheet = 1;',
    'server/src/command/main.ts': "import { readFileSync } from 'node:fs'; export const main = readFileSync;",
    'server/src/analysis/solve.ts': 'export const solve = 1;',
    'client/src/good.ts': "import { protocol } from '../../server/src/protocol.js'; export const good = protocol;",
    'package.json': '{ "name": "house", "devDependencies": { "vitest": "*" } }'
};

describe('the rules', () => {
    let folder: string;
    let found: string[];
    beforeAll(async () => {
        folder = await mkdtemp(join(tmpdir(), 'padstone-house-'));
        await symlink(join(root, 'node_modules'), join(folder, 'node_modules'));
        const bad = offences.map(([, path, imports]) => [path, `import * as other from '${imports}'; export const value = other;`] as const);
        for (const [path, text] of [...bad, ...Object.entries(sound)]) {
            await mkdir(dirname(join(folder, path)), { recursive: true });
            await writeFile(join(folder, path), text);
        }
        found = broken(await cruised(folder));
    });
    afterAll(() => rm(folder, { recursive: true }));

    test.each(offences)('%s catches %s', (rule, from) => {
        expect(found.filter(line => line.startsWith(`${rule}: ${from} -> `))).toHaveLength(1);
    });

    test('what keeps them is left alone', () => {
        const guilty = new Set(offences.map(([, from]) => from));
        expect(found.filter(line => !guilty.has(line.split(/: | -> /)[1]!))).toEqual([]);
    });

    test('none is without an offence that shows it', () => {
        expect(new Set(offences.map(([rule]) => rule))).toEqual(new Set(rules.map(rule => rule.name)));
    });
});
