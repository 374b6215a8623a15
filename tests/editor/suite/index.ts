/** Runs in the extension host of a real VS Code, on the desktop or in the workbench of a browser: the same tests in both. */
import { writeFileSync } from 'node:fs';
import * as library from 'mocha';
import type MochaClass from 'mocha';

/** A host that dies says nothing: whoever started it looks for what is written here. */
export interface SuiteResult {
    readonly passed: readonly string[];
    readonly failed: readonly { readonly title: string; readonly message: string }[];
}

/** Since its version 12 Mocha exports itself by name, which its types do not say yet. */
const { Mocha } = library as unknown as { readonly Mocha: typeof MochaClass };

export async function run(): Promise<void> {
    const mocha = new Mocha({ ui: 'bdd', timeout: 30_000 });
    mocha.suite.emit('pre-require', globalThis, '', mocha);
    await import('./services.js');
    const passed: string[] = [];
    const failed: SuiteResult['failed'][number][] = [];
    const failures = await new Promise<number>(resolve => {
        mocha.run(resolve)
            .on('pass', test => passed.push(test.fullTitle()))
            .on('fail', (test, error: Error) => failed.push({ title: test.fullTitle(), message: `${error.message}\n${error.stack ?? ''}` }));
    });
    writeFileSync(process.env['PADSTONE_SUITE_RESULT']!, JSON.stringify({ passed, failed } satisfies SuiteResult));
    if (failures > 0) {
        throw new Error(`${failures} tests failed`);
    }
}
