import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

const address = '/padstone-in-a-worker';

/** Lets the workbench take the unpacked extension for one of its own web extensions: these run in a worker. */
export async function serveInWorker(page: Page, unpacked: string): Promise<void> {
    await page.context().route(url => url.pathname.startsWith(`${address}/`), route => {
        const file = join(unpacked, new URL(route.request().url()).pathname.slice(address.length));
        return route.fulfill(existsSync(file) ? { path: file } : { status: 404 });
    });
    // The workbench reads what it shall load from an element of its page.
    await page.addInitScript(path => {
        new MutationObserver((_changes, observer) => {
            const configuration = document.getElementById('vscode-workbench-web-configuration');
            if (configuration !== null) {
                observer.disconnect();
                const settings = JSON.parse(configuration.dataset['settings']!);
                settings.additionalBuiltinExtensions = [{ scheme: 'http', authority: location.host, path }];
                configuration.dataset['settings'] = JSON.stringify(settings);
            }
        }).observe(document, { childList: true, subtree: true });
    }, address);
}
