import type { Results } from '../../results.js';
import type { Page } from './page.js';

/** One file, as far as what is around the files needs it. */
export type Printed = Pick<Results, 'file' | 'verdict' | 'verdictReason'> & {
    /** What the format made of it. */
    readonly part: string;
};

/** How a run is printed: each file for itself, so that workers can do it, then all of them together. */
export interface Format {
    /** It prints break-evens, proof loads and options too, which take longer than the verdict. */
    readonly tellsAsked: boolean;
    readonly part: (results: Results, page: Page) => string;
    readonly whole: (files: readonly Printed[], page: Page) => string;
}
