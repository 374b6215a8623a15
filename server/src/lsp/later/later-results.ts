/** What takes many analyses, worked out between keystrokes: break-evens, proof loads, options. */
import { delayNextTick, UriUtils } from 'langium';
import { politely } from '../../certainty/index.js';
import type { Results } from '../../results.js';
import type { Doing } from '../../whole.js';
import type { Computed, ComputedDocuments } from '../computed-documents.js';
import type { KnownWholes } from './known-wholes.js';

/** ms without a key and without a build before work goes on: whoever types is never kept waiting. */
const quiet = { afterKey: 200, afterBuild: 50 };

interface Job {
    readonly computed: Computed;
    readonly steps: Generator<Doing, Results>;
    /** Once it has ended, however it did. */
    readonly ended: () => void;
    readonly end: Promise<void>;
}

/** Tells how far a job is. */
export interface Teller {
    readonly begin: (cancel: () => void) => void;
    readonly report: (doing: Doing) => void;
    readonly end: () => void;
}

export class LaterResults {
    /** By document, the newest text of each. */
    private readonly waiting = new Map<string, Job>();
    private isRunning = false;
    private quietUntil = 0;

    /**
     * @param publish sends what is now known of a document
     * @param failed a defect of ours: what is known already stays
     * @param isBusy whether something is being built, which comes first
     */
    constructor(
        private readonly computed: ComputedDocuments,
        private readonly wholes: KnownWholes,
        private readonly publish: (uri: string) => Promise<void>,
        private readonly teller: Teller,
        private readonly failed: (uri: string, error: unknown) => void,
        private readonly isBusy: () => boolean
    ) { }

    /** The text has changed: what belongs to the old one is given up at once, and the others wait. */
    changed(uri: string): void {
        this.pause(quiet.afterKey);
        this.give(UriUtils.normalize(uri));
    }

    /** A build has found what can be found at once. */
    add(computed: Computed, steps: Generator<Doing, Results>): void {
        const key = UriUtils.normalize(computed.text.uri);
        this.give(key);
        let ended = (): void => undefined;
        const end = new Promise<void>(resolve => { ended = resolve; });
        this.waiting.set(key, { computed, steps, ended, end });
        this.pause(quiet.afterBuild);
        void this.run();
    }

    /** When nothing of this document is still being worked out. */
    async settled(uri: string): Promise<void> {
        await this.waiting.get(UriUtils.normalize(uri))?.end;
    }

    private give(key: string): void {
        this.waiting.get(key)?.ended();
        this.waiting.delete(key);
    }

    private pause(time: number): void {
        this.quietUntil = Math.max(this.quietUntil, performance.now() + time);
    }

    private async run(): Promise<void> {
        if (this.isRunning) return;
        this.isRunning = true;
        for (let next = first(this.waiting); next !== undefined; next = first(this.waiting)) {
            const [key, job] = next;
            const isCurrent = (): boolean => this.waiting.get(key) === job;
            this.teller.begin(() => this.give(key));
            try {
                const results = await politely(job.steps, { cancelled: () => !isCurrent(), progress: this.teller.report, turn: () => this.turn() });
                if (results && isCurrent()) {
                    this.wholes.set(job.computed.sources, results);
                    this.computed.set(job.computed.text.uri, { ...job.computed, results });
                    await this.publish(job.computed.text.uri);
                }
            } catch (error) {
                this.failed(job.computed.text.uri, error);
            }
            this.teller.end();
            if (isCurrent()) this.give(key);
        }
        this.isRunning = false;
    }

    /** ms until it may go on, as far as is known now. */
    private rest(): number {
        return Math.max(this.quietUntil - performance.now(), this.isBusy() ? 10 : 0);
    }

    private async turn(): Promise<void> {
        await delayNextTick();
        for (let rest = this.rest(); rest > 0; rest = this.rest()) {
            await new Promise(resolve => setTimeout(resolve, rest));
        }
    }
}

function first<K, V>(map: ReadonlyMap<K, V>): readonly [K, V] | undefined {
    return [...map][0];
}
