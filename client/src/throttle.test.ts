import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Throttle } from './throttle.js';

describe('Throttle', () => {
    beforeEach(() => void vi.useFakeTimers());
    afterEach(() => void vi.useRealTimers());

    it('runs the first request at once and folds those of the interval into one', async () => {
        const task = vi.fn(() => Promise.resolve());
        const throttle = new Throttle(task, 300);
        throttle.request();
        expect(task).toHaveBeenCalledTimes(1);
        throttle.request();
        throttle.request();
        await vi.advanceTimersByTimeAsync(299);
        expect(task).toHaveBeenCalledTimes(1);
        await vi.advanceTimersByTimeAsync(1);
        expect(task).toHaveBeenCalledTimes(2);
        await vi.advanceTimersByTimeAsync(5000);
        expect(task).toHaveBeenCalledTimes(2);
    });

    it('never runs twice at a time, rests as long as it ran, and runs once more for what came meanwhile', async () => {
        let finish = (): void => undefined;
        const task = vi.fn(() => new Promise<void>(resolve => { finish = resolve; }));
        const throttle = new Throttle(task, 300);
        throttle.request();
        throttle.request();
        await vi.advanceTimersByTimeAsync(400);
        expect(task).toHaveBeenCalledTimes(1);
        finish();
        await vi.advanceTimersByTimeAsync(399);
        expect(task).toHaveBeenCalledTimes(1);
        await vi.advanceTimersByTimeAsync(1);
        expect(task).toHaveBeenCalledTimes(2);
    });

    it('runs again at once after a quiet time', async () => {
        const task = vi.fn(() => Promise.resolve());
        const throttle = new Throttle(task, 300);
        throttle.request();
        await vi.advanceTimersByTimeAsync(301);
        throttle.request();
        expect(task).toHaveBeenCalledTimes(2);
    });

    it('does nothing once disposed of', async () => {
        const task = vi.fn(() => Promise.resolve());
        const throttle = new Throttle(task, 300);
        throttle.request();
        throttle.request();
        throttle.dispose();
        await vi.advanceTimersByTimeAsync(1000);
        expect(task).toHaveBeenCalledTimes(1);
    });
});
