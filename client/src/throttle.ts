/** ms; a run that took longer waited for something else than work. */
const longestRest = 500;

/**
 * Runs `task` at once, then at most every `interval` ms, and never twice at a time; after a long run it rests as long
 * as that took, so that whoever does the work keeps half of its time. A call made in between is not lost: one run follows.
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
        const begun = Date.now();
        void this.task().finally(() => {
            this.running = false;
            const took = Date.now() - begun;
            this.timer = setTimeout(() => {
                this.timer = undefined;
                this.next();
            }, Math.max(this.interval - took, Math.min(took, longestRest)));
        });
    }
}
