/**
 * One suite, two hosts: a desktop VS Code where `PADSTONE_VSCODE` names one, else the real workbench in a browser.
 * The suite runs in the extension host, on the extension as it is developed here.
 */
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as esbuild from 'esbuild';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { runTests } from '@vscode/test-electron';
import { findEditor, runSuite, type Suite } from './host.js';
import type { SuiteResult } from './suite/index.js';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '../..');
const desktop = process.env['PADSTONE_VSCODE'];
const installation = desktop === undefined ? findEditor() : undefined;
/** ms. */
const limit = 180_000;

const closed = `job "Cart shed" {
  service class 2
}
wall west { thick 330 mm }
wall east { thick 330 mm }
member B1 {
  of C24
  section 75 x 200
  length 3.00 m
  on west at 0.10 m bearing 100 mm
  on east at 2.90 m bearing 100 mm
}
`;

let folder: string;
beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'padstone-suite-'));
    cpSync(join(root, 'samples/sail-loft'), folder, { recursive: true });
    writeFileSync(join(folder, 'closed.padstone'), closed);
    writeFileSync(join(folder, 'heavy.padstone'), `${closed.replace('75 x 200', '75 x 200 mm')}load hay imposed E 9 kN/m on B1\n`);
    writeFileSync(join(folder, 'messy.padstone'), closed.replace('75 x 200', '75 x 200 mm').replace('Cart shed', 'Wood shed'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it.runIf(desktop !== undefined || installation !== undefined)('the suite passes in a real VS Code', { timeout: limit }, async () => {
    const suite: Suite = { extension: root.replace(/\/$/, ''), tests: join(root, 'dist/test/suite.cjs'), result: `${folder}.json` };
    await esbuild.build({
        entryPoints: [join(here, 'suite/index.ts')], outfile: suite.tests, bundle: true, platform: 'node', format: 'cjs', target: 'node20', external: ['vscode', 'mocha'], logLevel: 'warning'
    });
    const env = { PADSTONE_SUITE_RESULT: suite.result, PADSTONE_SUITE_EXTENSION: suite.extension };
    let log: readonly string[] = [];
    try {
        if (desktop !== undefined) {
            await runTests({
                vscodeExecutablePath: desktop, extensionDevelopmentPath: suite.extension, extensionTestsPath: suite.tests, extensionTestsEnv: env,
                launchArgs: [folder, '--disable-extensions', '--disable-workspace-trust', '--skip-welcome', '--user-data-dir', `${folder}.profile`]
            }).catch(() => undefined);   // what failed stands in the result
        } else {
            log = await runSuite(installation!, suite, folder, env, limit - 30_000);
        }
        expect(existsSync(suite.result), `the extension host ran the suite to its end; the editor said ${log.join('\n')}`).toBe(true);
        const { passed, failed }: SuiteResult = JSON.parse(readFileSync(suite.result, 'utf8'));
        expect(failed).toEqual([]);
        expect(passed.length).toBeGreaterThanOrEqual(12);
    } finally {
        rmSync(suite.result, { force: true });
        rmSync(`${folder}.profile`, { recursive: true, force: true });
    }
});
