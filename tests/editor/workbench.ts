/** Hands and eyes for a workbench that runs in a page. */
import type { FrameLocator, Locator, Page } from 'playwright-core';

export class Workbench {
    constructor(private readonly page: Page) {}

    async ready(): Promise<void> {
        await this.page.locator('.explorer-folders-view .monaco-list-row').first().waitFor();
    }

    /** The editor's own reload: unlike the browser's it saves what is to come back. */
    async reload(): Promise<void> {
        const loaded = this.page.waitForEvent('load');
        await this.run('Developer: Reload Window');
        await loaded;
        await this.ready();
    }

    async open(file: string): Promise<void> {
        await this.page.keyboard.press('Control+P');
        await this.pick(file);
        await this.page.locator('.view-lines .view-line').first().waitFor();
    }

    async run(command: string): Promise<void> {
        await this.page.keyboard.press('F1');
        await this.pick(`>${command}`);
    }

    /** Puts the cursor into the active editor; both count from 1. */
    async goTo(line: number, column = 1): Promise<void> {
        await this.page.keyboard.press('Control+G');
        await this.page.locator('.quick-input-widget:visible input').fill(`:${line}:${column}`);
        await this.page.keyboard.press('Enter');
        await this.cursorAt(line, column);
    }

    /** Waits until the status bar says so. */
    async cursorAt(line: number, column: number): Promise<void> {
        await this.page.locator('#status\\.editor\\.selection', { hasText: `Ln ${line}, Col ${column}` }).waitFor();
    }

    /** Keys as a person presses them: the editor completes and closes as it does for a user. */
    async type(text: string): Promise<void> {
        await this.page.keyboard.type(text, { delay: 20 });
    }

    async press(key: string, times = 1): Promise<void> {
        for (let i = 0; i < times; i++) {
            await this.page.keyboard.press(key);
        }
    }

    /** The line of the editor that holds this text, with the hints in it. */
    line(text: string): Locator {
        // The editor draws spaces as U+00A0.
        return this.page.locator('.view-lines .view-line', { hasText: new RegExp(text.replaceAll(' ', '[\\s\u00a0]')) }).first();
    }

    /** How many marks of an error stand under the line that holds this text. */
    async errorsUnder(text: string): Promise<number> {
        const line = (await this.line(text).boundingBox())!;
        const marks = await Promise.all((await this.page.locator('.squiggly-error').all()).map(mark => mark.boundingBox()));
        return marks.filter(mark => mark !== null && mark.y >= line.y && mark.y < line.y + line.height).length;
    }

    get verdict(): Locator {
        return this.page.locator('.statusbar-item[id$="padstone.verdict"]');
    }

    /** The page of the preview pane. */
    get preview(): FrameLocator {
        return this.page.frameLocator('iframe.webview.ready').frameLocator('#active-frame');
    }

    private async pick(text: string): Promise<void> {
        await this.page.locator('.quick-input-widget:visible input').fill(text);
        const wanted = text.replace(/^>/, '');
        await this.page.locator('.quick-input-list .monaco-list-row', { hasText: wanted }).first().waitFor();
        await this.page.keyboard.press('Enter');
    }
}
