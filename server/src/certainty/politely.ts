/** Runs long work in slices between which others have their turn. */

export interface Manners<P> {
    /** Asked between slices. */
    readonly cancelled: () => boolean;
    /** After each slice. */
    readonly progress?: (progress: P) => void;
    /** Resolves when it is this work's turn again. */
    readonly turn: () => Promise<void>;
    /** ms. A step that takes longer is a slice by itself. */
    readonly slice?: number;
    /** ms, from any moment. */
    readonly now?: () => number;
}

/** Undefined where it was cancelled. */
export async function politely<P, T>(
    work: Generator<P, T>, { cancelled, progress, turn, slice = 5, now = () => performance.now() }: Manners<P>
): Promise<T | undefined> {
    for (;;) {
        await turn();
        if (cancelled()) return undefined;
        const end = now() + slice;
        let step = work.next();
        while (!step.done && now() < end) step = work.next();
        if (step.done) return step.value;
        progress?.(step.value);
    }
}
