import type pc from 'picocolors';

/** What a format prints on. */
export interface Page {
    /** Columns of the terminal. */
    readonly width: number;
    readonly colors: ReturnType<typeof pc.createColors>;
}
