/** Long work that yields between its steps, done in one go. */
export function finished<T>(work: Generator<unknown, T>): T {
    for (;;) {
        const step = work.next();
        if (step.done) return step.value;
    }
}
