import { memberSummaries } from '../../summary.js';
import { checksTable } from '../markdown.js';
import { sourceOf, type HoverOf } from './place.js';

/** A member's name, wherever it stands: the table of its checks. */
export const hoverMember: HoverOf = ({ computed: { results }, word }) => {
    const summaries = memberSummaries(results).filter(({ name }) => name === word?.text);
    return word && summaries.length > 0 ? { markdown: summaries.map(checksTable).join('\n\n'), source: sourceOf(word) } : undefined;
};
