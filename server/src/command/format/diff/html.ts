import { renderComparisons } from '../../../sheet/index.js';
import type { Compared } from '../../diff.js';

/** One page that stands alone, with the drawings of both sides. */
export function diffHtml(compared: readonly Compared[]): string {
    return renderComparisons(compared.filter(one => one.changed).map(({ comparison, before, after }) => ({ comparison, before: before?.results, after: after?.results })), compared.length);
}
