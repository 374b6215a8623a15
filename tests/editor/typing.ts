import type { Page } from 'playwright-core';

export interface Typing {
    /** That arrived in the page. */
    readonly keys: number;
    /** Changes of the hints on the screen. */
    readonly answers: number;
    /** ms from a key to the next change of a hint, for each key that had one before the next key. */
    readonly latencies: readonly number[];
}

/** Types `1` and takes it back, over and over, at the cursor; watches the hints meanwhile. An even count leaves the text as it was. The interval is in ms. */
export async function typing(page: Page, count: number, interval: number): Promise<Typing> {
    await page.evaluate(() => {
        const seen = { keys: [] as number[], changes: [] as number[] };
        Object.assign(window, { padstoneTyping: seen });
        const hints = (): string => [...document.querySelectorAll('.view-lines .view-line span')].map(span => span.textContent ?? '').filter(text => /\d[\s\u00a0]%/.test(text)).join('|');
        let last = hints();
        addEventListener('keydown', () => seen.keys.push(performance.now()), { capture: true });
        new MutationObserver(() => {
            const now = hints();
            if (now !== last && now !== '') {
                last = now;
                seen.changes.push(performance.now());
            }
        }).observe(document.querySelector('.view-lines')!, { childList: true, subtree: true, characterData: true });
    });
    for (let i = 0; i < count; i++) {
        const begun = Date.now();
        await page.keyboard.press(i % 2 === 0 ? '1' : 'Backspace');
        await new Promise(resolve => setTimeout(resolve, Math.max(0, interval - (Date.now() - begun))));
    }
    await page.waitForTimeout(1000);
    const { keys, changes } = await page.evaluate(() => (window as unknown as { padstoneTyping: { keys: number[]; changes: number[] } }).padstoneTyping);
    const latencies = keys.flatMap((key, index) => {
        const change = changes.find(time => time > key);
        return change !== undefined && change < (keys[index + 1] ?? Infinity) ? [change - key] : [];
    });
    return { keys: keys.length, answers: changes.length, latencies };
}

export function inWords({ keys, latencies }: Typing): string {
    const sorted = [...latencies].sort((a, b) => a - b);
    const at = (share: number): string => `${sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!.toFixed(0)} ms`;
    return `${latencies.length} of ${keys} keys were answered before the next${sorted.length > 0 ? `, the median in ${at(0.5)}, nine of ten in ${at(0.9)}` : ''}`;
}
