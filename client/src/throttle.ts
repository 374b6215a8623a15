/**
 * Runs `task` at once, then at most every `interval` ms, and never twice at a time. A call made
 * in between is not lost: one run follows, after the interval and after the run before it.
 */
export class Throttle {
    private waiting = false;
    private running = false;
    private timer: ReturnType<typeof setTimeout> | undefined;

    constructor(private readonly task: () => Promise<void>, private readonly interval: number) {}

    request(): void {
        this.waiting = true;
        this.next();
    }

    dispose(): void {
        this.waiting = false;
        clearTimeout(this.timer);
    }

    private next(): void {
        if (!this.waiting || this.running || this.timer !== undefined) {
            return;
        }
        this.waiting = false;
        this.running = true;
        this.timer = setTimeout(() => {
            this.timer = undefined;
            this.next();
        }, this.interval);
        void this.task().finally(() => {
            this.running = false;
            this.next();
        });
    }
}
