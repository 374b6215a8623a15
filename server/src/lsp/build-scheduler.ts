/**
 * When a changed document is built: at once after a pause; where keys come faster than builds, when they
 * rest for as long as a build takes, and never later than `patience` after the first change that is not shown.
 */

/** ms. A reader who types on sees results at least this often. */
export const patience = 300;

/** Builds the documents; false where it was cancelled before its end. Never rejects. */
export type Build = (uris: readonly string[]) => Promise<boolean>;

export class BuildScheduler {
    private readonly waiting = new Set<string>();
    private readonly running = new Set<string>();
    private isRunning = false;
    private timer: ReturnType<typeof setTimeout> | undefined;
    /** When the first change was made that no finished build holds. */
    private oldest: number | undefined;
    private lastDuration = 0;
    private readonly listeners = new Set<() => void>();

    /** @param changed told of each change at once, before anything is built */
    constructor(private readonly build: Build, private readonly cancel: () => void, private readonly changed: (uri: string) => void = () => undefined) { }

    change(uri: string): void {
        this.changed(uri);
        this.waiting.add(uri);
        this.oldest ??= performance.now();
        if (this.isRunning) {
            // A build that the reader has waited for long enough is let go on, although it is behind the text.
            if (this.remainingPatience() > 0) {
                this.cancel();
            }
        } else if (this.timer === undefined) {
            void this.run();
        } else {
            this.delay();
        }
    }

    /** The document is closed: nobody waits for it any more. */
    forget(uri: string): void {
        this.changed(uri);
        this.waiting.delete(uri);
        this.running.delete(uri);
        this.notify();
    }

    /** Whether every change of the document that has arrived is built. */
    isSettled(uri: string): boolean {
        return !this.waiting.has(uri) && !this.running.has(uri);
    }

    /** Whether nothing is being built, nor waits to be. */
    get isIdle(): boolean {
        return !this.isRunning && this.timer === undefined && this.waiting.size === 0;
    }

    /** Calls back once, as soon as the document is settled. Returns what takes the call back. */
    whenSettled(uri: string, callback: () => void): () => void {
        const listener = (): void => {
            if (this.isSettled(uri)) {
                this.listeners.delete(listener);
                callback();
            }
        };
        this.listeners.add(listener);
        listener();
        return () => this.listeners.delete(listener);
    }

    private delay(): void {
        clearTimeout(this.timer);
        this.timer = setTimeout(() => void this.run(), Math.max(0, Math.min(this.lastDuration, this.remainingPatience())));
    }

    private remainingPatience(): number {
        return (this.oldest ?? performance.now()) + patience - performance.now();
    }

    private async run(): Promise<void> {
        clearTimeout(this.timer);
        this.timer = undefined;
        this.isRunning = true;
        this.waiting.forEach(uri => this.running.add(uri));
        this.waiting.clear();
        const begun = performance.now();
        const finished = await this.build([...this.running]);
        const ended = performance.now();
        if (finished) {
            this.lastDuration = ended - begun;
            this.oldest = this.waiting.size > 0 ? ended : undefined;
        } else {
            this.running.forEach(uri => this.waiting.add(uri));
        }
        this.running.clear();
        this.isRunning = false;
        if (this.waiting.size > 0) {
            this.delay();
        } else {
            this.oldest = undefined;
        }
        this.notify();
    }

    private notify(): void {
        [...this.listeners].forEach(listener => listener());
    }
}
