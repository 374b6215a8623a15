import { noCapacity } from '../../../json/amounts.js';
import type { CheckChange } from '../../../diff/comparison.js';
import type { Compared } from '../../diff.js';

/** Of the object that is printed; raised when what stands there comes to mean something else. */
export const diffFormat = 1;

/** Each comparison as `comparison.ts` has it; a utilisation that is no number stands as in `padstone check --format json`. */
export function diffJson(compared: readonly Compared[]): string {
    const side = (outcome: CheckChange['before']) => outcome && { ...outcome, utilisation: Number.isFinite(outcome.utilisation) ? outcome.utilisation : noCapacity };
    const files = compared.map(({ comparison, changed }) => ({
        ...comparison, changed, checks: comparison.checks.map(check => ({ ...check, before: side(check.before), after: side(check.after) }))
    }));
    return `${JSON.stringify({ format: diffFormat, files }, undefined, 2)}\n`;
}
