/** What the extension and the preview's page say to each other: all of it. Lines count from 1. */

export type ToPage =
    | Render
    /** The text has changed: what is shown is out of date until the next `render`. */
    | { readonly type: 'changed' }
    /** Nothing newer can be had, for this reason. */
    | { readonly type: 'failed'; readonly reason: string }
    | { readonly type: 'cursor'; readonly line: number };

export interface Render {
    readonly type: 'render';
    readonly html: string;
    readonly css: string;
    /** Why the content is not that of the newest text. */
    readonly stale?: string;
    /** False where the text has changed again since: another `render` follows. */
    readonly current: boolean;
}

export type FromPage =
    | { readonly type: 'ready' }
    /** A click on a block that comes from this line. */
    | { readonly type: 'reveal'; readonly line: number };

/** What the page keeps over a reload of the window. */
export interface PageState {
    readonly uri: string;
    readonly scroll: number;
    /** Where the cursor was last seen. */
    readonly line?: number;
    /** Keys of the blocks that the reader opened or closed, with whether they are open. */
    readonly folds: Readonly<Record<string, boolean>>;
}
