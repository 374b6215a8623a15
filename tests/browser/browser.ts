/** Debian's Chromium for a test: without a network, with everything that it complains of kept. */
import { existsSync } from 'node:fs';
import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';
import axe from 'axe-core';

/** These keep it quiet and small. */
const flags = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'];

/**
 * Undefined where there is none on this machine.
 * @throws in a pipeline: it must not pass over what it was set up to test
 */
export function findBrowser(): string | undefined {
    const found = [process.env['PADSTONE_CHROMIUM'], '/usr/bin/chromium', '/usr/bin/chromium-browser'].find(path => path !== undefined && existsSync(path));
    if (found === undefined) {
        if (process.env['CI'] || process.env['PADSTONE_CHROMIUM']) {
            throw new Error('There is no Chromium, and a pipeline may not leave out what needs it: see .ci/editor-host.sh');
        }
        console.warn('NOT RUN: what needs a browser. `. .ci/editor-host.sh` installs it.');
    }
    return found;
}

export const launch = (executablePath: string): Promise<Browser> => chromium.launch({ executablePath, args: flags });

export interface Shown {
    readonly page: Page;
    /** Errors of scripts and of the content policy, warnings, dialogs, and requests for anything but what was given. */
    readonly complaints: string[];
}

const origin = 'http://padstone.test';

/** Shows a page, which gets nothing but the files given by their names. */
export async function show(browser: Browser, html: string, options: BrowserContextOptions = {}, files: Readonly<Record<string, string>> = {}, before?: (page: Page) => Promise<void>): Promise<Shown> {
    const context = await browser.newContext({ viewport: { width: 1000, height: 800 }, ...options });
    const page = await context.newPage();
    const complaints: string[] = [];
    page.on('console', message => ['error', 'warning'].includes(message.type()) && complaints.push(message.text()));
    page.on('pageerror', error => complaints.push(error.message));
    page.on('dialog', dialog => {
        complaints.push(dialog.message());
        void dialog.dismiss();
    });
    await context.route('**/*', route => {
        const name = new URL(route.request().url()).pathname.slice(1);
        const body = name === '' ? html : files[name];
        if (body === undefined || !route.request().url().startsWith(`${origin}/`)) {
            complaints.push(`asked for ${route.request().url()}`);
            return route.abort();
        }
        return route.fulfill({ body, contentType: name.endsWith('.js') ? 'text/javascript' : 'text/html; charset=utf-8' });
    });
    await before?.(page);
    await page.goto(`${origin}/`);
    return { page, complaints };
}

/** ARIA 1.2 lets what stands within mathematics be reached (github.com/w3c/aria issue 425); axe-core 4.14 has the role as ARIA 1.1 had it. */
const math = { type: 'structure', superclassRole: ['section'], allowedAttrs: ['aria-expanded'], childrenPresentational: false };

/** What axe-core finds, a line for each place: by all of its rules, or by those named. */
export async function barriers(page: Page, rules: readonly string[] = []): Promise<string[]> {
    await page.evaluate(axe.source);
    const { violations, passes } = await page.evaluate(({ runOnly, math }) => {
        const { axe: found } = globalThis as unknown as { axe: typeof axe };
        found.configure({ standards: { ariaRoles: { math } } } as Parameters<typeof axe.configure>[0]);
        return found.run(document, { resultTypes: ['violations'], ...runOnly.length > 0 && { runOnly } });
    }, { runOnly: [...rules], math });
    if (passes.length < Math.max(1, rules.length || 10)) {
        throw new Error(`axe has looked at nothing but ${passes.map(({ id }) => id).join(', ')}`);
    }
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 200)}: ${failureSummary ?? ''}`));
}
