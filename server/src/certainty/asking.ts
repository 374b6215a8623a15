/**
 * A search that does not know what it searches: it yields a value, and is sent the worst check there.
 * So the same search runs in one go, or an evaluation at a time off the typing path.
 */
export interface Worst {
    /** Infinity where something has lost its results; NaN where nothing was computed for want of them. */
    readonly utilisation: number;
    /** `T2.bending`; the name of the member where it lost its results; empty where there is no check. */
    readonly check: string;
    /** In which stage, where the file has some. */
    readonly stage?: string;
    /** Why it has none. */
    readonly reason?: string;
    /** What had no results in the first place, and is left out. */
    readonly without: readonly string[];
    /** Every check that fails, once, the worst first. */
    readonly failing: readonly string[];
}

export type Asking<V, T> = Generator<V, T, Worst>;

/** A value that was tried. */
export interface Tried<V = number> extends Worst {
    readonly value: V;
}

export const passes = ({ utilisation }: Worst): boolean => utilisation <= 1;

export function* tried<V>(value: V): Asking<V, Tried<V>> {
    return { ...(yield value), value };
}
