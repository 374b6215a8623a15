import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { BuildScheduler, patience } from './build-scheduler.js';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Builds that take a given time, and end at once when they are cancelled. */
function createHost(duration: number) {
    const builds: { uris: readonly string[]; begun: number; ended?: number; finished?: boolean }[] = [];
    let cancelRunning = (): void => { };
    const scheduler = new BuildScheduler(
        uris => new Promise(resolve => {
            const build: (typeof builds)[number] = { uris, begun: performance.now() };
            builds.push(build);
            const end = (finished: boolean): void => {
                clearTimeout(timer);
                Object.assign(build, { ended: performance.now(), finished });
                resolve(finished);
            };
            const timer = setTimeout(() => end(true), duration);
            cancelRunning = () => end(false);
        }),
        () => cancelRunning()
    );
    return { scheduler, builds };
}

describe('build scheduler', () => {
    test('the first change is built at once, and so is one after a pause', async () => {
        const { scheduler, builds } = createHost(10);
        scheduler.change('a');
        expect(builds).toHaveLength(1);
        await vi.advanceTimersByTimeAsync(500);
        scheduler.change('a');
        expect(builds).toHaveLength(2);
    });

    test('keys that come slower than builds are each built at once', async () => {
        const { scheduler, builds } = createHost(10);
        for (let key = 0; key < 5; key++) {
            scheduler.change('a');
            await vi.advanceTimersByTimeAsync(40);
        }
        expect(builds.map(build => build.finished)).toEqual([true, true, true, true, true]);
    });

    test('a change cancels the build that is under way', async () => {
        const { scheduler, builds } = createHost(100);
        scheduler.change('a');
        await vi.advanceTimersByTimeAsync(30);
        scheduler.change('a');
        expect(builds[0]).toMatchObject({ ended: builds[0]!.begun + 30, finished: false });
        await vi.advanceTimersByTimeAsync(200);
        expect(builds.at(-1)!.finished).toBe(true);
        expect(scheduler.isSettled('a')).toBe(true);
    });

    test('one who types on sees results at least every 300 ms beyond the time of a build', async () => {
        const duration = 80;
        const { scheduler, builds } = createHost(duration);
        for (let time = 0; time < 3000; time += 20) {
            scheduler.change('a');
            await vi.advanceTimersByTimeAsync(20);
        }
        const shown = builds.filter(build => build.finished).map(build => build.ended!);
        expect(shown.length).toBeGreaterThan(5);
        shown.slice(1).forEach((time, i) => expect(time - shown[i]!).toBeLessThanOrEqual(patience + 2 * duration));
        expect(builds.length).toBeLessThan(3000 / 20);
    });

    test('settled means that the last change is built', async () => {
        const { scheduler, builds } = createHost(50);
        const settled = vi.fn();
        scheduler.change('a');
        scheduler.whenSettled('a', settled);
        await vi.advanceTimersByTimeAsync(40);
        scheduler.change('a');
        await vi.advanceTimersByTimeAsync(49);
        expect(settled).not.toHaveBeenCalled();
        await vi.advanceTimersByTimeAsync(300);
        expect(settled).toHaveBeenCalledOnce();
        expect(builds.at(-1)!.finished).toBe(true);
    });

    test('a document that is closed is waited for no longer, and not built again', async () => {
        const { scheduler, builds } = createHost(50);
        scheduler.change('a');
        await vi.advanceTimersByTimeAsync(10);
        scheduler.change('a');
        scheduler.forget('a');
        expect(scheduler.isSettled('a')).toBe(true);
        await vi.advanceTimersByTimeAsync(1000);
        expect(builds).toHaveLength(1);
    });

    test('documents that change together are built together', async () => {
        const { scheduler, builds } = createHost(50);
        scheduler.change('a');
        await vi.advanceTimersByTimeAsync(10);
        scheduler.change('b');
        await vi.advanceTimersByTimeAsync(500);
        expect(builds.at(-1)!.uris).toEqual(expect.arrayContaining(['a', 'b']));
        expect(builds.at(-1)!.finished).toBe(true);
    });
});
