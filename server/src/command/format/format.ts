import type { Results } from '../../results.js';
import type { Page } from './page.js';

/** One file, as far as what is around the files needs it. */
export type Printed = Pick<Results, 'file' | 'verdict' | 'verdictReason'> & {
    /** What the format made of it. */
    readonly part: string;
};

/** How a run is printed: each file for itself, so that workers can do it, then all of them together. */
export interface Format {
    readonly part: (results: Results, page: Page) => string;
    readonly whole: (files: readonly Printed[], page: Page) => string;
}
