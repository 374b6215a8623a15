import { toOutput } from '../../json/output.js';
import type { Results } from '../../results.js';

/** The object that `schema.ts` describes. */
export function json(files: readonly Results[]): string {
    return `${JSON.stringify(toOutput(files), undefined, 2)}\n`;
}
