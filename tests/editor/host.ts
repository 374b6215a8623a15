/**
 * A real VS Code for a test: its server on a free port, a profile in a temporary folder, the packaged
 * extension installed, and a browser that shows the workbench. `.ci/editor-host.sh` fetches both.
 */
import { execFile, spawn, type ChildProcess } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { Browser, Page } from 'playwright-core';
import { findBrowser, launch } from '../browser/browser.js';
import { serveInWorker } from './worker-host.js';

const run = promisify(execFile);
/** ms for the server to say its port. */
const startLimit = 30_000;
/** ms for anything that is waited for in the page. */
const stepLimit = 30_000;

export interface EditorInstallation {
    /** The editor's `server-main.js`. */
    readonly server: string;
    readonly browser: string;
}

/**
 * Undefined where `.ci/editor-host.sh` has not been run on this machine.
 * @throws in a pipeline, or where the environment names an editor that is not there
 */
export function findEditor(): EditorInstallation | undefined {
    const cache = process.env['XDG_CACHE_HOME'] || join(homedir(), '.cache');
    const folder = process.env['PADSTONE_EDITOR_HOST'] || join(cache, 'padstone-editor-host/node_modules/code-server/lib/vscode');
    const server = join(folder, 'out/server-main.js');
    const browser = findBrowser();
    if (existsSync(server) && browser !== undefined) {
        return { server, browser };
    }
    if (process.env['CI'] || process.env['PADSTONE_EDITOR_HOST']) {
        throw new Error(`A pipeline may not leave out the editor, but ${browser === undefined ? 'there is no browser' : `${server} is not there`}`);
    }
    return undefined;
}

/** Where the extension runs: in a Node process, as on the desktop, or in a worker, as in a browser-only VS Code. */
export type ExtensionPlace = 'process' | 'worker';

export interface Editor {
    readonly page: Page;
    /** Identifiers and versions of what is installed. */
    readonly extensions: readonly string[];
    close(): Promise<void>;
}

/** Installs the package into a fresh profile and opens the folder. */
export async function startEditor(installation: EditorInstallation, vsix: string, folder: string, place: ExtensionPlace): Promise<Editor> {
    const profile = mkdtempSync(join(tmpdir(), 'padstone-editor-'));
    let server: ChildProcess | undefined;
    let browser: Browser | undefined;
    const close = async (): Promise<void> => {
        await browser?.close();
        await endGroup(server);
        rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    };
    try {
        const env = { ...process.env, HOME: profile, EXTENSIONS_GALLERY: '{}' };
        const data = ['--server-data-dir', profile, '--user-data-dir', join(profile, 'data')];
        // The server looks for extensions in one folder; what is to run in a worker must not be in it.
        const unpacked = join(profile, place === 'process' ? 'served' : 'unpacked');
        const command = (...args: string[]) => run(process.execPath, [installation.server, ...data, '--extensions-dir', unpacked, ...args], { env });
        writeSettings(profile);
        await command('--install-extension', vsix);
        const extensions = (await command('--list-extensions', '--show-versions')).stdout.split('\n').filter(line => line.includes('@'));

        server = startServer(installation, profile, env);
        const port = await listening(server);

        browser = await launch(installation.browser);
        const page = await browser.newPage({ viewport: { width: 1500, height: 1000 } });
        page.setDefaultTimeout(stepLimit);
        if (place === 'worker') {
            await serveInWorker(page, join(unpacked, readdirSync(unpacked).find(name => name.startsWith('padstone.'))!));
        }
        await page.goto(`http://127.0.0.1:${port}/?folder=${encodeURIComponent(folder)}`);
        return { page, extensions, close };
    } catch (error) {
        await close();
        throw error;
    }
}

/** Tests that run in the extension host, on the extension as it stands in a folder. */
export interface Suite {
    /** Folder of the extension. */
    readonly extension: string;
    /** A module that exports `run`. */
    readonly tests: string;
    /** What the suite writes at its end. */
    readonly result: string;
}

/** Runs a suite to its end, or to the limit, ms: what it found stands in its result alone, for a host that dies says nothing. Gives the errors that the editor told. */
export async function runSuite(installation: EditorInstallation, suite: Suite, folder: string, env: Readonly<Record<string, string>>, limit: number): Promise<readonly string[]> {
    const log: string[] = [];
    const profile = mkdtempSync(join(tmpdir(), 'padstone-suite-host-'));
    let server: ChildProcess | undefined;
    let browser: Browser | undefined;
    let timer: NodeJS.Timeout | undefined;
    try {
        writeSettings(profile);
        server = startServer(installation, profile, { ...process.env, ...env, HOME: profile, EXTENSIONS_GALLERY: '{}' });
        const port = await listening(server);
        browser = await launch(installation.browser);
        const page = await browser.newPage({ viewport: { width: 1500, height: 1000 } });
        const ended = new Promise<void>(resolve => {
            void page.exposeFunction('codeAutomationExit', () => resolve());
            timer = setTimeout(resolve, limit);
        });
        await page.exposeFunction('codeAutomationLog', (level: string, lines: unknown[]) => level === 'error' && log.push(...lines.map(line => String(line))));
        const remote = (path: string): string => `vscode-remote://127.0.0.1:${port}${path}`;
        const payload = JSON.stringify([['extensionDevelopmentPath', remote(suite.extension)], ['extensionTestsPath', remote(suite.tests)]]);
        await page.goto(`http://127.0.0.1:${port}/?folder=${encodeURIComponent(folder)}&payload=${encodeURIComponent(payload)}`);
        await ended;
        return log;
    } finally {
        clearTimeout(timer);
        await browser?.close();
        await endGroup(server);
        rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    }
}

function startServer(installation: EditorInstallation, profile: string, env: NodeJS.ProcessEnv): ChildProcess {
    return spawn(process.execPath, [
        installation.server, '--host', '127.0.0.1', '--port', '0', '--without-connection-token', '--accept-server-license-terms',
        '--telemetry-level', 'off', '--disable-workspace-trust', '--server-data-dir', profile, '--user-data-dir', join(profile, 'data'), '--extensions-dir', join(profile, 'served')
    ], { env, detached: true, stdio: ['ignore', 'pipe', 'pipe'] });
}

function writeSettings(profile: string): void {
    mkdirSync(join(profile, 'data/User'), { recursive: true });
    writeFileSync(join(profile, 'data/User/settings.json'), JSON.stringify({
        'workbench.startupEditor': 'none',
        'workbench.enableExperiments': false,
        'extensions.autoUpdate': false,
        'files.autoSave': 'off'
    }));
}

/** The port that the server says it listens on. */
function listening(server: ChildProcess): Promise<number> {
    return new Promise((resolve, reject) => {
        let said = '';
        const limit = setTimeout(() => reject(new Error(`The editor did not start in time: ${said}`)), startLimit);
        server.stderr?.on('data', (chunk: Buffer) => { said += chunk.toString(); });
        server.stdout?.on('data', (chunk: Buffer) => {
            said += chunk.toString();
            const port = /Extension host agent listening on (\d+)/.exec(said)?.[1];
            if (port !== undefined) {
                clearTimeout(limit);
                resolve(Number(port));
            }
        });
        server.once('exit', code => {
            clearTimeout(limit);
            reject(new Error(`The editor ended at its start with ${code}: ${said}`));
        });
    });
}

/** Ends the server and all that it has started. */
async function endGroup(server: ChildProcess | undefined): Promise<void> {
    if (server?.pid === undefined || server.exitCode !== null) {
        return;
    }
    const ended = new Promise(resolve => server.once('exit', resolve));
    process.kill(-server.pid, 'SIGKILL');
    await ended;
}
